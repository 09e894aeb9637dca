import type { Given } from "../../src/functions/cells";
import { isFailed } from "../../src/functions/cells";
import { type Column, table } from "../../src/functions/columns";
import { headingPlaces, isHeadingRow, noQuantity, type OwnHeadings } from "../../src/functions/headings";
import { readColumn, readTable } from "../../src/functions/read-table";
import { Exact } from "../../src/solver/length/exact";
import type { Unit } from "../../src/solver/length/length";

/** Cells of each kind of column: what an empty one and a 0 stand for, and how rows and headings are told apart. 1 in is 25.4 mm. */

const says = "What it is.";
const plain = (value: unknown): unknown => (isFailed(value) ? value.says : value instanceof Exact ? value.toNumber() : value);

describe("a cell that is empty or 0", () => {
  const read = (cell: Given, column: Column, unit: Unit | undefined = "in"): unknown => plain(readColumn("it", cell, column, unit));
  const EMPTY: readonly Given[] = [null, "", " ", 0];

  test.each<[string, Column, unknown]>([
    ["0 where a length may be 0", { kind: "length", sign: "not negative", says }, 0],
    ["0 where a reading may be 0", { kind: "reading", sign: "any", says }, 0],
    ["0 where a count may be 0", { kind: "count", sign: "not negative", says }, 0],
    ["0 where an amount may be 0, required or not", { kind: "money", sign: "any", required: true, says }, 0],
    ["nothing where it is more than 0", { kind: "length", sign: "positive", says }, undefined],
    ["nothing where 0 is said not to be given", { kind: "reading", sign: "any", zero: "not given", says }, undefined],
    [
      "nothing where 0 is said not to be given, required or not",
      { kind: "money", sign: "any", zero: "not given", required: true, says }, undefined,
    ],
    ["nothing of a text", { kind: "text", says }, undefined],
    ["nothing of a label", { kind: "label", says }, undefined],
    ["nothing of an angle", { kind: "angle", says }, undefined],
    ["nothing of a rate", { kind: "rate", sign: "not negative", of: "the cost", says }, 0],
    ["a fault where it must be more than 0", { kind: "length", sign: "positive", required: true, says }, "it: is empty or 0; give a value"],
    ["a fault of a label that must be given", { kind: "label", required: true, says }, "it: is empty or 0; give a value"],
    ["a fault of a date that must be given", { kind: "date", required: true, says }, "it: is empty or 0; give a value"],
    ["its default", { kind: "count", sign: "positive", default: 1, says }, 1],
    ["its default, of a flag", { kind: "flag", default: false, says }, false],
    ["its default, of a text", { kind: "text", default: "usual", required: true, says }, "usual"],
    ["its default where 0 is said not to be given", { kind: "number", sign: "any", zero: "not given", default: 2, says }, 2],
    // 1/2 in is 12.7 mm, and the solver counts lengths in mm.
    ["its default, a length in inches", { kind: "length", sign: "positive", default: "1/2", says }, 12.7],
  ])("is %s", (_, column, expected) => expect(EMPTY.map((cell) => read(cell, column))).toEqual(Array(4).fill(expected)));

  test("a word stands for its figure; for 0 where that can be meant, else for nothing taken", () => {
    const offset = { kind: "reading", sign: "any", zero: "not given", words: { square: 0 }, says } as const;
    expect([read("square", offset), read("SQUARE", offset), read(0, offset), read(0.5, offset)]).toEqual([0, 0, undefined, 0.5]);
    const diagonal = { kind: "reading", sign: "positive", words: { "not taken": 0 }, says } as const;
    expect([read("not taken", diagonal), read("Not-Taken", diagonal), read("taken", diagonal)]).toEqual([
      undefined, undefined, expect.stringContaining("which is not a length"),
    ]);
    const available = { kind: "count", sign: "not negative", words: { any: Infinity }, says } as const;
    expect([read("any", available), read("", available), read(3, available)]).toEqual([Infinity, 0, 3]);
    const price = { kind: "money", sign: "any", zero: "not given", words: { included: 0 }, says } as const;
    expect(readColumn("it", "included", price, "in")).toEqual(new Exact(0));
    expect(readColumn("it", "none", { kind: "length", sign: "not negative", zero: "not given", words: { none: 0 }, says }, "in")).toEqual(
      new Exact(0),
    );
    expect(read("word", { kind: "text", says })).toBe("word");
  });

  test("an amount or a number of 0 in words of its own counts as the 0 it is", () => {
    const price = { kind: "money", sign: "any", zero: "not given", says } as const;
    const hours = { kind: "number", sign: "any", zero: "not given", says } as const;
    expect([read("$0.00", price), read("0", price), read("$0.01", price), read("0.0", hours), read("0.1", hours)]).toEqual([
      undefined, undefined, 0.01, undefined, 0.1,
    ]);
    expect([read("$0.00", { kind: "money", sign: "any", says }), read("0", { kind: "number", sign: "any", says })]).toEqual([0, 0]);
    expect(read("25%", { kind: "rate", sign: "not negative", of: "the cost", says })).toBe(0.25);
    expect(read("x", { kind: "rate", sign: "not negative", of: "the cost", says })).toContain("must be a rate");
  });
});

const NONE: OwnHeadings = { homeOf: () => undefined, isOfResult: () => false };
/** Headings of ours elsewhere: price belongs to a table, gross to a result. */
const OURS: OwnHeadings = {
  homeOf: (heading) => (["price", "gross"].includes(heading) ? { name: "prices of EXTEND", isOneOfSeveral: false } : undefined),
  isOfResult: (heading, id) => heading === "gross" && id === "ORDER",
};

const goods = table("goods", "Goods.", {
  item: { kind: "label", required: true, says },
  quantity: { kind: "count", sign: "positive", says },
  depth: { kind: "length", sign: "not negative", says },
  remark: { kind: "text", onlyHeaded: true, says },
});

type Read = readonly Readonly<Record<string, unknown>>[];
const rowsOf = (cells: readonly (readonly Given[])[], from = goods, own = NONE): Read | string => {
  const found = readTable("goods", from, cells, "in", own);
  return isFailed(found) ? found.says : found.map((row) => Object.fromEntries(Object.entries(row).map(([key, one]) => [key, plain(one)])));
};

describe("rows of a table", () => {
  test("with headings, in any order; a column that is not there is as an empty one, and its row is where it stands", () => {
    expect(rowsOf([["", ""], ["quantity", "item"], [2, "tread"], [0, 0], [3, "riser"]])).toEqual([
      { row: 3, item: "tread", quantity: 2, depth: 0 }, { row: 5, item: "riser", quantity: 3, depth: 0 },
    ]);
    expect(rowsOf([["item", "remark"], ["tread", "oak"]])).toEqual([{ row: 2, item: "tread", depth: 0, remark: "oak" }]);
  });

  test("without them in the order of the table, columns that are only read under a heading left out", () => {
    expect(rowsOf([["tread", 2, 1], ["riser", 3, ""]])).toEqual([
      { row: 1, item: "tread", quantity: 2, depth: 25.4 }, { row: 2, item: "riser", quantity: 3, depth: 0 },
    ]);
    expect(rowsOf([["tread", 2, 1, "oak"]])).toEqual([{ row: 1, item: "tread", quantity: 2, depth: 25.4 }]);
    expect(rowsOf([["tread"]])).toEqual([{ row: 1, item: "tread", depth: 0 }]);
    // A word for how many is no heading there, and no number.
    expect(rowsOf([["tread", "pcs"], ["riser", 2]])).toMatchObject([
      { row: 1, bad: 'quantity in row 1 (tread): must be a number, got "pcs"' }, { row: 2, quantity: 2 },
    ]);
  });

  test("how many columns there are is counted up to the last that holds anything", () => {
    const asking = { ...goods, ambiguous: (columns: number) => (columns === 2 ? "is it two?" : undefined) };
    const two = "goods: is it two? give headings";
    expect([rowsOf([["tread", 2]], asking), rowsOf([["tread", 2, "", 0]], asking), rowsOf([["tread"], ["riser", 3]], asking)]).toEqual([
      two, two, two,
    ]);
    expect(rowsOf([["riser", 3], ["tread"]], asking)).toBe(two);
    for (const cells of [[["tread", 2, 1]], [["tread", 2], ["riser", 3, 1]], [["tread"]], [["item", "quantity"], ["tread", 2]]])
      expect(rowsOf(cells, asking)).toBeInstanceOf(Array);
  });

  test("of nothing, or without what is required", () => {
    const nothing = "goods: has no rows; give a table with item";
    expect([rowsOf([]), rowsOf([[0, ""], [null, 0]]), rowsOf([["item", "quantity"]]), rowsOf([["item"], ["Items"]])]).toEqual([
      nothing, nothing, nothing, nothing,
    ]);
    expect(rowsOf([["quantity", "depth"], [2, 1]])).toBe('goods: heading "item" is missing; found quantity, depth');
    const wide = table("wide", "Wide.", { one: { kind: "label", says }, two: { kind: "label", required: true, says } });
    const found = (cells: readonly (readonly Given[])[]): unknown => {
      const read = readTable("wide", wide, cells, "in", NONE);
      return isFailed(read) ? read.says : read.length;
    };
    expect(found([[1]])).toBe('wide: heading "two" is missing; found 1 column without headings');
    expect(found([[1, 2]])).toBe(1);
    const three = table("wide", "Wide.", {
      one: { kind: "label", says }, two: { kind: "label", says }, six: { kind: "label", required: true, says },
    });
    const read = readTable("wide", three, [[1, 2]], "in", NONE);
    expect(isFailed(read) && read.says).toBe('wide: heading "six" is missing; found 2 columns without headings');
  });

  test("a bad one says its first fault by its step, its item or its place, and keeps what was read", () => {
    const bad = (headings: readonly string[], row: readonly Given[]): unknown => {
      const steps = table("steps", "Steps.", {
        step: { kind: "label", says }, label: { kind: "label", says }, item: { kind: "label", says },
        run: { kind: "count", sign: "positive", says }, rise: { kind: "count", sign: "positive", says },
      });
      const read = readTable("steps", steps, [headings, row], "in", NONE);
      const [first] = isFailed(read) ? [] : read;
      return first !== undefined && "bad" in first ? [first.bad.says, first.label, first.row] : read;
    };
    const must = "must be a number, got";
    expect(bad(["step", "run", "rise"], [3, "x", "y"])).toEqual([`run in step 3: ${must} "x"`, 3, 2]);
    expect(bad(["label", "run"], ["tread", "x"])).toEqual([`run in row 2 (tread): ${must} "x"`, "tread", 2]);
    expect(bad(["item", "run"], ["tread", "x"])).toEqual([`run in row 2 (tread): ${must} "x"`, "tread", 2]);
    expect(bad(["step", "item", "run"], [0, "tread", "x"])).toEqual([`run in row 2 (tread): ${must} "x"`, "tread", 2]);
    expect(bad(["step", "item", "run"], [2, "tread", "x"])).toEqual([`run in step 2: ${must} "x"`, 2, 2]);
    expect(bad(["run"], ["x"])).toEqual([`run in row 2: ${must} "x"`, "", 2]);
    expect(bad(["step", "run"], [true, "x"])).toEqual([`run in row 2: ${must} "x"`, "", 2]);
    expect(bad(["step", "run"], [{ failed: "#N/A", says: "a: b" }, 7])).toEqual(["a: b", "", 2]);
    const long = "y".repeat(90);
    expect(bad(["item", "run"], [long, "x"])).toEqual([`run in row 2 (${"y".repeat(80)}…): ${must} "x"`, long, 2]);
  });
});

describe("rows that are about other rows", () => {
  const items = (from: typeof goods, ...names: string[]): unknown => {
    const read = rowsOf([["item", "quantity"], ...names.map((name) => [name, 1])], from);
    return typeof read === "string" ? read : read.map(({ item }) => item);
  };

  test("are passed over where a table may be an order or has totals, and are goods elsewhere", () => {
    const names = ["tread", "Total", "saving", "SUBTOTAL", "Grand total", "total treads"];
    expect(items(goods, ...names)).toEqual(names);
    expect(items({ ...goods, takes: ["ORDER"] }, ...names)).toEqual(["tread", "total treads"]);
    expect(items({ ...goods, takes: ["BUY"] }, ...names)).toEqual(names);
    expect(items({ ...goods, hasTotals: true }, ...names)).toEqual(["tread", "total treads"]);
    expect(items({ ...goods, hasTotals: true }, "total")).toBe("goods: has no rows; give a table with item");
  });

  test("stand under label too where the table has totals", () => {
    const labelled = (further: object) => {
      const columns = { label: { kind: "label", says }, length: { kind: "count", sign: "positive", says } } as const;
      const boards = { ...table("boards", "Boards.", columns), ...further };
      const read = readTable("boards", boards, [["label", "length"], ["a", 1], ["total", 2], [5, 3]], "in", NONE);
      return isFailed(read) ? read.says : read.map((row) => ("label" in row ? row.label : "bad"));
    };
    expect(labelled({ hasTotals: true })).toEqual(["a", 5]);
    expect(labelled({ takes: ["ORDER"] })).toEqual(["a", "total", 5]);
  });
});

describe("a first row of headings", () => {
  const places = (first: readonly Given[], from: Parameters<typeof headingPlaces>[2] = goods, own = OURS): unknown => {
    const found = headingPlaces("goods", first, from, own);
    return found === undefined ? "none" : isFailed(found) ? found.says : Object.fromEntries(found);
  };

  test("says where its columns stand, whatever else is there", () => {
    expect(places(["Items", "", null, "QUANTITY", "my own"])).toEqual({ item: 0, quantity: 3 });
    expect(places([2026, "item", true])).toEqual({ item: 1 });
    expect(places(["item", "item"])).toBe('goods: heading "item" appears twice; keep one');
    expect(places(["tread", 2])).toBe("none");
    expect(places(["tread", "oak"])).toBe("none");
    expect(places(["tread"])).toBe("none");
  });

  test("of another table is refused by name, a result that is taken and a remark of the shop's are passed over", () => {
    const refused = 'goods: heading "price" is not read here; it belongs in prices of EXTEND; rename the column or leave it out';
    expect(places(["item", "price"])).toBe(refused);
    expect(places(["price", "item"])).toBe(refused);
    expect(places(["item", "gross"])).toContain('heading "gross" is not read here');
    expect(places(["item", "gross"], { ...goods, takes: ["ORDER"] })).toEqual({ item: 0 });
    expect(places(["item", "gross"], { ...goods, takes: ["BUY"] })).toContain('heading "gross" is not read here');
    const all: OwnHeadings = { homeOf: () => ({ name: "moves", isOneOfSeveral: true }), isOfResult: () => false };
    expect(places(["item", "Note", "date", "Job", "invoice"], goods, all)).toEqual({ item: 0 });
    expect(places(["item", "price"], goods, all)).toContain("it belongs in moves and others;");
    // Nothing but another's headings is another table; beside a name it is a row of data.
    for (const first of [["price"], ["price", "gross"]]) expect(places(first)).toContain('heading "price" is not read here');
    expect([places(["price", "oak"]), places(["price", 7])]).toEqual(["none", "none"]);
    // The first of several is named.
    expect(places(["item", "gross", "price"])).toContain('heading "gross"');
  });

  test("misspelt is asked about, but for headings that are another's and columns that stand there already", () => {
    expect(places(["item", "dpth"])).toBe('goods: heading "dpth" is not known; did you mean "depth"?');
    // Of a word of four letters one may differ, and two that changed places are two.
    expect(places(["itm", "dpth"])).toBe('goods: heading "itm" is not known; did you mean "item"?');
    expect(places(["itme", "dpth"])).toBe('goods: heading "dpth" is not known; did you mean "depth"?');
    expect(places(["item", "depth", "dpth"])).toEqual({ item: 0, depth: 1 });
    const known: OwnHeadings = {
      ...OURS, homeOf: (one) => (one === "dpth" ? { name: "x", isOneOfSeveral: false } : undefined),
    };
    expect(places(["item", "dpth"], goods, known)).toContain('heading "dpth" is not read here; it belongs in x; nearest here is "depth"');
  });

  test("a plain word for how many is the quantity where the table has one and no heading says it", () => {
    expect(places(["item", "Pcs"])).toEqual({ item: 0, quantity: 1 });
    expect(places(["No.", "item"])).toEqual({ item: 1, quantity: 0 });
    expect(places(["No.", "item", "quantity"])).toEqual({ item: 1, quantity: 2 });
    expect(places(["No.", "item", "Pcs"])).toBe('goods: headings "No." and "Pcs" may each be the quantity; write "quantity" over how many');
    expect(places(["Pcs", "oak"])).toBe("none");
    const { quantity: _, ...columns } = goods.columns;
    expect(places(["item", "Pcs"], { ...goods, columns })).toEqual({ item: 0 });
    const stock = { ...goods, columns: { ...columns, available: { kind: "count", sign: "positive", says } as const } };
    for (const word of ["Pcs", "Qnty"])
      expect(places(["item", word], stock)).toBe(`goods: heading "${word}" is not known; did you mean "available"?`);
    expect(places(["item", "available", "Pcs"], stock)).toEqual({ item: 0, available: 1 });
    // Of a result that is taken the word is that result's.
    const counts: OwnHeadings = { homeOf: () => undefined, isOfResult: (one, id) => one === "count" && id === "BUY" };
    expect(places(["item", "count"], { ...goods, takes: ["BUY"] }, counts)).toEqual({ item: 0 });
    expect(places(["item", "count"], { ...goods, takes: ["ORDER"] }, counts)).toEqual({ item: 0, quantity: 1 });
  });
});

describe("a row that says the headings again", () => {
  const places = new Map([["item", 0], ["quantity", 2]]);
  test.each<[readonly Given[], boolean]>([
    [["item", "my own", "quantity"], true],
    [["Items", 7, "Qty"], true],
    [["item", "", "Pcs"], true],
    [["item", "", ""], true],
    [["", "", "quantity"], true],
    [["item"], true],
    [["", "", ""], false],
    [["", "item", null], false],
    [["item", "", 3], false],
    [["item", "", "item"], false],
    [["tread", "", "quantity"], false],
    [["Pcs", "", "quantity"], false],
  ])("%j: %p", (row, is) => expect(isHeadingRow(row, places, goods.columns)).toBe(is));
});

describe("a column under a plain word that may be no quantity", () => {
  const why = (heading: Given, ...cells: Given[]): unknown => {
    const rows = cells.map((cell, place) => ({ row: ["tread", cell], number: place + 2 }));
    return noQuantity("goods", ["item", heading], rows, new Map([["quantity", 1]]))?.says;
  };

  test("holds names, or numbers its rows", () => {
    expect(why("Piece", 3, "tread", "riser")).toBe(
      'goods: heading "Piece" may not be the quantity: row 3 has "tread"; write "quantity" over how many, or leave the column out',
    );
    const numbered =
      'goods: heading "No." may not be the quantity: its rows are numbered 1, 2, 3 and so on; write "quantity" over how many, or ' +
      "leave the column out";
    expect([why("No.", 1, 2), why("No.", 1, "2", 3)]).toEqual([numbered, numbered]);
  });

  test("and may be one where it does not, or where its heading says so", () => {
    expect([why("No.", 1), why("No.", 1, 3), why("No.", 2, 1), why("No.", 0, 1), why("No.", 1, 2, ""), why("No.", 1, "2 pcs")]).toEqual(
      Array(6).fill(undefined),
    );
    expect([why("quantity", 1, 2), why("quantity", "tread"), why(null, "tread"), why(7, "tread"), why("Pcs", "")]).toEqual(
      Array(5).fill(undefined),
    );
    expect(noQuantity("goods", ["item"], [{ row: ["tread"], number: 2 }], new Map())).toBeUndefined();
  });
});
