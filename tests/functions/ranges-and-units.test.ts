import { readCall } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";
import { codeSource } from "../../src/functions/code-source";
import { figuredSteps } from "../../src/functions/figured-steps";
import { ownHeadings } from "../../src/functions/own-headings";
import { Exact } from "../../src/solver/length/exact";
import { answered, declared } from "./answered";

/** Ranges where one value may stand, the unit a call works in, and where headings belong. */

describe("a range in place of one value", () => {
  test("an empty text gives nothing; an empty cell is 0 where 0 may be, else nothing", () => {
    // A gap of 0 is no bevel, a gap as large as the board is thick one of 45 degrees.
    expect(answered("BEVEL", 1, [[0], [1], [null], [""], ["  "]])).toEqual([[0], [expect.closeTo(45, 9)], [0], [""], [""]]);
    expect(answered("PITCH", [[7], [0], [null], [""]], 7)).toEqual([[expect.closeTo(45, 9)], [""], [""], [""]]);
    // By hand: 20 and half of it are 30, the next whole 7 is 35.
    expect(answered("SELLINGPRICE", 20, 0.5, undefined, [[7, 0, null, ""]])).toEqual([[35, 30, 30, ""]]);
    expect(answered("SELLINGPRICE", [[20], [0], [""]], 0.5)).toEqual([[30], [0], [""]]);
    expect(answered("RELIEF", 1, [[45], [0], [""]])).toEqual([[expect.closeTo(1, 9)], [0], [""]]);
    // No board at all has no board feet, a missing board none to tell of.
    expect(answered("BOARDFEET", 1, 12, 12, [[2], [0], [null], [""]])).toEqual([[2], [0], [0], [""]]);
  });

  test("each cell is answered for itself, an error beside the others", () => {
    expect(answered("PITCH", [["x", 7], [-7, 7]], 7)).toEqual([
      [expect.stringContaining('#VALUE! rise: read "x"'), expect.closeTo(45, 9)],
      ["#VALUE! rise: must be more than 0, got -7", expect.closeTo(45, 9)],
    ]);
    expect(answered("PITCH", [[7], [{ code: "#N/A" }]], 7)).toEqual([[expect.closeTo(45, 9)], [expect.stringContaining("#N/A rise: ")]]);
    // A range of one cell is one value.
    expect(answered("PITCH", [[7]], 7)).toBeCloseTo(45, 9);
  });

  test("ranges beside one another are of one size, in rows and in columns", () => {
    const says = (rows: number, columns: number): string =>
      `#VALUE! run: is ${rows} x ${columns} cells where rise is 2 x 2; give ranges of one size, or one value`;
    const rise = [[7, 7], [7, 7]];
    expect(answered("PITCH", rise, [[7, 7], [7, 7]])).toEqual(Array(2).fill(Array(2).fill(expect.closeTo(45, 9))));
    expect(answered("PITCH", rise, [[7, 7]])).toBe(says(1, 2));
    expect(answered("PITCH", rise, [[7, 7], [7, 7], [7, 7]])).toBe(says(3, 2));
    expect(answered("PITCH", rise, [[7, 7, 7], [7, 7, 7]])).toBe(says(2, 3));
    expect(answered("PITCH", rise, [[7], [7]])).toBe(says(2, 1));
  });

  test("a table answered in the shape of its lengths has an error in its place, and nothing where nothing stood", () => {
    // By hand: with no floors and treads to come the rises stay as they are.
    expect(answered("FINISHED", [[7.5, 8], ["", 7]], 0, 0, 0)).toEqual([[7.5, 8], ["", 7]]);
    expect(answered("FINISHED", [[7.5], ["x"], [8]], 0, 0, 0)).toEqual([[7.5], [expect.stringContaining("roughRises, row 2: read")], [8]]);
    // 25 shared as 3 : 1 : 1.
    expect(answered("ALLOCATE", 25, [[3, "", 1], [1, null, 0]])).toEqual([[15, "", 5], [5, "", 0]]);
  });
});

describe("what a call works in", () => {
  const unit = (id: string, ...cells: unknown[]): unknown => {
    const read = readCall(declared(id), cells);
    return isFailed(read) ? read.says : read.unit;
  };

  test("is its unit, that of its stair, or what its lengths say", () => {
    expect([unit("RISERS", 108.5), unit("RISERS", 2781, undefined, "MM"), unit("RISERS", 108.5, undefined, "cm")]).toEqual([
      "in", "mm", 'unit: "cm" is not known; write in or mm',
    ]);
    expect([unit("LAYOUT", [["total rise", 108.5]]), unit("LAYOUT", [["unit", "mm"], ["total rise", 2700]])]).toEqual(["in", "mm"]);
    expect([unit("PITCH", 7, 10), unit("PITCH", "178 mm", "254 mm"), unit("PITCH", "7 in", 10)]).toEqual([undefined, "mm", undefined]);
    expect(unit("PITCH", "178 mm", 10)).toContain("run: 10 has no unit and counts as inches, but rise is metric");
    // What only converts takes each cell by itself.
    expect(unit("TAPE", "178 mm")).toBeUndefined();
  });

  test("a stair that cannot be read is its own error, and one that may be left out leaves the unit to others", () => {
    expect(unit("LAYOUT")).toContain("stair: is missing");
    expect(unit("LAYOUT", [["totl rise", 3]])).toContain('"totl rise" is not known');
    const costs = [["item", "cost"], ["oak", 9]];
    expect(unit("ALTERNATES", costs, [["burden", 0.1]])).toBe("in");
  });

  test("an argument that follows another has its value", () => {
    const read = readCall(declared("RISERS"), [108.5, "", undefined]);
    expect(!isFailed(read) && read.given["maxRise"] instanceof Exact).toBe(true);
    for (const declaration of catalogue) {
      for (const [name, { defaultsTo }] of Object.entries(declaration.parameters)) {
        if (defaultsTo === undefined) continue;
        const [example] = declaration.examples;
        const given = example.given as Readonly<Record<string, unknown>>;
        const cells = Object.keys(declaration.parameters).map((one) => (one === name ? undefined : given[one]));
        const found = readCall(declaration, cells);
        const isSame = !isFailed(found) && found.given[name] === found.given[defaultsTo];
        expect([declaration.id, name, isSame]).toEqual([declaration.id, name, true]);
      }
    }
  });

  test("a call of too many rows, or with an error, cannot be read", () => {
    expect(unit("UNIFORMITY", Array.from({ length: 20_001 }, () => [7.5]))).toContain("values: is 20,001 rows");
    expect(readCall(declared("RISERS"), ["x"])).toMatchObject({ says: expect.stringContaining('totalRise: read "x"') });
    // Arguments beyond the declared ones are passed over.
    expect(unit("PITCH", 7, 10, "more", "and more")).toBeUndefined();
  });
});

describe("where a heading belongs, seen from a function", () => {
  const home = (id: string, heading: string): unknown => ownHeadings(id).homeOf(heading);

  test("in a table of its own, then of its step, then in the one that cannot do without it; tables come before results", () => {
    expect(home("CUTS", "price")).toEqual({ name: "stock of CUTS", isOneOfSeveral: true });
    expect(home("BUY", "price")).toEqual({ name: "stock of BUY", isOneOfSeveral: true });
    expect(home("TREADFIT", "back")).toMatchObject({ name: "readings of TREADFIT" });
    expect(home("RISERFIT", "left lean")).toMatchObject({ name: "readings of TREADFIT" });
    expect(home("TREADFIT", "left flare")).toEqual({ name: "readings of RISERFIT", isOneOfSeveral: false });
    expect(home("TREADFIT", "price")).toEqual({ name: "prices of EXTEND", isOneOfSeveral: true });
    expect(home("TREADFIT", "total rise")).toMatchObject({ name: "the stair table" });
    expect(home("TREADFIT", "left heel")).toEqual({ name: "the result of TREADFIT", isOneOfSeveral: false });
    expect(home("TREADFIT", "mitred returns")).toMatchObject({ name: "the items of TAKEOFF" });
    expect(home("TREADFIT", "colour")).toBeUndefined();
  });

  test("of a result by its letters", () => {
    const { isOfResult } = ownHeadings("CUTS");
    expect(["TREADFIT", "CUTS", "NONE"].map((id) => isOfResult("Left Heel", id))).toEqual([true, false, false]);
  });
});

describe("a limit of a code, as Explain says it", () => {
  test("has its clause, its figure as printed and where it was read; the edition alone where the code has no such item", () => {
    // IRC 2021, R311.7.5.1: 7 3/4 in.
    expect(codeSource("irc-2021", "riser height")).toMatchObject({
      edition: "International Residential Code, edition 2021", clause: "R311.7.5.1", printed: "7 3/4 in", unit: "in",
    });
    expect(codeSource("irc-2021", "riser height")?.read?.length).toBeGreaterThan(0);
    expect(codeSource("irc-2021", "no such item")).toEqual({ edition: "International Residential Code, edition 2021" });
    expect(codeSource("irc-2021", undefined)).toEqual({ edition: "International Residential Code, edition 2021" });
    expect(codeSource("no such code", "riser height")).toBeUndefined();
  });

  test("of a slope or a number has no unit, of an angle has degrees", () => {
    // AS 1657:2018, 7.3: at most 18 risers in a flight.
    expect(codeSource("as-1657-2018", "flight risers")).toMatchObject({ clause: "7.3", printed: "18", unit: "" });
    // 2010 ADA Standards, 504.4 and 504.5: treads no steeper than 1:48, risers sloping up to 30 degrees.
    expect(codeSource("ada-2010", "walking surface slope")).toMatchObject({ clause: "504.4", printed: "1:48", unit: "" });
    expect(codeSource("ada-2010", "riser slope from vertical")).toMatchObject({ clause: "504.5", printed: "30 deg", unit: "deg" });
  });
});

describe("a method with the figures of one answer", () => {
  const steps = (source: string, name: string | undefined, value: string, known: Readonly<Record<string, string>>) =>
    figuredSteps(source, { name, value }, new Map(Object.entries(known)));

  test("has stops only outside of brackets", () => {
    const known = { "total rise": "98", risers: "14" };
    expect(steps("Rise = total rise / (risers; of the flight. All of them). It is plumb.", "rise", "7", known)).toEqual({
      steps: ["Rise (7) = total rise (98) / (risers (14); of the flight. All of them)"], rest: "It is plumb.",
    });
    expect(steps("Rise = total rise / 14 (a), run = going (b). Done", "run", "10", { going: "10", "total rise": "98" })).toEqual({
      steps: ["run (10) = going (10) (b)"], rest: "Rise = total rise / 14 (a). Done.",
    });
  });

  test("what follows a comma belongs to its equation unless it is one, after another stop it stands alone", () => {
    expect(steps("Rise = total rise / risers, rounded, at last; in inches.", "rise", "7", { risers: "14" })).toEqual({
      steps: ["Rise (7) = total rise / risers (14), rounded, at last"], rest: "In inches.",
    });
    expect(steps("First, rise = total rise / risers.", "rise", "7", { risers: "14" })).toEqual({
      steps: ["rise (7) = total rise / risers (14)"], rest: "First.",
    });
  });

  test("sentences that are left begin with a large letter and end with a stop where something is gone", () => {
    const rest = (source: string): string => steps(source, "rise", "7", { risers: "14" }).rest;
    expect(rest("one thing: rise = total rise / risers; another; the last.")).toBe("One thing. Another; the last.");
    expect(rest("one thing. rise = risers; x, y")).toBe("One thing. X, y.");
  });

  test("names with marks in them are read as they stand", () => {
    expect(steps("2R+T = 2 x rise + run.", "2R+T", "24", { rise: "7", run: "10" }).steps).toEqual(["2R+T (24) = 2 x rise (7) + run (10)"]);
    expect(steps("Cost (all) = price x 2.", "cost (all)", "8", { price: "4" }).steps).toEqual(["Cost (all) (8) = price (4) x 2"]);
  });

  test("an equation that goes round ends, and two of one name are both of it", () => {
    expect(steps("a1 = b1 + 1; b1 = a1 - 1.", "a1", "3", { b1: "2" }).steps).toEqual(["a1 (3) = b1 (2) + 1", "b1 (2) = a1 (3) - 1"]);
    expect(steps("Rise = height / risers. Rise = run x slope.", "rise", "7", { risers: "14", run: "10" }).steps).toEqual([
      "Rise (7) = height / risers (14)", "Rise (7) = run (10) x slope",
    ]);
  });
});
