import * as fc from "fast-check";
import { EXTEND } from "../../../src/functions/bid/extend";
import { call } from "../../../src/functions/call";
import { extension } from "../../../src/solver/bid/extension";
import { Exact } from "../../../src/solver/length/exact";

type Cells = readonly (readonly unknown[])[];

const withNotes = (quantities: Cells, prices: Cells): unknown[][] => {
  const rows = call(EXTEND, [quantities, prices, false]);
  if (!Array.isArray(rows)) throw new Error(JSON.stringify(rows));
  return rows;
};

/** The rows up to their cost. */
const extended = (quantities: Cells, prices: Cells): unknown[][] => withNotes(quantities, prices).map((row) => row.slice(0, -1));

const notes = (quantities: Cells, prices: Cells): unknown[] => withNotes(quantities, prices).map((row) => row[row.length - 1]);

/** A row whose price and cost both say why there is none. */
const withReason = (item: string, quantity: number, unit: string, failed: string, says: string): unknown[][] => [
  [item, quantity, unit, { failed, says }, { failed, says }],
];

test("Hicks, The Builders' Guide, Estimating Labor for Carpentry Work: five men 60 and 48 days at 2.50 cost 750 and 600", () => {
  const prices = [["labour", 2.5, "day"]];
  expect(extended([["labour", 300, "day"], ["labour", 240, "day"]], prices)).toEqual([
    ["labour", 300, "day", 2.5, 750],
    ["labour", 240, "day", 2.5, 600],
  ]);
});

test("Practical Mathematics, Massachusetts Dept. of Education: 1,064 board feet at 30 a thousand", () => {
  // the book multiplies 19 x 56 to 1,054 and prints 31.62; by hand 19 x 56 = 1,064, x 0.03 = 31.92
  expect(extended([["3 x 10", 1064, "board foot"]], [["3 x 10", 0.03, "board foot"]])).toEqual([
    ["3 x 10", 1064, "board foot", 0.03, 31.92],
  ]);
});

// Printed costs: Wood Technology & Processes, self-check math quiz 13; Board foot quiz with answers.
test.each([
  [800, 6.72, 5376],
  [7, 4.25, 29.75],
  [13, 2.75, 35.75],
  [8.5, 2.75, 23.38],
])("%d at %d cost %d, half a cent going up", (quantity, price, cost) => {
  expect(extended([["wood", quantity]], [["wood", price]])).toEqual([["wood", quantity, "", price, cost]]);
});

test("the goods of an invented stair", () => {
  const quantities = [["item", "quantity"], ["blank", 13], ["16 ft board", 2], ["8 ft board", 2], ["skirt", 2], ["cove", 6]];
  const prices = [["item", "price"], ["blank", 52], ["16 ft board", 38], ["8 ft board", 18], ["skirt", 84], ["cove", 6.6]];
  // by hand: 13 x 52 = 676, 2 x 38 = 76, 2 x 18 = 36, 2 x 84 = 168, 6 x 6.60 = 39.60
  expect(extended(quantities, prices).map((row) => row[4])).toEqual([676, 76, 36, 168, 39.6]);
});

test("costs round half a cent away from zero, credits like charges", () => {
  // by hand: 84.5 x 1.13 = 95.485; 0.5 x 0.01 = 0.005
  expect(extended([["cove", 84.5], ["cove", -84.5]], [["cove", 1.13]])).toEqual([
    ["cove", 84.5, "", 1.13, 95.49],
    ["cove", -84.5, "", 1.13, -95.49],
  ]);
  expect(extended([["shim", 0.5], ["credit", 0.5]], [["shim", 0.01], ["credit", -0.01]])).toEqual([
    ["shim", 0.5, "", 0.01, 0.01],
    ["credit", 0.5, "", -0.01, -0.01],
  ]);
});

describe("finding the price", () => {
  test("items match without regard to case and spaces, units without full stops too", () => {
    expect(extended([["1 x 8 riser", 3, "sq. ft"]], [["1x8 Riser", 4, "Sq Ft"]])).toEqual([["1 x 8 riser", 3, "sq. ft", 4, 12]]);
  });

  test("the letters of any script tell items apart", () => {
    expect(extended([["ступень", 2], ["перила", 3]], [["ступень", 52], ["перила", 9]])).toEqual([
      ["ступень", 2, "", 52, 104],
      ["перила", 3, "", 9, 27],
    ]);
  });

  test("each mark counts: oak 4/4 is not oak 44, nor 1 1/4 in 11/4 or 4½ in 41/2", () => {
    const pairs = [["oak 4/4", "oak 44"], ["oak 1 1/4", "oak 11/4"], ["oak 4½", "oak 41/2"], ["oak #1", "oak 1"]] as const;
    for (const [one, other] of pairs) {
      // By hand: 10 at 5, 2 at 300; both prices stand, so neither item has two.
      expect(withNotes([[one, 10], [other, 2]], [[one, 5], [other, 300]])).toEqual([
        [one, 10, "", 5, 50, `like "${other}" in row 2: same goods?`],
        [other, 2, "", 300, 600, `like "${one}" in row 1: same goods?`],
      ]);
    }
  });

  test("marks that are written in several ways are one", () => {
    expect(
      extended(
        [
          ["oak 1½", 2],
          ["3 × 10", 2],
          ["8’", 2],
          ["oak – clear", 2],
        ],
        [
          ["Oak  1 1/2", 5],
          ["3X10", 6],
          ["8'", 7],
          ["oak-clear", 8],
        ],
      ).map((row) => row[4]),
    ).toEqual([10, 12, 14, 16]);
  });

  test("names of a takeoff match in either spelling, one or many, and labour too", () => {
    const prices = [["mitred return", 6.75], ["notch", 1], ["labor", 65]];
    expect(extended([["Mitered returns", 2, ""], ["notches", 3, ""]], prices).map((row) => row[4])).toEqual([13.5, 3]);
    expect(extended([["fit treads", 2, "hrs"]], prices)).toEqual([["fit treads", 2, "hrs", 65, 130]]);
  });

  test("a price by the unit wins over one for any unit, which serves only where it is the item's only one", () => {
    const prices = [["cove", 2, ""], ["cove", 6.6, "each"], ["cap", 3, ""]];
    const only = "only for each, no unit; add one; a price without a unit fits any unit where it is the only one";
    expect(extended([["cove", 6, "each"], ["cap", 10, "ft"], ["cap", 10, ""]], prices)).toEqual([
      ["cove", 6, "each", 6.6, 39.6],
      ["cap", 10, "ft", 3, 30],
      ["cap", 10, "", 3, 30],
    ]);
    expect(extended([["cove", 10, "ft"]], prices)).toEqual(
      withReason("cove", 10, "ft", "#N/A", `price: "cove" has no price for unit "ft", ${only}`),
    );
  });

  test("a table that gives no unit at all counts pieces", () => {
    expect(extended([["cove", 6, ""]], [["cove", 6.6, "each"], ["cove", 2, "ft"]])).toEqual([["cove", 6, "each", 6.6, 39.6]]);
    const says = 'quantities, oak: unit is empty in row 1; other rows of "oak" are in bf; give the unit';
    expect(extended([["oak", 3, ""]], [["oak", 9, "bf"]])).toEqual(withReason("oak", 3, "", "#VALUE!", says));
  });

  test("an empty unit among others is refused where the price has a unit", () => {
    const says = 'quantities, cove: unit is empty in row 1; other rows of "cove" are in each; give the unit';
    expect(extended([["cove", 6, ""], ["cap", 1, "each"]], [["cove", 6.6, "each"], ["cap", 3, ""]])).toEqual([
      ...withReason("cove", 6, "", "#VALUE!", says),
      ["cap", 1, "each", 3, 3],
    ]);
  });

  test("units of one kind are converted, exactly", () => {
    const prices = [["moulding", 1.13, "LF"], ["oak", 9000, "MBF"], ["screws", 0.1, "ea."], ["sanding", 60, "hours"], ["film", 1, "sq m"]];
    // By hand: 144 in are 12 ft, 13.56; 24 bf of 9 a foot; 2 dozen at 0.10; 15 minutes of 60; 100 sq ft are 9.290304 sq m.
    expect(
      extended(
        [
          ["moulding", 144, "in"],
          ["oak", 24, "Bd. Ft."],
          ["screws", 2, "doz"],
          ["sanding", 15, "min"],
          ["film", 100, "SF"],
        ],
        prices,
      ).map((row) => row[4]),
    ).toEqual([13.56, 216, 2.4, 15, 9.29]);
    expect(
      extended(
        [
          ["moulding", 10, "ft"],
          ["moulding", 10, "'"],
          ["moulding", 3.048, "m"],
        ],
        prices,
      ).map((row) => row[4]),
    ).toEqual([11.3, 11.3, 11.3]);
  });

  test("prices for two units of one kind serve a third where they agree, and are refused where they do not", () => {
    expect(extended([["moulding", 1, "yd"]], [["moulding", 1.2, "ft"], ["moulding", 0.1, "in"]]).map((row) => row[4])).toEqual([3.6]);
    expect(
      extended(
        [["moulding", 1, "yd"]],
        [
          ["moulding", 1.2, "ft"],
          ["moulding", 0.2, "in"],
        ],
      ),
    ).toEqual(
      withReason(
        "moulding",
        1,
        "yd",
        "#N/A",
        'price: "moulding" has prices for several units that differ, ft, in; give a price for the unit of the quantity',
      ),
    );
  });

  test("a word that is no unit of ours is itself alone", () => {
    expect(
      extended(
        [
          ["glue", 2, "Boxes"],
          ["glue", 3, "tube"],
        ],
        [
          ["glue", 40, "box"],
          ["glue", 6, "tubes"],
        ],
      ).map((row) => row[4]),
    ).toEqual([80, 18]);
  });

  test("labour prices every hour without a price of its own, and only hours", () => {
    const prices = [["labour", 65, "hour"], ["scribing", 80, "hour"], ["tread", 52, "each"]];
    expect(extended([["fit treads", 6.5, "hour"], ["scribing", 2, "hour"], ["tread", 1, "hour"], ["Labour", 1, "hour"]], prices)).toEqual([
      ["fit treads", 6.5, "hour", 65, 422.5],
      ["scribing", 2, "hour", 80, 160],
      ["tread", 1, "hour", 65, 65],
      ["Labour", 1, "hour", 65, 65],
    ]);
    expect(extended([["glue", 3, "each"]], prices)).toEqual(
      withReason("glue", 3, "each", "#N/A", 'price: "glue" has no price; add one to prices'),
    );
  });

  test("a price without a unit is not taken for an hour where labour has another price", () => {
    expect(
      extended(
        [["tread", 6.5, "hour"]],
        [
          ["tread", 52, ""],
          ["labour", 65, "hour"],
        ],
      ),
    ).toEqual(
      withReason(
        "tread",
        6.5,
        "hour",
        "#VALUE!",
        'price: an hour of "tread" has two prices, 52 of its own without a unit and 65 as labour; give its own price a unit',
      ),
    );
    expect(extended([["crane", 2, "hour"]], [["crane", 150, ""]])).toEqual([["crane", 2, "hour", 150, 300]]);
  });

  test("an item without a price says so in its row, with the nearest one, and the other rows answer", () => {
    const says = 'price: "caps" has no price; like "cap" in row 2 of prices: same goods? write one name';
    expect(extended([["caps", 6, "each"], ["blank", 2, "each"]], [["blank", 52, "each"], ["cap", 6.6, "each"]])).toEqual([
      ["caps", 6, "each", { failed: "#N/A", says }, { failed: "#N/A", says }],
      ["blank", 2, "each", 52, 104],
    ]);
  });

  test("an hour without a price asks for labour", () => {
    expect(extended([["fit treads", 6, "hour"]], [["work", 65, "hour"]])).toEqual(
      withReason(
        "fit treads",
        6,
        "hour",
        "#N/A",
        'price: "fit treads" has no price by the hour, and there is no price "labour" with unit hour; add one to prices',
      ),
    );
  });

  test("a price in another unit is not used, and is named", () => {
    expect(
      extended(
        [["cove", 6, "ft"]],
        [
          ["cove", 6.6, "each"],
          ["blank", 52, "each"],
        ],
      ),
    ).toEqual(
      withReason(
        "cove",
        6,
        "ft",
        "#N/A",
        'price: "cove" has no price for unit "ft", only for each; add one; a price without a unit fits any unit where it is the only one',
      ),
    );
  });

  test("two different prices for one item and unit are both named; the same price twice is no trouble", () => {
    expect(extended([["cove", 6, "each"]], [["cove", 6.6, "each"], ["Cove", 7.2, "Each"]])).toEqual(
      withReason("cove", 6, "each", "#VALUE!", 'price: "cove" has two prices for each, 6.6 and 7.2; keep one'),
    );
    expect(extended([["cove", 6]], [["cove", 6.6], ["COVE", 6.6]])).toEqual([["cove", 6, "", 6.6, 39.6]]);
  });

  test("marks alone, such as those of feet and inches, are units too", () => {
    expect(extended([["cove", 6, "'"], ["cove", 6, '"']], [["cove", 2, "'"], ["cove", 0.2, '"']])).toEqual([
      ["cove", 6, "'", 2, 12],
      ["cove", 6, '"', 0.2, 1.2],
    ]);
  });
});

test("names one slip apart are named in both rows, two from nine letters on, and stay apart", () => {
  const near = [["oak blank", "oak blnak"], ["oak blank 42", "oak blanks 42"], ["stair tread", "stiar treads"]] as const;
  for (const [one, other] of near) {
    expect(
      notes(
        [
          [one, 1],
          [other, 2],
        ],
        [
          [one, 5],
          [other, 6],
        ],
      ),
    ).toEqual([`like "${other}" in row 2: same goods?`, `like "${one}" in row 1: same goods?`]);
  }
  const apart = [
    ["poplar 16 ft", "poplar 10 ft"],
    ["oak", "ash"],
    ["oak blank", "oak plenk"],
    ["tread without return", "tread with one return"],
  ] as const;
  for (const [one, other] of apart) expect(notes([[one, 1], [other, 2]], [[one, 5], [other, 6]])).toEqual(["", ""]);
});

describe("rows that cannot be read", () => {
  test("a bad quantity shows its reason in its own row", () => {
    const bad = { failed: "#VALUE!", says: 'quantity in row 1 (cove): must be a number, got "six"' };
    expect(extended([["cove", "six"], ["blank", 2]], [["cove", 6.6], ["blank", 52]])).toEqual([
      ["cove", bad, "", bad, bad],
      ["blank", 2, "", 52, 104],
    ]);
  });

  test("a bad price shows its reason at its item alone", () => {
    const bad = { failed: "#VALUE!", says: 'price in row 1 (cove): must be an amount of money, got "ask"' };
    expect(extended([["cove", 6], ["blank", 2]], [["cove", "ask"], ["blank", 52]])).toEqual([
      ["cove", 6, "", bad, bad],
      ["blank", 2, "", 52, 104],
    ]);
  });

  test("a price row without an item shows up where a price is missing", () => {
    const bad = { failed: "#VALUE!", says: "item in row 2: is empty or 0; give a value" };
    expect(extended([["cove", 6], ["blank", 2]], [["blank", 52], ["", 6.6]])).toEqual([
      ["cove", 6, "", bad, bad],
      ["blank", 2, "", 52, 104],
    ]);
  });

  test.each([
    [[[["item", "quantity"]], [["cove", 6.6]]], "quantities: has no rows; give a table with item, quantity"],
    [
      [
        [["cove", 6]],
        [
          ["item", "unit"],
          ["cove", "each"],
        ],
      ],
      'prices: heading "price" is missing; found item, unit',
    ],
    [
      [[["cove", 6]]],
      'prices: is missing; give what one unit of an item costs; a row "labour" with unit "hour" prices every hour that has no ' +
        "price of its own",
    ],
  ])("%j is refused in words", (cells, says) => {
    expect(call(EXTEND, cells)).toEqual({ failed: "#VALUE!", says });
  });
});

const item = fc.constantFrom("blank", "cove", "skirt");
const money = fc.integer({ min: -100000, max: 100000 }).map((tenThousandths) => new Exact(tenThousandths).div(10000));

test("a return costs what the purchase cost, with its sign turned", () => {
  fc.assert(
    fc.property(item, fc.integer({ min: 0, max: 100000 }), money, (name, thousandths, price) => {
      const row = { item: name, quantity: thousandths / 1000, unit: "", row: 1 };
      const [bought, returned] = extension<never>([row, { ...row, quantity: -row.quantity }], [{ item: name, price, unit: "", row: 1 }]);
      expect(returned?.cost?.eq(bought?.cost?.neg() ?? NaN)).toBe(true);
    }),
  );
});

test("the order of the prices changes no cost", () => {
  const row = fc.record({
    row: fc.constant(1),
    item,
    price: fc.integer({ min: 0, max: 3 }).map((value) => new Exact(value)),
    unit: fc.constantFrom("", "each", "ft", "hour"),
  });
  const wanted = fc.record({
    row: fc.constant(1),
    item,
    quantity: fc.integer({ min: -9, max: 9 }),
    unit: fc.constantFrom("", "each", "ft", "hour"),
  });
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), fc.array(wanted, { minLength: 1, maxLength: 5 }), (prices, quantities) => {
      const costs = (list: typeof prices) => extension<never>(quantities, list).map(({ cost }) => cost?.toNumber());
      expect(costs([...prices].reverse())).toEqual(costs(prices));
    }),
  );
});
