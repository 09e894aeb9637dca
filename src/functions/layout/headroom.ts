import { headroom } from "../../solver/layout/headroom";
import { CAUTION } from "../caution";
import { declare } from "../declare";

export const HEADROOM = declare({
  id: "HEADROOM",
  group: "Layout",
  says: "Headroom under the far edge of a stairwell opening.",
  parameters: {
    rise: { kind: "reading", sign: "positive", each: true, says: "Unit rise." },
    run: { kind: "reading", sign: "positive", each: true, says: "Run, nosing to nosing." },
    opening: { kind: "reading", sign: "positive", each: true, says: "Level length of the opening to its finished far edge." },
    floorThickness: { kind: "reading", sign: "not negative", each: true, says: "Floor structure at the far edge, finish to finish." },
    nosing: {
      kind: "reading",
      sign: "not negative",
      default: 0,
      says: "0 where the opening is measured from the landing nosing; the nosing, where from the face of the top riser.",
    },
  },
  result: { kind: "reading", says: "Headroom, plumb over the line of the nosings." },
  problems: {
    "no-headroom": {
      cell: "#VALUE!",
      says: "opening: {opening length} ends before the stair passes under a floor {floorThickness length} thick; give a longer opening",
    },
  },
  examples: [
    { given: { rise: 7, run: 10, opening: 120, floorThickness: 3 }, gives: 81, from: "by hand: 120 x 7 / 10 - 3 = 81" },
    {
      given: { rise: 7.5, run: 10, opening: 120, floorThickness: 10, nosing: 1.25 },
      gives: 79.0625,
      from: "by hand: (120 - 1 1/4) x 7.5 / 10 - 10 = 79 1/16; the bare formula says 80 and is unsafe",
    },
    {
      given: { rise: 7.5, run: 10, opening: 12, floorThickness: 10 },
      fails: "#VALUE!",
      says: 'opening: 12" ends before the stair passes under a floor 10" thick; give a longer opening',
      from: "by hand: 12 x 7.5 / 10 = 9 is less than 10",
    },
  ],
  source: "Headroom = (opening - nosing) x rise / run - floor thickness: similar triangles on the line of the nosings.",
  caution: CAUTION,
  solve: ({ rise, run, opening, floorThickness, nosing }) => headroom(rise, run, opening, floorThickness, nosing),
});
