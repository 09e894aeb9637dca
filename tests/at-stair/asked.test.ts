import { type Asked, ASKED, askedAt } from "../../src/at-stair/asked";
import { riserReadings, treadReadings } from "../../src/functions/tables";
import { PARTS } from "../../src/readings/text-form";

const sides = ({ tape: [hook, read] }: Asked): string =>
  [hook, read].map((spot) => spot.replace("far", "back").replace("near", "front")).join(" to ");

test("every length that leaves the screen is asked for, in the order of the readings tables, and nothing else", () => {
  expect(ASKED.tread.map(({ reading }) => reading)).toEqual(PARTS.treads);
  expect(ASKED.riser.map(({ reading }) => reading)).toEqual(PARTS.risers);
});

test("the diagonals run as the readings tables say", () => {
  const [, , , diagonal, second] = ASKED.tread;
  // The tables name the side behind the word, as in "Back left to front right."
  expect(`${sides(diagonal!)}.`).toBe(treadReadings.columns.diagonal.says.toLowerCase());
  expect(`${sides(second!)}.`).toBe(treadReadings.columns.secondDiagonal.says.toLowerCase());
  const [, , , riserDiagonal, riserSecond] = ASKED.riser.map((asked) =>
    sides(asked).replace("back", "top").replace("front", "bottom"));
  expect(`${riserDiagonal}.`).toBe(riserReadings.columns.diagonal.says.toLowerCase());
  expect(`${riserSecond}.`).toBe(riserReadings.columns.secondDiagonal.says.toLowerCase());
});

test("the run is asked at the first step alone", () => {
  expect(askedAt("tread", true).length).toBe(5);
  expect(askedAt("tread", false).map(({ reading }) => reading)).not.toContain("run");
  expect(askedAt("riser", false).length).toBe(5);
});
