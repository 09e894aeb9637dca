import { opening } from "../../solver/layout/opening";
import { declare } from "../declare";

export const OPENING = declare({
  id: "OPENING",
  group: "Layout",
  says: "Level length of a stairwell opening that gives the headroom wanted.",
  parameters: {
    rise: { kind: "reading", sign: "positive", each: true, says: "Unit rise." },
    run: { kind: "reading", sign: "positive", each: true, says: "Run, nosing to nosing." },
    headroom: { kind: "reading", sign: "positive", each: true, says: "Headroom wanted, plumb over the line of the nosings." },
    floorThickness: { kind: "reading", sign: "not negative", each: true, says: "Floor structure at the far edge, finish to finish." },
    nosing: {
      kind: "reading",
      sign: "not negative",
      default: 0,
      says: "0 for an opening from the landing nosing; the nosing projection for one from the face of the top riser.",
    },
  },
  result: {
    kind: "reading",
    says: "Length of the opening to the finished far edge; the rough opening is larger by the riser and the finishes.",
  },
  problems: {},
  examples: [
    {
      given: { rise: 7.5, run: 10, headroom: 80, floorThickness: 10, nosing: 1.25 },
      gives: 121.25,
      from: "by hand: (80 + 10) x 10 / 7.5 = 120 from the landing nosing, 1 1/4 more from the face",
    },
    {
      given: { rise: "175 mm", run: "250 mm", headroom: "2 m", floorThickness: "285 mm" },
      gives: 3264.285714285714,
      from: "Basic carpentry techniques tutorial (BC): 250 / 175 x (2000 + 285) mm, printed 3,339 with an allowance of 75",
    },
    {
      given: { rise: 175, run: 250, headroom: "2000 mm", floorThickness: 285 },
      fails: "#VALUE!",
      says:
        'rise: 175 has no unit and counts as inches, but headroom is metric, "2000 mm"; write all lengths in one unit, here "175 ' +
        'mm" if it is millimetres',
      from: "by definition: 25.4 mm to the inch, so 175 and 2000 mm in one sum are 25.4 times apart",
    },
    {
      given: { rise: 0, run: 10, headroom: 80, floorThickness: 10 },
      fails: "#VALUE!",
      says: "rise: must be more than 0, got 0",
      from: "common practice, no source: a stair rises",
    },
  ],
  source: "Opening = (headroom + floor thickness) x run / rise + nosing: similar triangles on the line of the nosings.",
  caution: "An opening cut into a floor is a structural change: a licensed engineer or the code's tables size its framing.",
  solve: ({ rise, run, headroom, floorThickness, nosing }) => opening(rise, run, headroom, floorThickness, nosing),
});
