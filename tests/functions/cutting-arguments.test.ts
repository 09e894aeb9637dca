import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";

/** What PLAN says is wrong with a job; by hand: which cell is no length, number or price of the job, common practice, no source. */
const wrong = (...given: readonly unknown[]): string => {
  const answer = call(catalogue.find(({ id }) => id === "PLAN")!, given);
  return isFailed(answer) ? answer.says : JSON.stringify(answer);
};

const PIECES = [["length", "quantity", "label"], [20, 2, "cove"]];
const STOCK = [["length", "price", "available"], [96, 5, "any"]];

test.each<[string, readonly unknown[], string]>([
  ["no pieces", [[["length", "quantity"]], STOCK], "pieces: has no rows; give a table with length"],
  ["no stock", [PIECES, [["length", "price"]]], "stock: has no rows; give a table with length"],
  [
    "a piece of no length",
    [
      [
        ["length", "label"],
        ['0"', "skirt"],
      ],
      STOCK,
    ],
    'length in row 2 (skirt): must be more than 0, got "0""',
  ],
  [
    "half a piece",
    [
      [
        ["length", "quantity", "label"],
        [9, 1.5, "cove"],
      ],
      STOCK,
    ],
    "quantity in row 2 (cove): must be a whole number, got 1.5",
  ],
  [
    "fewer than no pieces",
    [
      [
        ["length", "quantity", "label"],
        [9, -1, "cove"],
      ],
      STOCK,
    ],
    "quantity in row 2 (cove): must be more than 0, got -1",
  ],
  [
    "stock of less than no length",
    [
      PIECES,
      [
        ["length", "price"],
        [-1, 5],
      ],
    ],
    "length in row 2: must be more than 0, got -1",
  ],
  [
    "half a stick",
    [
      PIECES,
      [
        ["length", "price", "available"],
        [96, 5, 0.5],
      ],
    ],
    "available in row 2: must be a whole number, got 0.5",
  ],
  [
    "fewer than no sticks",
    [
      PIECES,
      [
        ["length", "price", "available"],
        [96, 5, -1],
      ],
    ],
    "available in row 2: must be 0 or more, got -1",
  ],
  [
    "a negative price",
    [
      PIECES,
      [
        ["length", "price"],
        [96, -1],
      ],
    ],
    "price in row 2: must be 0 or more, got -1",
  ],
  ["a negative kerf", [PIECES, STOCK, -0.125], "kerf: must be 0 or more, got -0.125"],
  ["a negative trim", [PIECES, STOCK, 0, -1], "trim: must be 0 or more, got -1"],
  ["a negative keep", [PIECES, STOCK, 0, 0, -1], "keep: must be 0 or more, got -1"],
  [
    "stock to buy without a price",
    [
      PIECES,
      [
        ["length", "label"],
        [96, "oak"],
      ],
    ],
    'price: stock oak (96") is empty or 0; give its price, or write yes under owned if it is on hand',
  ],
])("%s is refused where the job is read", (_, given, says) => {
  expect(wrong(...given)).toBe(says);
});
