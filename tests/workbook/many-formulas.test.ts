/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

const ROWS = 145;
const POLES = 10;
const FIRST_POLE_COLUMN = "G".charCodeAt(0);

const degrees = (rise: number, run: number) => (Math.atan2(rise, run) * 180) / Math.PI;

test("a sheet of 300 formulas of ours and as many native ones settles, and settles again after an input changed", async () => {
  const cells: Record<string, string | number> = { E1: 10, E2: 14 };
  for (let row = 1; row <= ROWS; row += 1) {
    cells[`A${row}`] = 7 + row / 256;
    cells[`B${row}`] = `=STAIR.PITCH(A${row},$E$1)`;
    cells[`C${row}`] = `=STAIR.TAPE(A${row},64)`;
    cells[`D${row}`] = `=SQRT(A${row}^2+$E$1^2)`;
  }
  for (let pole = 0; pole < POLES; pole += 1)
    cells[`${String.fromCharCode(FIRST_POLE_COLUMN + pole)}${ROWS + 5}`] = `=INDEX(STAIR.STORYPOLE(108+${pole},$E$2),SEQUENCE($E$2)+1,2)`;
  cells["E3"] = "=SUM(B1:B145)";
  cells["E4"] = "=COUNT(G150:P180)";
  const book = await openedWorkbook({ Bench: cells });

  const check = (run: number, risers: number) => {
    let sum = 0;
    for (let row = 1; row <= ROWS; row += 1) {
      const rise = 7 + row / 256;
      sum += degrees(rise, run);
      expect(book.value("Bench", `B${row}`)).toBeCloseTo(degrees(rise, run), 8);
      expect(book.value("Bench", `D${row}`)).toBeCloseTo(Math.hypot(rise, run), 8);
      expect(book.value("Bench", `C${row}`)).toMatch(/^7/);
    }
    expect(book.value("Bench", "E3")).toBeCloseTo(sum, 6);
    // Mark n of a pole over 108 + p inches stands at n (108 + p) / risers.
    expect(book.value("Bench", "E4")).toBe(POLES * risers);
    for (let pole = 0; pole < POLES; pole += 1) {
      const marks = book.spill("Bench", `${String.fromCharCode(FIRST_POLE_COLUMN + pole)}150`).flat();
      expect(marks).toHaveLength(risers);
      expect(Number(marks[2])).toBeCloseTo((3 * (108 + pole)) / risers, 8);
    }
  };
  check(10, 14);
  book.setCell("Bench", "E1", "9");
  book.setCell("Bench", "E2", "13");
  await book.settled();
  check(9, 13);
});

// The engine answers changes in a pause of a tenth of a second, and looks up between every 500 formulas: changes come before, in and after
// both.
test("whenever the next change comes, what is settled is worked out from the last one", async () => {
  const rows = 1100;
  const cells: Record<string, string | number> = { A1: 0, C1: `=SUM(B1:B${rows})`, D1: "=SEQUENCE(MIN(9,A1+1))" };
  for (let row = 1; row <= rows; row += 1) cells[`B${row}`] = `=$A$1+${row}`;
  const book = await openedWorkbook({ Bench: cells });
  let input = 0;
  for (const pause of [0, 20, 60, 95, 100, 105, 110, 120, 140, 170, 210]) {
    for (let change = 0; change < 3; change += 1) {
      await new Promise((resolve) => setTimeout(resolve, pause));
      input += 1;
      book.setCell("Bench", "A1", input);
    }
    await book.settled();
    // 1 + 2 + ... + n = n (n + 1) / 2, and the input once a row.
    expect([pause, book.value("Bench", "C1")]).toEqual([pause, input * rows + (rows * (rows + 1)) / 2]);
    expect(book.spill("Bench", "D1")).toHaveLength(Math.min(9, input + 1));
  }
});
