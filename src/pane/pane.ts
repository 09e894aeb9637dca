import { CAUTION } from "../functions/caution";
import { jobSteps, type JobStep, type ListedFunction } from "./job-steps";

export interface PaneFacts {
  readonly version: string;
  readonly place: string;
  readonly functions: readonly PaneFunction[];
}

export interface PaneFunction extends ListedFunction {
  readonly formula: string;
}

// Text goes in as text, never as markup.
const element = (page: Document, tag: string, text: string, className?: string): HTMLElement => {
  const made = page.createElement(tag);
  made.textContent = text;
  if (className !== undefined) made.className = className;
  return made;
};

const jobStepPart = (page: Document, { name, functions }: JobStep<PaneFunction>, open: boolean): HTMLElement => {
  const part = page.createElement("details");
  part.open = open;
  const summary = page.createElement("summary");
  summary.append(element(page, "h2", name));
  const list = page.createElement("dl");
  for (const { formula, says } of functions) list.append(element(page, "dt", formula), element(page, "dd", says));
  part.append(summary, list);
  return part;
};

/** Puts the pane's content into a place on the page: title, caution, and every function under its step of the job. */
export const pane = (page: Document, into: HTMLElement, { version, place, functions }: PaneFacts): void => {
  into.replaceChildren(
    element(page, "h1", "Treadsheet"),
    element(page, "p", `Version ${version} · ${place}`, "quiet"),
    element(page, "p", CAUTION, "caution"),
    ...jobSteps(functions).map((step, index) => jobStepPart(page, step, index === 0)),
  );
};
