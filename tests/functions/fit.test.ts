import { catalogue } from "../../src/functions/catalogue";
import { call } from "../../src/functions/call";

/** A call by name as a cell shows it: values, and errors with their sentences. */
const answered = (id: string, ...cells: readonly unknown[]): unknown => {
  const declaration = catalogue.find((one) => one.id === id);
  if (declaration === undefined) throw new Error(`no ${id}`);
  return call(declaration, cells);
};

const rowsOf = (answer: unknown): readonly (readonly unknown[])[] => {
  if (!Array.isArray(answer)) throw new Error(JSON.stringify(answer));
  return answer as unknown[][];
};

const cellOf = (answer: unknown, heading: string): unknown => {
  const [headings = [], row = []] = rowsOf(answer);
  return row[headings.indexOf(heading)];
};

const WORKED = [
  ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"],
  [3, 10, "36 11/16", 37, "38 1/4", "38 1/8", -1.72],
];

test("the worked step through the worksheet: edges with a quarter of the closure, marks from the finished corner", () => {
  const fit = answered("TREADFIT", WORKED, undefined, "right");
  // By hand, see tests/solver/fit: 36.6575 and 37.0090 + 0.0056 each; toe 38.2593, heel 36.9814, at the hook 36.9700, each + 0.0056.
  const expected = {
    back: 36.6631,
    front: 37.0146,
    toe: 38.2649,
    heel: 36.987,
    "heel at the hook": 36.9756,
    "mitre line": 1.7876,
    closure: 0.0223,
  };
  for (const [heading, value] of Object.entries(expected)) expect(cellOf(fit, heading)).toBeCloseTo(value, 3);
});

test("the same step in millimetres is cut the same, with every default a length", () => {
  const inches = answered("TREADFIT", WORKED, undefined, "right");
  const metric = WORKED.map((row) =>
    row.map((cell) =>
      row === WORKED[0] || cell === 3 || cell === -1.72
        ? cell
        : `${25.4 * { 10: 10, "36 11/16": 36.6875, 37: 37, "38 1/4": 38.25, "38 1/8": 38.125 }[String(cell)]!} mm`,
    ),
  );
  const fit = answered(
    "TREADFIT",
    metric,
    undefined,
    "right",
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    undefined,
    "mm",
  );
  for (const heading of ["length", "back", "front", "depth", "heel", "toe", "heel at the hook", "return length", "closure"]) {
    expect(Number(cellOf(fit, heading)) / 25.4).toBeCloseTo(Number(cellOf(inches, heading)), 9);
  }
  expect(cellOf(fit, "left set")).toBe(cellOf(inches, "left set"));
});

test("a front may be left out where both angles are given, and only there", () => {
  const gauge = answered("TREADFIT", [["run", "back", "left angle", "right angle"], [10, 36, 1, 2]]);
  // By hand: 36 + 11.25 x (tan 1 + tan 2) = 36.5892.
  expect(cellOf(gauge, "front")).toBeCloseTo(36.5892, 4);
  expect(
    cellOf(
      answered("TREADFIT", [
        ["run", "back", "left angle"],
        [10, 36, 1],
      ]),
      "note",
    ),
  ).toBe('front: is missing; give front, or left angle and right angle ("square" for a measured zero, as 0 counts as empty)');
  expect(
    cellOf(
      answered("RISERFIT", [
        ["height", "top", "left angle"],
        [8, 36, 1],
      ]),
      "note",
    ),
  ).toBe('bottom: is missing; give bottom, or left angle and right angle ("square" for a measured zero, as 0 counts as empty)');
});

test("a gap of a step stands in for the flight's, and none is written as a word", () => {
  const lengths = (leftGap: unknown) =>
    cellOf(
      answered(
        "TREADFIT",
        [
          ["run", "back", "front", "left offset", "left gap", "right gap"],
          [10, 36, 36, "square", leftGap, "none"],
        ],
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        undefined,
        0.125,
      ),
      "back",
    );
  // By hand: 36 less 1/8 of the flight, 1/16 of the step, nothing.
  expect([lengths(0), lengths(null), lengths("1/16"), lengths("none")]).toEqual([35.875, 35.875, 35.9375, 36]);
});

test("an undercut is not negative, and the way round is a word", () => {
  const undercut = (degrees: number) =>
    answered(
      "TREADFIT",
      WORKED,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      degrees,
    );
  expect(undercut(-2)).toMatchObject({ failed: "#VALUE!", says: "undercut: must be 0 or more, got -2" });
  expect(cellOf(undercut(2), "left set")).toBe("left 0.52°, face longer 0.28°");
});

test("more rows than are promised are refused by count", () => {
  const many = Array.from({ length: 5001 }, () => [7.5]);
  expect(answered("EQUALIZE", many, 1)).toMatchObject({ failed: "#VALUE!", says: expect.stringMatching(/^roughRises: .*5,001.*100/) });
  expect(answered("TREADFIT", [...WORKED, ...many.map(() => WORKED[1])])).toMatchObject({
    failed: "#VALUE!",
    says: expect.stringMatching(/^readings: .*5,002.*2,000/),
  });
});

test("BLANK orders by the way the treads were read", () => {
  const stair = (riserOn: string) => [["total rise", 107.5], ["risers", 14], ["run", 10], ["riser on", riserOn]];
  const width = (riserOn: string) =>
    cellOf(
      answered("BLANK", stair(riserOn), [
        ["run", "back", "front", "left offset"],
        [9.25, 36, 36, "square"],
      ]),
      "width",
    );
  // By hand: 9 1/4 + 3/4 + 1 1/4; 9 1/4 + 1 1/4 where the readings were taken between finished risers, a run of 9 1/4.
  expect([width("behind"), width("both")]).toEqual([11.25, 10.5]);
});

test("a riser's flare is not called a lean: the old heading is refused, not passed over", () => {
  const lean = answered("RISERFIT", [["height", "top", "bottom", "left offset", "left lean"], [7.5, 36, 36, "square", 1.5]]);
  expect(lean).toMatchObject({ failed: "#VALUE!", says: expect.stringContaining("left lean") });
  const flare = answered("RISERFIT", [["height", "top", "bottom", "left offset", "left flare"], [7.5, 36, 36, "square", -1.5]]);
  // By hand: 3/4 x tan 1.5 = 0.0196 less on the face, and the back is the longer.
  expect(cellOf(flare, "top")).toBeCloseTo(35.9804, 4);
  expect(cellOf(flare, "left set")).toBe("square, back longer 1.50°");
});
