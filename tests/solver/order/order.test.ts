import fc from "fast-check";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { exact } from "../../../src/solver/length/exact";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { type Blank, blankList } from "../../../src/solver/order/blank-list";
import { blankOrder, type OrderRow } from "../../../src/solver/order/blank-order";
import type { BlankStock } from "../../../src/solver/order/blank-stock";
import { isProblem } from "../../../src/solver/problem";
import type { TreadReading } from "../../../src/solver/fit/tread-reading";

const inches = (value: number): Length => lengthOf(value, "in");

/** Invented: fourteen risers to 107 1/2, 36 3/4 between skirts, a return on the right. */
const STAIR: StairFacts = {
  totalRise: inches(107.5), risers: 14, run: inches(10), width: inches(36.75), openEnd: "right", runPast: inches(0.25), lap: inches(0.25),
};

const blanksOf = (facts: StairFacts, readings?: readonly TreadReading[]): readonly Blank[] | string => {
  const stair = resolvedStair(facts);
  if (isProblem(stair)) return stair.problem;
  const blanks = blankList(stair, readings, "in");
  return isProblem(blanks) ? blanks.problem : blanks;
};

const sizes = (blanks: readonly Blank[] | string): unknown =>
  typeof blanks === "string"
    ? blanks
    : blanks.map(({ item, length, width, thickness, quantity }) => [
        item,
        measure(length, "in"),
        measure(width, "in"),
        measure(thickness, "in"),
        quantity,
      ]);

test("nominal sizes are run + nosing deep and skirt to skirt + overhang long", () => {
  // By hand: tread 36 3/4 + 1 1/4 by 10 + 1 1/4; return 11 1/4 + 1 1/4 long, as wide as the overhang; landing nosing 1 1/4 + 3/4 wide;
  // riser 36 3/4 + 1/4 by 107 1/2 / 14 - 1 + 1/4.
  expect(sizes(blanksOf(STAIR))).toEqual([
    ["tread", 38, 11.25, 1, 13],
    ["return", 12.5, 1.25, 1, 13],
    ["landing nosing", 38, 2, 1, 1],
    ["riser", 37, 107.5 / 14 - 0.75, 0.75, 14],
  ]);
});

test("common practice, no source: a 10 in run needs 11 1/4 of an 11 1/2 in blank, a 9 in run 10 1/4", () => {
  for (const [run, depth] of [[10, 11.25], [9, 10.25]] as const) {
    const blanks = blanksOf({ ...STAIR, run: inches(run) });
    if (typeof blanks === "string") throw new Error(blanks);
    expect(measure(blanks[0]?.width ?? inches(0), "in")).toBe(depth);
  }
});

test("readings give the largest length and say which step it came from", () => {
  const reading = (step: number, back: number): TreadReading => ({
    step,
    run: 10,
    back,
    front: back,
    leftOffset: 0,
    leftLean: 0,
    rightLean: 0,
  });
  const blanks = blanksOf(STAIR, [reading(1, 36.5), reading(2, 37), reading(3, 36.75)]);
  if (typeof blanks === "string") throw new Error(blanks);
  // By hand: 37 + 1 1/4.
  expect(measure(blanks[0]?.length ?? inches(0), "in")).toBe(38.25);
  expect(blanks[0]?.note).toBe(
    "from the largest reading, step 2, read between finished risers (assumed: type riser on where that is not so)",
  );
});

test("a tapered reading orders a blank as deep as its deeper end", () => {
  // By hand: back 12, front 15, runs 9 and 18 square to a back that both skirts are square to: 3-4-5, so the nose is turned by 36.87
  // degrees, and 9 x 4/5 + 1 1/4 = 8.45 at one end, 18 x 4/5 + 1 1/4 = 15.65 at the other; a step of run 10 is 11 1/4.
  const tapered = { step: 1, back: 12, front: 15, leftOffset: 0, leftLean: 0, rightLean: 0 };
  const widthOf = (...readings: readonly TreadReading[]): number => {
    const blanks = blanksOf({ ...STAIR, openEnd: "none" }, readings);
    if (typeof blanks === "string") throw new Error(blanks);
    return measure(blanks[0]?.width ?? inches(0), "in");
  };
  const square: TreadReading = { step: 2, run: 10, back: 36, front: 36, leftOffset: 0, leftLean: 0, rightLean: 0 };
  expect(widthOf({ ...tapered, leftRun: 9, rightRun: 18 })).toBeCloseTo(15.65, 9);
  expect(widthOf({ ...tapered, leftRun: 18, rightRun: 9 }, square)).toBeCloseTo(15.65, 9);
});

test("readings up to the sub-tread's edge order a blank as deep as run and nosing make it, and the note says how they were read", () => {
  // By hand: 9 1/4 + 3/4 riser in front + 1 1/4 = 11 1/4; taken as read between finished risers it would be 10 1/2, a nosing of 1/2.
  const reading: TreadReading = { step: 1, run: 9.25, back: 36, front: 36, leftOffset: 0, leftLean: 0, rightLean: 0 };
  const widths = (["off", "behind", "both"] as const).map((riserOn) => {
    const blanks = blanksOf({ ...STAIR, riserOn }, [reading]);
    if (typeof blanks === "string") throw new Error(blanks);
    return [measure(blanks[0]?.width ?? inches(0), "in"), blanks[0]?.note];
  });
  expect(widths).toEqual([
    [10.5, "from the largest reading, step 1, read with no finished riser on"],
    [11.25, "from the largest reading, step 1, read with the finished riser behind on"],
    [10.5, "from the largest reading, step 1, read between finished risers"],
  ]);
});

test("saw allowances are added, no open end needs no return, a flush tread no landing nosing", () => {
  expect(sizes(blanksOf({ ...STAIR, openEnd: "none", topTread: "flush", trimLength: inches(1), trimDepth: inches(0.25) }))).toEqual([
    ["tread", 37.75, 11.5, 1, 14],
    ["riser", 37.75, 107.5 / 14 - 0.75, 0.75, 14],
  ]);
});

test("what is missing or impossible is told apart", () => {
  const { width: _, ...withoutWidth } = STAIR;
  expect(blanksOf(withoutWidth)).toBe("no-width");
  expect(blanksOf({ ...STAIR, treadThickness: inches(8) })).toBe("tread-thicker-than-rise");
  expect(blanksOf(STAIR, [{ step: 5, run: 10, back: 36, front: 36, leftLean: 0, rightLean: 0 }])).toBe("reading-fits-no-piece");
});

const STOCK: readonly BlankStock[] = [
  { label: "oak 48", length: inches(48), width: inches(11.5), thickness: inches(1), price: exact(60), available: Infinity, owned: false },
  { label: "oak 42", length: inches(42), width: inches(11.5), thickness: inches(1), price: exact(52), available: Infinity, owned: false },
  {
    label: "riser board",
    length: inches(192),
    width: inches(7.25),
    thickness: inches(0.75),
    price: exact(38),
    available: Infinity,
    owned: false,
  },
];

const ordered = (facts: StairFacts, stock: readonly BlankStock[]) => {
  const blanks = blanksOf(facts);
  if (typeof blanks === "string") throw new Error(blanks);
  const rows = blankOrder(blanks, stock, "in");
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

const bought = (facts: StairFacts, stock: readonly BlankStock[]): OrderRow[] =>
  ordered(facts, stock).filter((row): row is OrderRow => "price" in row);

const rowsOf = (item: string, facts: StairFacts, stock: readonly BlankStock[]) => ordered(facts, stock).filter((row) => row.item === item);

test("the cheapest blank that covers is ordered, and the price does not move from a 10 in to a 9 in run", () => {
  const [ten] = bought(STAIR, STOCK);
  const [nine] = bought({ ...STAIR, run: inches(9) }, STOCK);
  if (!ten || !nine) throw new Error("treads are ordered");
  // By hand: 13 x 52 = 676 both times. Off the width: 11 1/2 - 11 1/4 = 1/4, 11 1/2 - 10 1/4 = 1 1/4, which is 10.9 % of 11 1/2.
  expect([ten.item, ten.quantity, ten.cost.toNumber(), measure(ten.rippedOff, "in")]).toEqual(["oak 42", 13, 676, 0.25]);
  expect([nine.item, nine.cost.toNumber(), measure(nine.rippedOff, "in"), measure(nine.cutOff, "in")]).toEqual(["oak 42", 676, 1.25, 4]);
  // By hand: 676 x 1.25 / 11.5 = 73.478, in cents 73.48; net 10.25 x 38 x 13 / 144 = 35.163, gross 11.5 x 42 x 13 / 144 = 43.604 board
  // feet.
  expect(nine.ripCost.toNumber()).toBe(73.48);
  expect(nine.net.toNumber()).toBeCloseTo(35.163, 3);
  expect(nine.gross.toNumber()).toBeCloseTo(43.604, 3);
  expect(nine.note).toContain("10.9 % of the width is ripped off");
});

test("risers are left to the cut plan, and a stick is no blank", () => {
  const riser = ordered(STAIR, STOCK).find(({ item }) => item === "riser");
  expect(riser).toEqual({ item: "riser", quantity: 14, note: "no blank in the stock is of this size: cut it from sticks with CUTS" });
});

test("pieces on hand are used first, then the next cheapest", () => {
  const stock: BlankStock[] = [...STOCK, { label: "on the rack", length: inches(40), width: inches(12), available: 2, owned: true }];
  expect(bought({ ...STAIR, landingNosing: false }, stock).map(({ item, quantity, cost }) => [item, quantity, cost.toNumber()])).toEqual([
    ["on the rack", 2, 0],
    ["oak 42", 11, 572],
  ]);
});

test("a blank that is not deep enough is called out with what it takes", () => {
  const [row] = ordered({ ...STAIR, run: inches(10.5) }, STOCK);
  if (row === undefined || !("bad" in row) || row.bad === undefined) throw new Error("nothing covers 11 3/4");
  expect(row.bad.problem).toBe("no-blank-covers");
  expect((row as { quantity: number }).quantity).toBe(13);
});

test("and so is one that is not long or thick enough, that only longer boards cover, or that has run out", () => {
  const problems = (...stock: BlankStock[]) =>
    ordered({ ...STAIR, openEnd: "none", landingNosing: false }, stock).flatMap((row) =>
      "bad" in row && row.bad !== undefined ? [row.bad] : [],
    );
  const board = (length: number, thickness: number, available = Infinity): BlankStock => ({
    label: "oak",
    length: inches(length),
    width: inches(11.5),
    thickness: inches(thickness),
    price: exact(50),
    available,
    owned: false,
  });
  // By hand: the tread is 36 3/4 long, and the longest board 36 1/2; 2 x 36 3/4 = 73 1/2.
  const [short] = problems(board(36.5, 1), board(30, 1));
  expect([short?.problem, measure(short?.details["longest"] as Length, "in")]).toEqual(["no-blank-long-enough", 36.5]);
  const [thin] = problems(board(42, 0.75), board(42, 0.5));
  expect([thin?.problem, measure(thin?.details["thickest"] as Length, "in")]).toEqual(["no-blank-thick-enough", 0.75]);
  expect(problems(board(73.5, 1))[0]?.problem).toBe("no-blank-but-sticks");
  expect(problems(board(42, 1, 5))[0]).toMatchObject({ problem: "blanks-run-out", details: { missing: 8 } });
});

test("a thicker blank is taken only where none of the thickness is left, and its nosing is called out", () => {
  const thick: BlankStock = {
    label: "5/4 oak",
    length: inches(42),
    width: inches(11.5),
    thickness: inches(1.0625),
    price: exact(40),
    available: Infinity,
    owned: false,
  };
  const few = STOCK.map((stock) =>
    stock.label === "oak 42" ? { ...stock, available: 10 } : stock.label === "oak 48" ? { ...stock, available: 0 } : stock,
  );
  const rows = bought({ ...STAIR, landingNosing: false }, [thick, ...few]);
  expect(rows.map(({ item, quantity }) => [item, quantity])).toEqual([["oak 42", 10], ["5/4 oak", 3]]);
  expect(rows[1]?.note).toContain("its nosing is to be re-made");
  expect(rows[0]?.note).not.toContain("re-made");
});

test("a riser run past by as much as the overhang is called out at the return", () => {
  const blanks = blanksOf({ ...STAIR, runPast: inches(1.25) });
  if (typeof blanks === "string") throw new Error(blanks);
  expect(blanks.find(({ item }) => item === "return")?.note).toContain("the riser runs past the skirt by as much as the return overhangs");
});

test("the landing nosing is ordered with the treads where a blank covers it, and named where none does", () => {
  expect(bought(STAIR, STOCK).map(({ item, quantity }) => [item, quantity])).toEqual([["oak 42", 13], ["oak 42", 1]]);
  const short = STOCK.filter(({ label }) => label !== "oak 48").map((stock) =>
    stock.label === "oak 42" ? { ...stock, available: 13 } : stock,
  );
  expect(ordered(STAIR, short).find(({ item }) => item === "landing nosing")).toMatchObject({ quantity: 1 });
});

describe("what an order comes to", () => {
  test("the total adds what has a price, and names what has none", () => {
    // By hand: 13 treads and a landing nosing at 52.00; 13 returns and 14 risers come from sticks.
    const [total, ...others] = rowsOf("total", STAIR, STOCK);
    expect(others).toEqual([]);
    expect(total).toMatchObject({ note: "without a price here, and not in this cost: 13 x return, 14 x riser" });
    expect(total !== undefined && "cost" in total ? total.cost.toNumber() : undefined).toBe(728);
    const all = [
      ...STOCK,
      {
        label: "riser blank",
        length: inches(40),
        width: inches(7.25),
        thickness: inches(0.75),
        price: exact(9),
        available: Infinity,
        owned: false,
      },
    ];
    // By hand: 14 risers at 9.00 more, and nothing without a price on a stair without returns and landing nosing.
    const [whole] = rowsOf("total", { ...STAIR, openEnd: "none", landingNosing: false }, all);
    expect(whole).toMatchObject({ note: "" });
    expect(whole !== undefined && "cost" in whole ? whole.cost.toNumber() : undefined).toBe(13 * 52 + 14 * 9);
  });

  test("a total over a row that failed fails with it", () => {
    const [total] = rowsOf("total", { ...STAIR, run: inches(10.5) }, STOCK);
    expect(total).toMatchObject({
      bad: { problem: "no-blank-covers" },
      note: "without a price here, and not in this cost: 13 x tread, 13 x return, 14 x riser",
    });
    expect(total).not.toHaveProperty("cost");
  });

  const plain: StairFacts = { ...STAIR, openEnd: "none", landingNosing: false };
  const long = (price: number, length = 120, available = Infinity): BlankStock => ({
    label: "oak 10 ft",
    length: inches(length),
    width: inches(11.5),
    thickness: inches(1),
    price: exact(price),
    available,
    owned: false,
  });
  const savings = (...stock: BlankStock[]): (string | undefined)[] => rowsOf("saving", plain, [...STOCK, ...stock]).map(({ note }) => note);

  test("longer boards cut into several are told where they cost less, with the money and how", () => {
    // By hand: 36 3/4 three times and two cuts of 1/8 are 110 1/2 of 120; 13 treads take 4 boards and one of 42: 480 + 52 = 532 against
    // 13 x 52 = 676, and five boards 600.
    expect(savings(long(120))).toEqual([
      "13 x tread from 4 of oak 10 ft and 1 of oak 42: 532.00, 144.00 less, the least there is; CUTS plans them; a cut takes 1/8 " +
        "in (3.175 mm)",
    ]);
  });

  test("long boards and short ones together where that costs least", () => {
    const order = (facts: StairFacts, ...stock: BlankStock[]) => ordered({ ...plain, ...facts }, stock);
    const short = (label: string, length: number, price: number): BlankStock => ({
      label,
      length: inches(length),
      width: inches(11.5),
      thickness: inches(1),
      price: exact(price),
      available: Infinity,
      owned: false,
    });
    const seven: StairFacts = { totalRise: inches(60), risers: 8, width: inches(36) };
    // By hand: 3 x 36 and two cuts are 108 1/4 of 120. 7 x 50 = 350; three of 120 are 420; two of 120 and one of 38 are 280 + 50 = 330.
    expect(order(seven, short("oak 38", 38, 50), long(140)).find(({ item }) => item === "saving")).toMatchObject({
      quantity: 0,
      note:
        "7 x tread from 2 of oak 10 ft and 1 of oak 38: 330.00, 20.00 less, the least there is; CUTS plans them; a cut takes 1/8 " +
        "in (3.175 mm)",
    });
    // By hand: 3 x 37 1/4 and two cuts are 112 of 120. 13 x 52.50 = 682.50; five of 120 are 700; four and one of 42 are 560 + 52.50 =
    // 612.50.
    expect(order({ width: inches(37.25) }, short("oak 42", 42, 52.5), long(140)).find(({ item }) => item === "saving")).toMatchObject({
      note:
        "13 x tread from 4 of oak 10 ft and 1 of oak 42: 612.50, 70.00 less, the least there is; CUTS plans them; a cut takes 1/8 " +
        "in (3.175 mm)",
    });
  });

  test("what is on hand is cut first, and no two savings count on the same board", () => {
    // By hand: the board on hand gives 3 of 36 3/4 for nothing, 676 - 3 x 52 = 520; the landing nosing of the same length finds none of it
    // left.
    const owned: BlankStock = { label: "rack", length: inches(120), width: inches(11.5), thickness: inches(1), available: 1, owned: true };
    expect(rowsOf("saving", { ...plain, landingNosing: true }, [...STOCK, owned]).map(({ note }) => note)).toEqual([
      "13 x tread from 1 of rack (on hand) and 10 of oak 42: 520.00, 156.00 less, the least there is; CUTS plans them; a cut " +
        "takes 1/8 in (3.175 mm)",
    ]);
  });

  test("no saving where it is none: the cheapest of all plans of a kind, tried by hand", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 30, max: 80 }),
        fc.array(fc.tuple(fc.integer({ min: 36, max: 150 }), fc.integer({ min: 20, max: 200 })), { minLength: 1, maxLength: 4 }),
        (treads, first, others) => {
          const boards = [[36, first] as const, ...others];
          const stock = boards.map(([length, price], at): BlankStock => ({
            label: `board ${at}`,
            length: inches(length),
            width: inches(11.5),
            thickness: inches(1),
            price: exact(price),
            available: Infinity,
            owned: false,
          }));
          const rows = ordered({ ...plain, totalRise: inches(7 * (treads + 1)), risers: treads + 1, width: inches(36) }, stock);
          // every way to buy: the least that so many treads cost, one board more at a time
          const least = Array.from({ length: treads + 1 }, () => Infinity);
          least[0] = 0;
          for (let count = 1; count <= treads; count += 1) {
            for (const [length, price] of boards)
              least[count] = Math.min(least[count]!, price + least[Math.max(0, count - Math.floor((length + 0.125) / 36.125))]!);
          }
          const paid = rows.flatMap((row) => ("price" in row ? [row.cost.toNumber()] : [])).reduce((all, each) => all + each, 0);
          const said = rows.flatMap(({ item, note = "" }) => (item === "saving" ? [Number(/: ([0-9.]+),/.exec(note)![1])] : []));
          expect(said).toEqual(least[treads]! < paid ? [least[treads]] : []);
        },
      ),
      { seed: 8_140, numRuns: 300 },
    );
  });

  test("a stair in mm is told in mm", () => {
    const blanks = blanksOf({ ...plain, totalRise: lengthOf(1500, "mm"), risers: 8, width: lengthOf(900, "mm") });
    if (typeof blanks === "string") throw new Error(blanks);
    const board = (length: number, price: number): BlankStock => ({
      length: lengthOf(length, "mm"),
      width: lengthOf(290, "mm"),
      thickness: inches(1),
      price: exact(price),
      available: Infinity,
      owned: false,
    });
    const rows = blankOrder(blanks, [board(950, 50), board(3050, 140)], "mm");
    if (isProblem(rows)) throw new Error(rows.problem);
    // By hand: 3 x 900 and two cuts of 3.175, taken as 3.2, are 2706.4 of 3050; 2 x 140 + 50 = 330 against 7 x 50.
    expect(rows.find(({ item }) => item === "saving")).toMatchObject({
      note:
        "7 x tread from 2 of the board of 3050 mm and 1 of the board of 950 mm: 330.00, 20.00 less, the least there is; CUTS plans " +
        "them; a cut takes 3.175 mm (1/8 in)",
    });
  });

  test("and not where they cost as much, are too few, too thick or too narrow, or hold only one", () => {
    // By hand: 156 for three is 52 each, what one of oak 42 costs; a cent less saves 4 of them.
    expect(savings(long(156))).toEqual([]);
    expect(savings(long(155.99))).toEqual([expect.stringContaining(": 675.96, 0.04 less")]);
    // By hand: one of it gives 3 for 120, and ten of oak 42 are 520: 640; none of it saves nothing.
    expect(savings(long(120, 120, 1))).toEqual([expect.stringContaining("1 of oak 10 ft and 10 of oak 42: 640.00, 36.00 less")]);
    expect(savings(long(120, 120, 0))).toEqual([]);
    expect(savings({ ...long(20), thickness: inches(1.25) })).toEqual([]);
    expect(savings({ ...long(20), width: inches(11) })).toEqual([]);
    // By hand: two and a cut are 73 5/8, exactly the board; a 64th less holds one.
    expect(savings(long(20, 73.625))).toHaveLength(1);
    // By hand: one of 73 39/64 covers a tread at 60.00, dearer than the 52.00 of oak 42, and saves nothing; at 20.00 it does: 13 x 20 =
    // 260.
    expect(savings(long(60, 73.609375))).toEqual([]);
    expect(savings(long(20, 73.609375))).toEqual([expect.stringContaining("13 of oak 10 ft: 260.00, 416.00 less")]);
  });

  test("a longer blank that costs less than the exact one is the one ordered", () => {
    const dear = STOCK.map((stock) => (stock.label === "oak 42" ? { ...stock, price: exact(70) } : stock));
    expect(bought(plain, dear).map(({ item, quantity }) => [item, quantity])).toEqual([["oak 48", 13]]);
  });
});

// By hand: 36 3/4 + 1/4 = 37 past one open skirt, + 1/2 past two; 1/4 in is common practice, no source, and RISERFIT's default too.
test("risers run 1/4 in past an open skirt where nobody says otherwise, and the note says so", () => {
  const { runPast: _runPast, ...bare } = STAIR;
  const riserOf = (facts: StairFacts): readonly [number, boolean] => {
    const blanks = blanksOf(facts);
    const riser = typeof blanks === "string" ? undefined : blanks.find(({ item }) => item === "riser");
    return riser === undefined ? [0, false] : [measure(riser.length, "in"), riser.note.includes("1/4 in longer at each open end (assumed")];
  };
  expect(riserOf(bare)).toEqual([37, true]);
  expect(riserOf({ ...bare, openEnd: "both" })).toEqual([37.25, true]);
  expect(riserOf({ ...bare, openEnd: "none" })).toEqual([36.75, false]);
  expect(riserOf({ ...bare, runPast: inches(0) })).toEqual([36.75, false]);
  expect(riserOf({ ...bare, runPast: inches(0.25) })).toEqual([37, false]);
});

test("a lap of more than the tread is refused, as RISERHEIGHT refuses it", () => {
  expect([blanksOf({ ...STAIR, lap: inches(1.25) }), typeof blanksOf({ ...STAIR, lap: inches(1) })]).toEqual(["lap-over-tread", "object"]);
});
