/** What a fit was measured in: its unit, and into how many parts the tape divides it. */
export interface Measuring {
  readonly unit: "in" | "mm";
  readonly divisions: number;
}

/** How a ticket writes lengths, and the line that says so. */
export interface TicketTape {
  readonly text: (length: number) => string;
  readonly says: string;
}

/** Divisions an inch has on a tape; TAPE writes no others. */
const INCH_DIVISIONS: readonly number[] = [2, 4, 8, 16, 32, 64];
/** A tenth of a millimetre is finer than a saw cuts. */
const DECIMALS = 1;
/** Thousandths, for a tape that divides the inch otherwise. */
const INCH_DECIMALS = 3;

const rounded = (length: number, decimals: number): string => (Math.round(length * 10 ** decimals) / 10 ** decimals).toFixed(decimals);

/** Lengths of a ticket as they are read on the tape they were measured with; `tapeText` writes inches with a fraction. */
export const ticketTape = ({ unit, divisions }: Measuring, tapeText: (inches: number, divisions: number) => string): TicketTape => {
  if (unit === "mm") {
    return {
      text: (length) => `${rounded(length, DECIMALS)} mm`,
      says: `Lengths in mm, worked out from readings to ${divisions === 1 ? "1" : `1/${divisions}`} mm.`,
    };
  }
  return INCH_DIVISIONS.includes(divisions)
    ? { text: (length) => tapeText(length, divisions), says: `Lengths in inches, to 1/${divisions}.` }
    : {
        text: (length) => `${rounded(length, INCH_DECIMALS)} in`,
        says: `Lengths in inches, worked out from readings to 1/${divisions} in.`,
      };
};
