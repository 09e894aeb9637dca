/** Stairs with nearly every label, so that whatever a function reads is there. Invented. */
const COMMON = [
  ["nosing", 1.5],
  ["tread thickness", 1.25],
  ["riser thickness", 0.5],
  ["width", 36.75],
  ["overhang", 1.125],
  ["return width", 1.75],
  ["run past", 0.5],
  ["lap", 0.375],
  ["riser on", "behind"],
  ["lower build up", 0.75],
  ["upper build up", 0.25],
  ["stringers", 4],
  ["stringer board", 11.5],
  ["skirt thickness", 0.875],
  ["skirt shows", 3],
  ["skirt foot", 5],
  ["skirt head", 7],
  ["headroom", 81],
  ["opening", 120],
  ["floor thickness", 12],
  ["trim length", 0.5],
  ["trim depth", 0.125],
  ["landing nosing", "yes"],
  ["species", "white oak"],
  ["handrail height", 35],
] as const;

const COUNTED = [["total rise", 98], ["risers", 14], ["run", 10]] as const;

export const RICH_STAIRS: readonly (readonly (readonly (string | number)[])[])[] = [
  ...["left", "both"].map((end) => [...COUNTED, ...COMMON, ["open end", end], ["top tread", "floor"]]),
  [["total rise", 98], ["max rise", 7.75], ["total run", 130], ...COMMON],
  [["total rise", 98], ["unit rise", 7], ["tread depth", 10], ...COMMON],
  [["total rise", 98], ["risers", 14], ["treads", 13], ["available run", 130], ...COMMON],
  [
    ["unit", "mm"],
    ["total rise", 2800],
    ["risers", 15],
    ["run", 250],
    ["width", 900],
    ["nosing", 30],
    ["tread thickness", 32],
    ["open end", "left"],
    ["run past", 8],
  ],
];
