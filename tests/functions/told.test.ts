import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";
import type { Declaration } from "../../src/functions/declare";
import { toldAnswer } from "../../src/functions/told-answer";
import { toldCall } from "../../src/functions/told-call";
import { toldCell, toldRead } from "../../src/functions/told-value";
import { Exact } from "../../src/solver/length/exact";
import { lengthOf } from "../../src/solver/length/length";

/** What Explain says a call was given and what its answer is, in words with their units. 1 in is 25.4 mm by definition. */

const declared = (id: string): Declaration => {
  const found = catalogue.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

describe("a value that was read", () => {
  test.each<[Parameters<typeof toldRead>, string]>([
    [[lengthOf(7.5, "in"), "length", "in"], '7 1/2"'],
    [[lengthOf(7.5, "in"), "length", undefined], '7 1/2"'],
    [[lengthOf(7.5, "in"), "length", "mm"], "190.5 mm"],
    [[7.5, "reading", "in"], '7 1/2"'],
    [[7.5, "reading", undefined], '7 1/2"'],
    [[7.5, "reading", "mm"], "7.5 mm"],
    [[36.869898, "angle", "in"], "36.8699 deg"],
    [[new Exact("0.0825"), "rate", "in"], "8.25 %"],
    [[new Exact("1234567.885"), "money", "in"], "1,234,567.89"],
    [[new Exact("-12.5"), "money", "in"], "-12.50"],
    [[new Exact("-1000"), "money", "in"], "-1,000.00"],
    // Less than half a cent is no debt.
    [[new Exact("-0.004"), "money", "in"], "0.00"],
    [[new Exact("-0"), "money", "in"], "0.00"],
    // 31 + 28 + 3 days after 2026-01-01, which is day 46,023.
    [[{ day: 46_085, given: 46_085 }, "date", "in"], "2026-03-04"],
    [[true, "flag", "in"], "TRUE"],
    [[14, "count", "in"], "14"],
    [[0.1 + 0.2, "number", "in"], "0.3"],
    [["half left", "choice", "in"], "half left"],
    [["mm", "unit", "mm"], "mm"],
  ])("%j: %s", (given, said) => expect(toldRead(...given)).toBe(said));
});

describe("a cell of a result", () => {
  test.each<[Parameters<typeof toldCell>, string]>([
    [[7.5, "length", "in", ""], '7 1/2"'],
    [[7.5, "reading", undefined, ""], '7 1/2"'],
    [[190.5, "reading", "mm", ""], "190.5 mm"],
    [[36.869898, "angle", "in", ""], "36.8699 deg"],
    [[0.0825, "rate", "in", ""], "8.25 %"],
    [[1320, "money", "in", ""], "1,320.00"],
    [[46_085, "date", "in", ""], "2026-03-04"],
    [[14, "count", "in", ""], "14"],
    // A value has the unit that stands beside it, whatever the call's is.
    [[7.5, "value", "mm", "in"], '7 1/2"'],
    [[190.5, "value", "in", "mm"], "190.5 mm"],
    [[35, "value", "in", "deg"], "35 deg"],
    [[13, "value", "in", ""], "13"],
    [[false, "value", "in", "in"], "FALSE"],
    [["not given", "length", "in", "in"], "not given"],
  ])("%j: %s", (given, said) => expect(toldCell(...given)).toBe(said));
});

const told = (id: string, ...passed: readonly unknown[]) => {
  const call = toldCall(declared(id), passed);
  if (isFailed(call)) throw new Error(call.says);
  return call;
};
const value = (id: string, name: string, ...passed: readonly unknown[]): string | undefined =>
  told(id, ...passed).arguments.find((one) => one.name === name)?.value;

describe("what a call was given", () => {
  test("each argument in words, which are left out, and the unit", () => {
    // An empty cell, an empty text and nothing at all are all left out.
    for (const none of [undefined, null, "", [[""]]]) {
      const call = told("RISERS", 108.5, none);
      expect(call.unit).toBe("in");
      expect(call.arguments.map(({ name, value: said, isLeftOut }) => [name, said, isLeftOut])).toEqual([
        ["totalRise", '108 1/2"', false], ["maxRise", '7 3/4"', true], ["unit", "in", true],
      ]);
      expect([...call.figures]).toEqual([["total rise", '108 1/2"'], ["max rise", '7 3/4"']]);
    }
    expect(told("RISERS", "2781 mm", "7 in", "mm").arguments.map(({ value: said, isLeftOut }) => [said, isLeftOut])).toEqual([
      ["2781 mm", false], ["177.8 mm", false], ["mm", false],
    ]);
    expect(told("TAPE", 7.5).unit).toBeUndefined();
  });

  test("what happens where nothing stands in is said, and only there", () => {
    expect(value("UNIFORMITY", "tolerance", [[7.5]])).toContain("Left out: 3/8 in (9.525 mm), that of the IRC");
    expect(value("UNIFORMITY", "tolerance", [[7.5]], 0.375)).toBe('3/8"');
  });

  test("a call that cannot be read is its own error", () =>
    expect(toldCall(declared("RISERS"), [2781])).toMatchObject({ failed: "#VALUE!", says: expect.stringContaining("over 400 in") }));

  test("up to eight lengths or numbers are named, more are counted, and one that is none is in doubt", () => {
    const rises = (count: number): number[][] => Array.from({ length: count }, () => [7.5]);
    expect(value("UNIFORMITY", "values", [[7.375], [7.5], ["7 3/4"]])).toBe('7 3/8", 7 1/2", 7 3/4"');
    expect(value("UNIFORMITY", "values", rises(8))).toBe(Array(8).fill('7 1/2"').join(", "));
    expect(value("UNIFORMITY", "values", rises(9))).toBe("9 lengths");
    expect(value("FINISHED", "roughRises", [[7.5], ["x"], [7.5]], 1)).toBe('7 1/2", ?, 7 1/2"');
    expect(value("ALLOCATE", "weights", 12.5, [[50], [60], [90.5]])).toBe("50, 60, 90.5");
    expect(value("ALLOCATE", "weights", 12.5, rises(9))).toBe("9 numbers");
    expect(value("ALLOCATE", "amount", -12.5, [[1]])).toBe("-12.50");
  });

  test("a table by its rows, cells by their size", () => {
    const pieces = (count: number): unknown[][] => [["length"], ...Array.from({ length: count }, () => [36])];
    const stock = [["length", "price"], [96, 20]];
    expect(value("CUTS", "pieces", pieces(1), stock)).toBe("1 row");
    expect(value("CUTS", "pieces", pieces(2), stock)).toBe("2 rows");
    expect(value("PICK", "table", [["a", 1], ["b", 2], ["c", 3]], "a")).toBe("3 x 2 cells");
  });

  test("a stair by up to eight labels, each of which that is a figure may stand in a sum", () => {
    const labels = [
      ["total rise", 108.5], ["risers", 14], ["run", 10], ["width", 36], ["headroom", 80], ["nosing", 1.25], ["top tread", "flush"],
      ["tread thickness", 1],
    ];
    const call = told("LAYOUT", labels);
    const said = call.arguments[0]?.value ?? "";
    expect(said).toContain('total rise 108 1/2"');
    expect(said.split(", ")).toHaveLength(8);
    expect([...call.figures.keys()].sort()).toEqual(
      ["headroom", "nosing", "risers", "run", "total rise", "tread thickness", "width"].sort(),
    );
    expect(call.figures.get("risers")).toBe("14");
    expect(value("LAYOUT", "stair", [...labels, ["floor thickness", 11]])).toBe("9 labels");
    // Of a stair left out there are no labels.
    expect([...told("LAYOUT", [["unit", "mm"], ["total rise", 2700], ["run", 250]]).figures]).toEqual([
      ["total rise", "2700 mm"], ["run", "250 mm"],
    ]);
  });
});

describe("what an answer is", () => {
  const asked = (id: string, rows: readonly (readonly (string | number | boolean | null)[])[], row: number, column: number) =>
    toldAnswer(declared(id), { rows, row, column }, "in");

  test("one value has its kind, and no name", () => {
    const found = asked("RISERS", [[14]], 0, 0);
    expect(found).toMatchObject({ value: "14", is: "", name: undefined, isBare: false });
    expect([found.means, found.figures.size, found.texts.size]).toEqual([[{ name: "Answer", says: "Number of risers." }], 0, 0]);
    expect(asked("FINISHED", [[7.5]], 0, 0).value).toBe('7 1/2"');
    expect(asked("ALLOCATE", [[1234.5]], 0, 0).value).toBe("1,234.50");
    expect(asked("PICK", [[5]], 0, 0).value).toBe("5");
    expect(asked("RISERS", [[null]], 0, 0).value).toBe("");
    expect(asked("RISERS", [], 0, 0).value).toBe("");
  });

  // The spread of 7 3/8 to 7 3/4 is 3/8.
  const uniformity = [
    ["label", "value", "where"], ["largest", 7.75, "3"], ["spread", 0.375, ""], ["spread", 9.5, ""], ["verdict", "pass", null],
  ];

  test("a value by its label, with the other labels that are figures and stand there once", () => {
    const found = asked("UNIFORMITY", uniformity, 1, 1);
    expect(found).toMatchObject({ value: "7.75", is: "largest, value", name: "largest", isBare: true });
    expect([...found.figures]).toEqual([["largest", "7.75"]]);
    expect([...found.texts]).toEqual([["label", "largest"], ["value", "7.75"], ["where", "3"]]);
    expect(found.means.map(({ name }) => name)).toEqual(['Column "value"']);
  });

  test("another column of that row, its name, a word and a heading are no figure without a unit", () => {
    expect(asked("UNIFORMITY", uniformity, 1, 2)).toMatchObject({ value: "3", is: "largest, where", name: "where", isBare: false });
    expect(asked("UNIFORMITY", uniformity, 1, 0)).toMatchObject({ value: "largest", is: "label, the name of its row", isBare: false });
    expect(asked("UNIFORMITY", uniformity, 4, 1)).toMatchObject({ value: "pass", is: "verdict, value", isBare: false });
    expect(asked("UNIFORMITY", uniformity, 4, 2)).toMatchObject({ value: "", isBare: false });
    const heading = asked("UNIFORMITY", uniformity, 0, 1);
    expect(heading).toMatchObject({ value: "value", is: "the heading of its column", name: "", isBare: false });
    expect([heading.figures.size, heading.texts.size]).toEqual([0, 0]);
    // Without headings the first row is one of the others.
    expect(asked("UNIFORMITY", uniformity.slice(1), 0, 1)).toMatchObject({ value: "7.75", name: "largest" });
  });

  test("a length stands in the unit beside it, and its label is explained", () => {
    const layout = [
      ["label", "value", "unit", "assumed"], ["unit rise", 190.5, "mm", ""], ["pitch", 35, "deg", ""], ["treads", 13, "", ""],
    ];
    const found = asked("LAYOUT", layout, 1, 1);
    expect(found).toMatchObject({ value: "190.5 mm", is: "unit rise, value", name: "unit rise", isBare: false });
    expect([...found.figures]).toEqual([["unit rise", "190.5 mm"], ["pitch", "35 deg"], ["treads", "13"]]);
    expect(found.means.map(({ name }) => name)).toEqual(['Label "unit rise"', 'Column "value"']);
    expect(asked("LAYOUT", layout, 2, 1).value).toBe("35 deg");
    expect(asked("LAYOUT", layout, 1, 3).value).toBe("");
  });

  const rowOf = (id: string, cells: Readonly<Record<string, string | number>>) => {
    const columns = Object.keys((declared(id).result as { readonly columns: object }).columns);
    return { columns, row: columns.map((column) => cells[column] ?? null) };
  };

  test("a row of steps is named by its first column, with its own figures", () => {
    const { columns, row } = rowOf("TREADFIT", { step: 2, back: 36.5 });
    const found = asked("TREADFIT", [row], 0, columns.indexOf("back"));
    expect(found).toMatchObject({ value: '36 1/2"', is: "step 2, back", name: "back" });
    expect([found.figures.get("back"), found.figures.get("front"), found.figures.has("note")]).toEqual(['36 1/2"', "", false]);
  });

  test("the unit of its row goes before that of the call", () => {
    const { columns, row } = rowOf("MARKS", { step: 2, number: 1, distance: 927.1, unit: "mm" });
    expect(asked("MARKS", [row], 0, columns.indexOf("distance")).value).toBe("927.1 mm");
    const none = rowOf("MARKS", { step: 2, number: 1, distance: 36.5 }).row;
    expect(asked("MARKS", [none], 0, columns.indexOf("distance")).value).toBe('36 1/2"');
  });

  test("a result of one row has no name for it, and a note that is left off is no column of it", () => {
    expect(asked("LIMIT", [[7.75]], 0, 0)).toMatchObject({ value: "7.75", is: "limit", name: "limit", isBare: true });
    const both = asked("LIMIT", [[7.75, "newest edition"]], 0, 1);
    expect(both).toMatchObject({ value: "newest edition", is: "note", isBare: false });
    expect([...both.texts.keys()]).toEqual(["limit", "note"]);
    expect([...asked("LIMIT", [[7.75]], 0, 0).texts.keys()]).toEqual(["limit"]);
  });
});
