import { draws } from "../../../../src/solver/yield/draws";
import type { TinyGlueUp } from "./every-glue-up";
import type { PlainGlueUp } from "./glue-job";

/** A tiny job in whole inches, in which a saw and a jointer take an inch each. */
export const tinyJob = (seed: number, isOfOneBoard: boolean): TinyGlueUp => {
  const draw = draws(4_200 + seed);
  const whole = (least: number, below: number): number => least + Math.floor(draw() * (below - least));
  const lengths = whole(0, 3) === 0 ? [10, 7] : [10];
  return {
    panels: Array.from({ length: whole(1, 4) }, () => ({ length: lengths[whole(0, lengths.length)]!, need: whole(5, 12) })),
    boards: Array.from({ length: whole(2, 6) }, () => ({ length: whole(10, 33), width: whole(3, 11), price: whole(10, 40) })),
    kerf: 1, joints: 1, least: 2, greatest: whole(4, 7), strips: whole(0, 3) === 0 ? 3 : Infinity, isOfOneBoard,
  };
};

export const asGlueUp = ({ panels, boards, kerf, joints, least, greatest, strips, isOfOneBoard }: TinyGlueUp): PlainGlueUp => ({
  panels: panels.map(({ length, need }) => ({ length, width: need })),
  tally: boards,
  terms: {
    kerf, joint: joints / 2, leastStrip: least, greatestStrip: greatest, roughLength: 0, roughWidth: 0, trim: 0, strips,
    together: isOfOneBoard ? "board" : "any",
  },
});
