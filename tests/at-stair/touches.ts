import type { Touch } from "../../src/at-stair/touched";
import type { Flight } from "../../src/at-stair/taking";

export const DAY = "2026-03-04";

export const begin = (flight: Partial<Flight> = {}): Touch => ({
  key: "flight", flight: { piece: "tread", first: 1, last: 13, across: 10, width: 36, ...flight },
});

/** The keys of a length in sixteenths, by whole and sixteenth. */
export const sixteenths = (length: number): readonly Touch[] => {
  const marks = length * 16;
  return [{ key: "whole", whole: Math.floor(marks / 16) }, { key: "part", part: marks % 16 }];
};

export const reads = (...lengths: readonly number[]): readonly Touch[] =>
  lengths.flatMap((length): readonly Touch[] => [...sixteenths(length), { key: "next", day: DAY }]);

export const onward = (step: number, piece: Flight["piece"] = "tread"): Touch => ({ key: "onward", at: { piece, step } });
