import { element } from "../pane/element";
import { findings } from "../sheets/findings";
import type { NamedCall, Shown } from "../sheets/job";
import { jobFormula } from "../sheets/job-formula";
import { isErrorCell, isRows, type Result, type ResultCell, type Rows, type Solve } from "../sheets/job-run";
import { cellText } from "./cell-text";

export interface ResultTable {
  readonly part: HTMLElement;
  /** The element that holds the sentences, for fields that point to it. */
  readonly sentences: string;
  readonly show: (result: Result) => void;
}

const isHeadings = (rows: Rows): boolean => rows.length > 1 && (rows[0] ?? []).every((cell) => typeof cell === "string" && cell !== "");

const isIn = (heading: string, columns: readonly string[] | "all" | undefined): boolean => columns === "all" || (columns ?? []).includes(heading);

/** Whether a carpenter reads this cell on a tape. */
const isOnTape = (heading: string, headings: readonly string[], row: readonly ResultCell[], { lengths, lengthRows }: Shown): boolean => {
  if (!isIn(heading, lengths)) return false;
  if (lengthRows !== undefined) return lengthRows.includes(String(row[0]));
  const unit = headings.indexOf("unit");
  return unit < 0 || row[unit] === "in";
};

/** What a call of the job answers, as a table that is filled anew whenever something is typed. */
export const resultTable = (page: Document, call: NamedCall, solve: Solve): ResultTable => {
  const { name, says, shown = {} } = call;
  const sentences = `says-${name.replace(/ /g, "-")}`;
  const box = element(page, "div", [], "scroll");
  box.tabIndex = 0;
  box.setAttribute("role", "region");
  box.setAttribute("aria-label", says);
  const folded = element(page, "details", [], "folded");
  const said = element(page, "div", [], "sentences");
  said.id = sentences;
  const part = element(page, "div", [element(page, "h4", says), element(page, "code", jobFormula(call), "typed"), box, said, folded], "result");
  part.dataset["result"] = name;

  const tape = (length: number): string => {
    const answer = solve("TAPE", [length]) as unknown;
    const first: unknown = Array.isArray(answer) ? (answer as unknown[][])[0]?.[0] : answer;
    return String(first);
  };

  const filled = (cell: ResultCell, heading: string, headings: readonly string[], row: readonly ResultCell[]): HTMLTableCellElement => {
    if (isErrorCell(cell)) return element(page, "td", cell.code, "error");
    const text = cellText(cell, isIn(heading, shown.money));
    if (typeof cell !== "number") return element(page, "td", text, text.length > 24 ? "long" : undefined);
    const made = element(page, "td", text, "number");
    if (isOnTape(heading, headings, row, shown)) made.append(" ", element(page, "span", tape(cell), "tape"));
    return made;
  };

  const table = (headings: readonly string[], rows: Rows, kept: readonly number[]): HTMLTableElement => {
    const body = rows.map((row) => {
      const cells = kept.map((column) => filled(row[column] ?? "", headings[column] ?? "", headings, row));
      return element(page, "tr", cells);
    });
    const made = element(page, "table", [element(page, "tbody", body)], "answer");
    made.setAttribute("aria-label", says);
    if (headings.length > 0) {
      const head = element(page, "tr", kept.map((column) => {
        const heading = element(page, "th", headings[column] ?? "");
        heading.scope = "col";
        return heading;
      }));
      made.prepend(element(page, "thead", [head]));
    }
    return made;
  };

  const show = (result: Result): void => {
    const all: Rows = isRows(result) ? result : [[result]];
    const headed = isHeadings(all);
    const headings = headed ? (all[0] ?? []).map(String) : [];
    const rows = headed ? all.slice(1) : all;
    const columns = (rows[0] ?? []).map((_, column) => column);
    const isEmpty = (column: number): boolean => rows.every((row) => row[column] === "");
    const kept = columns.filter((column) => !isEmpty(column));
    const verdict = headings.indexOf(shown.folded?.heading ?? "");
    const isFolded = (row: readonly ResultCell[]): boolean => verdict >= 0 && (shown.folded?.of ?? []).includes(String(row[verdict]));
    const away = rows.filter(isFolded);
    box.replaceChildren(table(headings, rows.filter((row) => !isFolded(row)), kept));
    if (kept.length < columns.length) {
      const names = columns.filter(isEmpty).map((column) => headings[column] ?? "").join(", ");
      box.append(element(page, "p", `Empty here: ${names}.`, "quiet"));
    }
    said.replaceChildren(...findings(result).map(({ says: sentence }) => element(page, "p", sentence, "sentence")));
    folded.hidden = away.length === 0;
    if (away.length > 0) {
      const inside = element(page, "div", [table(headings, away, kept)], "scroll");
      inside.tabIndex = 0;
      inside.setAttribute("role", "region");
      inside.setAttribute("aria-label", `${says}: ${shown.folded?.says ?? ""}`);
      folded.replaceChildren(element(page, "summary", `${away.length} ${shown.folded?.says ?? ""}`), inside);
    }
  };

  return { part, sentences, show };
};
