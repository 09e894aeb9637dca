import { catalogue } from "../../src/functions/catalogue";
import { type Given, type GivenCells, isFailed } from "../../src/functions/cells";
import type { CellParameter, Parameter, RangeParameter } from "../../src/functions/declare";
import { tooLarge } from "../../src/functions/range-size";
import { isLeftOut, readArgument, readRange } from "../../src/functions/read-argument";
import { treadReadings } from "../../src/functions/tables";
import { unitOfCells } from "../../src/functions/unit-of-cells";
import { unitOfLengths } from "../../src/functions/unit-of-lengths";
import { Exact } from "../../src/solver/length/exact";
import { type Length, measure, type Unit } from "../../src/solver/length/length";

/** Every kind of argument, given, left out and wrong. */

const says = "What it is.";
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;
const isLength = (value: unknown): value is Length => value instanceof Exact;

/** Lengths in inches, errors as their sentence. */
const plain = (value: unknown): unknown => {
  if (isFailed(value)) return value.says;
  if (isLength(value)) return measure(value, "in");
  if (Array.isArray(value)) return value.map(plain);
  return isRecord(value) ? Object.fromEntries(Object.entries(value).map(([key, one]) => [key, plain(one)])) : value;
};

describe("an argument of one value", () => {
  const read = (cells: GivenCells | undefined, parameter: CellParameter, unit: Unit | undefined = "in"): unknown =>
    plain(readArgument("it", cells, parameter, unit));
  const LENGTH = { kind: "length", sign: "not negative", says } as const;

  test("is no range", () => {
    expect(read([[1], [2]], LENGTH)).toBe("it: takes one value, got a range of 2 x 1 cells");
    expect(read([[1, 2, 3]], LENGTH)).toBe("it: takes one value, got a range of 1 x 3 cells");
    expect([read([[1]], LENGTH), read([[0]], LENGTH)]).toEqual([1, 0]);
  });

  test.each<[string, GivenCells | undefined]>([["nothing", undefined], ["an empty cell", [[null]]], ["a blank", [["  "]]]])(
    "left out as %s, what stands in does, and what is required is missed by its meaning", (_, cells) => {
      expect(read(cells, LENGTH)).toBe("it: is missing; give what it is");
      expect(read(cells, { ...LENGTH, default: "1/8" })).toBe(0.125);
      expect(read(cells, { ...LENGTH, default: 0 })).toBe(0);
      expect(read(cells, { ...LENGTH, default: 1, crossed: true })).toEqual({ length: 1 });
      expect(read(cells, { ...LENGTH, optional: true })).toBeUndefined();
      expect(read(cells, { ...LENGTH, defaultsTo: "front" })).toBeUndefined();
      // A default is in inches whatever the unit of the call: 25.4 mm.
      expect(read(cells, { kind: "reading", sign: "positive", default: 1, says }, "mm")).toBe(25.4);
      expect(read(cells, { kind: "reading", sign: "positive", default: 1, says }, undefined)).toBe(1);
      expect(read(cells, { kind: "flag", default: false, says })).toBe(false);
      expect(readArgument("it", cells, { kind: "rate", of: "the cost", default: 0.25, says }, "in")).toEqual(new Exact(0.25));
      expect(read(cells, { kind: "date", optional: true, says })).toBeUndefined();
    });

  test("may be a word for a length, or a size", () => {
    const words = { ...LENGTH, words: { none: 0, "one inch": 1 } } as const;
    expect([read([["None"]], words), read([["one-inch"]], words), read([["two"]], words)]).toEqual([
      0, 1, expect.stringContaining("which is not a length"),
    ]);
    expect([read([["one inch"]], words, "mm"), read([["one inch"]], words, undefined)]).toEqual([expect.closeTo(1 / 25.4, 9), 1]);
    expect(read([[3]], words)).toBe(3);
    const crossed = { ...LENGTH, crossed: true } as const;
    expect([read([["24 x 3"]], crossed), read([[24]], crossed)]).toEqual([{ length: 24, width: 3 }, { length: 24 }]);
  });

  test("0 is an empty cell where a date may be left out, and nowhere else", () => {
    expect(read([[0]], { kind: "date", optional: true, says })).toBeUndefined();
    expect(read([[0]], { kind: "date", says } as CellParameter)).toContain("it: must be a date");
    expect(read([[1]], { kind: "date", optional: true, says })).toContain("it: must be a date");
    expect(read([[0]], { kind: "length", sign: "positive", optional: true, says })).toBe("it: must be more than 0, got 0");
  });
});

test("a range is left out where it is one empty cell, and not where it is several, or a 0", () => {
  const cells: (GivenCells | undefined)[] = [undefined, [[null]], [[""]], [[0]], [[null, null]], [[null], [null]], [["x"]], [[false]]];
  expect(cells.map(isLeftOut)).toEqual([true, true, true, false, false, false, false, false]);
});

const [RISERS, TREADFIT] = ["RISERS", "TREADFIT"].map((id) => catalogue.find((one) => one.id === id)!);

describe("an argument of a range", () => {
  const read = (cells: GivenCells | undefined, parameter: RangeParameter, unit: Unit | undefined = "in"): unknown =>
    plain(readRange("it", cells, parameter, { declaration: TREADFIT!, unit, stairs: new Map() }));
  const ERROR = { failed: "#N/A", says: "the cell given holds #N/A" } as const;
  const CELLS = { kind: "cells", says } as const;

  test("left out, and one error in place of it", () => {
    expect(read(undefined, CELLS)).toBe("it: is missing; give what it is");
    expect(read([[null]], CELLS)).toBe("it: is missing; give what it is");
    expect(read([[null]], { ...CELLS, optional: true })).toBeUndefined();
    expect(read([[ERROR]], { ...CELLS, optional: true })).toBe("it: the cell given holds #N/A");
    expect(read([[{ failed: "#N/A", says: "run: is missing" }]], CELLS)).toBe("run: is missing");
    // Beside others it is for who reads them.
    expect(read([[ERROR, 1]], CELLS)).toEqual([["the cell given holds #N/A", 1]]);
    expect(read([[ERROR], [1]], CELLS)).toEqual([["the cell given holds #N/A"], [1]]);
    expect(read([[7]], CELLS)).toEqual([[7]]);
  });

  test("a table is refused at its first bad row, or answers it", () => {
    const parameter = { kind: "table", table: treadReadings, badRows: "refuse", says } as const;
    const cells = [["step", "run", "back", "front"], [1, 10, 36, 36], [2, 10, "x", 36], [3, 10, "y", 36]];
    expect(read(cells, parameter)).toContain('back in step 2: read "x"');
    expect(read(cells, { ...parameter, badRows: "answer" })).toHaveLength(3);
    expect(read(cells.slice(0, 2), parameter)).toHaveLength(1);
    expect(read([["step", "run", "front"], [1, 10, 36]], { ...parameter, badRows: "answer" })).toContain('heading "back" is missing');
  });

  describe("of lengths", () => {
    const RISES = { kind: "lengths", sign: "positive", badCells: "refuse", says } as const;

    test("keeps its shape; where 0 cannot be, it is an empty cell and takes no part, else an empty cell is 0", () => {
      expect(read([[7.5], [0], [""], [null], ["8"]], RISES)).toEqual({ rows: [[7.5], [undefined], [undefined], [undefined], [8]] });
      expect(read([[7.5, 0], [null, 1]], { ...RISES, sign: "not negative" })).toEqual({ rows: [[7.5, 0], [0, 1]] });
      expect(read([[25.4]], RISES, "mm")).toEqual({ rows: [[1]] });
    });

    test("of nothing, or with something that is none", () => {
      expect(read([[0], [""]], RISES)).toBe("it: is empty or 0; give a value");
      expect(read([[0], [0]], { ...RISES, sign: "any" })).toEqual({ rows: [[0], [0]] });
      expect(read([[7.5], [-1], ["x"]], RISES)).toBe("it, row 2: must be more than 0, got -1");
      const answered = read([[7.5], [-1], [""]], { ...RISES, badCells: "answer" });
      expect(answered).toEqual({ rows: [[7.5], ["it, row 2: must be more than 0, got -1"], [undefined]] });
      expect(read([[13]], { ...RISES, plausible: "rise" })).toContain("it, row 1: 13 in is over 12 in");
    });
  });

  describe("of numbers", () => {
    const NUMBERS = { kind: "numbers", sign: "not negative", says } as const;
    const numbers = (cells: GivenCells): unknown => {
      const found = readRange("it", cells, NUMBERS, { declaration: TREADFIT!, unit: "in", stairs: new Map() });
      if (isFailed(found)) return found.says;
      return (found as { rows: (Exact | undefined)[][] }).rows.map((row) => row.map((one) => one?.toNumber()));
    };

    test("keeps its shape; an empty cell takes no part, a 0 does", () =>
      expect(numbers([[1, "", 0], [null, "2.5", 3]])).toEqual([[1, undefined, 0], [undefined, 2.5, 3]]));

    test("names the row of a bad one, and the column where there are several", () => {
      expect(numbers([[1], [-1], [-2]])).toBe("it, row 2: must be 0 or more, got -1");
      expect(numbers([[1, 2], [3, "x"]])).toBe('it, row 2, column 2: must be a number, got "x"');
    });
  });
});

describe("a range is as large as it is promised and no larger", () => {
  const rows = (count: number, width = 1, cell: Given = 7): Given[][] =>
    Array.from({ length: count }, () => Array<Given>(width).fill(cell));
  const size = (cells: GivenCells, parameter: Parameter): string | undefined => tooLarge("TREADFIT", "it", cells, parameter)?.says;

  test.each<[string, Parameter, number]>([
    ["lengths", { kind: "lengths", sign: "positive", badCells: "refuse", rows: 6, says }, 6],
    ["numbers", { kind: "numbers", sign: "any", rows: 6, says }, 6],
    ["lengths, where no other is said", { kind: "lengths", sign: "positive", badCells: "refuse", says }, 20_000],
    ["numbers, where no other is said", { kind: "numbers", sign: "any", says }, 20_000],
  ])("%s: by rows, or of several columns by cells, empty ones too", (_, parameter, most) => {
    const said = most.toLocaleString("en-US");
    const more = (by: number): string => (most + by).toLocaleString("en-US");
    expect([size(rows(most), parameter), size(rows(most / 2, 2), parameter), size(rows(most, 1, ""), parameter)]).toEqual(
      Array(3).fill(undefined),
    );
    expect(size(rows(most + 1), parameter)).toBe(`it: is ${more(1)} rows; this function takes up to ${said}`);
    expect(size(rows(most + 1, 1, ""), parameter)).toBe(`it: is ${more(1)} rows; this function takes up to ${said}`);
    expect(size(rows(most / 2 + 1, 2), parameter)).toBe(`it: is ${more(2)} cells; this function takes up to ${said}`);
  });

  test("one value for each: by cells", () => {
    const parameter = { kind: "length", sign: "any", each: true, says } as const;
    expect([size(rows(20_000), parameter), size(rows(10_000, 2), parameter)]).toEqual([undefined, undefined]);
    expect(size(rows(20_001), parameter)).toBe("it: is 20,001 cells; this function takes up to 20,000");
    expect(size(rows(10_001, 2), parameter)).toBe("it: is 20,002 cells; this function takes up to 20,000");
    // One value alone is refused for being several, whatever their number.
    expect(size(rows(20_001), { kind: "length", sign: "any", says })).toBeUndefined();
  });

  test("a table: by rows that have something in them, the headings none of them", () => {
    const parameter = { kind: "table", table: treadReadings, badRows: "answer", rows: 4, says } as const;
    const data = rows(4, 3);
    const headings = ["run", "back", "front"];
    const end: Given[][] = [["", 0, null], [0, 0, 0]];
    const fitting = [data, [headings, ...data], [...data, ...end], [[null, 0, ""], headings, ...data.slice(1)]];
    expect(fitting.map((cells) => size(cells, parameter))).toEqual(Array(4).fill(undefined));
    const says5 = "it: is 5 rows; this function takes up to 4";
    const large = [rows(5, 3), [headings, ...rows(5, 3), ...end], [...rows(2, 3), ...end, [1, 1, 1]]];
    expect(large.map((cells) => size(cells, parameter))).toEqual(Array(3).fill(says5));
    // Rows of nothing are as many as there are.
    expect(size(rows(9, 3, ""), parameter)).toBeUndefined();
  });

  test("cells and a stair: no row of them is of headings", () => {
    const cells = { kind: "cells", rows: 4, says } as const;
    expect([size(rows(4, 2), cells), size([...rows(4, 2), ["", 0]], cells)]).toEqual([undefined, undefined]);
    expect(size([["run", "back"], ...rows(4, 2)], cells)).toBe("it: is 5 rows; this function takes up to 4");
    const labels = { kind: "stair", says } as const;
    expect([size(rows(1_000, 2), labels), size(rows(1_001, 2), labels)]).toEqual([
      undefined, "it: is 1,001 rows; this function takes up to 1,000",
    ]);
  });
});

describe("the unit of lengths that say theirs", () => {
  const unit = (...cells: Given[]): unknown => {
    const found = unitOfCells(cells.map((cell, place) => ({ name: `cell ${place + 1}`, cell })));
    return isFailed(found) ? found.says : found;
  };

  test("is mm where all are metric, and unknown where none is", () => {
    expect([unit("2750 mm"), unit("2.75 m", "25 cm")]).toEqual(["mm", "mm"]);
    expect(unit("10 mm", "", null, 0, "0", "0 mm", "0 in", "x", true)).toBe("mm");
    expect([unit(), unit(10), unit("10"), unit("10 in", 10), unit("", null, 0, false, "0 mm")]).toEqual(Array(5).fill(undefined));
  });

  test("is refused where metric stands beside another, by the first of each", () => {
    expect(unit("10 in", "2750 mm", "11 in")).toBe(
      'cell 1: "10 in" is in inches, but cell 2 is metric, "2750 mm"; write all lengths in one unit',
    );
    expect(unit("10 in", "2750 mm", 11, "12", "900 mm")).toBe(
      'cell 3: 11 has no unit and counts as inches, but cell 2 is metric, "2750 mm"; write all lengths in one unit, here "11 mm" if it ' +
        "is millimetres",
    );
    expect(unit("250 mm", "11")).toContain('cell 2: "11" has no unit and counts as inches, but cell 1 is metric');
  });

  test("names the row of a range, and looks at lengths alone", () => {
    const lengths = (given: Readonly<Record<string, GivenCells>>): unknown => {
      const parameters = {
        one: { kind: "length", sign: "any", says }, some: { kind: "lengths", sign: "any", badCells: "refuse", says },
        reading: { kind: "reading", sign: "any", says }, count: { kind: "count", sign: "any", says },
      } as const;
      const found = unitOfLengths({ ...RISERS!, parameters }, new Map(Object.entries(given)));
      return isFailed(found) ? found.says : found;
    };
    expect(lengths({ one: [["10 mm"]], some: [["20 mm"], ["30 mm"]], reading: [["1 cm"]], count: [[3]] })).toBe("mm");
    expect(lengths({ count: [["10 mm"]] })).toBeUndefined();
    expect(lengths({ some: [["20 mm"], [30]] })).toContain("some, row 2: 30 has no unit and counts as inches, but some, row 1 is metric");
    expect(lengths({ one: [["10 mm"]], reading: [[30]] })).toContain("reading: 30 has no unit and counts as inches, but one is metric");
  });
});
