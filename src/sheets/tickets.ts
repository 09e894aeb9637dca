import type { ResultColumns, ResultKind } from "../functions/declare";
import { RISERFIT } from "../functions/fit/riserfit";
import { TREADFIT } from "../functions/fit/treadfit";
import { READ_AGAIN, saysDisagreeing } from "../solver/fit/closure-notes";
import { words } from "../solver/words";
import { columnsOf } from "./result-looks";
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

const COLUMNS: ResultColumns = { ...columnsOf(TREADFIT), ...columnsOf(RISERFIT) };

/**
 * What the saw needs of a fit: of the heel's figures the one a tape can hook, for `heel` itself is measured from a corner that is not on
 * its line; and swing and tilt in words, so that no sign has to be remembered.
 */
const PRINTED: readonly { readonly heading: string; readonly kind: ResultKind }[] = [
  "step",
  "length",
  "longPoint",
  "shortPoint",
  "back",
  "front",
  "top",
  "bottom",
  "depth",
  "leftDepth",
  "rightDepth",
  "height",
  "toe",
  "heelAtTheHook",
  "mitreLine",
  "leftMitreLine",
  "returnLine",
  "returnLength",
  "leftReturnLength",
  "leftSet",
  "rightSet",
  "mitre",
  "leftMitre",
].map((key) => {
  const column = COLUMNS[key];
  if (column === undefined) throw new Error(`no fit has a column ${key}`);
  return { heading: words(key), kind: column.kind };
});

/** Of a tread that ends in a mitre these are no marks, and less than what is cut. */
const BETWEEN_SKIRTS: readonly string[] = [words("longPoint"), words("shortPoint")];

/** Said only where a step of the fit is tapered: otherwise both are the depth. */
const AT_BOTH_ENDS = [words("leftDepth"), words("rightDepth")] as const;

/** A saw is set to a tenth of a degree at best. */
const ANGLE_DECIMALS = 1;

/** In the place of a size that does not hold. */
const NO_SIZE = "–";

const isText = (cell: FitCell | undefined): cell is PlainValue =>
  cell !== null && cell !== undefined && typeof cell !== "object" && cell !== "";

/**
 * Tickets of one fit, its heading row first, in batches, its lengths as they are read on the tape. Columns with nothing in them are left
 * out. A step whose readings disagree shows no size: it would be cut. `says` is what the sheet says over the readings.
 */
export const tickets = (
  title: string, fit: readonly (readonly FitCell[])[], tape: TicketTape, says?: string,
): readonly Ticket[] => {
  const [headings = [], ...rows] = fit;
  const isGiven = (heading: string): boolean => rows.some((row) => isText(row[headings.indexOf(heading)]));
  const isTapered = rows.some((row) => {
    const [one, other] = AT_BOTH_ENDS.map((heading) => row[headings.indexOf(heading)]);
    return isText(one) && isText(other) && one !== other;
  });
  const left = [...(isGiven("toe") ? BETWEEN_SKIRTS : []), ...(isTapered ? [] : AT_BOTH_ENDS)];
  const columns = PRINTED.flatMap(({ heading, kind }) =>
    isGiven(heading) && !left.includes(heading) ? [{ heading, kind, column: headings.indexOf(heading) }] : []);
  const note = headings.indexOf("note");
  const step = headings.indexOf("step");
  const text = (kind: ResultKind, cell: FitCell | undefined): string => {
    if (!isText(cell)) return "";
    if (typeof cell !== "number" || kind === "label") return String(cell);
    return kind === "angle" ? `${cell.toFixed(ANGLE_DECIMALS)}°` : tape.text(cell);
  };
  const cellsOf = (row: readonly FitCell[]): readonly string[] => {
    const isDisagreeing = typeof row[note] === "string" && saysDisagreeing(row[note]);
    let sizes = 0;
    return columns.map(({ kind, column }) => {
      if (!isDisagreeing || column === step) return text(kind, row[column]);
      sizes += 1;
      return sizes === 1 ? READ_AGAIN : NO_SIZE;
    });
  };
  return Array.from({ length: Math.ceil(rows.length / STEPS_A_TICKET) }, (_, batch): Ticket => {
    const batched = rows.slice(batch * STEPS_A_TICKET, (batch + 1) * STEPS_A_TICKET);
    const [first, last] = [batched[0]?.[step], batched[batched.length - 1]?.[step]];
    const steps = isText(first) && isText(last) ? `, steps ${String(first)} to ${String(last)}` : "";
    return {
      title: `${title}${steps}`,
      measure: tape.says,
      headings: columns.map(({ heading }) => heading),
      rows: batched.map(cellsOf),
      notes: [
        ...(says === undefined ? [] : [says]),
        ...batched.flatMap((row) => (isText(row[note]) ? [`step ${String(row[step] ?? "")}: ${String(row[note])}`] : [])),
      ],
    };
  });
};
