import type { PlainValue } from "./sheet-data";
import type { TicketTape } from "./ticket-tape";

/** A cell of a fit as the sheet shows it; an error or an empty cell is empty, its sentence stands in the note. */
export type FitCell = PlainValue | null | { readonly error: string };

/** One page for the saw: a batch of steps of one fit, every value as text. */
export interface Ticket {
  readonly title: string;
  /** The unit of its lengths and how fine they are. */
  readonly measure: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly notes: readonly string[];
}

/** Treads and risers are cut and fitted four or five at a time: common practice, no source. */
const STEPS_A_TICKET = 5;

/** Of the heel's figures the one a tape can hook; `heel` itself is measured from a corner that is not on its line. */
const LENGTHS: readonly string[] = ["length", "long point", "short point", "back", "front", "top", "bottom", "depth", "height", "toe", "heel at the hook", "mitre line", "left mitre line", "return line", "return length", "left return length"];
/** Swing and tilt in words, so that no sign has to be remembered at the saw. */
const SETS: readonly string[] = ["left set", "right set"];
const ANGLES: readonly string[] = ["mitre", "left mitre"];
const PRINTED: readonly string[] = ["step", ...LENGTHS, ...SETS, ...ANGLES];
/** A saw is set to a tenth of a degree at best. */
const ANGLE_DECIMALS = 1;

const isText = (cell: FitCell | undefined): cell is PlainValue => cell !== null && cell !== undefined && typeof cell !== "object" && cell !== "";

/** Tickets of one fit, its heading row first, in batches, its lengths as they are read on the tape. Columns with nothing in them are left out. */
export const tickets = (title: string, fit: readonly (readonly FitCell[])[], tape: TicketTape): readonly Ticket[] => {
  const [headings = [], ...rows] = fit;
  const columns = PRINTED.flatMap((heading) => {
    const column = headings.indexOf(heading);
    return column >= 0 && rows.some((row) => isText(row[column])) ? [{ heading, column }] : [];
  });
  const note = headings.indexOf("note");
  const step = headings.indexOf("step");
  const text = (heading: string, cell: FitCell | undefined): string => {
    if (!isText(cell)) return "";
    if (typeof cell !== "number" || heading === "step") return String(cell);
    return LENGTHS.includes(heading) ? tape.text(cell) : `${cell.toFixed(ANGLE_DECIMALS)}°`;
  };
  return Array.from({ length: Math.ceil(rows.length / STEPS_A_TICKET) }, (_, batch): Ticket => {
    const batched = rows.slice(batch * STEPS_A_TICKET, (batch + 1) * STEPS_A_TICKET);
    const [first, last] = [batched[0]?.[step], batched[batched.length - 1]?.[step]];
    const steps = isText(first) && isText(last) ? `, steps ${String(first)} to ${String(last)}` : "";
    return {
      title: `${title}${steps}`,
      measure: tape.says,
      headings: columns.map(({ heading }) => heading),
      rows: batched.map((row) => columns.map(({ heading, column }) => text(heading, row[column]))),
      notes: batched.flatMap((row) => (isText(row[note]) ? [`step ${String(row[step] ?? "")}: ${String(row[note])}`] : [])),
    };
  });
};
