import { Exact } from "../../../../src/solver/length/exact";
import type { PartShelf } from "../../../../src/solver/yield/sheets/part-shelf";
import { sheetPartProof } from "../../../../src/solver/yield/sheets/sheet-proof";

/** Five pieces of one kind, a sheet at 30 that holds two and one at 50 that holds four; a unit of money counts 100. */
const PART: PartShelf = {
  pieceRows: [[0]], stockRows: [[0], [1]], moneyUnit: new Exact(1), steps: 100,
  shelf: {
    kinds: [{ length: 10, width: 10, wanted: 5, turns: false }],
    sheets: [{ length: 40, width: 10, cost: 5_004, available: 5 }, { length: 20, width: 10, cost: 3_002, available: 5 }],
    takes: [[true], [true]], firsts: ["rip"], kerf: 0,
  },
};
const BY_COUNT = { worth: [1], total: 5, most: [4, 2] };
/** The same in other numbers, and one that says less: a sheet holds all. */
const TWICE = { worth: [2], total: 10, most: [8, 4] };
const WEAK = { worth: [1], total: 5, most: [5, 5] };

// by hand: 80 for one of each is the least; below it are up to one of 50, or up to two of 30
const LEAST = 8_006;

test("of laws that say the same only one is kept, and none that says less", () => {
  const proof = sheetPartProof(PART, { worths: [WEAK, BY_COUNT, TWICE], tooSmall: [] }, LEAST);
  expect(proof).toEqual({ pieceRows: [[0]], stockRows: [[0], [1]], laws: [{ worth: [1], holds: [4, 2] }], tooSmall: [] });
});

test("what was searched through is named only where no law shows it", () => {
  expect(sheetPartProof(PART, { worths: [WEAK, BY_COUNT], tooSmall: [[1, 0]] }, LEAST)?.tooSmall).toEqual([]);
  const searched = sheetPartProof(PART, { worths: [WEAK], tooSmall: [[1, 0], [0, 2]] }, LEAST);
  expect(searched?.tooSmall.map((counts) => counts.join()).sort()).toEqual(["0,2", "1,0"]);
});

test("only money is claimed: what costs as much in money need not be shown too small", () => {
  // by hand: for 30 no sheet at all is the one choice below, whatever the area, and no sheet holds no piece
  expect(sheetPartProof(PART, { worths: [WEAK], tooSmall: [] }, 3_002)?.laws).toEqual([{ worth: [1], holds: [5, 5] }]);
  expect(sheetPartProof(PART, { worths: [], tooSmall: [] }, 2)?.laws).toEqual([]);
});

test("nothing is kept where what is known does not show the bound", () => {
  expect(sheetPartProof(PART, { worths: [WEAK], tooSmall: [[1, 0]] }, LEAST)).toBeUndefined();
});
