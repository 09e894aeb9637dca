import { type Given, type GivenCells, isFailed } from "../../src/functions/cells";
import { namePlace } from "../../src/functions/name-place";
import { pickCell } from "../../src/functions/pick-cell";
import { totalCells } from "../../src/functions/total-cells";
import { Exact } from "../../src/solver/length/exact";

/** Which rows of a table take part in a sum or a count, and by which name each is known. Sums are by hand: small whole numbers. */

const ERROR = { failed: "#N/A", says: "the cell given holds #N/A" } as const;

/** A sum or a count; a problem as its code with its facts, an error as its sentence. */
const total = (cells: GivenCells, heading = "cost", of = ""): unknown => {
  const found = totalCells(cells, heading, of);
  if (isFailed(found)) return found.says;
  return found instanceof Exact ? found.toNumber() : found;
};
const row = (...cells: Given[]): Given[] => cells;

describe("the rows of a sum", () => {
  test("begin below the first row that holds anything, and have a text in it", () => {
    expect(total([row("", 0, null), row("item", "cost"), row("a", 1), row("b", 2)])).toBe(3);
    expect(total([row(0, ""), row(7, 8)])).toEqual(expect.objectContaining({ problem: "no-headings" }));
    expect(total([row("", 0)])).toEqual(expect.objectContaining({ problem: "no-headings" }));
    expect(total([row(true, "cost"), row("a", 1)])).toBe(1);
    expect(total([row("item", "cost"), row("a", 1)], "price")).toContain('heading: "price" is not known; there are "item", "cost"');
  });

  test("are none that are blank or say the headings again", () => {
    const blank = [row("", 0), row("Item", "COST"), row("item", ""), row("", "cost")];
    expect(total([row("item", "cost"), row("a", 1), ...blank, row("b", 2)])).toBe(3);
    // A row with one word more than the headings is a row.
    expect(total([row("item", "cost", ""), row("a", 1, ""), row("item", "cost", "x")])).toContain("cost in row 3 (item): must be a number");
    expect(total([row("item", "cost"), row("a", 1), row("cost", "item")])).toContain("cost in row 3 (cost): must be a number");
  });

  test("are known by their step, label or item, wherever it stands; else by the first cell, or by their place", () => {
    const bad = (headings: readonly string[], ...cells: Given[]): unknown => total([headings, cells]);
    expect(bad(["item", "cost"], "a", "x")).toContain("cost in row 2 (a): ");
    expect(bad(["grade", "Items", "cost"], "select", "a", "x")).toContain("cost in row 2 (a): ");
    expect(bad(["grade", "Label", "cost"], "select", "a", "x")).toContain("cost in row 2 (a): ");
    expect(bad(["grade", "steps", "cost"], "select", 3, "x")).toContain("cost in row 2 (3): ");
    expect(bad(["grade", "cost"], "select", "x")).toContain("cost in row 2 (select): ");
    expect(bad(["item", "cost"], "", "x")).toContain("cost in row 2: ");
    expect(bad(["item", "cost"], 0, "x")).toContain("cost in row 2: ");
    expect(bad(["item", "cost"], ERROR, "x")).toContain("cost in row 2: ");
    expect(bad(["item", "grade", "cost"], "", "select", "x")).toContain("cost in row 2: ");
    expect(bad(["item", "cost"], "y".repeat(81), "x")).toContain(`cost in row 2 (${"y".repeat(80)}…): `);
    // A sum without a name in its place is known by what it is called.
    expect(bad(["item", "grade", "cost"], "", "Subtotal", 5)).toEqual(
      expect.objectContaining({ problem: "rows-do-not-add", details: expect.objectContaining({ row: "row 2 (Subtotal)" }) }),
    );
  });

  test("that are sums are told by their words, under whatever heading but a note", () => {
    const rows = (...last: Given[]): GivenCells => [row("item", "note", "cost"), row("a", "", 1), row("b", "", 2), last, row("c", "", 4)];
    const names = ["total", "Sum", "SUBTOTAL", "sub total", "Sub-Total", "sub - total", "treads subtotal", "Total: treads", "treads sum"];
    for (const name of names)
      expect([name, total(rows(name, "", 3))]).toEqual([name, 7]);
    for (const name of ["total", "grand total", "Grand-Total", "grand total of treads"])
      expect([name, total([...rows("x", "", 3), row(name, "", 10)])]).toEqual([name, 10]);
    // Goods with the letters in them, the word in their midst, or the word in a note beside them.
    const goods = [row("totally clear", "", 3), row("summit", "", 3), row("one total load", "", 3), row("x", "total", 3)];
    for (const cells of [...goods, row("x", "Notes: total", 3)])
      expect(total(rows(...cells))).toBe(10);
    // A column called total is no sum of its rows.
    expect(total([row("item", "total"), row("a", 1), row("b", 2)], "total")).toBe(3);
    expect(total([row("item", "cost", "kind"), row("a", 1, ""), row("b", 1, "total"), row("c", 2, "")])).toBe(3);
  });

  test("hold numbers; included is 0, empty is missing, a word or an error is named", () => {
    expect(total([row("item", "cost"), row("a", 1), row("b", "Included"), row("c", "$2"), row("d", 0), row("e", -1)])).toBe(2);
    expect(total([row("item", "cost"), row("a", 1), row("b", "")])).toEqual(
      expect.objectContaining({ problem: "missing-in-row", details: expect.objectContaining({ row: "row 3 (b)" }) }),
    );
    expect(total([row("item", "cost"), row("a", 1), row("b")])).toEqual(expect.objectContaining({ problem: "missing-in-row" }));
    expect(total([row("item", "cost"), row("a", 1), row("b", ERROR)])).toBe(
      "cost in row 3 (b): the cell given holds #N/A; put that cell right first",
    );
    // A subtotal that stands empty says nothing.
    expect(total([row("item", "cost"), row("a", 1), row("subtotal", ""), row("b", 2)])).toBe(3);
  });
});

describe("the units of a sum", () => {
  const units = (heading: string, ...cells: (readonly [Given, Given])[]): unknown => {
    const rows = cells.map(([unit, value], place) => row(unit, `good ${place + 1}`, value));
    const found = total([row("unit", "item", heading), ...rows], heading);
    return typeof found === "object" && found !== null && "details" in found ? (found.details as { units: string }).units : found;
  };

  test.each(["quantity", "Quantities", "value", "planned", "bought", "used", "Pcs", "No."])("a %s is in the unit of its row", (heading) => {
    expect(units(heading, ["ft", 1], ["each", 2])).toBe("ft, each");
    expect(units(heading, ["ft", 1], ["LF", 2])).toBe(3);
  });

  test.each(["cost", "price", "hours", "planned cost"])("a %s is not", (heading) => expect(units(heading, ["ft", 1], ["each", 2])).toBe(3));

  test("each once, in their order, an empty one as no unit; rows of nothing and sums have none", () => {
    expect(units("quantity", ["ft", 1], ["in", 2], ["", 3], [null, 3], ["feet", 4], ["in", 5], [0, 6])).toBe("ft, in, no unit");
    expect(units("quantity", ["", 1], ["ft", 2])).toBe("no unit, ft");
    expect(units("quantity", ["", 1], [null, 2], [0, 3])).toBe(6);
    expect(units("quantity", ["ft", 1], ["each", 0], ["ft", 2])).toBe(3);
    // Two words that are no units of ours are two, in either spelling of a plural one.
    expect([units("quantity", ["bundle", 1], ["Bundles", 2]), units("quantity", ["bundle", 1], ["box", 2])]).toEqual([3, "bundle, box"]);
    expect(total([row("item", "quantity", "unit"), row("a", 1, "ft"), row("total", 1, "each"), row("b", 2, "ft")], "quantity")).toBe(3);
    expect(total([row("item", "quantity", "unit"), row("a", 1, "ft"), row("b", 2, ERROR)], "quantity")).toBe(3);
    expect(total([row("item", "quantity"), row("a", 1), row("b", 2)], "quantity")).toBe(3);
  });
});

describe("a count of words", () => {
  const check: GivenCells = [
    row("item", "verdict"), row("a", "pass"), row("b", "Fail"), row("c", "assumed: would fail"), row("d", ""), row("e", "passes"),
  ];

  test("counts the word, or what stands before its colon, and nothing that is empty", () => {
    expect(["pass", "fail", "assumed", "assumed: would fail", "judge"].map((of) => total(check, "verdict", of))).toEqual([2, 1, 1, 1, 0]);
    expect(total(check, "verdict", "d")).toContain('of: "d" is not known');
    expect(total([row("item", "grade"), row("a", 7), row("b", "7"), row("c", true)], "grade", "7")).toBe(2);
    expect(total([row("item", "grade"), row("a", "select: red"), row("b", "select")], "grade", "select")).toBe(2);
    expect(total([row("item", "grade"), row("a", "select: red"), row("b", "select")], "grade", "select: red")).toBe(1);
  });

  test("leaves rows out that are sums, unless the word itself is one", () => {
    expect(total([row("item", "grade"), row("a", "select"), row("total", "select")], "grade", "select")).toBe(1);
    expect(total([row("item", "grade"), row("a", "total"), row("b", "select"), row("c", "Sum")], "grade", "total")).toBe(1);
    // Rows that are only named for one are rows: here nothing adds up.
    expect(total([row("item", "grade"), row("total treads", "select"), row("b", "select")], "grade", "select")).toBe(2);
  });

  test("of no row is 0, unless the word is a slip of one that stands there", () => {
    const grades = [row("item", "grade"), row("a", "select"), row("b", "common")];
    expect([total(grades, "grade", "clear"), total(grades, "grade", "comon")]).toEqual([
      0, 'of: "comon" is not known; nearest is "common"',
    ]);
    expect(total([...grades, row("c", "comon")], "grade", "comon")).toBe(1);
  });

  test("an error in any cell of a row is that of the count, with the code that was given", () => {
    expect(total([row("item", "grade", "x"), row("a", "select", ERROR)], "grade", "select")).toBe(
      "table, row 2 (a): the cell given holds #N/A; put that cell right first",
    );
    expect(total([row("item", "grade"), row("a", { failed: "#VALUE!", says: "x", held: "#REF!" })], "grade", "select")).toContain(
      "table, row 2 (a): the cell given holds #REF!;",
    );
  });
});

describe("a cell found by its name", () => {
  const place = (name: string, ...cells: Given[]): unknown => {
    const found = namePlace("label", cells, name);
    return isFailed(found) ? [found.failed, found.says] : found;
  };

  test("as it is written goes first, then by letters and digits, then in another spelling or number", () => {
    expect(place("oak 4/4", "oak 44", "Oak  4/4")).toBe(1);
    expect(place("oak tread", "oak-tread", "OAK TREAD ")).toBe(1);
    expect(place("oak tread", "oak treads", "oak-tread")).toBe(1);
    expect(place("oak tread", "ash", "oak treads")).toBe(1);
    expect(place("2R+T", "2RT", "2 R + T")).toBe(1);
    expect(place("7", "x", 7)).toBe(1);
    expect(place("TRUE", "x", true)).toBe(1);
  });

  test("other numbers are another name in every way", () => {
    for (const other of ["oak 44", "oak 4 5", "oak 4"])
      expect(place("oak 4/4", other)).toEqual(["#N/A", expect.stringContaining("is not known")]);
  });

  test("twice in one way is refused, the same twice is the first", () => {
    expect(place("oak-tread", "oak tread", "oaktread")).toEqual([
      "#N/A", 'label: "oak-tread" may be "oak tread" or "oaktread"; write it as it stands there',
    ]);
    expect(place("oak tread", "ash", "Oak Tread", "oak tread")).toBe(1);
    expect(place("oak-tread", "ash", "oak tread", "Oak  tread")).toBe(1);
  });

  test("empty cells and errors have no name", () => {
    expect(place("x", "", null, ERROR)).toEqual(["#N/A", 'label: "x" is not known']);
    expect(place("the cell given holds #N/A", ERROR, "a")).toEqual(["#N/A", expect.stringContaining('is not known; there is only "a"')]);
  });
});

describe("a cell that is picked", () => {
  const table: GivenCells = [row("label", "value", "note"), row("rise", 7.5, ""), row("run", null, ERROR), row("go", false, 0), row("end")];

  test("stands in the row of its label, in the second column or under its heading", () => {
    expect(pickCell(table, "rise", "")).toBe(7.5);
    expect([pickCell(table, "rise", "value"), pickCell(table, "go", "value"), pickCell(table, "go", "note")]).toEqual([7.5, false, 0]);
    expect(pickCell(table, "rise", "note")).toBe("");
    expect(pickCell(table, "rise", "label")).toBe("rise");
  });

  test("that is not there is named", () => {
    expect(pickCell(table, "rize", "")).toMatchObject({ failed: "#N/A", says: 'label: "rize" is not known; nearest is "rise"' });
    expect(pickCell(table, "rise", "valu")).toMatchObject({ failed: "#N/A", says: 'heading: "valu" is not known; nearest is "value"' });
    expect(pickCell(table, "run", "")).toMatchObject({
      failed: "#N/A", says: 'table: the row "run" has nothing in its second column; fill that cell, or pick another',
    });
    expect(pickCell(table, "end", "note")).toMatchObject({
      says: 'table: the row "end" has nothing in "note"; fill that cell, or pick another',
    });
    expect(pickCell(table, "run", "note")).toMatchObject({
      failed: "#N/A", says: 'table: the row "run", "note": the cell given holds #N/A',
    });
  });
});
