import type { Unit } from "../../solver/length/length";
import type { Entry } from "../sheet-builder";

type Rows = readonly (readonly Entry[])[];

/**
 * What the sheets of a job are filled with: the demo's invented figures, or for a job of one's own what was asked and nothing else. An
 * empty text is a yellow cell still to be typed; lengths are numbers in the unit of the job.
 */
export interface Filling {
  readonly unit: Unit;
  readonly job: string;
  readonly customer: string;
  readonly code: string;
  readonly totalRise: Entry;
  /** undefined: as few as the code's greatest rise allows. */
  readonly risers?: Entry;
  readonly run: Entry;
  readonly width: Entry;
  readonly openEnd: string;
  readonly handrails: Entry;
  /** Rough rises from the bottom. */
  readonly roughRises: readonly Entry[];
  readonly floors: { readonly treadThickness: Entry; readonly lowerBuildUp: Entry; readonly upperBuildUp: Entry };
  /** How near to one another the finished rises are packed; empty: as the code has it. */
  readonly alikeWithin: Entry;
  /** By their labels: what else is known of the stair. */
  readonly sizes: Readonly<Record<string, Entry>>;
  /** Label, length, width, thickness, price. */
  readonly blanks: Rows;
  /** Label, length, width, thickness, price, available, owned, grade. */
  readonly boards: Rows;
  readonly kerf: Entry;
  readonly trim: Entry;
  readonly keep: Entry;
  /** Step, run, back, front, both diagonals, lean of the left skirt. */
  readonly treads: Rows;
  /** Step, height, top, bottom, both diagonals, flare of the left skirt. */
  readonly risersRead: Rows;
  readonly balusterWidth: Entry;
  readonly railHours: Entry;
  readonly beadDiameter: Entry;
  readonly cartridge: Entry;
  /** Item, hours for one, price of one, unit. */
  readonly items: Rows;
  /** Label and rate; the label says what the rate is of. */
  readonly terms: Rows;
  readonly roundUpTo: Entry;
  /** What is bid beside the stairs, and alternates: item, cost, kind, option, hours. */
  readonly besides: Rows;
  /** What an alternate changes of the stair: option, label, value. */
  readonly changes: Rows;
  /** Pieces of an alternate in place of those of the same label: option, grade, label, length, width, quantity. */
  readonly ownPieces: Rows;
  /** Date, job, item, quantity, unit, cost, kind, to, invoice, of, share. */
  readonly moves: Rows;
  /** The name of the job in the moves, the hours it took and what they cost. */
  readonly booked: Entry;
  readonly hoursSpent: Entry;
  readonly hoursCost: Entry;
  /** The month that is closed, 2026-03; empty: the last of the moves. */
  readonly month: Entry;
  /** What to do, said on Job, where the job is an invented one. */
  readonly trial?: string;
  /**
   * What Boards is filled with. None for one flight of several: a board is cut once, and each flight's sheet would plan its pieces on the
   * same pile.
   */
  readonly pile?: PileFilling;
  /** Where the stair is one flight of several: what it has from the sheet of the whole stair. */
  readonly flight?: FlightFilling;
}

/** Wood as it is measured and sold: rough boards, sheets, and what the glue-up and the saw take of them. */
export interface PileFilling {
  /** Label, length, width, thickness, grade, price, owned, defects, edge. */
  readonly treadBoards: Rows;
  readonly otherBoards: Rows;
  /** Label, length, width, thickness, price. */
  readonly sheets: Rows;
  /** By their labels: terms of the glue-up. */
  readonly terms: Readonly<Record<string, Entry>>;
  readonly sheetTrim: Entry;
  /** Grade, and what else will do: of treads, risers, skirts. */
  readonly grades: Rows;
  /** Said of it where the boards are invented. */
  readonly says?: string;
}

/** One flight of several. What the whole stair has stands on a sheet of its own, which the sheets of its flights read. */
export interface FlightFilling {
  /** Which one it is, behind the title of each of its sheets: lower flight. */
  readonly says: string;
  /** The sheet of the whole stair, and the cell of it in which the flight stands as a stair table. */
  readonly sheet: string;
  readonly from: string;
  /** The code as a formula; the id beside it says what money is in. */
  readonly code: string;
  /** Labels of the stair table that only a flight of several has, each with its formula. */
  readonly sizes: Rows;
  readonly fallHeight: Entry;
}

/** The unit in a sentence. */
export const UNIT_WORDS: Readonly<Record<Unit, string>> = { in: "inches", mm: "millimetres" };

/** How a length is shown. */
export const lengthFormat = (unit: Unit): string => (unit === "mm" ? "0.0" : "# ??/16");

/** A length as a text that a person reads off a tape. */
export const onTape = (unit: Unit, length: string): string => (unit === "mm" ? `TEXT(${length},"0.0")&" mm"` : `STAIR.TAPE(${length})`);

/** What money is in where a code is in force, by what its name begins with; elsewhere dollars. */
const MONEYS: readonly (readonly [string, string])[] = [["uk-", "£"], ["ie-", "€"], ["din-", "€"]];

/** The sign of the money of a job; the word while no code says where it is. */
export const moneyOf = ({ code }: Pick<Filling, "code">): string =>
  code === "" ? "money" : MONEYS.find(([country]) => code.startsWith(country))?.[1] ?? "$";

/** Numbers with the unit of the job, for a function that would take them for inches; a text says its own. Some hosts write a comma. */
export const inUnit = (unit: Unit, cells: string): string =>
  (unit === "in" ? cells : `IF(ISNUMBER(${cells}),SUBSTITUTE(${cells},",",".")&" ${unit}",${cells})`);
