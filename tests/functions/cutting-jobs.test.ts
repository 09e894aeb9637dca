import { isFailed } from "../../src/functions/cells";
import { cuttingJobOf, namedStock } from "../../src/functions/cutting";
import { givenGlueUp } from "../../src/functions/given-glue-up";
import { isTally, plannedWood } from "../../src/functions/planned-wood";
import { namedBoard, rippingJobOf } from "../../src/functions/ripping";
import { sheetJobOf } from "../../src/functions/sheets";
import { type GivenPlanned, sheetsIn, sticksIn } from "../../src/functions/sheets-or-sticks";
import type { TallyRow } from "../../src/functions/tally-boards";
import { isProblem } from "../../src/solver/problem";
import { Exact } from "../../src/solver/length/exact";
import { type Length, lengthOf } from "../../src/solver/length/length";

/** What rows of pieces, stock and boards say of a job: names, widths, sizes that are kept and trimmed, and whether it is of sheets. */

const inch = (inches: number): Length => lengthOf(inches, "in");
type Piece = GivenPlanned["pieces"][number];
type Stick = GivenPlanned["stock"][number];

const piece = (more: Partial<Piece> = {}): Piece =>
  ({ length: inch(36), quantity: 1, grade: "", grain: "fixed", ...more }) as Piece;
const stick = (more: Partial<Stick> = {}): Stick =>
  ({ length: inch(96), available: Infinity, owned: false, grade: "", price: new Exact(20), ...more }) as Stick;
const job = (more: Partial<GivenPlanned> = {}): GivenPlanned => ({
  pieces: [piece()], stock: [stick()], kerf: inch(0.125), trim: { length: inch(0) }, keep: undefined, first: undefined, unit: "in", ...more,
});

/** Names as the tables have them: a label goes before an item, that before a step; a width before a depth or a height. */
const NAMED: readonly (readonly [Partial<Piece>, string | number])[] = [
  [{ label: "a", item: "b", step: 3 }, "a"], [{ item: "b", step: 3 }, "b"], [{ step: 3 }, 3], [{ label: 0, item: "b" }, 0], [{}, ""],
];
const WIDE: readonly (readonly [Partial<Piece>, number | undefined])[] = [
  [{ width: inch(1), depth: inch(2), height: inch(3) }, 1], [{ depth: inch(2), height: inch(3) }, 2], [{ height: inch(3) }, 3],
  [{}, undefined],
];

describe("a piece has its name and its width", () => {
  const widthOf = (of: { readonly width?: Length } | undefined): number | undefined => of?.width?.div(25.4).toNumber();

  test.each(NAMED)("%j is called %j", (more, name) => {
    expect(cuttingJobOf(sticksIn(job({ pieces: [piece(more)] }))).pieces[0]?.label).toBe(name);
    const ripped = rippingJobOf({ pieces: [piece(more) as never], tally: [], ...saw, keep: undefined, first: "either", unit: "in" });
    expect(!isFailed(ripped) && ripped.pieces[0]?.label).toBe(name);
    const glued = givenGlueUp({ panels: [{ ...piece(more), row: 2 } as never], tally: [], glue: undefined, unit: "in" });
    expect(!isFailed(glued) && (glued.panels[0]?.label ?? "")).toBe(name);
  });

  test.each(WIDE)("%# is as wide as its width, else its depth, else its height", (more, width) => {
    const [cut] = cuttingJobOf(sticksIn(job({ pieces: [piece(more)] }))).pieces;
    expect([widthOf(cut), cut !== undefined && "width" in cut]).toEqual([width, width !== undefined]);
    const ripped = rippingJobOf({ pieces: [piece(more) as never], tally: [], ...saw, keep: undefined, first: "either", unit: "in" });
    expect(!isFailed(ripped) && [widthOf(ripped.pieces[0]), "width" in ripped.pieces[0]!]).toEqual([width, width !== undefined]);
    const glued = givenGlueUp({ panels: [{ ...piece(more), row: 2 } as never], tally: [], glue: undefined, unit: "in" });
    expect(!isFailed(glued) && widthOf(glued.panels[0] as { width?: Length })).toEqual(width);
  });
});

const saw = { kerf: inch(0.125), trim: inch(0) };

describe("sticks", () => {
  test("are called by their label, and what is kept is a length", () => {
    const found = cuttingJobOf(sticksIn(job({ stock: [stick({ label: "A" }), stick({ label: 7 }), stick()] })));
    expect(found.stock.map(({ label }) => label)).toEqual(["A", 7, ""]);
    expect("keep" in found).toBe(false);
    const kept = sticksIn(job({ keep: { length: inch(24), width: inch(3) }, trim: { length: inch(1), width: inch(2) } }));
    expect([cuttingJobOf(kept).keep, kept.trim]).toEqual([inch(24), inch(1)]);
    expect([namedStock("A"), namedStock(7), namedStock(inch(96))]).toEqual(["A", 7, { kind: "length", value: inch(96) }]);
  });
});

describe("sheets", () => {
  const sheets = (more: Partial<GivenPlanned> = {}) => sheetJobOf({ ...job(more), first: "rip" });

  test("keep a size, one length both ways, and trim their edges by a size of their own", () => {
    expect(sheets({ keep: { length: inch(24), width: inch(3) } }).keep).toEqual({ length: inch(24), width: inch(3) });
    expect(sheets({ keep: { length: inch(24) } }).keep).toEqual({ length: inch(24), width: inch(24) });
    expect(sheets().keep).toBeUndefined();
    expect([sheets({ trim: { length: inch(1), width: inch(0) } }).edgeTrim, sheets({ trim: { length: inch(1) } }).edgeTrim]).toEqual([
      inch(0), undefined,
    ]);
    expect(sheets({ trim: { length: inch(1), width: inch(0) } }).trim).toEqual(inch(1));
  });

  test("have pieces that may be turned where their grain is free", () =>
    expect(sheets({ pieces: [piece({ grain: "free" }), piece()] }).pieces.map(({ turns }) => turns)).toEqual([true, false]));
});

describe("whether a job is of sheets", () => {
  const wide = [stick({ width: inch(48) })];
  // Two pieces of 3 and a kerf of 1/8 take 6 1/8 across.
  const narrow = [piece({ width: inch(3), quantity: 2 })];

  test("it is where something says what is cut first, and by that", () => {
    for (const first of ["rip", "crosscut", "either"] as const) expect(sheetsIn(job({ first }))?.first).toBe(first);
  });

  test("it is where a piece may be turned on stock of a width, and either way first", () => {
    expect(sheetsIn(job({ pieces: [piece({ grain: "free" })], stock: [stick(), ...wide] }))?.first).toBe("either");
    expect(sheetsIn(job({ pieces: [piece({ grain: "free" })] }))).toBeUndefined();
    expect(sheetsIn(job({ stock: wide }))).toBeUndefined();
  });

  test("it is where two pieces could lie side by side", () => {
    expect(sheetsIn(job({ pieces: narrow, stock: [stick({ width: inch(6.125) })] }))?.first).toBe("either");
    expect(sheetsIn(job({ pieces: narrow, stock: [stick({ width: inch(6.0625) })] }))).toBeUndefined();
  });
});

describe("measured boards", () => {
  const ROW = {
    row: 2, length: inch(96), width: inch(8), thickness: "4/4", surfaced: false, grade: "", species: "", owned: true, edge: inch(0),
    quantity: 1,
  } as unknown as TallyRow;

  test("are told from stock by what their table has", () =>
    expect([isTally([ROW]), isTally([stick()]), isTally([])]).toEqual([true, false, false]));

  test("are called by their label, or by their place where that says nothing", () =>
    expect([namedBoard("7", 2), namedBoard(0, 2), namedBoard(undefined, 2), namedBoard(" ", 0)]).toEqual(["7", 0, "board 3", "board 1"]));

  test("a bad one is the fault of the job", () => {
    const bad = [{ ...ROW, thickness: "thick" }];
    const ripped = rippingJobOf({ pieces: [piece() as never], tally: bad, ...saw, keep: undefined, first: "either", unit: "in" });
    const glued = givenGlueUp({ panels: [], tally: bad, glue: [], unit: "in" });
    for (const found of [ripped, glued]) expect(isFailed(found) && found.says).toContain("thickness: board in row 2: read");
    const terms = givenGlueUp({ panels: [], tally: [ROW], glue: [{ label: "x", row: 2 }], unit: "in" });
    expect(isFailed(terms) && terms.says).toContain("glue, label in row 2");
  });

  test("keep a size where one is asked for", () => {
    const kept = (keep: { length: Length } | undefined) => {
      const found = rippingJobOf({ pieces: [piece() as never], tally: [ROW], ...saw, keep, first: "rip", unit: "in" });
      return isFailed(found) ? found.says : ["keep" in found, found.keep, found.first];
    };
    expect([kept({ length: inch(24) }), kept(undefined)]).toEqual([[true, { length: inch(24) }, "rip"], [false, undefined, "rip"]]);
  });

  test("are planned by their own planner, and only their ends are trimmed", () => {
    const ripped = (one: Piece): never => ({ ...one, alsoFrom: "", species: "" }) as never;
    const of = (more: object): unknown => {
      const found = plannedWood({ ...job({ pieces: [ripped(piece())], stock: [ROW] as never }), ...more });
      return isFailed(found) ? found.says : isProblem(found) ? found.problem : [found.of, found.job.trim];
    };
    expect(of({})).toEqual(["boards", inch(0)]);
    expect(of({ trim: { length: inch(1) } })).toEqual(["boards", inch(1)]);
    expect(of({ trim: { length: inch(1), width: inch(0) } })).toEqual(["boards", inch(1)]);
    expect(of({ trim: { length: inch(1), width: inch(1) } })).toBe(
      "trim: of a tally only the ends are trimmed; write one length, and the edges under edge",
    );
    expect(of({ stock: [stick()] })).toEqual(["sticks", inch(0)]);
    expect(of({ stock: [{ ...ROW, thickness: "thick" }] })).toContain("thickness: board in row 2: read");
    expect(of({ stock: [stick({ width: inch(48) })], pieces: [piece({ width: inch(3) })], first: "rip" })).toEqual(["sheets", inch(0)]);
    // 100 in are cut from no board or stick of 96.
    const long = piece({ length: inch(100) });
    expect(of({ pieces: [ripped(long)] })).toBe("longer-than-clear");
    expect(of({ pieces: [long], stock: [stick()] })).toBe("piece-fits-no-stock");
  });
});
