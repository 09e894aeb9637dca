import { winderTurn } from "../../solver/layout/winder-turn";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";

export const WINDERS = declare({
  id: "WINDERS",
  group: "Layout",
  says: "Depths of equal winders at the walkline and the narrow end, and where their nosings cross the strings.",
  parameters: {
    winders: { kind: "count", sign: "positive", most: 60, says: "Number of winders in the turn." },
    turn: { kind: "number", sign: "positive", most: 360, says: "Degrees turned." },
    innerRadius: {
      kind: "reading",
      sign: "not negative",
      says: "From the centre of the turn to the narrow end of the clear width; 0 where the nosings meet in a corner.",
    },
    width: { kind: "reading", sign: "positive", says: "Clear width of the stair." },
    walkline: {
      kind: "reading",
      sign: "positive",
      default: 12,
      says: "Distance of the walkline from the narrow end, by the code in force; handbooks print 12, 14, 15 or 18.",
    },
    strings: {
      kind: "choice",
      options: ["round", "straight"],
      default: "round",
      says: "Round strings about the centre, or straight walls that meet in a corner.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per label. Nosing 1 starts the turn; round strings are measured from it, straight ones from the foot of the " +
      "perpendicular from the centre, from their own end each.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      string: { kind: "text", says: "inner and outer, or first and second." },
      value: { kind: "reading", says: "Depth, or distance along the string." },
    },
  },
  problems: {
    "walkline-outside": {
      cell: "#VALUE!",
      says: "walkline: {walkline length} lies outside a width of {width length}; give a smaller offset, or a wider stair",
    },
    "straight-strings-past-half-turn": {
      cell: "#VALUE!",
      says: "turn: straight strings meet in a corner only under 180 degrees, got {turn}",
    },
  },
  examples: [
    {
      given: { winders: 3, turn: 90, innerRadius: 6, width: 36, walkline: 12 },
      shows: [
        { label: "walkline radius", value: 18 },
        { label: "arc at the walkline", value: 9.42477796076938 },
        { label: "depth at the walkline", value: 9.317485623690747 },
      ],
      from:
        "Notes on Building Construction 2, Winders: 3 winders in a quarter turn at 18 in; arc pi x 18 / 6 = 9.4248 (9 3/7 printed " +
        "by 22/7); chord 36 sin 15 deg = 9.3175",
    },
    {
      given: { winders: 2, turn: 90, innerRadius: 0, width: 36, strings: "straight", headings: false },
      gives: [
        ["walkline radius", "", 12],
        ["depth at the walkline", "", 9.184402376762154],
        ["arc at the walkline", "", 9.42477796076938],
        ["depth at the narrow end", "", 0],
        ["nosing 1", "first", 0],
        ["nosing 2", "first", 36],
        ["nosing 3", "second", 0],
      ],
      from: "by hand: chord 24 sin 22.5 deg, arc 12 x pi / 4; the middle nosing of a quarter turn runs into the corner, 36 tan 45 deg",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 4, width: 10 },
      fails: "#VALUE!",
      says: 'walkline: 12" lies outside a width of 10"; give a smaller offset, or a wider stair',
      from: "by hand: 12 is more than 10",
    },
  ],
  source:
    "Chord 2R sin(A/2k), as the codes measure between nosings; arc RA/k, as old handbooks print (Hatfield, American " +
    "House-Carpenter, art. 260).",
  caution: CAUTION,
  solve: ({ winders, turn, innerRadius, width, walkline, strings }) => {
    const found = winderTurn({ winders, turn, innerRadius, width, walkline, strings });
    if (isProblem(found)) return found;
    return [
      { label: "walkline radius", value: found.walklineRadius },
      { label: "depth at the walkline", value: found.depthAtTheWalkline },
      { label: "arc at the walkline", value: found.arcAtTheWalkline },
      { label: "depth at the narrow end", value: found.depthAtTheNarrowEnd },
      ...found.nosings.map(({ nosing, string, along }) => ({ label: `nosing ${nosing}`, string, value: along })),
    ];
  },
});
