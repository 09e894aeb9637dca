import { call } from "../../src/functions/call";
import { EXTEND } from "../../src/functions/bid/extend";
import { isFailed } from "../../src/functions/cells";
import { TOTAL } from "../../src/functions/notation/total";
import { LUMBERORDER } from "../../src/functions/yield/lumberorder";
import { TALLY } from "../../src/functions/yield/tally";

type Cells = readonly (readonly unknown[])[];

const answered = (declaration: Parameters<typeof call>[0], ...cells: unknown[]): Cells => {
  const answer = call(declaration, cells);
  if (!Array.isArray(answer)) throw new Error(isFailed(answer) ? answer.says : String(answer));
  return answer;
};
const says = (declaration: Parameters<typeof call>[0], ...cells: unknown[]): string => {
  const answer = call(declaration, cells);
  return isFailed(answer) ? answer.says : "no error";
};
const column = (rows: Cells, heading: string): readonly unknown[] => {
  const [headings = [], ...body] = rows;
  return body.map((row) => row[headings.indexOf(heading)]);
};

const HEADINGS = ["label", "length", "width", "thickness"] as const;
const BOARD = [7, 132, 8, "4/4"] as const;
/** One board with one more column. */
const withCell = (heading: string, cell: unknown): Cells => [[...HEADINGS, heading], [...BOARD, cell]];
const withThickness = (cell: unknown): Cells => [[...HEADINGS], [7, 132, 8, cell]];

describe("what is wrong with a tally, in a sentence", () => {
  test.each<[Cells, string]>([
    [[[...HEADINGS], [...BOARD], [8, 96, 6, 1], [...BOARD]], "label: board 7 stands in rows 2 and 4; give each board its own"],
    [withThickness(45782), "thickness: board 7: 45782 is over 16 in; the cell may hold a date: write '5/4 as text"],
    [withThickness(-1), "thickness: board 7: must be more than 0, got -1"],
    [withThickness("thick"), 'thickness: board 7: read "thick", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"'],
    [withThickness("18 in"), 'thickness: board 7: must be 16 in or less, got "18 in"'],
    [withThickness("0/4"), 'thickness: board 7: must be 4/4 to 64/4, got "0/4"'],
    [withCell("defects", "31-34"), 'defects: board 7: read "31-34", which is no range; write 31 to 34, several as 31 to 34; 88 1/2 to 92'],
    [withCell("clear", 34), 'clear: board 7: read "34", which is no range; write 31 to 34, several as 31 to 34; 88 1/2 to 92'],
    [
      withCell("defects", "31 to 34; x to 9"),
      'defects: board 7: read "x", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
    ],
    [
      withCell("defects", "3 to y"),
      'defects: board 7: read "y", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
    ],
    [withCell("clear", "34 to 31"), 'clear: board 7: 34" to 31" runs backwards; write the smaller first'],
    [withCell("defects", "140 to 146"), 'defects: board 7: 140" to 146" lies past its end (132"); measure again'],
    [
      [[...HEADINGS, "defects", "clear"], [...BOARD, "3 to 4", "5 to 9"]],
      "defects: board 7 has both defects and clear; give one of the two",
    ],
    [
      [[...HEADINGS, "clear", "quantity"], [...BOARD, "5 to 9", 3]],
      "clear: board 7 has a quantity of 3; give each board with ranges its own row",
    ],
    [withCell("edge", 8), 'edge: board 7 loses 8" of a width of 8"; give what is cut off both edges'],
    [
      [[...HEADINGS, "price", "board foot price"], [...BOARD, 66, 5.6]],
      "price: board 7 has a price of 66 and a board foot price of 5.6; keep one",
    ],
    [
      [[...HEADINGS, "board foot price"], [...BOARD, 5.6], ["", 96, 6, "4/4", ""]],
      "board foot price: board in row 3 has none, and no price; give one, or write yes under owned",
    ],
    [withCell("lot price", 95), "lot: board 7 has a lot price of 95 and no lot; name its lot"],
    [
      [[...HEADINGS, "lot", "price"], [...BOARD, "X", ""], [8, 96, 6, "4/4", "", 20]],
      "lot price: lot X has none, and board 7 no price of its own; give the lot price on one of its rows",
    ],
    [
      [[...HEADINGS, "lot", "lot price", "price"], [...BOARD, "X", 95, 20]],
      "lot price: board 7 is in lot X for 95 and has a price of 20 itself; keep one",
    ],
    [
      [[...HEADINGS, "lot", "lot price"], [...BOARD, "X", 95], [8, 96, 6, "4/4", "X", 130]],
      "lot price: lot X has two, 95 and 130; keep one",
    ],
    [[[...HEADINGS], [7, 3353, 203, "4/4"]], 'length: board 7: 3353 in is over 720 in; if this is millimetres, write "3353 mm"'],
    [[[...HEADINGS], [7, 132, 203, "4/4"]], 'width: board 7: 203 in is over 72 in; if this is millimetres, write "203 mm"'],
    [[[...HEADINGS], [7, "", 8, "4/4"]], "length in row 2 (7): is empty or 0; give a value"],
    [[["label", "length", "width"], [7, 132, 8]], 'tally: heading "thickness" is missing; found label, length, width'],
    [[[...BOARD]], "tally: measured boards are not read by their place; give headings"],
  ])("%j", (tally, sentence) => {
    expect(says(TALLY, tally)).toBe(sentence);
  });

  test("a shrinkage of everything", () => {
    expect(says(TALLY, withCell("price", 5), undefined, 1)).toBe("shrinkage: 100 % leaves no wood; write less, such as 7%");
  });
});

describe("a tally as it is typed", () => {
  test("quarters are inches beside millimetres, and in any spacing", () => {
    // By hand: 8 ft x 6 in / 12 = 4, x 5/4 = 5.
    const metric = [[...HEADINGS], [1, "2438.4 mm", "152.4 mm", " 5 / 4"], [2, 96, "6", 1.25], [3, "8'", 6, "31.75 mm"]];
    expect(column(answered(TALLY, metric), "board feet")).toEqual([5, 5, 5, 15]);
  });

  test("its result is a tally again, of the same board feet and money; its totals are passed over", () => {
    const tally = [
      [...HEADINGS, "board foot price", "lot", "lot price", "owned", "defects", "edge"],
      ["a", 102, 5.25, "5/4", 5.6, "", "", "", "31 to 34", 0.25],
      ["b", 144, 6.5, "5/4", 5.6, "", "", "", "", ""],
      ["c", 96, 6, "8/4", "", "X", 40, "", "", ""],
      ["d", 96, 6, "4/4", "", "", "", "yes", "", ""],
    ];
    const once = answered(TALLY, tally);
    expect(answered(TALLY, once)).toEqual(once);
    expect(column(once, "label")).toEqual(["a", "b", "c", "d", "total", "total", "total"]);
  });

  test("a column of one's own, and a note, are passed over", () => {
    expect(answered(TALLY, [[...HEADINGS, "bay", "note"], [...BOARD, 3, "dry"]])).toHaveLength(3);
  });
});

const PIECES = [
  ["label", "quantity", "length", "width", "thickness", "grade", "species"],
  ["riser", 13, 40, 7.25, 0.75, "1C", "red oak"],
  ["skirt", 2, 132, 9.25, 0.75, "FAS", "red oak"],
  ["tread", 13, 43, 11.5, 1, "FAS", "red oak"],
] as const;

describe("an order of lumber", () => {
  test("is priced by EXTEND, by its item, in board feet", () => {
    const prices = [
      ["item", "price", "unit"], ["4/4 1C red oak", 4, "bf"], ["4/4 FAS red oak", 6, "bf"], ["5/4 FAS red oak", 7, "board foot"],
    ];
    const priced = answered(EXTEND, answered(LUMBERORDER, PIECES), prices);
    // By hand: 40 x 4, 21 x 6, 67 x 7.
    expect(column(priced, "cost")).toEqual([160, 126, 469]);
    expect(call(TOTAL, [priced, "cost"])).toBe(755);
  });

  test.each<[Cells, Cells | undefined, string]>([
    [[["label", "length", "thickness", "grade"], ["a", 40, 1, "FAS"]], undefined, "width: piece a has none; board feet need it"],
    [[["label", "length", "width", "grade"], ["a", 40, 8, "FAS"]], undefined, "thickness: piece a has none; give the finished thickness"],
    [
      [["step", "length", "width", "thickness"], [3, 40, 8, 1]], undefined,
      "grade: piece 3 has none; give the grade it is made of, such as FAS",
    ],
    [
      [["length", "width", "thickness", "grade"], [40, 8, 3, "FAS"]], undefined,
      'thickness: piece in row 2 is 3" thick, more than 12/4 dresses to (2 3/4"); laminate it, or order it by itself',
    ],
    [
      [["item", "length", "width", "thickness", "grade"], ["cap", 40, 8, 1, "prime"]], undefined,
      "allowances: none for piece cap of grade prime; give one under item prime or 5/4 prime",
    ],
    [PIECES, [["FAS", 0.1], ["fas", 0.2]], "allowances: fas has two, in rows 1 and 2; keep one"],
  ])("refuses %j", (pieces, allowances, sentence) => {
    expect(says(LUMBERORDER, pieces, allowances)).toBe(sentence);
  });

  test("refuses waste beside allowance by name: it is a share of what is bought, 50 % added are 33 1/3 % of it", () => {
    expect(says(LUMBERORDER, PIECES, [["item", "allowance", "waste"], ["FAS", 0.5, 0.333]])).toMatch(
      /^allowances: heading "waste" is not read here; .* rename the column or leave it out$/,
    );
  });
});
