/** How goods of several tables are matched, for the reference of each function that does. */
export const GOODS_RULES =
  "Names of goods match mark by mark (oak 4/4 is not oak 44), without regard to case and spaces; names of takeoff items and " +
  "labour match by their letters. Nothing is merged: names one slip apart, two from nine letters on (of more than some 1,500 " +
  "names the longest only one), are named in the note. Units: each, dozen; in, ft (LF), yd, m, cm, mm; bf, mbf; sq ft, sq m; " +
  "sheet; hour, minute, in their usual spellings, converted exactly within each group; any other word is itself alone.";
