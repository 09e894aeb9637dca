import fc from "fast-check";
import { exact } from "../../../../src/solver/length/exact";
import { lengthOf, measure } from "../../../../src/solver/length/length";
import { clearStretches, longestClear } from "../../../../src/solver/yield/tally/clear-stretches";
import { FOOTAGE_RULES } from "../../../../src/solver/yield/tally/footage";
import { tallyList } from "../../../../src/solver/yield/tally/tally-list";
import { boards, listed, type Plain } from "./board";

const inches = (value: number) => lengthOf(value, "in");
const range = (from: number, to: number) => ({ from: inches(from), to: inches(to) });

const costsOf = (plain: readonly Plain[], rule?: Parameters<typeof listed>[1], shrinkage?: number) => {
  const { boards: rows, totals } = listed(boards(plain), rule, shrinkage);
  return { rows: rows.map(({ cost }) => cost?.toNumber()), totals: totals.map(({ cost }) => cost?.toNumber()) };
};

describe("money", () => {
  test("a trade article of 2001: 1,000 board feet at 1,800 a thousand, billed gross at 7 %, are 1,935.48", () => {
    const { totals } = listed(boards([{ length: 120, width: 12, quantity: 100, boardFootPrice: 1.8 }]), "surface measure", 0.07);
    expect(totals.map(({ cost }) => cost?.toNumber())).toEqual([1935.48]);
    // By hand: 1,000 / 0.93.
    expect(totals[0]?.boardFeet.toNumber()).toBeCloseTo(1000 / 0.93, 9);
  });

  test("Wood Technology & Processes, self-check math quiz 13, priced: 120 board feet at 3.35 are 402.00", () => {
    for (const rule of FOOTAGE_RULES)
      expect(costsOf([{ length: 144, width: 8, quantity: 15, boardFootPrice: 3.35 }], rule).totals).toEqual([402]);
  });

  test("cents are rounded once a total and shared: three of 1/3 of 10.00 at 1.00", () => {
    // By hand: 3 x 3 1/3 = 10 board feet exact, 10.00; shares 3.33 1/3, and the cent left over is for the first.
    const three = [1, 2, 3].map(() => ({ length: 48, width: 10, boardFootPrice: 1 }));
    expect(costsOf(three, "exact")).toEqual({ rows: [3.34, 3.33, 3.33], totals: [10] });
  });

  test("a total is of one thickness, grade, species and price", () => {
    const plain = { length: 96, width: 6, grade: "FAS", species: "ash", boardFootPrice: 2 };
    const other = [{ thickness: 1.25 }, { grade: "1C" }, { species: "oak" }, { boardFootPrice: 3 }, { owned: true }];
    const { totals } = listed(boards([plain, ...other.map((change) => ({ ...plain, ...change })), { ...plain, grade: "fas" }]));
    // By hand: 4 board feet each at 2.00, two of the first; 5 at 2.00; 4 at 3.00; the owned one costs nothing.
    expect(totals.map(({ boards: count, cost }) => [count, cost?.toNumber()])).toEqual([[2, 16], [1, 10], [1, 8], [1, 8], [1, 12], [1, 0]]);
  });

  test("a lot is paid once, over its boards by board feet, through its thicknesses", () => {
    // By hand: 4 and 10 board feet of a lot for 70: 20 and 50; the third board is no part of it.
    const tally = [
      { length: 96, width: 6, lot: "A", lotPrice: 70 },
      { length: 120, width: 6, thickness: 2, lot: "a" },
      { length: 96, width: 6, price: 9, quantity: 2 },
    ];
    expect(costsOf(tally)).toEqual({ rows: [20, 50, 18], totals: [20, 50, 18] });
  });

  test("a cent left over of a lot is for the earlier row, whatever its thickness", () => {
    // By hand: 4 board feet each, 10.01 / 2 = 5.005: 5.00 and the cent left over.
    const tally = [
      { length: 96, width: 6, lot: "A", lotPrice: 1, grade: "x" },
      { length: 96, width: 6, lot: "B", lotPrice: 10.01, grade: "x", thickness: 1 },
      { length: 96, width: 3, lot: "B", grade: "x", thickness: 2 },
    ];
    expect(costsOf(tally).rows).toEqual([1, 5.01, 5]);
  });

  test("boards of a lot too short to count share by their number", () => {
    const tally = [{ length: 11, width: 6, lot: 1, lotPrice: 9 }, { length: 10, width: 6, lot: 1, quantity: 2 }];
    expect(costsOf(tally)).toEqual({ rows: [3, 6], totals: [9] });
  });

  test("without any price it counts alone; all owned costs nothing", () => {
    expect(costsOf([{ length: 96, width: 6 }])).toEqual({ rows: [undefined], totals: [undefined] });
    expect(costsOf([{ length: 96, width: 6, owned: true }])).toEqual({ rows: [0], totals: [0] });
    expect(costsOf([{ length: 96, width: 6, owned: true }, { length: 96, width: 6 }]).rows).toEqual([undefined, undefined]);
  });

  test("the paper's board feet win, no shrinkage is put on them, and the note says what the rule gives", () => {
    // By hand: 6 on the paper and 4 / 0.8 = 5 counted, 11 at 2.00.
    const { boards: rows, totals } = listed(
      boards([{ length: 96, width: 6, paperFeet: 6, boardFootPrice: 2 }, { length: 96, width: 6, boardFootPrice: 2 }]),
      "surface measure",
      0.2,
    );
    expect(rows.map(({ boardFeet, cost, note }) => [boardFeet.toNumber(), cost?.toNumber(), note])).toEqual([
      [6, 12, "as on the paper; surface measure gives 4"],
      [5, 10, ""],
    ]);
    expect(totals.map(({ boardFeet, note }) => [boardFeet.toNumber(), note])).toEqual([[11, "4 net; 20 % for shrinkage is billed on top"]]);
  });
});

describe("clear stretches", () => {
  const longest = (length: number, defects: ReturnType<typeof range>[], clear: ReturnType<typeof range>[] = []) =>
    measure(longestClear(clearStretches(inches(length), defects, clear)), "in");

  test("by hand", () => {
    expect(longest(132, [])).toBe(132);
    expect(longest(132, [range(24, 28)])).toBe(104);
    // In any order, joined where they overlap or touch: 0 to 10 and 40 to 60 are left.
    expect(longest(60, [range(30, 40), range(10, 20), range(18, 30)])).toBe(20);
    expect(longest(60, [range(0, 60)])).toBe(0);
    expect(longest(60, [], [range(2, 20), range(15, 31), range(40, 60)])).toBe(29);
  });

  test("what is clear and what is not make up the board", () => {
    const ranges = fc.array(fc.tuple(fc.integer({ min: 0, max: 90 }), fc.integer({ min: 1, max: 10 })), { maxLength: 8 });
    fc.assert(
      fc.property(ranges, (given) => {
        const defects = given.map(([from, size]) => range(from, from + size));
        // Inch by inch, with no ranges at all.
        const isSpoilt = (inch: number): boolean => given.some(([from, size]) => inch >= from && inch < from + size);
        const clear = Array.from({ length: 100 }, (_, inch) => inch).filter((inch) => !isSpoilt(inch)).length;
        const stretches = clearStretches(inches(100), defects, []);
        expect(stretches.reduce((sum, { from, to }) => sum + measure(to, "in") - measure(from, "in"), 0)).toBeCloseTo(clear, 9);
        expect(stretches.every(({ from, to }) => to.gt(from) && !isSpoilt(Math.round(measure(from, "in"))))).toBe(true);
      }),
    );
  });
});

const priced: fc.Arbitrary<Plain> = fc.record({
  length: fc.integer({ min: 20, max: 200 }),
  width: fc.integer({ min: 24, max: 160 }).map((eighths) => eighths / 8),
  thickness: fc.constantFrom(1, 1.25, 2),
  quantity: fc.integer({ min: 1, max: 4 }),
  grade: fc.constantFrom("FAS", "1C"),
  boardFootPrice: fc.constantFrom(3.35, 5.6, 7.123),
});

const sum = (amounts: readonly (number | undefined)[]): number =>
  amounts.reduce<number>((all, one) => all + Math.round((one ?? 0) * 100), 0);

test("costs of boards add up to those of the totals, to the cent, whatever they are paid by", () => {
  const ways = fc.constantFrom<Partial<Plain>>({}, { owned: true });
  const lots: fc.Arbitrary<Plain> = fc.record({
    length: fc.integer({ min: 20, max: 200 }), width: fc.integer({ min: 3, max: 20 }), lot: fc.constantFrom("X", "Y"),
  });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(priced, ways), { minLength: 1, maxLength: 10 }), fc.array(lots, { maxLength: 6 }),
      fc.constantFrom(...FOOTAGE_RULES), fc.constantFrom(0, 0.07),
      (own, inLots, rule, shrinkage) => {
        const prices: Readonly<Record<string, number>> = { X: 95.01, Y: 130 };
        const tally = [
          ...own.map(([one, way]) => ({ ...one, ...way })),
          ...inLots.map((one) => ({ ...one, lotPrice: prices[String(one.lot)]! })),
        ];
        const { rows, totals } = costsOf(tally, rule, shrinkage);
        expect(sum(rows)).toBe(sum(totals));
        // Each lot that is there is paid once, whole.
        const bought = [...new Set(inLots.map(({ lot }) => String(lot)))];
        expect(sum(rows.slice(own.length))).toBe(sum(bought.map((lot) => prices[lot])));
      },
    ),
  );
});

describe("refused as a whole", () => {
  const BOARD = { length: 132, width: 8, price: 5 };
  test.each<[string, readonly Plain[]]>([
    ["label-twice", [{ ...BOARD, label: 7 }, { ...BOARD, label: "7" }]],
    ["two-prices", [{ ...BOARD, boardFootPrice: 5.6 }]],
    ["no-price", [BOARD, { length: 96, width: 6 }]],
    ["lot-price-without-lot", [{ length: 96, width: 6, lotPrice: 90 }]],
    ["lot-without-price", [BOARD, { length: 96, width: 6, lot: "X" }]],
    ["lot-and-own-price", [{ ...BOARD, lot: "X", lotPrice: 90 }]],
    ["two-lot-prices", [{ length: 96, width: 6, lot: "X", lotPrice: 90 }, { length: 96, width: 6, lot: "x", lotPrice: 91 }]],
    ["defects-and-clear", [{ ...BOARD, defects: [range(3, 4)], clear: [range(5, 9)] }]],
    ["ranges-of-several", [{ ...BOARD, quantity: 2, clear: [range(5, 9)] }]],
    ["range-backwards", [{ ...BOARD, defects: [range(9, 5)] }]],
    ["range-past-end", [{ ...BOARD, defects: [range(140, 146)] }]],
    ["edge-takes-all", [{ ...BOARD, edge: 8 }]],
  ])("%s", (problem, tally) => {
    expect(tallyList(boards(tally), "surface measure", exact(0))).toMatchObject({ problem });
  });

  test("a lot's name alone needs no lot price where its boards have their own; a range up to the very end is on the board", () => {
    expect(costsOf([{ ...BOARD, lot: "X", defects: [range(130, 132)] }]).rows).toEqual([5]);
  });
});
