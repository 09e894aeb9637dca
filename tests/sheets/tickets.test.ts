import { type ActCell, tickets } from "../../src/sheets/tickets";

const HEADINGS = ["step", "number", "act", "hook on", "distance", "tape", "swing", "offset", "tilt", "unit", "note"];
const ON_THE_FACE = "on the face";

/** The acts of one step as MARKS writes them, few enough to be read here. */
const step = (
  label: number, toe: string, swing = "0.5°, near end of the cut to the right", unit = "in",
): readonly (readonly ActCell[])[] => [
  [
    label, 1, "RIP", "", 11.25, "11 1/4", "", "", "", unit,
    `deep, nose edge, not yet rounded, to the rip fence; ${toe} long when done; begin with a longer blank`,
  ],
  [label, 2, "SAW LEFT END", "", "", "", swing, "back in by 7/64", "1.5°, top of the blade to the right, over the piece: underside longer",
    unit, "leave the line"],
  [label, 3, "MARK RIGHT TOE", "burn an inch at the left nose corner", 36, `${toe}, the 1 at the corner`, "", "", "", unit, ON_THE_FACE],
  [label, 4, "MARK RIGHT BACK", "burn an inch at the left back corner", 35, "36, the 1 at the corner", "", "", "", unit, ON_THE_FACE],
];

const readAgain = (label: number): readonly (readonly ActCell[])[] => [
  [
    label, 1, "READ AGAIN", "", "", "", "", "", "", "in",
    "nothing is sawn from these readings; the diagonals disagree: read this step again",
  ],
];

const failed = (label: number): readonly (readonly ActCell[])[] => [
  [
    label, { error: "#VALUE!" }, { error: "#VALUE!" }, "", { error: "#VALUE!" }, "", "", "", "", "in",
    "back in step 2: is empty or 0; give a value",
  ],
];

const marks = (...steps: readonly (readonly (readonly ActCell[])[])[]): readonly (readonly ActCell[])[] => [HEADINGS, ...steps.flat()];

test("a ticket holds five steps at most, the last the rest", () => {
  const twelve = marks(...Array.from({ length: 12 }, (_, index) => step(index + 1, "37")));
  expect(tickets("Fit", "treads", twelve).map(({ title, steps }) => [title, steps.length])).toEqual([
    ["Fit: treads, steps 1 to 5", 5], ["Fit: treads, steps 6 to 10", 5], ["Fit: treads, steps 11 to 12", 2],
  ]);
});

test("of a batch only the steps chosen, each by its name", () => {
  const twelve = marks(...Array.from({ length: 12 }, (_, index) => step(index + 1, "37")));
  const titles = (...chosen: readonly string[]) =>
    tickets("Fit", "treads", twelve, "", new Set(chosen)).map(({ title, steps }) => [title, ...steps]);
  expect(titles("3", "5", "11")).toEqual([["Fit: treads, steps 3 and 5", "3", "5"], ["Fit: treads, step 11", "11"]]);
  expect(titles("6", "7", "8", "9", "10")).toEqual([["Fit: treads, steps 6 to 10", "6", "7", "8", "9", "10"]]);
});

test("an act is a line: what all steps have in common once, each step's own figure and words under it", () => {
  const [first, ...others] = tickets("Fit", "treads", marks(step(1, "37"), step(2, "38 strong", "0.7°, near end of the cut to the left")));
  expect(others).toEqual([]);
  expect(first?.acts).toEqual([
    {
      number: "1", act: "RIP", says: ["deep, nose edge, not yet rounded, to the rip fence", "begin with a longer blank"],
      cells: [
        { figure: "11 1/4", under: ["37 long when done"] },
        { figure: "11 1/4", under: ["38 strong long when done"] },
      ],
    },
    {
      number: "2", act: "SAW LEFT END",
      says: ["back in by 7/64", "tilt 1.5°", "top of the blade to the right, over the piece: underside longer", "leave the line"],
      cells: [
        { figure: "0.5°", under: ["near end of the cut to the right"] }, { figure: "0.7°", under: ["near end of the cut to the left"] },
      ],
    },
    {
      number: "3", act: "MARK RIGHT TOE", says: ["burn an inch at the left nose corner"],
      cells: [{ figure: "37", under: [] }, { figure: "38 strong", under: [] }],
    },
    {
      number: "4", act: "MARK RIGHT BACK", says: ["burn an inch at the left back corner"],
      cells: [{ figure: "36", under: [] }, { figure: "36", under: [] }],
    },
  ]);
});

test("what every act of one verb has is said once for the page", () => {
  expect(tickets("Fit", "treads", marks(step(1, "37")))[0]?.always).toEqual(["MARK: the 1 at the corner; on the face"]);
});

test("a mitre keeps the saw's figure large, the one from the nose under it", () => {
  const mitre: readonly ActCell[] = [
    1, 1, "MITRE RIGHT END", "", "", "", "45.6° on the saw's scale, near end of the cut to the right (44.4° from the nose)", "", "upright",
    "in", "",
  ];
  expect(tickets("Fit", "treads", marks([mitre]))[0]?.acts).toEqual([
    {
      number: "1", act: "MITRE RIGHT END", says: ["on the saw's scale, near end of the cut to the right", "44.4° from the nose", "upright"],
      cells: [{ figure: "45.6°", under: [] }],
    },
  ]);
});

// What the readings say cannot be, nobody should cut.
test.each([
  ["whose readings disagree", readAgain(2), "nothing is sawn from these readings; the diagonals disagree: read this step again"],
  ["that failed", failed(2), "back in step 2: is empty or 0; give a value"],
])("a step %s shows no figure, and its sentence", (_, doubtful, sentence) => {
  const [first, ...others] = tickets("Fit", "treads", marks(step(1, "37"), doubtful, step(3, "37")));
  expect(others).toEqual([]);
  expect(first?.acts.map(({ cells }) => cells[1]?.figure)).toEqual(["READ AGAIN", "–", "–", "–"]);
  expect(first?.acts[0]?.cells[1]?.under).toEqual([]);
  expect(first?.doubts).toEqual([`step 2: ${sentence}`]);
});

test("steps with other acts have a ticket of their own", () => {
  const single = step(2, "37").slice(0, 3);
  expect(tickets("Fit", "risers", marks(step(1, "37"), single, step(3, "37"), step(4, "37"))).map(({ title }) => title)).toEqual([
    "Fit: risers, steps 1, 3 and 4", "Fit: risers, step 2",
  ]);
});

test.each([
  ["in", "Inches, to the nearest 1/32; strong: 1/64 more, shy: 1/64 less."],
  ["mm", "Millimetres, to the nearest half."],
])("the measure says %s, and how fine", (unit, says) => {
  expect(tickets("Fit", "treads", marks(step(1, "37", "square", unit)))[0]?.measure).toBe(says);
});

test("what the sheet says of its readings beside what they are stands on the ticket, and how the piece lies", () => {
  const [risers] = tickets("Fit", "risers", marks(step(1, "37")), "Risers as taped, in; cut heights as designed");
  expect(risers?.over).toBe("cut heights as designed");
  expect(tickets("Fit", "treads", marks(step(1, "37")), "Treads as taped, in")[0]).toMatchObject({
    over: "", lies: "Face: the side walked on. Left and right: face up, nose toward you. Degrees set the saw; the marks win.",
  });
});
