import { drawnCall, type Drawing } from "../../../../src/drawing/plans/drawn-call";
import { collisions, parsedDraft } from "../parsed-draft";

/** A rectangle of a drawing, in its unit, from the board's corner measured from. */
type Rectangle = readonly [along: number, across: number, length: number, width: number];

const drawn = (id: string, ...args: readonly unknown[]): readonly Drawing[] => {
  const found = drawnCall(id, args);
  if (typeof found === "string") throw new Error(found);
  return found;
};

/** By definition. */
const MILLIMETRES_PER_INCH = 25.4;

/** Spots of each line of a kind, in the unit of the drawing, from a board's lower left corner. */
const spotsOf = (svg: string, kind: string): readonly (readonly (readonly [number, number])[])[] =>
  [...svg.matchAll(new RegExp(`<polyline class="${kind}"[^>]*points="([^"]*)"`, "g"))].map(([, points = ""]) =>
    points.split(" ").map((spot) => spot.split(",").map(Number) as unknown as readonly [number, number]));

const rectangles = ({ svg }: Drawing, kind: string, board = 0): readonly Rectangle[] => {
  const { scale, unit } = parsedDraft({ svg });
  const per = (unit === "in" ? MILLIMETRES_PER_INCH : 1) / scale;
  const boards = spotsOf(svg, "thick");
  const low = Math.max(...(boards[board] ?? []).map(([, y]) => y));
  const rounded = (paper: number): number => Math.round((paper / per) * 1000) / 1000;
  return spotsOf(svg, kind).map((spots): Rectangle => {
    const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => low - y)];
    const [left, foot] = [Math.min(...xs), Math.min(...ys)];
    return [left, foot, Math.max(...xs) - left, Math.max(...ys) - foot].map(rounded) as unknown as Rectangle;
  });
};

/** A hair of wood at these scales: the paper is written to a thousandth of a millimetre. */
const expectNear = (found: readonly Rectangle[], wanted: readonly Rectangle[]): void => {
  expect(found.length).toBe(wanted.length);
  for (const [place, one] of wanted.entries()) {
    for (const [side, size] of one.entries()) expect(Math.abs((found[place]?.[side] ?? Infinity) - size)).toBeLessThan(0.04);
  }
};

const PIECES = [["label", "length", "width", "quantity"], ["riser", 42, 7.25, 2], ["nosing", 42, 3.5, 2]];
const BOARD = [["label", "length", "width", "thickness", "price"], ["A", 96, 11, "4/4", 66]];

// By hand: strips at 0 and 7 1/4 + 1/8 across, pieces at 0 and 42 + 1/8 along; 96 - 2 x 42 1/8 = 11 3/4 left.
const LAID: readonly Rectangle[] = [[0, 0, 42, 7.25], [42.125, 0, 42, 7.25], [0, 7.375, 42, 3.5], [42.125, 7.375, 42, 3.5]];

test.each([["TALLYCUTS", BOARD], ["SHEETCUTS", [["label", "length", "width", "price"], ["A", 96, 11, 66]]]])(
  "the pieces of %s lie where the table says, a kerf apart", (id, stock) => {
    const [first] = drawn(id, PIECES, stock, null, null, null, "rip");
    if (first === undefined) throw new Error("nothing drawn");
    expectNear(rectangles(first, "thick"), [[0, 0, 96, 11]]);
    expectNear(rectangles(first, "piece"), LAID);
    // By hand: the first rip in the kerf over 7 1/4; the second in the 1/8 over 7 1/4 + 1/8 + 3 1/2 = 10 7/8.
    expectNear(rectangles(first, "cut"), [[0, 7.3125, 96, 0], [0, 10.9375, 96, 0]]);
    const { texts } = parsedDraft(first);
    expect(texts).toEqual(expect.arrayContaining(['riser 42" x 7 1/4"', '42 1/8" along, 0" across', "0", "grain"]));
    expect(texts.filter((text) => text === 'nosing 42" x 3 1/2"').length).toBe(2);
    expect(collisions(parsedDraft(first))).toEqual([]);
  });

test("a defect is hatched over the whole width, and the pieces keep clear of it", () => {
  const tally = [["label", "length", "width", "thickness", "price", "defects"], ["A", 96, 8, "4/4", 40, "44 to 47"]];
  const [first] = drawn("TALLYCUTS", [["label", "length", "width", "quantity"], ["tread", 40, 7.5, 2]], tally, 0.125, 1, 5);
  if (first === undefined) throw new Error("nothing drawn");
  expect(parsedDraft(first).texts).toContain('defect 44" to 47"');
  expectNear(rectangles(first, "thin").slice(0, 1), [[44, 0, 3, 8]]);
  // By hand: from the trim of 1, and from the defect's end at 47.
  expectNear(rectangles(first, "piece"), [[1, 0, 40, 7.5], [47, 0, 40, 7.5]]);
  // By hand: 96 - 1 - (47 + 40 + 1/8) = 7 7/8 is kept; 44 - 1 - 40 1/8 = 2 7/8 is not 5.
  expectNear(rectangles(first, "dashed"), [[87.125, 0, 7.875, 7.5]]);
  expect(collisions(parsedDraft(first))).toEqual([]);
});

test("sheets cut alike are drawn once, in millimetres too, and a turned piece says so", () => {
  // By hand: 2 x 600 and a kerf of 4 are 1204 of 1220 across, one along 1000 of 1010: two pieces a sheet, three sheets.
  const stock = [["label", "length", "width", "price"], ["ply", 1010, 1220, 50]];
  const pieces = [["label", "length", "width", "quantity", "grain"], ["side", 600, 1000, 6, "free"]];
  const all = drawn("SHEETCUTS", pieces, stock, 4, 0, null, "crosscut", "mm");
  expect(all.length).toBe(1);
  const [first] = all;
  if (first === undefined) throw new Error("nothing drawn");
  const { texts, unit } = parsedDraft(first);
  expect(unit).toBe("mm");
  expect(texts).toContain("sheets 1 to 3, 3 alike: ply, 1010 x 1220 mm, crosscut first");
  expect(texts).toContain("side 600 x 1000 mm, turned");
  const found = rectangles(first, "piece");
  for (const [place, one] of ([[0, 0, 1000, 600], [0, 604, 1000, 600]] as const).entries()) {
    for (const [side, size] of one.entries()) expect(Math.abs((found[place]?.[side] ?? Infinity) - size)).toBeLessThan(0.2);
  }
});

test("CUTS of a tally has no drawing but its sentence, PLAN of it has that of TALLYCUTS", () => {
  const tally = [[...(BOARD[0] ?? []), "defects"], [...(BOARD[1] ?? []), ""]];
  expect(drawnCall("CUTS", [PIECES, tally])).toMatch(/TALLYCUTS cuts those/);
  const [plan] = drawn("PLAN", PIECES, tally, null, null, null, null);
  const [cuts] = drawn("TALLYCUTS", PIECES, tally);
  expect(plan?.svg).toBe(cuts?.svg);
});

test("a panel has its strips side by side, as wide as they are once jointed", () => {
  // A woodworking article: two case sides 16 7/8 x 31 out of one board 11 x 130, ripped to 8 1/2; by hand each nets 8 1/2 - 1/16.
  const terms = [["label", "value"], ["rough width", "none"], ["joint", 0.03125], ["greatest strip", 8.4375]];
  const [first] = drawn(
    "GLUEUP", [["label", "length", "width", "quantity"], ["side", 31, 16.875, 2]],
    [["label", "length", "width", "thickness", "price"], [7, 130, 11, "4/4", 60]], terms,
  );
  if (first === undefined) throw new Error("nothing drawn");
  expectNear(rectangles(first, "thick").slice(0, 1), [[0, 0, 32, 16.875]]);
  expectNear(rectangles(first, "piece").slice(0, 2), [[0, 0, 32, 8.4375], [0, 8.4375, 32, 8.4375]]);
  const { texts } = parsedDraft(first);
  expect(texts).toEqual(expect.arrayContaining(['strip 2: board 7, section 2, net 8 7/16"', 'ripped to 8 1/2"']));
  expect(texts).toContain('panel side 1: 32" x 16 7/8" glued up, 0" more than it needs');
  expect(collisions(parsedDraft(first))).toEqual([]);
});

test("the board of a glue-up has its sections from the end chalked 0, each with its strip as it is ripped", () => {
  // The same case, all hand-worked: four sections of 32 and a kerf of 1/8 begin at 0, 32 1/8, 64 1/4, 96 3/8 and end at 128 3/8; 1 1/2 is
  // left at the end of 130, and 11 - 8 1/2 - 1/8 = 2 3/8 beside each strip. No edge is taken off where none is given.
  const terms = [["label", "value"], ["rough width", "none"], ["joint", 0.03125], ["greatest strip", 8.4375]];
  const drawings = drawn(
    "GLUEUP", [["label", "length", "width", "quantity"], ["side", 31, 16.875, 2]],
    [["label", "length", "width", "thickness", "price", "edge"], [7, 130, 11, "4/4", 60, 0]], terms,
  );
  const board = drawings.find(({ title }) => title.includes("out of 1 board"));
  if (board === undefined) throw new Error(`no board is drawn among ${drawings.map(({ title }) => title).join(", ")}`);
  const starts = [0, 32.125, 64.25, 96.375];
  expectNear(rectangles(board, "piece"), starts.map((along): Rectangle => [along, 0, 32, 8.5]));
  const cuts = spotsOf(board.svg, "cut");
  expect(cuts).toHaveLength(4);
  for (const line of cuts) expect(new Set(line.map(([x]) => x)).size).toBe(1);
  const { texts } = parsedDraft(board);
  expect(texts).toContain('board 7: 130" x 11", 4/4, crosscut first');
  expect(texts.filter((text) => /^panel side [12], strip [12]$/.test(text))).toHaveLength(4);
  expect(collisions(parsedDraft(board))).toEqual([]);
});
