import { catalogue } from "../../src/functions/catalogue";
import { figuredSteps } from "../../src/functions/figured-steps";

const figures = (given: Readonly<Record<string, string>>): ReadonlyMap<string, string> => new Map(Object.entries(given));

test("an equation of the method gets its figures, its name the answer, and the rest stays as it is said", () => {
  const source = "Rise = total rise / risers, exactly. The last riser ends on the floor: see the notes.";
  expect(figuredSteps(source, { name: undefined, value: '7 1/2"' }, figures({ "total rise": '105"', risers: "14" }))).toEqual({
    steps: ['Rise (7 1/2") = total rise (105") / risers (14), exactly'],
    rest: "The last riser ends on the floor: see the notes.",
  });
});

test("what an equation rests on comes with it, and no other equation does", () => {
  const source = "Of one flight: pitch = atan(rise / run), slope = hypot(rise, run), throat = board - rise x run / slope.";
  const known = figures({ rise: "7", run: "10", slope: "12", board: "11", pitch: "35" });
  const found = figuredSteps(source, { name: "throat", value: "5" }, known);
  expect(found.steps).toEqual(["slope (12) = hypot(rise (7), run (10))", "throat (5) = board (11) - rise (7) x run (10) / slope (12)"]);
  expect(found.rest).toBe("Of one flight: pitch = atan(rise / run).");
});

test("the longer name is meant, whole words only", () => {
  const source = "Total run = run x treads.";
  expect(figuredSteps(source, { name: "total run", value: "130" }, figures({ run: "10", tread: "1" })).steps).toEqual([
    "Total run (130) = run (10) x treads",
  ]);
});

test.each([
  ["an answer the method has no equation for", "Rise = total rise / risers.", "heading", "7", { risers: "14" }],
  ["an equation of which no figure is known", "Rise = total rise / risers.", "rise", "7", { run: "10" }],
  ["an equation that this row has no figure for", "Earned = value x done.", "earned", "7", { value: "10", done: "" }],
  ["a cell in which nothing stands", "Rise = total rise / risers.", "rise", "", { risers: "14" }],
  ["a method in words", "Counted by hand.", undefined, "7", {}],
] as const)("%s has no steps", (_, source, name, value, known) => {
  expect(figuredSteps(source, { name, value }, figures(known))).toEqual({ steps: [], rest: source });
});

test("a name within its own equation is the word for something else", () => {
  const source = "Change = width x coefficient x change of moisture content.";
  expect(figuredSteps(source, { name: undefined, value: "1/16" }, figures({ width: '5"' })).steps).toEqual([
    'Change (1/16) = width (5") x coefficient x change of moisture content',
  ]);
});

test("the sources of all functions lose no word", () => {
  for (const { source } of catalogue) {
    const { steps, rest } = figuredSteps(source, { name: "no such name", value: "1" }, new Map());
    expect(steps).toEqual([]);
    const letters = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");
    expect(letters(rest)).toBe(letters(source));
  }
});
