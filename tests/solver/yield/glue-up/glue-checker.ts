import type { Plain } from "../tally/board";
import type { PlainGlueUp, PlainPanel, PlainRow } from "./glue-job";

/**
 * Whether a list can be sawn and glued as it says, looked at row by row in 64ths of an inch: it shares no code with the solver. What is
 * wrong, in words; nothing where all is right.
 */

/** From the contract of the function: what stands in for a term that is left out. */
const USUAL = {
  joint: 1 / 16, roughLength: 1, roughWidth: 1 / 4, leastStrip: 2, greatestStrip: 5.5, plane: 0, kerf: 1 / 8, trim: 0,
};
/** What 4/4, 5/4, 6/4 and 8/4 dress to: a hardwood thickness table of an extension service; 6/4 from memory. */
const DRESSED: Readonly<Record<number, number>> = { 1: 13 / 16, 1.25: 17 / 16, 1.5: 21 / 16, 2: 1.75 };

const PER_INCH = 64;
const marks = (inches = 0): number => Math.round(inches * PER_INCH);

interface Found {
  readonly name: string;
  readonly board: Plain;
  readonly copy: string;
}

/** A board by the name that stands in its cell: A, or A (2) of several alike. */
const boardOf = (tally: readonly Plain[], cell: string): Found | undefined => {
  const name = /^(.*?)(?: \((\d+)\))?$/.exec(cell);
  const place = tally.findIndex((one, at) =>
    String(one.label ?? "ABCDEFGHIJKLMNOPQRSTUVWXYZ".charAt(at)) === name?.[1],
  );
  const found = tally[place];
  return found === undefined ? undefined : { name: cell, board: found, copy: name?.[2] ?? "" };
};

const clearOf = ({ length, defects = [], clear = [] }: Plain): (readonly [number, number])[] => {
  const inches = (size: { toNumber: () => number }): number => size.toNumber() / 25.4;
  if (clear.length > 0) return clear.map(({ from, to }) => [marks(inches(from)), marks(inches(to))] as const);
  const spoilt = defects.map(({ from, to }) => [marks(inches(from)), marks(inches(to))] as const).sort((one, other) => one[0] - other[0]);
  const found: (readonly [number, number])[] = [];
  let from = 0;
  for (const [start, end] of spoilt) {
    found.push([from, start]);
    from = Math.max(from, end);
  }
  return [...found, [from, marks(length)]];
};

const pairs = <T,>(all: readonly T[]): (readonly [T, T])[] =>
  all.flatMap((one, at) => all.slice(at + 1).map((other) => [one, other] as const));

export const faultsOf = ({ panels, tally, terms = {} }: PlainGlueUp, rows: readonly PlainRow[]): string[] => {
  const term = { ...USUAL, ...terms };
  const [joint, kerf, trim] = [marks(term.joint), marks(term.kerf), marks(term.trim)];
  const faults: string[] = [];
  const check = (isRight: boolean, says: string): void => {
    if (!isRight) faults.push(says);
  };
  const strips = rows.filter(({ board }) => board !== undefined);
  const wholes = rows.filter(({ board, panel }) => board === undefined && panel !== "total");
  const wanted = panels.flatMap((panel) => Array.from({ length: panel.quantity ?? 1 }, () => panel));
  check(wholes.length === wanted.length, `${wholes.length} panels for ${wanted.length}`);
  // Panels stand in the order of their rows.
  const panelOf = new Map<string, PlainPanel>(wholes.map(({ panel }, place) => [panel, wanted[place]!]));
  check(panelOf.size === wanted.length, "two panels have one name");
  for (const whole of wholes) {
    const own = strips.filter(({ panel }) => panel === whole.panel);
    const need = marks(panelOf.get(whole.panel)!.width) + marks(term.roughWidth);
    const net = own.reduce((sum, { netWidth }) => sum + marks(netWidth), 0);
    check(net === marks(whole.netWidth) && net - need === marks(whole.over) && net >= need, `${whole.panel} nets ${net} for ${need}`);
    check(own.length === whole.stripsInAll && own.length <= (terms.strips ?? Infinity), `${whole.panel} is of ${own.length} strips`);
    const boards = new Set(own.map(({ board }) => board)).size;
    check(boards === whole.boardsInAll && (terms.together !== "board" || boards === 1), `${whole.panel} is of ${boards} boards`);
  }
  for (const strip of strips) {
    const says = `strip ${JSON.stringify(strip)}`;
    const panel = panelOf.get(strip.panel);
    const found = boardOf(tally, strip.board!);
    if (panel === undefined || found === undefined) {
      faults.push(`${says} is of no panel or no board`);
      continue;
    }
    const { board } = found;
    const [net, rough, length] = [marks(strip.netWidth), marks(strip.roughWidth), marks(strip.length)];
    check(rough === net + 2 * joint, `${says}: joints`);
    check(net >= marks(term.leastStrip) && net <= marks(term.greatestStrip), `${says}: least or greatest`);
    check(length === marks(panel.length) + marks(term.roughLength), `${says}: rough length`);
    const [from, to] = [marks(strip.along), marks(strip.along) + length];
    check(from >= trim && to <= marks(board.length) - trim, `${says}: past an end`);
    check(clearOf(board).some(([start, end]) => from >= start && to <= end), `${says}: in a defect`);
    const edge = marks(board.edge ?? 0) / 2;
    check(marks(strip.across) >= edge && marks(strip.across) + rough <= marks(board.width) - edge, `${says}: past an edge`);
    const grades = [panel.grade ?? "", ...(panel.alsoFrom ?? "").split(",")].map((one) => one.trim()).filter((one) => one !== "");
    check(grades.length === 0 || grades.includes("any") || grades.includes(board.grade ?? ""), `${says}: grade`);
    check((panel.species ?? "") === "" || panel.species === board.species, `${says}: species`);
    const thick = board.surfaced === true ? (board.thickness ?? 1) : DRESSED[board.thickness ?? 1]!;
    check((panel.thickness ?? 0) + (panel.thickness === undefined ? 0 : term.plane) <= thick, `${says}: thickness`);
  }
  for (const [one, other] of pairs(strips).filter(([a, b]) => a.board === b.board)) {
    const gap = (a: number, size: number, b: number): number => b - a - size;
    const along = Math.max(
      gap(marks(one.along), marks(one.length), marks(other.along)), gap(marks(other.along), marks(other.length), marks(one.along)),
    );
    const across = Math.max(
      gap(marks(one.across), marks(one.roughWidth), marks(other.across)),
      gap(marks(other.across), marks(other.roughWidth), marks(one.across)),
    );
    // Crosscut first: sections lie a kerf apart, strips of one section side by side from its very start.
    const isOneSection = one.section === other.section;
    check(isOneSection ? one.along === other.along && across >= kerf : along >= kerf, `kerf between ${JSON.stringify([one, other])}`);
  }
  faults.push(...costFaults(tally, strips, rows));
  return faults;
};

/** What is paid, again from the tally's own prices: each lot once, owned boards nothing. */
const costFaults = (tally: readonly Plain[], strips: readonly PlainRow[], rows: readonly PlainRow[]): string[] => {
  const total = rows.find(({ panel }) => panel === "total");
  const used = new Map(strips.flatMap(({ board }) => {
    const found = boardOf(tally, board!);
    return found === undefined ? [] : [[board!, found] as const];
  }));
  const lots = new Map<string, number>();
  let cost = 0;
  for (const { board } of used.values()) {
    const lotPrice = tally.find(({ lot, lotPrice: price }) => lot !== undefined && lot === board.lot && price !== undefined)?.lotPrice;
    if (board.owned === true) continue;
    if (board.lot !== undefined && lotPrice !== undefined) lots.set(String(board.lot), lotPrice);
    else cost += board.price ?? 0;
  }
  for (const price of lots.values()) cost += price;
  const faults = total?.stripsInAll === strips.length && total.boardsInAll === used.size ? [] : ["the total counts otherwise"];
  return total?.cost === undefined || Math.abs(total.cost - cost) < 0.005 ? faults : [...faults, `cost ${total.cost} for ${cost}`];
};
