import { CODE_CHOICES } from "../sheets/job/code-choices";
import type { AskedJob } from "../sheets/job/own-job";
import type { Solve } from "./answer";
import { element } from "./element";
import { messageOf } from "./message-of";

/** Where the sheets of a job go. */
export type JobPlace = "own workbook" | "this workbook" | "one more stair";

const PLACES: Readonly<Record<JobPlace, string>> = {
  "own workbook": "a workbook of its own",
  "this workbook": "new sheets in this workbook",
  "one more stair": "one more stair of the job in this workbook; Bid and Books take it in",
};

type Length = "totalRise" | "run" | "width";

const LENGTHS: Readonly<Record<Length, readonly [label: string, hint: string]>> = {
  totalRise: ["Total rise", "from finished floor to finished floor"],
  run: ["Run", "of one step, nosing to nosing"],
  width: ["Width", "of a tread, between what stands at its ends"],
};

const OPEN_ENDS: Readonly<Record<AskedJob["openEnd"], string>> = {
  none: "none: a wall or closed skirt at both ends",
  left: "left, going up",
  right: "right, going up",
  both: "both",
};

const UNITS: Readonly<Record<AskedJob["unit"], string>> = { in: "inches", mm: "millimetres" };
const READ = { in: "TOINCHES", mm: "TOMM" } as const;

const chosen = <Key extends string>(page: Document, options: Readonly<Record<Key, string>>, first?: string): HTMLSelectElement => {
  const made = element(page, "select");
  const entries: (readonly [string, string])[] = Object.entries(options);
  for (const [value, words] of first === undefined ? entries : [["", first] as const, ...entries]) {
    const option = element(page, "option", words);
    option.value = value;
    made.append(option);
  }
  return made;
};

/** What a length was read as; what is wrong with it otherwise, for a person who sees only the field. */
const lengthIn = (typed: string, unit: AskedJob["unit"], solve: Solve): number | string => {
  if (typed.trim() === "") return `is empty; type a length such as ${unit === "in" ? "106 1/8 or 8' 10 1/8\"" : "2700"}`;
  try {
    const answer: unknown = [solve(READ[unit], [typed, unit])].flat(2)[0];
    return typeof answer === "number" && answer > 0 ? answer : `must be over 0, got ${typed}`;
  } catch (error) {
    return messageOf(error).replace(/^measure: /, "");
  }
};

interface Field {
  readonly row: HTMLElement;
  readonly says: (fault: string | undefined) => void;
}

const field = (page: Document, id: string, label: string, control: HTMLInputElement | HTMLSelectElement, hint?: string): Field => {
  control.id = id;
  const name = element(page, "label", label);
  name.htmlFor = id;
  const fault = element(page, "p", "", "fault");
  fault.id = `${id}-fault`;
  fault.setAttribute("role", "alert");
  fault.hidden = true;
  const row = element(page, "div", [name, control, ...(hint === undefined ? [] : [element(page, "span", hint, "quiet")]), fault], "asked");
  return {
    row,
    says: (text) => {
      fault.hidden = text === undefined;
      fault.textContent = text ?? "";
      if (text === undefined) control.removeAttribute("aria-describedby");
      else control.setAttribute("aria-describedby", fault.id);
      control.setAttribute("aria-invalid", String(text !== undefined));
    },
  };
};

interface Control<Kind extends HTMLInputElement | HTMLSelectElement = HTMLInputElement | HTMLSelectElement> extends Field {
  readonly control: Kind;
}

const controls = (page: Document, places: readonly JobPlace[]) => {
  const made = <Kind extends HTMLInputElement | HTMLSelectElement>(
    id: string, label: string, control: Kind, hint?: string,
  ): Control<Kind> => ({
    control,
    ...field(page, `job-${id}`, label, control, hint),
  });
  const length = (name: Length): Control<HTMLInputElement> => made(name, LENGTHS[name][0], element(page, "input"), LENGTHS[name][1]);
  const where = Object.fromEntries(places.map((one) => [one, PLACES[one]])) as Readonly<Record<JobPlace, string>>;
  return {
    where: made("where", "Goes into", chosen(page, where)),
    job: made("name", "Name of the job", element(page, "input")),
    unit: made("unit", "Lengths in", chosen(page, UNITS)),
    lengths: { totalRise: length("totalRise"), run: length("run"), width: length("width") },
    openEnd: made("open-end", "Open side", chosen(page, OPEN_ENDS)),
    code: made(
      "code", "Code", chosen(page, Object.fromEntries(CODE_CHOICES.map(({ id, title }) => [id, title])), "choose the code in force"),
    ),
  };
};

/**
 * The form of a job of one's own: it asks what all sheets need and makes no figure up. What cannot be read is said beside its field, and
 * nothing is begun.
 */
export const jobForm = (
  page: Document, places: readonly JobPlace[], solve: Solve, begin: (asked: AskedJob, where: JobPlace) => void,
): HTMLFormElement => {
  const { where, job, unit, lengths, openEnd, code } = controls(page, places);
  job.control.setAttribute("maxlength", "80");
  const start = element(page, "button", "Start");
  const rows = [job, unit, lengths.totalRise, lengths.run, lengths.width, openEnd, code].map(({ row }) => row);
  const form = element(
    page, "form", [...rows, ...(places.length > 1 ? [where.row] : []), element(page, "div", [start], "answers")], "job-form",
  );
  form.noValidate = true;
  const read = (): AskedJob | undefined => {
    const inUnit = unit.control.value === "mm" ? "mm" : "in";
    let first: HTMLElement | undefined;
    const told = (asked: Control, fault: string | undefined): void => {
      asked.says(fault);
      if (fault !== undefined) first ??= asked.control;
    };
    const name = job.control.value.trim();
    told(job, name === "" ? "is empty; type a name, by which the workbook is found again" : undefined);
    const read = Object.fromEntries(
      Object.entries(lengths).map(([key, asked]) => {
        const size = lengthIn(asked.control.value, inUnit, solve);
        told(asked, typeof size === "string" ? size : undefined);
        return [key, size];
      }),
    ) as Readonly<Record<Length, number>>;
    told(code, code.control.value === "" ? "is not chosen; the check needs the code in force where the stair is built" : undefined);
    if (first !== undefined) {
      first.focus();
      return undefined;
    }
    return { job: name, unit: inUnit, code: code.control.value, openEnd: openEnd.control.value as AskedJob["openEnd"], ...read };
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const asked = read();
    if (asked !== undefined) begin(asked, where.control.value as JobPlace);
  });
  return form;
};
