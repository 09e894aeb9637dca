import { plainGiveOrTake } from "../../solver/fit/skirt-surface/plain-skirts";
import type { Rows, WorkedCase } from "../case-kind";

const TREADS = ["step", "run", "back", "front", "diagonal", "second diagonal"];
/** Read at the piece's own back and nose. */
const AT_ITS_DEPTH = ["step", "depth", "back", "front", "diagonal", "second diagonal"];
const RISERS = ["step", "height", "top", "bottom", "diagonal", "second diagonal"];

/** Five steps of an invented flight, read with a 1/16 tape. */
const FIVE = [
  TREADS,
  [1, 10, 36, 35.9375, 37.125, 37.5625],
  [2, 10, 36.0625, 35.9375, 37.125, 37.625],
  [3, 10, 36.0625, 36, 37.125, 37.625],
  [4, 10, 36.0625, 36, 37.1875, 37.625],
  [5, 10, 36.125, 36, 37.1875, 37.6875],
];

/** 12-35-37: skirts 35 apart and square, five steps and more; a changed row stands in for its step. */
const square = (steps: number, ...changed: readonly (readonly number[])[]) => [
  TREADS,
  ...Array.from({ length: steps }, (_, at) => changed.find(([step]) => step === at + 1) ?? [at + 1, 12, 35, 35, 37, 37]),
];

/** Skirts 35 apart and square, risers 5 high with diagonals of the root of 1250: 35.3553. */
const LONG = Math.hypot(35, 5);
const risers = (...changed: readonly (readonly number[])[]) => [
  RISERS,
  ...Array.from({ length: 5 }, (_, at) => changed.find(([step]) => step === at + 1) ?? [at + 1, 5, 35, 35, LONG, LONG]),
];

const withColumn = (table: readonly (readonly (string | number)[])[], heading: string, values: readonly (string | number)[]) =>
  table.map((row, at) => [...row, at === 0 ? heading : (values[at - 1] ?? "")]);

const column = (rows: Rows, name: string): readonly unknown[] => rows.slice(1).map((row) => row[rows[0]!.indexOf(name)]);

/** Skirts that close by 1/2 at the left and 1/4 at the right in a run of 12: fronts of 36 less 3/4 a step, exact. */
const closing = Array.from({ length: 4 }, (_, at) => {
  const front = 36 - 0.75 * at;
  return [at + 1, 12, front - 0.75, front, Math.hypot(front - 0.5, 12), Math.hypot(front - 0.25, 12)];
});

export const flightCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  MISREAD: [
    {
      given: { treads: square(5, [3, 12, 35, 34, 37, 37]) },
      shows: [{ step: 3, reading: "front", read: 34, likely: 35, why: "a whole inch too short", sure: "named", unit: "in" }],
      from: "by hand: an inch taken off a front of 35",
    },
    {
      given: { treads: square(5, [3, 12, 35.5, 35, 37, 37]) },
      shows: [{ step: 3, reading: "back", read: 35.5, likely: 35, why: "too long for the two skirts", sure: "named" }],
      from: "by hand: half an inch put on a back of 35",
    },
    {
      given: { treads: square(5, [3, 12, 35, 35, 37, 36.5]) },
      shows: [{ step: 3, reading: "second diagonal", read: 36.5, likely: 37, why: "too short for the two skirts", sure: "named" }],
      from: "by hand: half an inch taken off a second diagonal of 37",
    },
    {
      given: { treads: square(5, [3, 12, 35.03, 35.53, 37.03, 37.03]), tape: 32 },
      shows: [{ step: 3, reading: "front", read: 35.53, likely: 35.03125, sure: "named" }],
      from: "by hand: a step 0.03 longer than the others, as a tape may read it, its front 1/2 too long: 35 1/32 to a 1/32",
    },
    {
      given: { treads: [AT_ITS_DEPTH, ...[1, 2, 3, 4, 5].map((step) => [step, 120, 350, step === 4 ? 360 : 350, 370, 370])], unit: "mm" },
      shows: [{ step: 4, reading: "front", read: 360, likely: 350, why: "a whole centimetre too long", sure: "named", unit: "mm" }],
      from: "by hand: 120-350-370, a centimetre put on a front of 350",
    },
    {
      given: { treads: [TREADS, ...[1, 2, 3, 4, 5].map((step) => [step, 120, 350, step === 4 ? 340 : 350, 370, 370])], unit: "mm" },
      shows: [{ step: 4, reading: "front", read: 340, likely: 350, why: "a whole centimetre too short", sure: "named", unit: "mm" }],
      from: "by hand: a centimetre taken off",
    },
    {
      given: { treads: [TREADS, ...FIVE.slice(1).map((row) => (row[0] === 2 ? [2, 10, 35.9375, 36.0625, 37.125, 37.625] : row))] },
      shows: [
        { step: 2, reading: "back", read: 35.9375, likely: 36.0625, why: "back and front exchanged", sure: "named" },
        { step: 2, reading: "front", read: 36.0625, likely: 35.9375, why: "back and front exchanged" },
      ],
      from: "by hand: back and front of step 2 put in each other's place; every other back is longer than its front",
    },
    {
      given: { treads: square(5), risers: risers([3, 5, 34, 36, LONG, LONG]) },
      keeps: (rows) => column(rows, "reading").every((reading) => String(reading).startsWith("riser ")) && rows.length > 1,
      from: "by hand: the treads are square and exact, so only readings of risers can be wrong",
    },
    {
      given: {
        treads: square(5),
        risers: [
          RISERS,
          ...[1, 2, 3, 4, 5].map((step) => [step, 5, 35, 35, step === 2 ? LONG + 1 : LONG, LONG]),
        ],
      },
      shows: [{ step: 2, reading: "riser diagonal", read: LONG + 1, likely: 35.375, why: "a whole inch too long", sure: "named" }],
      from: "by hand: the root of 35 x 35 + 5 x 5 is 35.3553, 35 3/8 to a sixteenth, and an inch was put on it",
    },
    {
      given: {
        treads: [
          TREADS,
          ...[1, 2, 3, 4, 5].map((step) => {
            const front = 36 - 0.5 * (step - 1);
            return [step, 12, front - 0.5, front, Math.hypot(front - 0.25, 12), Math.hypot(front - 0.25, 12)];
          }),
        ],
        risers: [
          RISERS,
          ...[1, 2, 3, 4, 5].map((step) => {
            const [bottom, top] = [36 - 0.5 * (step - 1), 36 - 0.5 * (step - 1)];
            const out = Math.hypot(bottom, 5);
            return [step, 5, step === 3 ? top + 0.5 : top, bottom, out, out];
          }),
        ],
      },
      shows: [{ step: 3, reading: "riser top", read: 35.5, likely: 35, why: "too long for the two skirts", sure: "named" }],
      from: "by hand: skirts that close by a quarter each in a run of 12 and are plumb; a riser is as long at the top as below: 35",
    },
    {
      given: {
        treads: [TREADS, ...[1, 2, 3, 4, 5, 6].map((step) => {
          const width = 36 - (step === 2 ? 3 : step === 3 ? 2 : step);
          return [step, 12, width, width, Math.hypot(width, 12), Math.hypot(width, 12)];
        })],
      },
      shows: [
        { step: 2, reading: "every reading", read: "", likely: "", why: "readings of steps 2 and 3 exchanged", sure: "named", unit: "" },
        { step: 3, reading: "every reading", why: "readings of steps 2 and 3 exchanged" },
      ],
      from: "by hand: each step is an inch narrower than the one below, only the second and third stand the other way round",
    },
    {
      given: { treads: square(5, [3, 12, 35, 35, 37.1, 37.1]) },
      shows: [
        { step: 3, reading: "diagonal", why: "too long for the two skirts, or second diagonal of step 3 instead", sure: "either" },
        { step: 3, reading: "second diagonal", why: "too long for the two skirts, or diagonal of step 3 instead", sure: "either" },
      ],
      from: "by hand: the flight is its own mirror image, so nothing can tell one diagonal from the other",
    },
    {
      given: { treads: [TREADS, ...FIVE.slice(1).map((row) => (row[0] === 1 ? [1, 10, 36, 35.9375, 37.125, 37.6875] : row))] },
      shows: [
        {
          step: 1,
          reading: "diagonals",
          read: "",
          likely: "",
          why: "the diagonals disagree, and no one reading stands out: read this step again",
          sure: "",
          unit: "",
        },
      ],
      from: "by hand: legs 35.7531 and 36.3372 against 36 and 35.9375 close to 0.153, over two sixteenths; an eighth is near what hands do",
    },
    {
      given: { treads: square(3) },
      gives: [
        ["step", "reading", "read", "likely", "why", "sure", "unit"],
        ["", "", "", "", "no verdict on lengths: it takes 4 treads with back, front and a diagonal, got 3", "", ""],
      ],
      from: "by hand: three of four",
    },
    {
      given: { treads: withColumn(square(5), "left lean", [1.2, 1.1, -1.2, 1.3, 1.2]), headings: false },
      gives: [[3, "left lean", -1.2, 1.2, "the other way than the rest of the flight", "named", "deg"]],
      from: "by hand: four skirts lean 1.1 to 1.3 away, one as much the other way",
    },
    {
      given: {
        treads: withColumn(square(5), "left lean", [3]),
        risers: [
          ["step", "height", "top", "left angle", "right angle"],
          [1, 5, 35, "square", "square"],
        ],
      },
      shows: [
        { step: 1, reading: "left lean", read: 3, likely: 0, why: "lean and riser disagree: read one again", sure: "either", unit: "deg" },
        { step: 1, reading: "riser left angle", read: 0, likely: -3, why: "lean and riser disagree: read one again", sure: "either" },
      ],
      from: "by hand: a riser whose end is square stands at a plumb skirt; a lean of 3 would make it -3",
    },
    {
      given: {
        treads: square(5),
        risers: [
          ["step", "height", "top", "left angle", "right angle", "right flare"],
          [2, 5, 35, "square", "square", 2],
        ],
      },
      shows: [
        { step: 2, reading: "riser right flare", read: 2, likely: 0, why: "flare and tread disagree: read one again", sure: "either" },
        { step: 2, reading: "right angle", read: 0, likely: 2, why: "flare and tread disagree: read one again", sure: "either" },
      ],
      from: "by hand: a square tread stands between skirts that run straight back; a flare of 2 would make its angle 2",
    },
    {
      given: { treads: [TREADS, [2, 12, 35, 35, 37, 37], [2, 12, 35, 35, 37, 37]] },
      fails: "#VALUE!",
      says: "step: 2 stands in two rows of one table; give the readings of one flight, each step once",
      from: "by hand: two rows of step 2",
    },
  ],
  NEXTSTEP: [
    {
      given: { treads: [TREADS, ...closing] },
      shows: [{ step: 5, back: 32.25, front: 33, leftAngle: 2.385944030388813, rightAngle: 1.193489423982035 }],
      from: "by hand: 36 less 4 x 3/4, and 3/4 less at the back; atan(0.5 / 12) and atan(0.25 / 12)",
    },
    {
      given: { treads: [TREADS, ...[1, 2, 3, 4, 5].map((step) => [step, 10, 30, 30, Math.hypot(30, 10), Math.hypot(30, 10)])] },
      shows: [{ step: 6, giveOrTake: plainGiveOrTake(5) }],
      from:
        "the same best guess by one plain system of equations for each of the three kinds of skirt, solved by elimination, none of the " +
        "solver's own steps",
    },
  ],
};
