import { type ActCell, tickets } from "../../src/sheets/tickets";

const HEADINGS = ["step", "number", "act", "hook on", "distance", "tape", "swing", "offset", "tilt", "unit", "note"];
const ON_THE_FACE = "on the face";

/** The acts of one step as MARKS writes them, few enough to be read here. */
const step = (label: number, toe: string, swing = "0.5°, near end to the right", unit = "in"): readonly (readonly ActCell[])[] => [
  [label, 1, "RIP", "", 11.25, "11 1/4", "", "", "", unit, `deep, nose edge to the fence; blank at least ${toe} long`],
  [label, 2, "SAW LEFT END", "", "", "", swing, "back in by 7/64", "1.5°, top of the blade to the right, over the piece: underside longer",
    unit, "leave the line"],
  [label, 3, "MARK RIGHT TOE", "burn an inch at the left nose corner", 36, `${toe}, the 1 at the corner`, "", "", "", unit, ON_THE_FACE],
  [label, 4, "MARK RIGHT BACK", "burn an inch at the left back corner", 35, "36, the 1 at the corner", "", "", "", unit, ON_THE_FACE],
];

const readAgain = (label: number): readonly (readonly ActCell[])[] => [
  [
    label, 1, "READ AGAIN", "", "", "", "", "", "", "in",
    "no end is sawn from these readings; the diagonals disagree: read this step again",
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
  expect(tickets("Treads", twelve).map(({ title, steps }) => [title, steps.length])).toEqual([
    ["Treads, steps 1 to 5", 5], ["Treads, steps 6 to 10", 5], ["Treads, steps 11 to 12", 2],
  ]);
});

test("an act is a line: what all steps have in common once, each step's own figure and words under it", () => {
  const [first, ...others] = tickets("Treads", marks(step(1, "37"), step(2, "38 strong", "0.7°, near end to the left")));
  expect(others).toEqual([]);
  expect(first?.acts).toEqual([
    {
      number: "1", act: "RIP", says: ["deep, nose edge to the fence"],
      cells: [{ figure: "11 1/4", under: ["blank at least 37 long"] }, { figure: "11 1/4", under: ["blank at least 38 strong long"] }],
    },
    {
      number: "2", act: "SAW LEFT END",
      says: ["back in by 7/64", "tilt 1.5°", "top of the blade to the right, over the piece: underside longer", "leave the line"],
      cells: [{ figure: "0.5°", under: ["near end to the right"] }, { figure: "0.7°", under: ["near end to the left"] }],
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
  expect(tickets("Treads", marks(step(1, "37")))[0]?.always).toEqual(["MARK: the 1 at the corner; on the face"]);
});

test("a mitre keeps the saw's figure large, the one from the nose under it", () => {
  const mitre: readonly ActCell[] = [
    1, 1, "MITRE RIGHT END", "", "", "", "45.6° on the saw's scale, near end to the right (44.4° from the nose)", "", "upright", "in", "",
  ];
  expect(tickets("Treads", marks([mitre]))[0]?.acts).toEqual([
    {
      number: "1", act: "MITRE RIGHT END", says: ["on the saw's scale, near end to the right", "44.4° from the nose", "upright"],
      cells: [{ figure: "45.6°", under: [] }],
    },
  ]);
});

// What the readings say cannot be, nobody should cut.
test.each([
  ["whose readings disagree", readAgain(2), "no end is sawn from these readings; the diagonals disagree: read this step again"],
  ["that failed", failed(2), "back in step 2: is empty or 0; give a value"],
])("a step %s shows no figure, and its sentence", (_, doubtful, sentence) => {
  const [first, ...others] = tickets("Treads", marks(step(1, "37"), doubtful, step(3, "37")));
  expect(others).toEqual([]);
  expect(first?.acts.map(({ cells }) => cells[1]?.figure)).toEqual(["READ AGAIN", "–", "–", "–"]);
  expect(first?.acts[0]?.cells[1]?.under).toEqual([]);
  expect(first?.doubts).toEqual([`step 2: ${sentence}`]);
});

test("steps with other acts have a ticket of their own", () => {
  const single = step(2, "37").slice(0, 3);
  expect(tickets("Risers", marks(step(1, "37"), single, step(3, "37"), step(4, "37"))).map(({ title }) => title)).toEqual([
    "Risers, steps 1, 3 and 4", "Risers, step 2",
  ]);
});

test.each([
  ["in", "Lengths in inches, to the nearest 1/32; strong: 1/64 past the mark, shy: 1/64 short of it."],
  ["mm", "Lengths in millimetres, to the nearest half."],
])("the measure says %s, and how fine", (unit, says) => {
  expect(tickets("Treads", marks(step(1, "37", "square", unit)))[0]?.measure).toBe(says);
});

test("what the sheet says over the readings stands on the ticket", () => {
  expect(tickets("Risers", marks(step(1, "37")), "cut heights as designed")[0]?.over).toBe("cut heights as designed");
});
