/** When a number is shown under another format than its cell's. */
export interface TapeRule {
  /** True where it holds, written for whichever cell it is asked of: RC is that cell. */
  readonly formula: string;
  readonly numberFormat: string;
  /** The same of a number at hand. */
  readonly holdsFor: (value: number) => boolean;
}

/** "# ??/16": how the whole is written, the division of the tape, and what is printed behind it. */
const OF_TAPE = /^([#0,]+ )\?+\/(16|32|64)([^;?#0/]*)$/;

/** Under a fraction of so many parts Excel needs room for two digits over the line. */
const TWO_DIGITS = 16;

const holds = (test: string): string => `=IF(ISNUMBER(RC),${test},FALSE)`;

/**
 * Excel does not reduce what it shows in sixteenths ("not reduced by design", Microsoft KB 893691), so 7 10/16 stands for 7 5/8. Rules by
 * which a number counted in one part of an inch is shown in the coarsest mark of the tape: each holds where no other does, so that none
 * waits for another's turn. None for a format that is not of a tape.
 */
export const tapeRules = (format: string): readonly TapeRule[] => {
  const [, whole, division, behind] = OF_TAPE.exec(format) ?? [];
  if (whole === undefined || behind === undefined) return [];
  const parts = Number(division);
  const counted = `ROUND(RC*${parts},0)`;
  // Halves go away from 0, as ROUND takes them.
  const count = (value: number): number => Math.round(Math.abs(value) * parts);
  const fractions: TapeRule[] = [];
  for (let mark = 2; mark < parts; mark *= 2) {
    const each = parts / mark;
    const places = mark < TWO_DIGITS ? "?" : "??";
    // An odd number of these marks: an even one is so many of the next coarser.
    fractions.push({
      formula: holds(`MOD(${counted},${2 * each})=${each}`),
      numberFormat: `${whole}${places}/${mark}${behind}`,
      holdsFor: (value) => count(value) % (2 * each) === each,
    });
  }
  return [
    // Less than half a part on either side: 0, and no minus before it.
    { formula: holds(`${counted}=0`), numberFormat: `0${behind};0${behind}`, holdsFor: (value) => count(value) === 0 },
    {
      formula: holds(`AND(${counted}<>0,MOD(${counted},${parts})=0)`),
      numberFormat: `${whole.trim().replace(/#$/, "0")}${behind}`,
      holdsFor: (value) => count(value) !== 0 && count(value) % parts === 0,
    },
    ...fractions,
  ];
};
