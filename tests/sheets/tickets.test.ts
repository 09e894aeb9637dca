import { tickets } from "../../src/sheets/tickets";

const HEADINGS = ["step", "length", "left angle", "heel", "note"];
const fit = (count: number) => [HEADINGS, ...Array.from({ length: count }, (_, index) => [index + 1, 36 + index, -0.5, "", index === 1 ? "unchecked" : ""])];
const tape = (length: number): string => `${length} on the tape`;

test("a ticket holds five steps at most, the last the rest", () => {
  expect(tickets("Treads", fit(12), tape).map(({ title, rows }) => [title, rows.length])).toEqual([
    ["Treads, steps 1 to 5", 5], ["Treads, steps 6 to 10", 5], ["Treads, steps 11 to 12", 2],
  ]);
});

test("lengths are tape text, angles tenths of a degree, empty columns are left out, notes keep their step", () => {
  const [first] = tickets("Treads", fit(2), tape);
  expect(first).toEqual({
    title: "Treads, steps 1 to 2",
    headings: ["step", "length", "left angle"],
    rows: [["1", "36 on the tape", "-0.5°"], ["2", "37 on the tape", "-0.5°"]],
    notes: ["step 2: unchecked"],
  });
});

test("a row that failed keeps its step and its sentence", () => {
  const [first] = tickets("Treads", [HEADINGS, [1, { error: "#VALUE!" }, { error: "#VALUE!" }, { error: "#VALUE!" }, "back in step 1: is empty or 0; give a value"], [2, 37, -0.01, 36, ""]], tape);
  expect(first?.rows).toEqual([["1", "", "", ""], ["2", "37 on the tape", "36 on the tape", "0.0°"]]);
  expect(first?.notes).toEqual(["step 1: back in step 1: is empty or 0; give a value"]);
});
