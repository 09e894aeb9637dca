import type { BadRow } from "../../../src/solver/bad-row";
import { amountFor, figuresFor, isListed, listedFigure, notListed, type PerUnit } from "../../../src/solver/goods/per-unit-list";
import { exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

/** Figures per unit, found for who asks in that unit, in one that converts, or in any. 12 in are 1 ft and 3 ft 1 yd by definition. */

type Row = readonly [item: string | number, figure: number, unit?: string, isBlank?: boolean];
const perUnit = (rows: readonly Row[]): PerUnit[] =>
  rows.map(([item, figure, unit = "", isBlank = false], place) => ({ item, figure: exact(figure), unit, isBlank, row: place + 2 }));
const BAD: BadRow<string> = { bad: "price in row 9 is no number", label: "Elm", row: 9 } as BadRow<string>;

const listOf = (rows: readonly Row[], ...bad: readonly BadRow<string>[]) =>
  figuresFor<{ readonly item: string; readonly row: number; readonly unit: string }, string>([], [...perUnit(rows), ...bad], "prices").list;

/** The figure and its unit, or why there is none with its facts. */
const found = (rows: readonly Row[], item: string | number, unit: string, isOfPieces = false): unknown => {
  const figure = listedFigure(listOf(rows, BAD), { item, row: 5, unit, isOfPieces });
  if (isListed(figure)) return [figure.figure.toNumber(), figure.unitText];
  return isProblem(figure) ? [figure.problem, figure.details] : figure;
};

test("a figure without a unit is for any, one with a unit is for its own, in every spelling", () => {
  const rows: readonly Row[] = [["oak", 9], ["rail", 4, "LF"], [42, 7, "box"]];
  expect([found(rows, "Oak", "bf"), found(rows, "oak", ""), found(rows, "rail", "feet"), found(rows, "42", "Boxes")]).toEqual([
    [9, ""], [9, ""], [4, "LF"], [7, "box"],
  ]);
  expect([found(rows, "ash", ""), found(rows, "elm", "")]).toEqual([undefined, "price in row 9 is no number"]);
});

test("in another unit of the same measure the figure is that of its own, for so many of those", () => {
  expect(found([["rail", 4, "ft"]], "rail", "in")).toEqual([4, "ft"]);
  const figure = listedFigure(listOf([["rail", 4, "ft"]]), { item: "rail", row: 5, unit: "in", isOfPieces: false });
  if (!isListed(figure)) throw new Error("not listed");
  // 36 in are 3 ft, 36 yd 108; nothing and boxes are taken as they are.
  expect(["in", "yd", "", "box"].map((unit) => amountFor(exact(36), unit, figure).toNumber())).toEqual([3, 108, 36, 36]);
  const any = listedFigure(listOf([["rail", 4]]), { item: "rail", row: 5, unit: "in", isOfPieces: false });
  expect(isListed(any) && amountFor(exact(36), "in", any).toNumber()).toBe(36);
});

test("a unit that is none of its own is refused with those there are", () => {
  expect(found([["rail", 4, "ft"]], "rail", "bf")).toEqual(["not-in-unit", { item: "rail", row: 5, unit: "bf", units: "ft" }]);
  expect(found([["rail", 4, "ft"], ["rail", 9]], "rail", "bf")).toEqual([
    "not-in-unit", { item: "rail", row: 5, unit: "bf", units: "ft, no unit" },
  ]);
  const five: readonly Row[] = ["ft", "bf", "sq ft", "sheet", "hour"].map((unit) => ["rail", 4, unit]);
  expect(found(five, "rail", "box")).toMatchObject(["not-in-unit", { units: "ft, bf, sq ft, sheet, hour" }]);
  expect(found([...five, ["rail", 4, "tube"], ["rail", 4, "lb"]], "rail", "box")).toMatchObject([
    "not-in-unit", { units: "ft, bf, sq ft, sheet, hour, others" },
  ]);
  // A unit said twice is named once.
  expect(found([["rail", 4, "ft"], ["rail", 4, "LF"]], "rail", "box")).toMatchObject(["not-in-unit", { units: "ft" }]);
});

test("no unit is asked for where pieces are counted, and is missing elsewhere", () => {
  const rows: readonly Row[] = [["rail", 4, "each"], ["cap", 5, "dozen"], ["skirt", 6, "ft"]];
  expect(found(rows, "rail", "", true)).toEqual([4, "each"]);
  expect(found(rows, "rail", "", false)).toEqual(["unit-is-empty", { item: "rail", row: 5, unit: "", units: "each" }]);
  // Twelve of what is counted in dozens is not what an empty cell says.
  expect(found(rows, "cap", "", true)).toMatchObject(["unit-is-empty", { units: "dozen" }]);
  expect(found(rows, "skirt", "", true)).toMatchObject(["unit-is-empty", { units: "ft" }]);
  expect(found(rows, "cap", "each")).toEqual([5, "dozen"]);
});

describe("two figures for one item", () => {
  test("that agree are one, in whatever units", () => {
    expect(found([["rail", 4], ["rail", 4]], "rail", "ft")).toEqual([4, ""]);
    // By hand: 12 a foot are 1 an inch and 36 a yard.
    expect(found([["rail", 12, "ft"], ["rail", 1, "in"]], "rail", "yd")).toEqual([12, "ft"]);
    expect(found([["rail", 12, "ft"], ["rail", 12, "LF"]], "rail", "ft")).toEqual([12, "ft"]);
  });

  test("that do not are refused, the first and the first other", () => {
    expect(found([["rail", 4], ["rail", 5], ["rail", 6]], "rail", "ft")).toEqual([
      "two-figures", { item: "rail", unit: "any unit", first: "4", second: "5" },
    ]);
    expect(found([["rail", 4, "LF"], ["rail", 4, "ft"], ["rail", 5, "ft"]], "rail", "ft")).toEqual([
      "two-figures", { item: "rail", unit: "LF", first: "4", second: "5" },
    ]);
    expect(found([["rail", 4], ["rail", 5], ["rail", 7, "ft"]], "rail", "ft")).toEqual([7, "ft"]);
    expect(found([["rail", 4, "ft"], ["rail", 5, "ft"]], "rail", "yd")).toMatchObject(["several-units", { item: "rail", units: "ft" }]);
  });

  test("in units that convert are each for their own, and refused for a third", () => {
    const rows: readonly Row[] = [["rail", 12, "ft"], ["rail", 2, "in"]];
    expect([found(rows, "rail", "ft"), found(rows, "rail", "in")]).toEqual([[12, "ft"], [2, "in"]]);
    expect(found(rows, "rail", "yd")).toEqual(["several-units", { item: "rail", units: "ft, in" }]);
  });
});

describe("an item that is in no row", () => {
  const why = (item: string, ...bad: readonly BadRow<string>[]): unknown => {
    const said = notListed(listOf([["oak blank", 4], ["ash", 5]], ...bad), item);
    return isProblem(said) ? [said.problem, said.details] : said;
  };

  test("may be meant by one near it, or by a row that lost its name", () => {
    expect(why("birch")).toEqual(["not-listed", { item: "birch" }]);
    expect(why("oak blnak")).toEqual(["not-listed-but-near", { item: "oak blnak", near: "oak blank", row: 2 }]);
    expect(why("birch", { ...BAD, label: "" })).toBe("price in row 9 is no number");
    expect(why("birch", BAD)).toEqual(["not-listed", { item: "birch" }]);
  });
});

test("who asks without any unit counts pieces; names of both tables are looked at for near ones", () => {
  const asking = (...units: string[]) => units.map((unit, place) => ({ item: place === 0 ? "oak blank" : "rail", row: place + 2, unit }));
  const prices = perUnit([["oak blnak", 4]]);
  const of = (...units: string[]) => figuresFor<ReturnType<typeof asking>[number], string>(asking(...units), prices, "prices");
  expect([of("", "").isOfPieces, of("", "ft").isOfPieces, of().isOfPieces]).toEqual([true, false, true]);
  expect(of("").near("oak blank")).toEqual({ item: "oak blnak", row: 2, table: "prices" });
  expect(of("").near("oak blnak")).toEqual({ item: "oak blank", row: 2, unit: "" });
});

test("a 0 that nobody wrote is known as such", () => {
  const [blank, meant] = [true, false].map((isBlank) =>
    listedFigure(listOf([["oak", 0, "", isBlank]]), { item: "oak", row: 5, unit: "", isOfPieces: false }));
  expect([isListed(blank) && blank.isBlank, isListed(meant) && meant.isBlank]).toEqual([true, false]);
  expect([isListed(undefined), isListed("bad"), isListed({ figure: 1 }), isListed(null)]).toEqual([false, false, false, false]);
});
