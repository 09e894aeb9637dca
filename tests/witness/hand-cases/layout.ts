import type { WorkedCase } from "../case-kind";

/** The 3-4-5 triangle (Vitruvius IX.0.8): rise 6, run 8, slope length 10. */
const TRIANGLE = [["total rise", 60], ["risers", 10], ["run", 8]] as const;
const PITCH = 36.86989764584402;

/** Labels that a layout has no use for and gives back as they came. */
const GIVEN_BACK = [
  ["riser thickness", 0.5],
  ["width", 36.75],
  ["open end", "right"],
  ["overhang", 1.125],
  ["return width", 1.75],
  ["run past", 0.625],
  ["lap", 0.25],
  ["riser on", "behind"],
  ["stringers", 4],
  ["skirt thickness", 0.875],
  ["skirt shows", 3],
  ["skirt foot", 5],
  ["skirt head", 9.5],
  ["trim length", 1.5],
  ["trim depth", 0.125],
  ["landing nosing", "no"],
  ["species", "white oak"],
  ["handrail height", 35],
] as const;

/** Fourteen rises of 7. */
const SEVENS = [["total rise", 98], ["run", 10], ["width", 36], ["nosing", 1], ["handrail height", 34]] as const;

export const layoutCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  LAYOUT: [
    {
      given: { stair: [...TRIANGLE, ["available run", 80]] },
      shows: [
        { label: "total run", value: 72 },
        { label: "available run", value: 80 },
      ],
      from: "by hand: 9 treads x 8, with room to spare",
    },
    {
      given: { stair: [...TRIANGLE, ...GIVEN_BACK] },
      shows: GIVEN_BACK.map(([label, value]) => ({ label, value })),
      from: "by hand: what was given",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["unit rise", 6],
          ["tread depth", 8],
          ["top tread", "flush"],
          ["open end", "left"],
          ["riser on", "off"],
        ],
      },
      shows: [
        { label: "risers", value: 10 },
        { label: "run", value: 8 },
        { label: "treads", value: 10 },
        { label: "total run", value: 80 },
        { label: "hang", value: 1 },
        { label: "open end", value: "left" },
        { label: "riser on", value: "off" },
        { label: "tread depth", value: 8 },
        { label: "top tread", value: "flush" },
        { label: "2R+T", value: 20 },
        { label: "drop", value: 1 },
        { label: "nosing", value: 1.25 },
        { label: "tread thickness", value: 1 },
      ],
      from: "by hand: 60 / 6; the codes' tread depth is the run; flush: ten treads, the uppermost one inch thick over the rough floor",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["max rise", 7],
          ["available run", 72.5],
          ["open end", "both"],
          ["riser on", "both"],
        ],
      },
      shows: [
        { label: "risers", value: 9 },
        { label: "run", value: 9.0625 },
        { label: "open end", value: "both" },
        { label: "riser on", value: "both" },
        { label: "max rise", value: 7 },
        { label: "available run", value: 72.5 },
        { label: "treads", value: 8 },
        { label: "total run", value: 72.5 },
      ],
      from: "by hand: 60 / 7 = 8.57, so 9; 72 1/2 over 8 treads",
    },
    {
      given: {
        stair: [
          ...TRIANGLE,
          ["nosing", 1],
          ["tread thickness", 1.125],
          ["stringer board", 11.5],
          ["lower build up", 0.75],
          ["upper build up", 0.5],
          ["headroom", 81],
          ["floor thickness", 12],
          ["opening", 100],
        ],
      },
      shows: [
        { label: "unit", value: "in" },
        { label: "total rise", value: 60, unit: "in" },
        { label: "risers", value: 10, unit: "" },
        { label: "unit rise", value: 6, unit: "in" },
        { label: "run", value: 8 },
        { label: "treads", value: 9 },
        { label: "nosing", value: 1, assumed: "" },
        { label: "tread thickness", value: 1.125, assumed: "" },
        { label: "board depth", value: 9 },
        { label: "total run", value: 72 },
        { label: "pitch", value: PITCH, unit: "deg" },
        { label: "slope length", value: 10, unit: "in" },
        { label: "stringer board", value: 11.5 },
        { label: "throat", value: 6.7 },
        { label: "drop", value: 0.375 },
        { label: "hang", value: 6.625 },
        { label: "2R+T", value: 20 },
        { label: "opening needed from the landing nosing", value: 124 },
        { label: "opening needed from the face", value: 125 },
        { label: "headroom found", value: 63 },
        { label: "lower build up", value: 0.75 },
        { label: "upper build up", value: 0.5 },
        { label: "headroom", value: 81 },
        { label: "opening", value: 100 },
        { label: "floor thickness", value: 12 },
      ],
      from:
        "by hand on the 3-4-5 triangle: 60 / 10; 9 treads x 8; 8 + 1; atan(6/8); 11 1/2 - 6 x 8 / 10; 1 1/8 - 3/4; 6 - 1/2 + 1 " +
        "1/8; 2 x 6 + 8; (81 + 12) x 8 / 6, and the nosing; 100 x 6 / 8 - 12",
    },
  ],
  STORYPOLE: [
    {
      given: { totalRise: 31.03, risers: 4 },
      shows: [{ riser: 4, height: 31.03, mark: 31, note: "the total rise lies between two marks; height has it exactly" }],
      from: "by hand: 31.03 x 16 = 496.48, so the nearest sixteenth is 496, which is 31 in",
    },
  ],
  SKIRT: [
    {
      given: {
        stair: [
          ...TRIANGLE,
          ["nosing", 1],
          ["tread thickness", 1.5],
          ["lower build up", 0.25],
          ["stringer board", 12],
          ["skirt shows", 2],
          ["skirt foot", 5],
          ["skirt head", 10],
        ],
      },
      shows: [
        { label: "open skirt width", value: 12 },
        { label: "open skirt length", value: 89.25 },
        { label: "closed skirt width", value: 8.6 },
        { label: "closed skirt length", value: 111.6 },
      ],
      from:
        "by hand, x level from the first nosing, z up: as wide as the stringer board; 90 - (1 1/2 - 1/4) x 6/10; the back corner " +
        "of a tread's underside lies (9 x 6 + 1 1/2 x 8) / 10 under the nosings; the board's outline from (-5, 0) to (82, 6 + 82 x " +
        "3/4 + 2 x 5/4 = 70), along the slope 0.8 x 82 + 0.6 x 70 + 0.8 x 5",
    },
    {
      given: { stair: [...TRIANGLE, ["nosing", 1], ["skirt shows", 2]], headings: false },
      gives: [
        ["open skirt width", 11.25, "in"],
        ["open skirt length", 89.4, "in"],
        ["closed skirt width", 8.2, "in"],
        ["closed skirt length", 95.1, "in"],
        ["plumb cut", PITCH, "deg"],
        ["level cut", 53.13010235415598, "deg"],
      ],
      from: "by hand on the 3-4-5 triangle: as the example of the reference; atan(6/8), and 90 less it",
    },
  ],
  WINDERS: [
    {
      given: { winders: 3, turn: 90, innerRadius: 152.4, width: 914.4, unit: "mm" },
      shows: [{ label: "walkline radius", value: 457.2 }],
      from: "by hand: 6 in, and the walkline 12 in further: 18 x 25.4",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 6, width: 36, walkline: 12, headings: false },
      gives: [
        ["walkline radius", "", 18],
        ["depth at the walkline", "", 9.317485623690747],
        ["arc at the walkline", "", 9.42477796076938],
        ["depth at the narrow end", "", 3.105828541230249],
        ["nosing 1", "inner", 0],
        ["nosing 1", "outer", 0],
        ["nosing 2", "inner", 3.141592653589793],
        ["nosing 2", "outer", 21.991148575128552],
        ["nosing 3", "inner", 6.283185307179586],
        ["nosing 3", "outer", 43.982297150257104],
        ["nosing 4", "inner", 9.42477796076938],
        ["nosing 4", "outer", 65.97344572538566],
      ],
      from:
        "by hand: 6 + 12; chords 36 sin 15 deg and 12 sin 15 deg = 12 (√6 - √2) / 4; a third of the quarter turn is pi/6, along 6 " +
        "it is pi, along 42 it is 7 pi",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 4, width: 32, walkline: 12, strings: "straight", headings: false },
      gives: [
        ["walkline radius", "", 16],
        ["depth at the walkline", "", 8.282209443280664],
        ["arc at the walkline", "", 8.377580409572781],
        ["depth at the narrow end", "", 2.070552360820166],
        ["nosing 1", "first", 0],
        ["nosing 2", "first", 20.784609690826528],
        ["nosing 3", "second", 20.784609690826528],
        ["nosing 4", "second", 0],
      ],
      from:
        "by hand: chords 32 sin 15 deg = 8 (√6 - √2) and a quarter of it, arc 16 pi / 6; walls 4 + 32 from the centre are met at " +
        "36 tan 30 deg = 12√3, one from each end",
    },
  ],
  WINDERTREADS: [
    {
      given: { winders: 3, turn: 90, innerRadius: 152.4, width: 914.4, strings: "straight", unit: "mm" },
      shows: [{ winder: 1, corner: "back edge, wide end", along: 1066.8, back: 652.5790092650341 }],
      from: "by hand: 6 + 36 in, and a nosing of 1 1/4, x 25.4: 1066.8 tan 30 + 31.75 / cos 30",
    },
    {
      given: { winders: 1, turn: 120, innerRadius: 6, width: 36 },
      fails: "#VALUE!",
      says: "winders: 1 would turn 120 degrees each, and one turns 90 at most; give 2 or more",
      from: "by hand: two turn 60 degrees each",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 0, width: 36 },
      fails: "#VALUE!",
      says:
        'innerRadius: 0" leaves the back edge no narrow end, as it lies the nosing of 1 1/4" behind the centre; give a larger radius, or ' +
        "the newel",
      from: "by hand: 0 is less than 1 1/4",
    },
    {
      given: { winders: 3, turn: 90, innerRadius: 6, width: 36, newel: 60 },
      fails: "#VALUE!",
      says: 'newel: 60" reaches the wide ends, 42" from the centre; give a thinner one, or a wider stair',
      from: "by hand: its corner is 60 / √2 = 42.4 out, and 6 + 36",
    },
  ],
  STARTINGSTEP: [
    {
      given: { stair: [["unit", "mm"], ["run", 250], ["nosing", 30], ["width", 900], ["run past", 6]], past: 200, leaf: 3 },
      shows: [
        { label: "straight after the bend", value: 69, unit: "mm" },
        { label: "block radius", value: 122 },
        { label: "tread length", value: 1130 },
      ],
      from: "by hand: 200 - 125 - 6; 125 - 3; 900 + 200 + 30",
    },
    {
      given: { stair: [["run", 10]], past: 8, radius: 4 },
      fails: "#VALUE!",
      says: 'radius: a half round has half the run, 5", got 4"; leave it out, or make the end a quarter round',
      from: "by hand: half of 10",
    },
    {
      given: { stair: [["run", 10], ["width", 3]], past: 1, end: "quarter round" },
      fails: "#VALUE!",
      says: 'radius: 5" is more than the 4" from the wall skirt to the end of the step; a smaller radius',
      from: "by hand: half of 10, and 3 + 1",
    },
    {
      given: { stair: [["run", 10]], past: 8, bend: "kerfs", kerf: "3/4" },
      fails: "#VALUE!",
      says: 'kerf: 3/4" is too wide for cuts 5/8" deep round a radius of 5"; give a thinner saw',
      from: "by hand: 3/4 - 1/8; half of 10",
    },
  ],
  STRINGER: [
    {
      given: { rise: 6, run: 8, risers: 10, boardWidth: 11.25, treadThickness: 1.5, lowerBuildUp: 0.75, upperBuildUp: 0.5 },
      shows: [
        { label: "length", value: 89.55 },
        { label: "throat", value: 6.45 },
        { label: "drop", value: 0.75 },
        { label: "hang", value: 7 },
      ],
      from: "by hand on the 3-4-5 triangle: 1 1/2 - 3/4; 90 - 0.75 x 6 / 10; 6 - 1/2 + 1 1/2",
    },
    {
      given: { rise: "152.4 mm", run: "203.2 mm", risers: 10, boardWidth: "285.75 mm", unit: "mm" },
      shows: [
        { label: "length", value: 2270.76, unit: "mm" },
        { label: "throat", value: 163.83 },
        { label: "drop", value: 25.4 },
        { label: "hang", value: 177.8 },
      ],
      from: "by hand: 89.4, 6.45, 1 and 7 in x 25.4",
    },
  ],
  FLIGHTS: [
    {
      given: {
        stair: [
          ["total rise", 90], ["run", 8], ["width", 36], ["nosing", 1], ["tread thickness", 1.25], ["riser thickness", 0.5],
          ["stringer board", 12], ["upper build up", 0.75], ["landing nosing", "yes"],
        ],
        flights: [["risers", "turn"], [5, "half left"], [5, "half left"], [5, ""]],
      },
      shows: [
        {
          flight: 1, label: "headroom under another flight", value: 43, unit: "in",
          note: "under flight 3, plumb, from the nosing line to the bare underside of its stringers",
        },
        { flight: 1, label: "rough landing height", value: 29.25 },
        { flight: 2, label: "landing tread", value: 1.5 },
      ],
      from:
        "by hand on the 3-4-5 triangle: flight 3 is ten rises of 6 over flight 1, its underside 1 x 6 / 8 + 1 1/4 + 12 x 10 / 8 = 17 " +
        "under its nosing line; 5 x 6 - 3/4; 1 + 1/2",
    },
    {
      given: {
        stair: [...SEVENS, ["landing guard height", 42], ["headroom", 78], ["floor thickness", 10], ["opening", 70]],
        flights: [
          [
            "flight", "risers", "run", "width", "turn", "landing depth", "well", "set back", "newel past", "newel short",
            "landing build up", "landing tread",
          ],
          ["a", 6, "", 40, "half right", 44, 6, 2, 3, -1, 0.5, 5],
          ["b", 8, 9, "", "", "", "", "", "", "", "", ""],
        ],
        headings: false,
      },
      gives: [
        ["stair", "total rise", 98, "in", ""],
        ["stair", "risers", 14, "", ""],
        ["stair", "unit rise", 7, "in", ""],
        ["stair", "length in plan", 105, "in", "along flight 1, riser faces and landing edges"],
        ["stair", "width in plan", 82, "in", "across flight 1, skirt to skirt"],
        ["stair", "plan right of the first flight", 42, "in", "past its right skirt, seen going up"],
        ["stair", "top riser face from the first", 11, "in", "short of the first riser face, seen going up flight 1"],
        ["stair", "guard over the rail", 8, "in", "at a landing nosing: what the newel block has to cover"],
        ["a", "risers", 6, "", ""],
        ["a", "treads", 5, "", ""],
        ["a", "rise of the flight", 42, "in", ""],
        ["a", "total run", 50, "in", "first riser face to last"],
        ["a", "length of this leg", 94, "in", "with the landings at its ends, outer edge to outer edge"],
        ["a", "opening over this flight", 45.714285714286, "in", "level, from this flight's own top nosing down"],
        ["a", "landing height", 42, "in", "finished landing over the lower floor; half right, seen going up"],
        ["a", "rough landing height", 41.5, "in", "the same before the floor still to be laid on it"],
        ["a", "landing depth", 44, "in", "along this flight"],
        ["a", "landing width", 82, "in", "across this flight"],
        ["a", "landing tread", 5, "in", "depth of its nosing piece"],
        ["a", "rail from below at the newel", 36.8, "in", "top of the rail over the finished landing"],
        ["a", "rail from above at the newel", 42.555555555556, "in", "top of the rail over the finished landing"],
        ["a", "rails apart at the newel", 5.7555555555556, "in", "the rail from above is higher"],
        ["b", "risers", 8, "", ""],
        ["b", "treads", 7, "", ""],
        ["b", "rise of the flight", 56, "in", ""],
        ["b", "total run", 63, "in", "first riser face to last"],
        ["b", "length of this leg", 105, "in", "with the landings at its ends, outer edge to outer edge"],
        [
          "b", "opening over this flight", "all", "", "with the landing below it; how far the opening goes on is said of the flight below",
        ],
        ["b", "headroom under the opening", 44.444444444444, "in", "under its far edge, over flight b"],
      ],
      from:
        "by hand: 98 / 14; from 50 + 44 = 94 on down to 50 + 2 - 63 = -11; 40 + 6 + 36; 42 - 34; 98 - 88 = 10 over the floor, (42 - " +
        "10) x 10 / 7; 44 - 2 + 63; 34 + (3 + 1) x 7 / 10; 34 + 7 + (1 + 1) x 7 / 9; 70 x 7 / 9 - 10",
    },
    {
      given: {
        stair: [...SEVENS, ["upper build up", 0.75]],
        flights: [
          [
            "flight", "risers", "run", "width", "turn", "landing depth", "set back", "newel past", "newel short", "landing build up",
            "landing tread",
          ],
          [1, 6, "", 40, "quarter left", "", 3, 2, "on the face", "none", "none"],
          [2, 8, "", 32, "", "", "", "", "", "", ""],
        ],
        headings: false,
      },
      gives: [
        ["stair", "total rise", 98, "in", ""],
        ["stair", "risers", 14, "", ""],
        ["stair", "unit rise", 7, "in", ""],
        ["stair", "length in plan", 82, "in", "along flight 1, riser faces and landing edges"],
        ["stair", "width in plan", 107, "in", "across flight 1, skirt to skirt"],
        ["stair", "plan left of the first flight", 67, "in", "past its left skirt, seen going up"],
        ["stair", "guard over the rail", "", "", "give landing guard height and handrail height"],
        [1, "risers", 6, "", ""],
        [1, "treads", 5, "", ""],
        [1, "rise of the flight", 42, "in", ""],
        [1, "total run", 50, "in", "first riser face to last"],
        [1, "length of this leg", 82, "in", "with the landings at its ends, outer edge to outer edge"],
        [1, "landing height", 42, "in", "finished landing over the lower floor; quarter left, seen going up"],
        [1, "rough landing height", 42, "in", "the same before the floor still to be laid on it"],
        [1, "landing depth", 32, "in", "along this flight"],
        [1, "landing width", 40, "in", "across this flight"],
        [1, "rail from below at the newel", 36.1, "in", "top of the rail over the finished landing"],
        [1, "rail from above at the newel", 41.7, "in", "top of the rail over the finished landing"],
        [1, "rails apart at the newel", 5.6, "in", "the rail from above is higher"],
        [2, "risers", 8, "", ""],
        [2, "treads", 7, "", ""],
        [2, "rise of the flight", 56, "in", ""],
        [2, "total run", 70, "in", "first riser face to last"],
        [2, "length of this leg", 107, "in", "with the landings at its ends, outer edge to outer edge"],
        [2, "opening over this flight", "", "", "give headroom and floor thickness"],
      ],
      from:
        "by hand: 50 + 32; 40 - 3 + 70, of it 70 - 3 to the left; no floor to lay on the landing and no piece of its own; 34 + (2 + 1) " +
        "x 0.7; 34 + 7 + 1 x 0.7",
    },
    {
      given: {
        stair: [
          ["unit", "mm"],
          ["total rise", 2800],
          ["run", 250],
          ["width", 900],
          ["nosing", 30],
          ["riser thickness", 18],
        ],
        flights: [["risers", "turn"], [7, "quarter right"], [9, ""]],
      },
      shows: [
        { flight: "stair", label: "unit rise", value: 175, unit: "mm" },
        { flight: "stair", label: "length in plan", value: 2400 },
        { flight: "stair", label: "width in plan", value: 2900 },
        { flight: 1, label: "landing height", value: 1225 },
        { flight: 1, label: "landing tread", value: 48, unit: "mm" },
      ],
      from: "by hand: 2800 / 16; 6 x 250 + 900; 900 + 8 x 250; 7 x 175; the least, 30 + 18",
    },
  ],
  ONEFLIGHT: [
    {
      given: {
        stair: [["total rise", 98], ["run", 10], ...GIVEN_BACK, ["tread thickness", 1.25], ["stringer board", 11.5], ["headroom", 81]],
        flights: [["risers", "turn"], [6, "quarter left"], [8, ""]],
        number: 1,
      },
      shows: [...GIVEN_BACK, ["tread thickness", 1.25], ["stringer board", 11.5], ["headroom", 81]].map(([label, value]) => ({
        label: String(label), value: value ?? "",
      })),
      from: "by hand: what was given",
    },
    ...([["left", "off"], ["both", "both"], ["none", "behind"]] as const).map(([end, on]): WorkedCase => ({
      given: {
        stair: [["total rise", 98], ["run", 10], ["width", 36], ["open end", end], ["riser on", on], ["landing nosing", "yes"]],
        flights: [["risers", "turn"], [6, "quarter left"], [8, ""]],
        number: 2,
      },
      shows: [{ label: "open end", value: end }, { label: "riser on", value: on }, { label: "landing nosing", value: "yes" }],
      from: "by hand: what was given",
    })),
    {
      given: {
        stair: [["total rise", 98], ["run", 10], ["width", 36], ["nosing", 1.25], ["riser thickness", 0.5]],
        flights: [["risers", "turn"], [6, "quarter left"], [8, ""]],
        number: 1,
      },
      shows: [
        { label: "nosing", value: 1.25 },
        { label: "riser thickness", value: 0.5 },
        {
          label: "landing tread", value: 1.75,
          assumed: "assumed: depth of its nosing piece: the least, over the riser and its nosing; stock pieces are deeper",
        },
      ],
      from: "by hand: 1 1/4 + 1/2, as nobody said more",
    },
    {
      given: {
        stair: [
          ["total rise", 98],
          ["run", 10, "in", "assumed: a guess"],
          ["nosing", 1, "in", "assumed: a guess"],
          ["overhang", 1.5],
          ["run past", 0.25],
          ["lower build up", 0.125],
        ],
        flights: [
          [
            "risers", "width", "turn", "landing depth", "landing build up", "open end", "overhang", "return width", "run past",
            "open sides", "handrails", "landing tread", "landing tread length",
          ],
          [6, 40, "half left", 44, 0.5, "right", 1.25, 1.75, 0.375, "one", "both", 5, 78],
          [8, 36, "", "", "", "", "", "", "", "", "", "", ""],
        ],
        number: 1,
        headings: false,
      },
      gives: [
        ["unit", "in", "", ""],
        ["total rise", 42, "in", ""],
        ["risers", 6, "", ""],
        ["run", 10, "in", "assumed: a guess"],
        ["width", 40, "in", ""],
        ["top tread", "floor", "", ""],
        ["nosing", 1, "in", "assumed: a guess"],
        ["overhang", 1.25, "in", ""],
        ["run past", 0.375, "in", ""],
        ["lower build up", 0.125, "in", ""],
        ["upper build up", 0.5, "in", ""],
        ["landing", "turn", "", ""],
        ["landing depth", 44, "in", ""],
        ["landing width", 76, "in", ""],
        ["landing tread", 5, "in", ""],
        ["landing tread length", 78, "in", ""],
        ["open end", "right", "", ""],
        ["return width", 1.75, "in", ""],
        ["open sides", "one", "", ""],
        ["handrails", "both", "", ""],
        ["stair height", 98, "in", ""],
        ["stair risers", 14, "", ""],
        ["risers before turn", 6, "", ""],
      ],
      from: "by hand: 6 x 98 / 14; the flight's own row over the stair's; 40 + 36 across the landing",
    },
    {
      given: {
        stair: [["total rise", 98], ["run", 10], ["width", 36], ["overhang", 1.5], ["run past", 0.25], ["upper build up", 0.75]],
        flights: [
          ["risers", "turn", "landing build up", "overhang", "run past", "landing tread"],
          [5, "none", "none", "none", "none", "none"],
          [3, "quarter right", "", "", "", ""],
          [6, "", "", "", "", ""],
        ],
        number: 1,
        headings: false,
      },
      gives: [
        ["unit", "in", "", ""],
        ["total rise", 35, "in", ""],
        ["risers", 5, "", ""],
        ["run", 10, "in", ""],
        ["width", 36, "in", ""],
        ["top tread", "floor", "", ""],
        ["overhang", 0, "in", ""],
        ["run past", 0, "in", ""],
        ["upper build up", 0, "in", ""],
        ["landing", "straight", "", ""],
        ["landing depth", 36, "in", ""],
        ["landing width", 36, "in", ""],
        ["landing nosing", "no", "", ""],
        ["stair height", 98, "in", ""],
        ["stair risers", 14, "", ""],
        ["risers before turn", 8, "", ""],
      ],
      from: "by hand: 5 x 7; 5 + 3 in line before the turn; none of what the row says none of",
    },
    {
      given: {
        stair: [["unit", "mm"], ["total rise", 2800], ["run", 250], ["width", 900], ["top tread", "floor"]],
        flights: [["risers", "turn"], [7, "quarter right"], [9, ""]],
        number: 2,
      },
      shows: [
        { label: "unit", value: "mm" },
        { label: "total rise", value: 1575, unit: "mm" },
        { label: "risers", value: 9 },
        { label: "stair risers", value: 16 },
        { label: "risers before turn", value: 9 },
      ],
      from: "by hand: 9 x 175",
    },
  ],
  UNIFORMITY: [
    {
      given: { values: [[7.5], [7.75]], tolerance: 0.5 },
      shows: [{ label: "verdict", value: "pass" }],
      from: "by hand: 1/4 is within 1/2",
    },
    {
      given: { values: [[7], [7.5]] },
      shows: [{ label: "verdict", value: "assumed: would fail" }],
      from: "IRC 2021 R311.7.5.1: 3/8 in; by hand 1/2 is more",
    },
    { given: { values: [[7]] }, shows: [{ label: "verdict", value: "not given" }], from: "by hand: one rise differs from none" },
    {
      given: { values: [[180], [180.4]], unit: "mm" },
      shows: [
        { label: "spread", value: 0.4 },
        { label: "verdict", value: "assumed: would pass" },
      ],
      from: "IRC 2021 R311.7.5.1: 3/8 in, by hand 9.525 mm, which 0.4 mm is far under, as 0.4 in is not",
    },
  ],
  CHOICES: [
    {
      given: { totalRise: 30, availableRun: 27, code: "trade-rules" },
      shows: [{ risers: 4, rise: 7.5, run: 9, verdict: "caution" }],
      from: "by hand: rise and run together are 16 1/2 in, where the rule of thumb says 17 to 18",
    },
    {
      given: { totalRise: 30, code: "nbc-ca-2020" },
      shows: [
        { risers: 5, run: 13, verdict: "assumed: would pass" },
        { risers: 6, run: 15, verdict: "assumed: would fail" },
      ],
      from:
        "NBC 2020 Table 9.8.4.1. and 9.8.4.2., private: rise 125 to 200 mm, run 255 to 355; by hand 152.4 and 330.2, 127 and 381; " +
        "nobody gave the use",
    },
    {
      given: { totalRise: 30, code: "osha-1926.1052" },
      shows: [{ risers: 4, rise: 7.5, run: 10, verdict: "not on file" }],
      from: "29 CFR 1926.1052(a)(2) limits the angle alone, 30 to 50 degrees; no rise and no run of it is on file",
    },
    {
      given: { totalRise: "762 mm", unit: "mm" },
      shows: [{ risers: 4, rise: 190.5, run: 254, totalRun: 762, "2R+T": 635, verdict: "not given" }],
      from: "by hand: 762 / 4; two rises and a run are 25 in, 635 mm; 635 - 381; three treads",
    },
  ],
  EQUALIZE: [
    {
      given: { roughRises: [[7], [8]], treadThickness: 1, lowerBuildUp: 0.75, upperBuildUp: 0.5 },
      shows: [
        { step: 1, asFound: 7.25, packing: 0, rise: 7.25 },
        { step: 2, asFound: 7.5, rise: 7.5 },
        { step: "total and spread", asFound: 0.25, note: 'within 3/8"; nothing to pack' },
      ],
      from: "by hand: 7 + 1 - 3/4 and 8 - 1 + 1/2; 1/4 apart, under 3/8",
    },
  ],
};
