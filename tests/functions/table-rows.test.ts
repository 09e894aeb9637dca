import { termsOfRows, withTerms } from "../../src/functions/bid-terms";
import { type GivenCells, isFailed } from "../../src/functions/cells";
import type { RangeParameter } from "../../src/functions/declare";
import { glueTerms } from "../../src/functions/glue-rows";
import { readStair } from "../../src/functions/read-stair";
import { asHeaded } from "../../src/functions/table-as-headed";
import { pieces, tally } from "../../src/functions/tables";
import { tallyBoards, type TallyRow } from "../../src/functions/tally-boards";
import { Exact } from "../../src/solver/length/exact";
import { type Length, lengthOf, measure, type Unit } from "../../src/solver/length/length";

/** Rows that say more than their cells: boards of a tally, terms of a bid and of a glue-up, labels of a stair. 1 in is 25.4 mm. */

const inch = (inches: number): Length => lengthOf(inches, "in");
const inches = (length: Length): number => measure(length, "in");

describe("a board of a tally", () => {
  const ROW = { row: 2, label: "7", length: inch(96), width: inch(8), thickness: "5/4" } as unknown as TallyRow;
  const board = (change: Partial<Record<keyof TallyRow, unknown>>, unit: Unit = "in"): unknown => {
    const read = tallyBoards([{ ...ROW, ...change } as TallyRow], unit);
    return isFailed(read) ? read.says : read[0];
  };
  const thickness = (written: string | number, unit: Unit = "in"): unknown => {
    const read = board({ thickness: written }, unit);
    return typeof read === "string" ? read : inches((read as { thickness: Length }).thickness);
  };

  test.each<[string | number, Unit, number]>([
    // Quarters of an inch in either unit.
    ["4/4", "in", 1], ["5/4", "in", 1.25], [" 8 / 4 ", "in", 2], ["5/4", "mm", 1.25], ["5\u20444", "in", 1.25], ["64/4", "in", 16],
    [1.5, "in", 1.5], [38.1, "mm", 1.5], ["1 1/2", "in", 1.5], ["38.1 mm", "in", 1.5], [16, "in", 16], ["16 in", "in", 16],
    [406.4, "mm", 16],
  ])("is as thick as it says: %p in %s is %d in", (written, unit, thick) => expect(thickness(written, unit)).toBeCloseTo(thick, 9));

  // No board is thicker than 16 in: common practice, no source; 5/4 typed into a cell becomes a date, some 46,000.
  test.each<[string | number, Unit, string]>([
    ["65/4", "in", 'must be 4/4 to 64/4, got "65/4"'],
    ["0/4", "in", 'must be 4/4 to 64/4, got "0/4"'],
    ["16.01 in", "in", 'must be 16 in or less, got "16.01 in"'],
    [16.01, "in", "16.01 is over 16 in; the cell may hold a date: write '5/4 as text"],
    [406.5, "mm", "406.5 is over 16 in; the cell may hold a date: write '5/4 as text"],
    [46_116, "in", "46116 is over 16 in; the cell may hold a date: write '5/4 as text"],
    [0, "in", "must be more than 0, got 0"],
    ["thick", "in", 'read "thick", which is not a length'],
  ])("%p in %s is no thickness", (written, unit, says) => expect(thickness(written, unit)).toContain(`thickness: board 7: ${says}`));

  test("is as long and as wide as boards are sold, and no longer", () => {
    expect(typeof board({ length: inch(720), width: inch(72) })).toBe("object");
    expect(board({ length: inch(720.5) })).toBe('length: board 7: 720.5 in is over 720 in; if this is millimetres, write "720.5 mm"');
    expect(board({ width: inch(72.5) })).toBe('width: board 7: 72.5 in is over 72 in; if this is millimetres, write "72.5 mm"');
    // 720 x 25.4 = 18,288.
    expect(board({ length: lengthOf(18_288.5, "mm") }, "mm")).toContain("length: board 7: 18288.5 mm is over 18288 mm; if this is inches");
  });

  const ranges = (column: "defects" | "clear", text: string, unit: Unit = "in"): unknown => {
    const read = board({ [column]: text }, unit);
    if (typeof read === "string") return read;
    const found = (read as Record<typeof column, readonly { from: Length; to: Length }[]>)[column];
    return found.map(({ from, to }) => [inches(from), inches(to)]);
  };

  test.each(["defects", "clear"] as const)("has %s as ranges, several with a semicolon between", (column) => {
    expect(ranges(column, "31 to 34")).toEqual([[31, 34]]);
    expect(ranges(column, "0 TO 3; 88 1/2 to 92 ; ")).toEqual([[0, 3], [88.5, 92]]);
    expect(ranges(column, "25.4 to 50.8", "mm")).toEqual([[1, 2]]);
    expect([ranges(column, ""), ranges(column, " ; ")]).toEqual([[], []]);
    for (const [text, part] of [["31-34", "31-34"], ["1 to 2; knots", "knots"], ["to 34", "to 34"]] as const)
      expect(ranges(column, text)).toBe(
        `${column}: board 7: read "${part}", which is no range; write 31 to 34, several as 31 to 34; 88 1/2 to 92`,
      );
    expect(ranges(column, "x to 34")).toContain(`${column}: board 7: read "x"`);
    expect(ranges(column, "31 to x")).toContain(`${column}: board 7: read "x"`);
    expect(ranges(column, "-1 to 3")).toContain(`${column}: board 7: must be 0 or more, got "-1"`);
    expect(ranges(column, "0 to 0")).toContain(`${column}: board 7: must be more than 0, got "0"`);
  });

  test("keeps the feet of its paper where it has them, and fails by the first bad one", () => {
    expect(board({ boardFeet: 12 })).toMatchObject({ paperFeet: 12, written: "5/4" });
    expect(board({})).not.toHaveProperty("paperFeet");
    const bad = { ...ROW, thickness: "0/4" };
    const read = tallyBoards([ROW, { ...bad, label: "8" }, { ...bad, label: "9" }]);
    expect(isFailed(read) && read.says).toContain("thickness: board 8");
    expect([tallyBoards([ROW, ROW])].flat()).toHaveLength(2);
  });
});

describe("the terms of a glue-up", () => {
  const read = (rows: readonly (readonly [string, (string | number)?])[], unit: Unit = "in") =>
    glueTerms("glue", rows.map(([label, value], place) => ({ label, row: place + 2, ...(value === undefined ? {} : { value }) })), unit);
  const says = (...rows: readonly (readonly [string, (string | number)?])[]): unknown => {
    const found = read(rows);
    return isFailed(found) ? found.says : "read";
  };
  const terms = (...rows: readonly (readonly [string, (string | number)?])[]): Record<string, unknown> => {
    const found = read(rows);
    if (isFailed(found)) throw new Error(found.says);
    return Object.fromEntries(Object.entries(found.terms).map(([name, one]) => [name, one instanceof Exact ? inches(one) : one]));
  };

  test("are those given, and the usual in place of the others, which are said", () => {
    expect(terms(["Joint", "1/8"], ["least strips", 3], ["STRIPS", "Any"], ["together", "Board"], ["trim", 0])).toMatchObject({
      joint: 0.125, leastStrip: 3, strips: Infinity, together: "board", trim: 0,
    });
    expect(terms(["strips", 4], ["plane", 0.5])).toMatchObject({ strips: 4, plane: 0.5 });
    const found = read([["joint", 0], ["together", "any"]]);
    expect(!isFailed(found) && found.assumed).toEqual([
      'rough length 1"', 'rough width 1/4"', 'least strip 2"', 'greatest strip 5 1/2"', "plane none", 'kerf 1/8"', "trim none",
      "strips any",
    ]);
    const metric = read([], "mm");
    // 1/16 x 25.4 = 1.5875.
    expect(!isFailed(metric) && [metric.assumed[0], metric.assumed[9]]).toEqual(["joint 1.5875 mm", "together any"]);
  });

  test.each<[readonly (readonly [string, (string | number)?])[], string]>([
    [[["jont", 1]], 'glue, label in row 2: "jont" is not known; nearest is "joint"; write joint, rough length,'],
    [[["joint"]], "joint in row 2 of glue: is empty or 0; write none for 0, or leave the row out for the usual"],
    [[["joint", ""]], "joint in row 2 of glue: is empty or 0"],
    [[["kerf", 0.125], ["joint", 1], ["Kerf", 0.125]], 'glue: "kerf" stands there twice; keep one'],
    [[["joint", -1]], "joint in row 2 of glue: must be 0 or more, got -1"],
    [[["least strip", 0]], "least strip in row 2 of glue: must be more than 0, got 0"],
    [[["greatest strip", "0"]], 'greatest strip in row 2 of glue: must be more than 0, got "0"'],
    [[["strips", 0]], "strips in row 2 of glue: must be more than 0, got 0"],
    [[["strips", 2.5]], "strips in row 2 of glue: must be a whole number, got 2.5"],
    [[["strips", "many"]], 'strips in row 2 of glue: must be a number, got "many"'],
    [[["together", "bord"]], 'together in row 2 of glue: "bord" is not known; nearest is "board"; write any or board'],
    [[["joint", "any"]], 'joint in row 2 of glue: read "any", which is not a length'],
  ])("%j are refused", (rows, sentence) => expect(says(...rows)).toContain(sentence));
});

describe("the terms of a bid", () => {
  type Row = readonly [string, (string | number)?];
  const read = (...rows: readonly Row[]) =>
    termsOfRows("terms", rows.map(([label, rate], place) => ({ label, row: place + 2, ...(rate === undefined ? {} : { rate }) })));
  const given = (...rows: readonly Row[]): unknown => {
    const found = read(...rows);
    if (isFailed(found)) return found.says;
    return Object.fromEntries(Object.entries(found).filter(([, one]) => !one.isZero()).map(([name, one]) => [name, one.toNumber()]));
  };

  test("are the rates that stand there; an empty one and a 0 are none", () => {
    expect(given(["burden", "30%"], ["Overhead on labor", 2.5], ["contingency", ""], ["tax on price"], ["round up to", 10])).toEqual({
      burden: 0.3, overheadOnLabour: 2.5, roundUpTo: 10,
    });
    expect(given(["burden", 0], ["burden", 0.3], ["burden", "0%"])).toEqual({ burden: 0.3 });
    expect(given()).toEqual({});
  });

  // Of the price, of taxes and of contingency a bare number is up to the whole; on the cost up to 5, because 250 % is 2.5 in a cell.
  test.each(["burden", "overhead on labour", "overhead on materials", "overhead on cost", "profit on cost"])("%s is of a cost", (label) =>
    expect(Object.values(given([label, 5]) as object)).toEqual([5]));
  test.each(["overhead of price", "profit of price", "tax paid on materials", "contingency", "tax on price", "tax on materials"])(
    "%s is up to the whole", (label) => {
      expect(Object.values(given([label, 1]) as object)).toEqual([1]);
      expect(given([label, 1.5])).toContain(`rate in row 2 (${label}): 1.5 is 150 %, more than the whole`);
    });

  test("round up to whole cents", () => {
    expect([given(["round up to", 0.01]), given(["round up to", "$5"])]).toEqual([{ roundUpTo: 0.01 }, { roundUpTo: 5 }]);
    expect(given(["round up to", 0.005])).toBe("rate in row 2 (round up to): must be an amount in whole cents, got 0.005");
    expect(given(["round up to", -1])).toBe("rate in row 2 (round up to): must be 0 or more, got -1");
  });

  test("that are not known, or charge one thing twice, are refused", () => {
    expect(given(["burdon", "3%"])).toContain('terms, label in row 2: "burdon" is not known; nearest is "burden"; write burden, ');
    expect(given(["burden", "3%"], ["Burden", "3%"])).toBe('terms: "burden" has two rates; keep one');
    const twice = (one: string, other: string): string => `terms: "${one}" and "${other}" would charge one thing twice; keep one`;
    for (const [one, other] of [
      ["overhead on cost", "overhead of price"], ["overhead on cost", "overhead on labour"], ["overhead on cost", "overhead on materials"],
      ["profit on cost", "profit of price"], ["tax on price", "tax on materials"],
    ] as const) {
      expect(given([other, 0.1], [one, 0.1])).toBe(twice(one, other));
      expect(given([other, 0], [one, 0.1])).not.toEqual(expect.any(String));
    }
    expect(withTerms("terms", [{ label: "burden", row: 2, rate: 0.3 }], ({ burden }) => burden.toNumber())).toBe(0.3);
    expect(withTerms("terms", [{ label: "x", row: 2 }], () => 1)).toMatchObject({ says: expect.stringContaining("label in row 2") });
  });
});

describe("the labels of a stair", () => {
  const given = (...rows: readonly (readonly unknown[])[]): unknown => {
    const found = readStair("stair", rows as GivenCells);
    if (isFailed(found)) return found.says;
    const plain = Object.entries(found.given).map(([name, one]) => [name, one instanceof Exact ? inches(one) : one]);
    const assumed = Object.keys(found.assumed).length === 0 ? {} : { assumed: found.assumed };
    return { unit: found.unit, ...Object.fromEntries(plain), ...assumed };
  };

  test("stand with a value each; headings, blank labels and empty values are none", () => {
    expect(given(["Label", "value"], ["", 7], [null, 8], ["total rise", 105], ["run", ""], ["Risers", 14], ["nosing"])).toEqual({
      unit: "in", totalRise: 105, risers: 14, nosing: 0,
    });
    const none = "stair: has no rows; give a table with a label and a value in each row, such as total rise and 107 1/2";
    expect([given(), given(["label", "value"]), given(["", 3])]).toEqual([none, none, none]);
  });

  test("an error in place of a label or a value is that of the call", () => {
    const error = { failed: "#N/A", says: "the cell given holds #N/A" };
    expect(given([error, 3])).toBe("stair, label: the cell given holds #N/A; put that cell right first");
    expect(given([error, 3], ["total rise", "2700 mm"])).toContain("stair, label: the cell given holds #N/A");
    expect(given(["total rise", error])).toBe("total rise: the cell given holds #N/A; put that cell right first");
  });

  test("unknown ones are named, whatever they are", () => {
    expect(given(["totl rise", 3])).toBe('stair, label: "totl rise" is not known; nearest is "total rise"');
    expect(given([7, 3])).toContain('stair, label: "7" is not known');
  });

  test("the unit is that of its row, wherever; else mm where all lengths are metric", () => {
    expect(given(["total rise", 2667], ["unit", "MM"])).toEqual({ unit: "mm", totalRise: 105 });
    expect(given(["total rise", 105], ["unit", ""])).toEqual({ unit: "in", totalRise: 105 });
    expect(given(["total rise", "2667 mm"], ["unit", null], ["risers", 14])).toEqual({ unit: "mm", totalRise: 105, risers: 14 });
    expect(given(["total rise", "2667 mm"], ["unit", "in"], ["run", 10])).toEqual({ unit: "in", totalRise: 105, run: 10 });
    expect(given(["total rise", "2667 mm"], ["run", 10])).toContain(
      'write all lengths in one unit, here "10 mm" if it is millimetres, or add a row unit',
    );
    expect(given(["unit", "cm"], ["run", 10])).toBe('unit: "cm" is not known; write in or mm');
    expect(given(["unit", 0], ["run", 10])).toContain('unit: "0" is not known');
    // Labels that are not known say nothing of the unit.
    expect(given(["total rise", "2667 mm"], ["my length", 10])).toContain('"my length" is not known');
  });

  test.each<[string, Unit, boolean]>([
    ["in", "in", true], ["In.", "in", true], ["inch", "in", true], ["inches", "in", true], ['"', "in", true], [" in ", "in", true],
    ["mm", "in", false], ["cm", "in", false], ["m", "in", false], ["ft", "in", false], ["foot", "in", false], ["feet.", "in", false],
    ["'", "in", false], ["mm", "mm", true], ["MM.", "mm", true], ["in", "mm", false], ['"', "mm", false], ["m", "mm", false],
    ["mms", "in", true], ["my mm", "in", true], ["nominal", "mm", true],
  ])("%p beside a bare length in %s", (beside, unit, isRead) => {
    const found = given(["unit", unit], ["total rise", unit === "in" ? 105 : 2667, beside]);
    if (isRead) expect(found).toEqual({ unit, totalRise: 105 });
    else expect(found).toContain(`total rise: ${unit === "in" ? 105 : 2667} has `);
    // Beside a text with its own unit, or a count, it is a remark.
    expect(given(["unit", unit], ["total rise", "105 in", beside], ["risers", 14, beside])).toEqual({ unit, totalRise: 105, risers: 14 });
  });

  test("a label twice must say the same, in either notation", () => {
    expect(given(["run", 10], ["going", "10 in"])).toEqual({ unit: "in", run: 10 });
    expect(given(["run", 10], ["going", 9])).toBe("run: appears twice with two values; keep one");
    expect(given(["run", 10], ["run", ""])).toEqual({ unit: "in", run: 10 });
  });

  test("why a value stands there that nobody gave is kept, unless somebody gave it too", () => {
    const because = "assumed: common practice, no source";
    expect(given(["nosing", 1.25, "in", because])).toEqual({ unit: "in", nosing: 1.25, assumed: { nosing: "common practice, no source" } });
    expect(given(["nosing", 1.25, "in", "", " Assumed: x"])).toEqual({ unit: "in", nosing: 1.25, assumed: { nosing: "x" } });
    expect(given(["nosing", 1.25, "in", `not ${because}`])).toEqual({ unit: "in", nosing: 1.25 });
    expect(given(["nosing", 1.25, "in", because], ["nosing", 1.25])).toEqual({ unit: "in", nosing: 1.25 });
    expect(given(["nosing", 1.25], ["nosing", 1.25, "in", because])).toEqual({ unit: "in", nosing: 1.25 });
    expect(given(["nosing", 1.25, "in", "assumed: x"], ["nosing", 1.25, "in", "assumed: y"])).toEqual({
      unit: "in", nosing: 1.25, assumed: { nosing: "x" },
    });
    // In the column of the value it is the value.
    expect(given(["nosing", because])).toContain('nosing: read "assumed: common practice, no source"');
  });
});

describe("a table that is read as another", () => {
  const says = "What it is.";
  const parameter = {
    kind: "table", table: pieces, badRows: "refuse", says, instead: { table: tally, argument: "stock", headings: ["lot", "clear"] },
  } as const;
  const read = (stock: readonly (readonly (string | number | null)[])[] | undefined, one: RangeParameter = parameter): unknown => {
    const found = asHeaded(one, new Map(stock === undefined ? [] : [["stock", stock]]));
    return found.kind === "table" ? found.table.name : found.kind;
  };

  test("has one of its headings and a length in the first row that holds anything", () => {
    expect(read([["", 0], ["Lots", "Length", "width"], ["A", 96, 8]])).toBe("tally");
    expect(read([["length", "CLEAR"], [96, "0 to 96"]])).toBe("tally");
    const others = [
      [["length", "price"], [96, 20]], [["clear", 96, 20]], [["lot", "clear"], ["A", "x"]], [[96, 20], ["lot", "length"]], [["", 0]],
    ];
    for (const other of others)
      expect(read(other)).toBe("pieces");
    expect(read(undefined)).toBe("pieces");
    const { instead: _, ...plain } = parameter;
    expect(read([["lot", "length"]], plain)).toBe("pieces");
    expect(read([["lot", "length"]], { kind: "cells", says })).toBe("cells");
  });
});
