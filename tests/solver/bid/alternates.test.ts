import * as fc from "fast-check";
import { alternates, type AlternateRow, type GivenAlternates } from "../../../src/solver/bid/alternates";
import { bid } from "../../../src/solver/bid/bid";
import type { CountedCost } from "../../../src/solver/bid/price-change";
import { quote } from "../../../src/solver/bid/quote";
import { termsWith } from "../../../src/solver/bid/terms";
import { codeProfile } from "../../../src/solver/code/profiles";
import { Exact } from "../../../src/solver/length/exact";
import { lengthOf } from "../../../src/solver/length/length";
import { isProblem } from "../../../src/solver/problem";
import { anyCost, anyTerms } from "./any-bid";

const OPTIONS = ["", "white oak", "15 risers", "no rail"] as const;

const anyCounted: fc.Arbitrary<CountedCost> = fc
  .tuple(anyCost, fc.constantFrom(...OPTIONS), fc.integer({ min: -20, max: 20 }), fc.constantFrom("hour", "minute", "each", ""))
  .map(([cost, option, quantity, unit]) => ({ ...cost, option, unit, quantity }));

const rowsOf = (given: Omit<GivenAlternates<string>, "changes"> & Partial<GivenAlternates<string>>): readonly AlternateRow<string>[] => {
  const rows = alternates<string>({ changes: [], ...given });
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

const found = <Row>(rows: readonly Row[], isIt: (row: Row) => boolean): Row => {
  const row = rows.find(isIt);
  if (row === undefined) throw new Error("no such row");
  return row;
};

test("each row costs and asks what BID does with that alternate, and QUOTE's difference", () => {
  fc.assert(
    fc.property(fc.array(anyCounted, { minLength: 1, maxLength: 10 }), anyTerms, (costs, terms) => {
      const rows = rowsOf({ costs, terms });
      const named = costs.flatMap(({ option = "" }) => (option === "" ? [] : [option]));
      expect(rows.map(({ option }) => option)).toEqual(["", ...new Set(named)]);
      const quoted = quote(costs, terms);
      for (const { option, priced } of rows) {
        const figures = bid(costs, terms, option);
        if (isProblem(figures) || isProblem(quoted) || priced === undefined) throw new Error("no bid");
        const figure = (label: string): number => found(figures, (row) => row.label === label).cost.toNumber();
        expect([priced.cost.toNumber(), priced.price.toNumber()]).toEqual([figure("direct"), figure("price")]);
        const beside = option === "" ? 0 : found(quoted, (row) => row.option === option).price.toNumber();
        expect(priced.addOrDeduct.plus(0).toNumber()).toBe(beside + 0);
      }
    }),
  );
});

test("hours of an alternate are those as drawn and its own rows'", () => {
  fc.assert(
    fc.property(fc.array(anyCounted, { minLength: 1, maxLength: 10 }), (costs) => {
      const rows = rowsOf({ costs, terms: termsWith({}) });
      const drawn = found(rows, ({ option }) => option === "").labour.hours;
      const minutes = (option: string): number =>
        costs.reduce((sum, cost) => {
          const isLabour = cost.kind === "labour" && cost.option === option;
          const each = cost.unit === "hour" ? 60 : cost.unit === "minute" ? 1 : 0;
          return sum + (isLabour ? each * (cost.quantity ?? 0) : 0);
        }, 0);
      expect(drawn.times(60).toNumber()).toBeCloseTo(minutes(""), 9);
      for (const { option, labour } of rows)
        if (option !== "") expect(labour.hours.minus(drawn).times(60).toNumber()).toBeCloseTo(minutes(option), 9);
    }),
  );
});

const cost = (amount: number, option = ""): CountedCost => ({ item: "oak", row: 2, cost: new Exact(amount), kind: "material", option });

const inches = (value: number) => lengthOf(value, "in");

test("an alternate that no cost names stands with the nearest that one does, and takes nothing down", () => {
  const rows = rowsOf({ costs: [cost(100), cost(20, "wide")], terms: termsWith({}), changes: [{ option: "wid", change: {} }] });
  expect(rows.map(({ option, priced, near }) => [option, priced?.price.toNumber(), near])).toEqual([
    ["", 100, undefined], ["wide", 120, undefined], ["wid", undefined, "wide"],
  ]);
});

test("more than twenty alternates are refused", () => {
  const many = Array.from({ length: 21 }, (_, place) => cost(1, `option ${place}`));
  expect(alternates({ costs: many, terms: termsWith({}), changes: [] })).toMatchObject({
    problem: "too-many-alternates", details: { count: 21 },
  });
  expect(rowsOf({ costs: many.slice(1), terms: termsWith({}) })).toHaveLength(21);
});

test("four plans are made, that as drawn among them; an alternate without pieces of its own needs none", () => {
  const saw = {
    stock: [{ label: "board", length: inches(96), price: new Exact(10), available: Infinity, owned: false, grade: "" }],
    kerf: inches(0), trim: inches(0), unit: "in" as const,
  };
  const piece = (option: string, quantity: number) => ({ label: "post", length: inches(96), quantity, grade: "", option });
  const options = ["one", "two", "none", "three", "four"];
  const rows = rowsOf({
    costs: [cost(1), ...options.map((option) => cost(1, option))], terms: termsWith({}),
    cutting: { saw, pieces: [piece("", 1), piece("one", 2), piece("two", 3), piece("three", 4), piece("four", 5)] },
  });
  const counts = (goods: readonly { readonly quantity: number }[]): readonly number[] => goods.map(({ quantity }) => quantity);
  const boards = rows.map(({ boards: planned }) => (Array.isArray(planned) ? counts(planned) : planned));
  expect(boards).toEqual([[1], [2], [3], "as drawn", [4], "too many plans"]);
});

test("amendments that are wrong are no fault of an alternate", () => {
  const profile = codeProfile("irc-2021");
  if (isProblem(profile)) throw new Error(profile.problem);
  const stair = {
    given: { totalRise: inches(105), risers: 14, run: inches(10) }, assumed: {}, unit: "in" as const, profile,
    amendments: [{ item: "tread dept", limit: 9, authority: "" }],
  };
  expect(alternates({ costs: [cost(1)], terms: termsWith({}), changes: [], stair })).toMatchObject({ problem: "unknown-amendment" });
});
