import { askedAnew, flightAsked, forPiece, inUnit } from "../../src/at-stair/asked-before";

test("what stands in the fields at first is a flight", () => {
  // A run of 10 and a width of 36 are common practice, no source: only the keys stand round them.
  expect(flightAsked(askedAnew("tread"))).toEqual({ piece: "tread", first: 1, last: 13, across: 10, width: 36 });
});

test("lengths may be typed as on the tape, and steps begin where one begins", () => {
  const asked = { ...forPiece(askedAnew("tread"), "riser"), first: "3", count: "4", width: "36 1/2" };
  expect(flightAsked(asked)).toEqual({ piece: "riser", first: 3, last: 6, across: 7.5, width: 36.5 });
});

test("another unit has its own tapes and sizes", () => {
  expect(inUnit(askedAnew("tread"), "mm")).toMatchObject({ unit: "mm", tape: 1, across: "250", width: "900" });
});

test("each field that cannot be read is named with what to write", () => {
  expect(flightAsked({ ...askedAnew("tread"), first: "0", count: "31", across: "ten", width: "" })).toEqual([
    'First step: reads "0"; write a whole number from 1 to 99.',
    'How many: reads "31"; write a whole number from 1 to 30.',
    'Run: reads "ten"; write a length such as 10 or 7 1/2.',
    'Width: reads ""; write a length such as 10 or 7 1/2.',
  ]);
});
