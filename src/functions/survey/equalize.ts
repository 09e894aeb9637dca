import { USUAL_TAPE } from "../../solver/length/usual-tape";
import { shimPlan, type ShimPlan } from "../../solver/survey/shim-plan";
import { type Length, type Unit } from "../../solver/length/length";
import { declare, headings, unit } from "../declare";
import { LAYERS } from "../survey-arguments";
import { shimNote } from "../shim-note";

interface Asked {
  readonly spread: Length | undefined;
  readonly maxRise: Length | undefined;
  readonly unit: Unit;
}

const rowsOf = (plan: ShimPlan, { spread, maxRise, unit: used }: Asked): readonly object[] => {
  const last = plan.rises.length;
  const floor = (step: string, surface: number): object => {
    const packing = plan.packing[surface];
    return { step, packing, note: packing?.isZero() === false ? "raise this floor by so much" : "" };
  };
  const steps = plan.rises.map((rise, index) => ({
    step: index + 1,
    asFound: plan.asFound[index],
    packing: index + 1 === last ? undefined : plan.packing[index + 1],
    rise,
    note: [
      ...(maxRise !== undefined && rise.gt(maxRise) ? ["too tall"] : []),
      ...(index + 1 === last ? ["ends on the upper floor"] : []),
    ].join("; "),
  }));
  const note = shimNote(plan, spread, maxRise, used);
  const total = { step: "total and spread", asFound: plan.spreadFound, packing: plan.total, rise: plan.spread, note };
  return [floor("lower floor", 0), ...steps, floor("upper floor", last), total];
};

export const EQUALIZE = declare({
  id: "EQUALIZE",
  group: "Survey",
  says: "What to pack under each sub-tread so that the finished rises are alike: the least packing, in divisions of the tape.",
  parameters: {
    roughRises: {
      kind: "lengths",
      sign: "positive",
      badCells: "refuse",
      plausible: "rise",
      rows: 100,
      says: "Rough rises, sub-tread to sub-tread, bottom first; empty cells take no part.",
    },
    ...LAYERS,
    spread: {
      kind: "length",
      sign: "positive",
      plausible: "floor",
      words: { least: 0 },
      default: "3/8",
      says: "How far apart the finished rises may be, tallest less lowest, or `least` for as little as packing can reach.",
    },
    most: {
      kind: "length",
      sign: "positive",
      optional: true,
      says: "Most packing under a sub-tread.",
      without: "Left out: any.",
    },
    tape: {
      kind: "count",
      sign: "positive",
      most: 64,
      optional: true,
      says: "Divisions of the unit in which packing comes.",
      without: "Left out: 16 of an inch, 1 of a millimetre.",
    },
    lowerMore: {
      kind: "length",
      sign: "not negative",
      plausible: "floor",
      default: 0,
      says: "What the lower floor may still be raised by, over its build up.",
    },
    upperMore: {
      kind: "length",
      sign: "not negative",
      plausible: "floor",
      default: 0,
      says: "What the upper floor may still be raised by, over its build up.",
    },
    maxRise: {
      kind: "length",
      sign: "positive",
      plausible: "rise",
      optional: true,
      says: "Greatest finished rise your code allows; no packing that leaves one taller is taken while there is another.",
      without: "Left out: any.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per floor and per rise from the bottom, then the total of the packing with the spread. Of all packings within the " +
      "spread the least in total; where none is, those with the least spread.",
    columns: {
      step: { kind: "label", says: "lower floor; the rise, and the sub-tread on top of it; upper floor; total and spread." },
      asFound: { kind: "length", says: "Finished rise as framed; in the last row their spread." },
      packing: {
        kind: "length",
        says: "What goes under the sub-tread, or what the floor is raised by; in the last row the total.",
      },
      rise: { kind: "length", says: "Finished rise with the packing in; in the last row their spread." },
      unit: { kind: "unit", says: "in or mm." },
      note: { kind: "text", says: "In the last row whether the spread is reached, and if not, what would reach it." },
    },
  },
  problems: {},
  examples: [
    {
      given: { roughRises: [[7.5], [7.75], [7.375], [7.875], [7.625]], treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.75 },
      gives: [
        ["step", "as found", "packing", "rise", "unit", "note"],
        ["lower floor", "", 0, "", "in", ""],
        [1, 7.75, 0, 7.75, "in", ""],
        [2, 7.75, 0, 7.75, "in", ""],
        [3, 7.375, 0.125, 7.5, "in", ""],
        [4, 7.875, 0, 7.75, "in", ""],
        [5, 7.375, "", 7.375, "in", "ends on the upper floor"],
        ["upper floor", "", 0, "", "in", ""],
        ["total and spread", 0.5, 0.125, 0.375, "in", 'within 3/8"'],
      ],
      from:
        "by hand: 7 1/2 + 1 - 3/4 and 7 5/8 - 1 + 3/4; packing takes the fourth rise down by what it takes the third up; the last " +
        "can only come down, so no rise may be over 7 3/8 + 3/8 = 7 3/4, and the fourth is 1/8 over",
    },
    {
      given: {
        roughRises: [...Array.from({ length: 13 }, () => [7.6875]), [7.5625]],
        treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.75,
      },
      shows: [
        { step: "lower floor", packing: 0 },
        { step: 1, asFound: 7.9375, packing: 0, rise: 7.9375 },
        { step: 13, packing: 0, rise: 7.6875 },
        { step: 14, asFound: 7.3125, rise: 7.3125 },
        {
          step: "total and spread", asFound: 0.625, packing: 0, rise: 0.625,
          note:
            'packing does not reach 3/8"; the least is 5/8". To reach it, raise the lower floor by 1/4" (lowerMore) or raise the upper ' +
            'floor by 1/4" (upperMore)',
        },
      ],
      from:
        "by hand: packing can only make the first rise, 7 15/16, taller and the last, 7 5/16, lower; 5/8 less 3/8 is 1/4, off the first " +
        "or onto the last",
    },
    {
      given: {
        roughRises: [...Array.from({ length: 13 }, () => [7.6875]), [7.5625]],
        treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.75, lowerMore: 0.25,
      },
      shows: [
        { step: "lower floor", packing: 0.25, note: "raise this floor by so much" },
        { step: 1, asFound: 7.9375, packing: 0, rise: 7.6875 },
        { step: "total and spread", packing: 0.25, rise: 0.375, note: 'within 3/8"' },
      ],
      from: "by hand: 7 15/16 - 1/4 = 7 11/16, the height of the twelve above; 7 11/16 - 7 5/16 = 3/8",
    },
    {
      given: { roughRises: [[7], [7.9375]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, spread: "least" },
      shows: [
        { step: 1, packing: 0.4375, rise: 7.4375 },
        { step: "total and spread", packing: 0.4375, rise: 0.0625, note: "the least spread there is" },
      ],
      from: "by hand: 7 + p and 7 15/16 - p are 15/16 - 2p apart: 1/16 with 7/16, and with 1/2, which is more",
    },
    {
      given: { roughRises: [[7], [7.9375]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, spread: "least", tape: 4 },
      shows: [
        { step: 1, packing: 0.5, rise: 7.5 },
        { step: "total and spread", rise: 0.0625 },
      ],
      from: "by hand: in quarters 1/2 leaves 7 1/2 and 7 7/16; 1/4 and 3/4 leave 7/16 and 9/16",
    },
    {
      given: { roughRises: [[7], [8]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, most: 0.25 },
      shows: [
        { step: 1, packing: 0.25, rise: 7.25 },
        {
          step: "total and spread", packing: 0.25, rise: 0.5,
          note: 'packing does not reach 3/8"; the least is 1/2". To reach it, pack up to 5/16" (most)',
        },
      ],
      from: "by hand: 7 + p and 8 - p are 1 - 2p apart: 1/2 with 1/4, 3/8 with 5/16; a raised floor only takes them further apart",
    },
    {
      given: { roughRises: [[7], [8]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, maxRise: 7.5 },
      shows: [
        { step: 1, packing: 0.5, rise: 7.5 },
        { step: "total and spread", packing: 0.5, rise: 0, note: 'within 3/8"' },
      ],
      from: "by hand: 5/16 would leave 7 5/16 and 7 11/16, 3/8 apart but over 7 1/2; 1/2 leaves 7 1/2 and 7 1/2",
    },
    {
      given: { roughRises: [[7.5], [8]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, maxRise: "7 11/16" },
      shows: [
        { step: 1, packing: 0.0625, rise: 7.5625, note: "" },
        { step: 2, rise: 7.9375, note: "too tall; ends on the upper floor" },
        {
          step: "total and spread",
          note:
            'no packing keeps every rise to 7 11/16" and the spread within 3/8". To reach it, raise the lower floor by 1/8" ' +
            "(lowerMore)",
        },
      ],
      from:
        "by hand: two rises of 7 11/16 are 15 3/8, 1/8 less than 15 1/2; a higher upper floor makes it worse. 1/16 leaves 7 9/16 and " +
        "7 15/16, 3/8 apart",
    },
    {
      given: {
        roughRises: [[8.5], [7.75], [7.375], [7]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, most: 0.03125,
      },
      shows: [
        {
          step: "total and spread", packing: 0, rise: 1.5,
          note:
            'packing does not reach 3/8"; the least is 1 1/2". To reach it, raise the lower floor by 3/4" (lowerMore) and raise the ' +
            'upper floor by 3/8" (upperMore)',
        },
      ],
      from:
        "by hand: 1/32 is less than a division, so nothing is packed; the middle rises are 3/8 apart, so the first comes down to 7 3/4 " +
        "and the last up to 7 3/8",
    },
    {
      given: {
        roughRises: [[8.5], [7.75], [7.375], [7]], treadThickness: 1, lowerBuildUp: 1, upperBuildUp: 1, lowerMore: 1, upperMore: 0.5,
      },
      shows: [
        { step: "lower floor", packing: 0.75 },
        { step: "upper floor", packing: 0.375, note: "raise this floor by so much" },
        { step: "total and spread", packing: 1.125, rise: 0.375 },
      ],
      from: "by hand: as above; 1 1/2 less 3/8 is to be made up between the floors, 1 1/8, and packing a sub-tread takes none of it off",
    },
    {
      given: { roughRises: [[180], [196]], treadThickness: 27, lowerBuildUp: 27, upperBuildUp: 27, unit: "mm", headings: false },
      gives: [
        ["lower floor", "", 0, "", "mm", ""],
        [1, 180, 4, 184, "mm", ""],
        [2, 196, "", 192, "mm", "ends on the upper floor"],
        ["upper floor", "", 0, "", "mm", ""],
        ["total and spread", 16, 4, 8, "mm", "within 9.525 mm"],
      ],
      from: "by hand: 180 + p and 196 - p: 10 apart with 3 mm, over 3/8 in; 8 with 4",
    },
    {
      given: { roughRises: [["x"]], treadThickness: 1 },
      fails: "#VALUE!",
      says: 'roughRises, row 1: read "x", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
      from: "by hand: x is no length",
    },
  ],
  source:
    "Packing k raises rise k and lowers rise k + 1. For rises from a lowest to a highest there is one packing least under every " +
    "sub-tread at once: from below each comes up until its rise is the lowest, from above until the next is the highest. All lowest " +
    "rises in divisions of the tape are tried. Default spread: IRC 2021 R311.7.5.1, 3/8 in.",
  solve: ({ roughRises, treadThickness, lowerBuildUp, upperBuildUp, spread, tape, ...limits }) => {
    const asked = { spread: spread.isZero() ? undefined : spread, maxRise: limits.maxRise, unit: limits.unit };
    const plan = shimPlan(
      { roughRises, treadThickness, lowerBuildUp, upperBuildUp },
      { ...limits, spread: asked.spread, tape: tape ?? USUAL_TAPE[limits.unit] },
    );
    return rowsOf(plan, asked);
  },
});
