import { type WinderCornerName, winderTreads } from "../../solver/layout/winder-treads";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";

const CARRIED_ON = "on the arc carried on past the turn; scribe where the string is straight";
const ROUND = "from here in an arc about the centre, to the same end of the back edge; along is its radius";

/** How the edge goes on from a corner, where it is not straight to the next. */
const noteOf = (corner: WinderCornerName, isLast: boolean, isRound: { readonly wide: boolean; readonly narrow: boolean }): string => {
  if (!(corner.endsWith("wide end") ? isRound.wide : isRound.narrow)) return "";
  if (corner.startsWith("nose")) return ROUND;
  return isLast && corner.startsWith("back edge") ? CARRIED_ON : "";
};

export const WINDERTREADS = declare({
  id: "WINDERTREADS",
  words: "winder treads",
  group: "Layout",
  says: "Corners of each winder tread, measured from its own nose, and the blank it is cut from.",
  parameters: {
    winders: { kind: "count", sign: "positive", most: 60, says: "Number of winders in the turn, all alike." },
    turn: { kind: "number", sign: "positive", most: 360, says: "Degrees turned." },
    innerRadius: {
      kind: "reading",
      sign: "not negative",
      says:
        "From the centre of the turn to the narrow end of the clear width. With a newel the narrow ends lie on its faces, and this says " +
        "only where the width begins.",
    },
    width: { kind: "reading", sign: "positive", says: "Clear width of the stair." },
    nosing: {
      kind: "reading",
      sign: "not negative",
      default: "1 1/4",
      says: "How far each nosing projects past the riser below it, which is how far a tread reaches back under the next.",
    },
    strings: {
      kind: "choice",
      options: ["round", "straight"],
      default: "round",
      says: "Wide ends on round strings about the centre, or on straight walls that meet in a corner.",
    },
    newel: {
      kind: "reading",
      sign: "not negative",
      default: 0,
      says: "Side of a square newel that stands on the centre, square to both flights; 0 for a round well.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "For each winder from the bottom, one row per corner, from the narrow end of the nose along it and round; then its narrow end " +
      "and its blank. The centre of the turn lies on the line of the nose. Net sizes: add what is housed in strings or newel. Face up " +
      "with the nose toward you, the narrow end is on the left where the stair turns left going up; for a turn to the right mirror it.",
    columns: {
      winder: { kind: "count", says: "Winder, counted from the bottom." },
      corner: { kind: "text", says: "Which corner, and on which edge; narrow end, nosing to nosing; or blank." },
      along: { kind: "reading", says: "Along the nose, from the centre of the turn." },
      onTheBlank: {
        kind: "reading",
        says: "The same from the narrow end of the blank: the one to mark. In the row blank, its length, along the nose.",
      },
      back: {
        kind: "reading",
        says: "Square back from the nose. In the row blank, its depth; in the row of the narrow end, the depth there.",
      },
      note: { kind: "text", says: "How the edge goes on, where it is not straight; the way of the grain." },
    },
  },
  problems: {
    "straight-strings-past-half-turn": {
      cell: "#VALUE!",
      says: "turn: straight strings meet in a corner only under 180 degrees, got {turn}; take each quarter of a half turn by itself",
    },
    "winder-past-a-quarter": {
      cell: "#VALUE!",
      says: "winders: {winders} would turn {each} degrees each, and one turns 90 at most; give {least} or more",
    },
    "nosing-past-the-narrow-end": {
      cell: "#VALUE!",
      says:
        "innerRadius: {innerRadius length} leaves the back edge no narrow end, as it lies the nosing of {nosing length} behind the " +
        "centre; give a larger radius, or the newel",
    },
    "newel-not-square": {
      cell: "#VALUE!",
      says: "newel: stands square to both flights only in a turn of 90, 180, 270 or 360 degrees, got {turn}; leave it out",
    },
    "newel-thin": {
      cell: "#VALUE!",
      says:
        "newel: {newel length} is not more than twice the nosing of {nosing length}, so a riser would pass beside it; give a thicker one",
    },
    "newel-fills-the-turn": {
      cell: "#VALUE!",
      says: "newel: {newel length} reaches the wide ends, {reach length} from the centre; give a thinner one, or a wider stair",
    },
  },
  examples: [
    {
      given: { winders: 3, turn: 90, innerRadius: 6, width: 36, strings: "straight" },
      shows: [
        { winder: 1, corner: "nose, narrow end", along: 6, back: 0 },
        { winder: 1, corner: "nose, wide end", along: 42, back: 0 },
        { winder: 1, corner: "back edge, wide end", along: 42, back: 25.692086978938345 },
        { winder: 2, corner: "corner of the walls", along: 57.37306695894643, back: 15.373066958946422 },
        { winder: 3, corner: "blank", along: "", back: 22.08253175473055, note: "grain along the nose" },
      ],
      from:
        "by hand: walls 6 + 36 from the centre; 42 tan 30 + 1 1/4 / cos 30; the walls' corner 42 √2 out and 15 degrees from the second " +
        "nose; the last back edge 1 1/4 past the foot of its wall, 42 sin 30 + 1 1/4 cos 30",
    },
    {
      given: { winders: 2, turn: 60, innerRadius: 10, width: 30, nosing: 0, headings: false },
      gives: [
        [1, "nose, narrow end", 10, 1.3397459621556136, 0, ROUND],
        [1, "nose, wide end", 40, 31.339745962155614, 0, ROUND],
        [1, "back edge, wide end", 34.64101615137755, 25.98076211353316, 20, ""],
        [1, "back edge, narrow end", 8.660254037844387, 0, 5, ""],
        [1, "narrow end, nosing to nosing", "", "", 5.176380902050415, ""],
        [1, "blank", "", 31.339745962155614, 20, "grain along the nose"],
        [2, "nose, narrow end", 10, 1.3397459621556136, 0, ROUND],
        [2, "nose, wide end", 40, 31.339745962155614, 0, ROUND],
        [2, "back edge, wide end", 34.64101615137755, 25.98076211353316, 20, CARRIED_ON],
        [2, "back edge, narrow end", 8.660254037844387, 0, 5, CARRIED_ON],
        [2, "narrow end, nosing to nosing", "", "", 5.176380902050415, ""],
        [2, "blank", "", 31.339745962155614, 20, "grain along the nose"],
      ],
      from: "by hand: 30 degrees each: 40 cos 30 and 40 sin 30, 10 cos 30 and 10 sin 30; 20 sin 15; 40 - 10 cos 30",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 2, width: 36, strings: "straight", newel: 4 },
      shows: [
        { winder: 1, corner: "narrow end, nosing to nosing", back: 1.1547005383792515, note: "" },
        { winder: 2, corner: "narrow end, nosing to nosing", back: 1.690598923241497, note: "round the corner of the newel" },
        { winder: 3, corner: "nose, narrow end", along: 2.309401076758503, note: "" },
      ],
      from: "by hand: noses meet the faces 2 tan 30 from their middles; the kite's end goes 2 - 2 tan 30 each way; 2 / cos 30",
    },
    {
      given: { winders: 6, turn: 180, innerRadius: 6, width: 36, strings: "straight" },
      fails: "#VALUE!",
      says: "turn: straight strings meet in a corner only under 180 degrees, got 180; take each quarter of a half turn by itself",
      from: "by hand: the walls of a half turn are parallel",
    },
  ],
  source:
    "Plane coordinates about the centre of the turn: a tread lies between its nosing, on a line from the centre, and the riser above " +
    "it, a nosing behind the next such line; its ends where these lines meet the strings, the well or the newel.",
  caution: CAUTION,
  solve: ({ winders, turn, innerRadius, width, nosing, strings, newel }) => {
    const found = winderTreads({ winders, turn, innerRadius, width, nosing, strings, newel });
    if (isProblem(found)) return found;
    const isRound = { wide: strings === "round", narrow: newel === 0 };
    return found.flatMap(({ corners, narrowEnd, roundsTheNewel, blank }, place) => [
      ...corners.map(({ corner, along, back }) => ({
        winder: place + 1,
        corner,
        along,
        onTheBlank: along - blank.from,
        back,
        note: noteOf(corner, place + 1 === winders, isRound),
      })),
      {
        winder: place + 1,
        corner: "narrow end, nosing to nosing",
        back: narrowEnd,
        note: roundsTheNewel ? "round the corner of the newel" : "",
      },
      { winder: place + 1, corner: "blank", onTheBlank: blank.length, back: blank.depth, note: "grain along the nose" },
    ]);
  },
});
