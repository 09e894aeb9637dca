import { SAW_CAUTION } from "../caution";
import { riserHeights } from "../../solver/fit/riser-height";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { declare } from "../declare";

export const RISERHEIGHT = declare({
  id: "RISERHEIGHT",
  words: "riser height",
  group: "Fit",
  says: "Ripped height of each riser.",
  parameters: {
    rise: {
      kind: "lengths",
      sign: "positive",
      badCells: "answer",
      says: "Finished rises, bottom first, beginning with riser 1 unless `first` says otherwise; empty cells take no part.",
    },
    treadThickness: { kind: "length", sign: "not negative", says: "Thickness of the finished tread." },
    lap: {
      kind: "length",
      sign: "not negative",
      default: STAIR_LABELS.lap.default.inches,
      says: "How far a riser laps the tread below it; riser 1, which stands on the floor, laps nothing.",
    },
    stock: { kind: "length", sign: "positive", optional: true, says: "Actual width of the board.", without: "Left out: any height." },
    first: {
      kind: "count",
      sign: "positive",
      optional: true,
      says: "Number of the riser whose rise stands first: 1 stands on the floor.",
      without: "Left out: a column begins at riser 1; one rise alone with a lap is not guessed at.",
    },
  },
  result: { kind: "lengths", shapeOf: "rise", says: "Heights, in the shape of the rises." },
  problems: {
    "tread-thicker-than-rise": { cell: "#VALUE!", says: "treadThickness: {thickness} leaves no riser under a rise of {rise}" },
    "riser-over-stock": { cell: "#VALUE!", says: "stock: needs {height}; the board is only {stock} wide; largest lap that fits: {most}" },
    "which-riser": {
      cell: "#VALUE!",
      says: "first: is missing; one rise alone may be any riser's, and riser 1 has no lap of {lap}: write 1 for riser 1, 2 for any other",
    },
    "lap-over-tread": { cell: "#VALUE!", says: "lap: {lap} is more than the tread is thick, {thickness}" },
  },
  examples: [
    {
      given: { rise: [[7.75], [7.75], [7.5]], treadThickness: 1, lap: 0.25 },
      gives: [[6.75], [7], [6.75]],
      from: "by hand: 7 3/4 - 1 with no lap; 7 3/4 - 1 + 1/4; 7 1/2 - 1 + 1/4",
    },
    {
      given: { rise: [["200 mm"], ["200 mm"]], treadThickness: "25 mm", lap: "6 mm" },
      gives: [[175], [181]],
      from: "by hand: 200 - 25, and 6 more where it laps",
    },
    {
      given: { rise: [[200]], treadThickness: "25 mm" },
      fails: "#VALUE!",
      says:
        'rise: 200 has no unit and counts as inches, but treadThickness is metric, "25 mm"; write all lengths in one unit, here ' +
        '"200 mm" if it is millimetres',
      from: "by definition: 25.4 mm to the inch",
    },
    {
      given: { rise: [[8], [8]], treadThickness: 1, lap: 0.5, stock: 7.25 },
      gives: [[7], ['#VALUE! stock: needs 7 1/2"; the board is only 7 1/4" wide; largest lap that fits: 1/4"']],
      from: "by hand: 8 - 1 + 1/2 = 7 1/2 is over the 7 1/4 of a 1x8; 7 1/4 - 7 = 1/4",
    },
    {
      given: { rise: [[7.75]], treadThickness: 1, lap: 0.25, first: 5 },
      gives: [[7]],
      from: "by hand: 7 3/4 - 1 + 1/4, a riser over a tread",
    },
    {
      given: { rise: [[7.75]], treadThickness: 1, lap: 0.25 },
      fails: "#VALUE!",
      says: "first: is missing; one rise alone may be any riser's, and riser 1 has no lap of 1/4\": write 1 for riser 1, 2 for any other",
      from: "by hand: 6 3/4 for riser 1, 7 for any other",
    },
    {
      given: { rise: [[7.75]], treadThickness: 1, lap: 1.25 },
      fails: "#VALUE!",
      says: 'lap: 1 1/4" is more than the tread is thick, 1"',
      from: "by hand: a longer lap would hang below the tread",
    },
  ],
  source: "Height = rise - tread thickness + lap, riser 1 without the lap. Common practice, no source.",
  caution: SAW_CAUTION,
  solve: ({ rise, treadThickness, lap, stock, first }) => riserHeights(rise, treadThickness, lap, stock, first),
});
