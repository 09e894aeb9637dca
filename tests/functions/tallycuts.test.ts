import { call } from "../../src/functions/call";
import { isFailed } from "../../src/functions/cells";
import { BUY } from "../../src/functions/yield/buy";
import { CUTS } from "../../src/functions/yield/cuts";
import { PLAN } from "../../src/functions/yield/plan";
import { TALLY } from "../../src/functions/yield/tally";
import { TALLYCUTS } from "../../src/functions/yield/tallycuts";

type Cells = readonly (readonly unknown[])[];

const says = (declaration: Parameters<typeof call>[0], ...cells: unknown[]): string => {
  const answer = call(declaration, cells);
  return isFailed(answer) ? `${answer.failed} ${answer.says}` : "no error";
};
const answered = (declaration: Parameters<typeof call>[0], ...cells: unknown[]): Cells => {
  const answer = call(declaration, cells);
  if (!Array.isArray(answer)) throw new Error(isFailed(answer) ? answer.says : String(answer));
  return answer;
};

const PIECES = ["label", "length", "width", "grade", "also from", "thickness", "species", "quantity"];
const BOARDS = ["label", "length", "width", "thickness", "grade", "species", "price", "defects", "edge"];
const table = (headings: readonly string[], rows: readonly (readonly unknown[])[]): Cells =>
  [headings, ...rows.map((row) => [...row, ...Array<string>(headings.length - row.length).fill("")])];
const pieces = (...rows: unknown[][]): Cells => table(PIECES, rows);
const boards = (...rows: unknown[][]): Cells => table(BOARDS, rows);

describe("jobs that have no plan, in a sentence", () => {
  // each by hand from the numbers of its row; the sentences are ours
  test.each<[string, Cells, Cells]>([
    [
      '#N/A width: piece skirt 1 (9 1/4") is wider than every FAS board (widest 8 3/4"); glue it up with GLUEUP',
      pieces(["skirt 1", 60, 9.25, "FAS"]),
      boards(["1", 96, 8, "4/4", "FAS", "", 30], ["2", 96, 9, "4/4", "FAS", "", 30, "", 0.25], ["3", 96, 11, "4/4", "1C", "", 30]),
    ],
    [
      '#N/A width: piece skirt (9 1/4") is wider than every board of its grades (widest 8"); glue it up with GLUEUP',
      pieces(["skirt", 60, 9.25, "FAS", "1C"]), boards(["1", 96, 8, "4/4", "FAS", "", 30], ["2", 96, 7, "4/4", "1C", "", 30]),
    ],
    [
      '#VALUE! defects: board 7: 140" to 146" lies past its end (132"); measure again',
      pieces(["riser", 40, 7, ""]), boards(["7", 132, 8, "4/4", "", "", 30, "140 to 146"]),
    ],
    [
      '#N/A clear: piece riser 3 (40") is longer than the longest clear stretch of its grades, 38" on board 4; add longer boards',
      pieces(["riser 3", 40, 7, ""]), boards(["4", 60, 8, "4/4", "", "", 30, "38 to 44"], ["5", 96, 6, "4/4", "", "", 20]),
    ],
    [
      '#N/A grade: no board is "FAS"; piece nosing takes FAS only; write another under also from',
      pieces(["nosing", 40, 3, "FAS"]), boards(["1", 96, 8, "4/4", "1C", "", 30]),
    ],
    [
      '#N/A grade: no board is "FAS"; piece nosing takes FAS, Select; write another under also from',
      pieces(["nosing", 40, 3, "FAS", "Select"]), boards(["1", 96, 8, "4/4", "1C", "", 30]),
    ],
    [
      "#N/A grade: piece nosing has none, and no board is without one; give its grade, or write any under also from",
      pieces(["nosing", 40, 3]), boards(["1", 96, 8, "4/4", "1C", "", 30]),
    ],
    [
      '#N/A thickness: piece tread: 1 1/4" is more than 5/4 dresses to (1 1/16"); use 6/4',
      pieces(["tread", 40, 3, "", "", 1.25]), boards(["1", 96, 8, "4/4", "", "", 30], ["2", 96, 8, "5/4", "", "", 30]),
    ],
    [
      '#N/A species: no board is "maple", as piece tread is; add boards, or write another species',
      pieces(["tread", 40, 3, "", "", "", "maple"]), boards(["1", 96, 8, "4/4", "", "oak", 30]),
    ],
    [
      "#VALUE! species: piece tread has none, and the tally has oak and ash; write its species",
      pieces(["tread", 40, 3]), boards(["1", 96, 8, "4/4", "", "oak", 30], ["2", 96, 8, "4/4", "", "ash", 30]),
    ],
    [
      "#VALUE! board foot price: board 1 has none, and no price; give one, or write yes under owned",
      pieces(["tread", 40, 3]), boards(["1", 96, 8, "4/4"]),
    ],
    [
      '#N/A tally: 2 boards do not hold the pieces; without a place: skirt (90" x 7"); add boards',
      pieces(["skirt", 90, 7, "", "", "", "", 3]), boards(["1", 96, 8, "4/4", "", "", 30], ["2", 96, 8, "4/4", "", "", 30]),
    ],
    [
      '#N/A tally: 2 boards do not hold the pieces; without a place: plank (90", the whole width); add boards',
      pieces(["plank", 90, "", "", "", "", "", 3]), boards(["1", 96, 8, "4/4", "", "", 30], ["2", 96, 8, "4/4", "", "", 30]),
    ],
    [
      "#VALUE! pieces: 101 pieces are more than one plan of measured boards takes; split the job into plans of 100 or fewer",
      pieces(["slip", 4, 1, "", "", "", "", 101]), boards(["1", 96, 8, "4/4", "", "", 30]),
    ],
  ])("%s", (sentence, wanted, tally) => {
    expect(says(TALLYCUTS, wanted, tally)).toBe(sentence);
    // PLAN says the same of the same table as its stock
    expect(says(PLAN, wanted, tally)).toBe(sentence.replace(/^(\S+) tally:/, "$1 stock:"));
  });

  test("more boards than one plan takes", () => {
    const tally = [["length", "width", "thickness", "price", "quantity"], [96, 8, "4/4", 30, 61]];
    expect(says(TALLYCUTS, [["length"], [40]], tally)).toBe(
      "#VALUE! tally: 61 boards are more than one plan takes; leave out what will not be cut, 60 boards or fewer",
    );
  });

  test("a heading of sticks is none of a tally", () => {
    const stock = [["length", "width", "thickness", "price", "lot", "available"], [96, 8, "4/4", 30, "", 3]];
    expect(says(PLAN, [["length"], [40]], stock)).toContain('"available"');
    expect(says(CUTS, [["length"], [40]], [["length", "width", "thickness", "price", "edge"], [96, 8, "4/4", 30, 0]])).toBe(
      "#VALUE! stock: its headings make it a tally of measured boards; TALLYCUTS cuts those",
    );
  });
});

// 4/4 x 8 ft x 6 1/4: 4 1/6 is 4 by surface measure, at 5.50; by hand 22.00, and 44.00 for both: TALLY's total is passed over
test("the result of TALLY is the tally of a plan", () => {
  const given = [["label", "length", "width", "thickness", "board foot price"], ["a", 96, 6.25, "4/4", 5.5], ["b", 96, 6.25, "4/4", 5.5]];
  const [headings = [], ...rows] = answered(BUY, [["length", "width"], [90, 6], [90, 6]], answered(TALLY, given));
  expect(rows.map((row) => [row[headings.indexOf("item")], row[headings.indexOf("cost")]])).toEqual([["a", 22], ["b", 22]]);
});

// by hand: 1000 mm and a kerf of 3 leave 1397 of 2400; the knot of 400 to 450 leaves 450 on, 1950 clear, 947 behind the piece
test("millimetres", () => {
  const tally = [["label", "length", "width", "thickness", "price", "defects"], ["a", 2400, 150, 26, 20, "400 to 450"]];
  const [, row] = answered(TALLYCUTS, [["label", "length", "width"], ["riser", 1000, 140]], tally, 3, 0, undefined, "rip", "mm");
  expect(row).toEqual(["a", "", "rip", 1, 450, 0, "riser", 1000, 140, 947]);
});

test("a board that dresses to the very thickness of a piece gives it, a hair more is refused", () => {
  // 4/4 dresses to 13/16: hardwood thickness table of a state extension service.
  const board = boards(["1", 96, 8, "4/4", "FAS", "", 30]);
  expect(says(TALLYCUTS, pieces(["riser", 40, 7, "FAS", "", 0.8125]), board)).toBe("no error");
  expect(says(TALLYCUTS, pieces(["riser", 40, 7, "FAS", "", 0.828125]), board)).toMatch(/^#N\/A thickness: /);
});
