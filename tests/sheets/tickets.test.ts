import { ticketTape } from "../../src/sheets/ticket-tape";
import { tickets } from "../../src/sheets/tickets";

const HEADINGS = ["step", "length", "left angle", "left tilt", "heel", "heel at the hook", "mitre", "left set", "left mitre", "note"];
const SET = "right 0.50°, underside longer 1.72°";
const fit = (count: number) => [
  HEADINGS,
  ...Array.from({ length: count }, (_, index) => [
    index + 1,
    36 + index,
    -0.5,
    -1.72,
    35,
    34,
    44.37,
    SET,
    "",
    index === 1 ? "unchecked" : "",
  ]),
];
const tape = { text: (length: number): string => `${length} on the tape`, says: "to 1/16" };

test("a ticket holds five steps at most, the last the rest", () => {
  expect(tickets("Treads", fit(12), tape).map(({ title, rows }) => [title, rows.length])).toEqual([
    ["Treads, steps 1 to 5", 5], ["Treads, steps 6 to 10", 5], ["Treads, steps 11 to 12", 2],
  ]);
});

test("lengths are tape text, settings stand in words without a sign, empty columns are left out, notes keep their step", () => {
  const [first] = tickets("Treads", fit(2), tape);
  expect(first).toEqual({
    title: "Treads, steps 1 to 2",
    measure: "to 1/16",
    headings: ["step", "length", "heel at the hook", "left set", "mitre"],
    rows: [["1", "36 on the tape", "34 on the tape", SET, "44.4°"], ["2", "37 on the tape", "34 on the tape", SET, "44.4°"]],
    notes: ["step 2: unchecked"],
  });
});

test("a row that failed keeps its step and its sentence", () => {
  const headings = ["step", "length", "mitre", "toe", "note"];
  const [first] = tickets(
    "Treads",
    [
      headings,
      [1, { error: "#VALUE!" }, { error: "#VALUE!" }, { error: "#VALUE!" }, "back in step 1: is empty or 0; give a value"],
      [2, 37, 45, 36, ""],
    ],
    tape,
  );
  expect(first?.rows).toEqual([["1", "", "", ""], ["2", "37 on the tape", "36 on the tape", "45.0°"]]);
  expect(first?.notes).toEqual(["step 1: back in step 1: is empty or 0; give a value"]);
});

// What the readings say cannot be, nobody should cut.
test.each([
  "the diagonals disagree: read this step again",
  "every step is off by the same amount: is run the distance between the lines you measured?",
])(
  "a step whose readings disagree shows no size beside its sentence: %s",
  (note) => {
    const [first] = tickets("Treads", [["step", "length", "mitre", "toe", "note"], [1, 36, 44, 35, note], [2, 37, 45, 36, ""]], tape);
    expect(first?.rows).toEqual([["1", "read this step again", "–", "–"], ["2", "37 on the tape", "36 on the tape", "45.0°"]]);
    expect(first?.notes).toEqual([`step 1: ${note}`]);
  },
);

describe("lengths as they are read on the tape they were measured with", () => {
  const tapeText = (inches: number, divisions: number): string => `${inches} in ${divisions}`;

  // 968.377 mm is 968.4 to a tenth; 968.35 lies half way and goes away from zero.
  test.each([
    [1, 968.377247, "968.4 mm", "Lengths in mm, worked out from readings to 1 mm."],
    [2, 968.35, "968.4 mm", "Lengths in mm, worked out from readings to 1/2 mm."],
    [1, 930, "930.0 mm", "Lengths in mm, worked out from readings to 1 mm."],
  ])("millimetres, the tape in parts of 1/%d mm", (divisions, length, text, says) => {
    const found = ticketTape({ unit: "mm", divisions }, tapeText);
    expect([found.text(length), found.says]).toEqual([text, says]);
  });

  test("inches in the tape's own divisions, in thousandths where it has others", () => {
    const [sixteenths, thirds, tenths] = [16, 32, 10].map((divisions) => ticketTape({ unit: "in", divisions }, tapeText));
    expect([sixteenths?.text(38.1119), sixteenths?.says]).toEqual(["38.1119 in 16", "Lengths in inches, to 1/16."]);
    expect([thirds?.text(38.1119), thirds?.says]).toEqual(["38.1119 in 32", "Lengths in inches, to 1/32."]);
    // 38.1119 to a thousandth.
    expect([tenths?.text(38.1119), tenths?.says]).toEqual(["38.112 in", "Lengths in inches, worked out from readings to 1/10 in."]);
  });
});

test("a mitred tread has no points between the skirts on its ticket, a tread between walls has", () => {
  const headings = ["step", "length", "long point", "short point", "toe", "note"];
  const [mitred] = tickets("Treads", [headings, [1, 38.0625, 36.8125, 36.75, 38.0625, ""]], tape);
  expect(mitred?.headings).toEqual(["step", "length", "toe"]);
  const [walled] = tickets("Treads", [headings, [1, 36.8125, 36.8125, 36.75, "", ""]], tape);
  expect(walled?.headings).toEqual(["step", "length", "long point", "short point"]);
});

test("a ticket with a tapered step has the depth at both ends, one without has the one depth", () => {
  const headings = ["step", "length", "depth", "left depth", "right depth", "note"];
  const square = [1, 36, 11.25, 11.25, 11.25, ""];
  const [tapered] = tickets("Treads", [headings, square, [2, 36, 11.5, 10.75, 11.5, ""]], tape);
  expect(tapered?.headings).toEqual(["step", "length", "depth", "left depth", "right depth"]);
  const [plain] = tickets("Treads", [headings, square, [2, 36, 11.5, 11.5, 11.5, ""]], tape);
  expect(plain?.headings).toEqual(["step", "length", "depth"]);
});

test("what the sheet says over the readings stands first among the notes", () => {
  const [first] = tickets("Risers", fit(2), tape, "cut height as designed");
  expect(first?.notes).toEqual(["cut height as designed", "step 2: unchecked"]);
});
