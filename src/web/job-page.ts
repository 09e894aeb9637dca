import { element } from "../pane/element";
import { badCells } from "../sheets/bad-cells";
import { findings } from "../sheets/findings";
import type { Input, Job, NamedCall } from "../sheets/job";
import { jobRun, type Solve } from "../sheets/job-run";
import { typedCell } from "../sheets/typed-cell";
import { inputGrid, type InputGrid, typedOver } from "./input-grid";
import { resultTable, type ResultTable } from "./result-table";

interface Shelf {
  readonly grids: ReadonlyMap<string, InputGrid>;
  readonly tables: readonly { readonly call: NamedCall; readonly table: ResultTable }[];
}

const byName = (job: Job): ReadonlyMap<string, Input> => new Map(job.steps.flatMap(({ inputs }) => inputs).map((input) => [input.name, input]));

const withInput = (job: Job, changed: Input): Job => ({
  ...job,
  steps: job.steps.map((step) => ({ ...step, inputs: step.inputs.map((input) => (input.name === changed.name ? changed : input)) })),
});

const worked = (job: Job, solve: Solve, { grids, tables }: Shelf, errors: HTMLElement): void => {
  const { results, inputs } = jobRun(job, solve);
  const typed = byName(job);
  const bad = tables.flatMap(({ call, table }) => {
    const result = results.get(call.name);
    if (result === undefined) return [];
    table.show(result);
    return badCells(call, typed, findings(result)).map((place) => ({ ...place, sentence: table.sentences }));
  });
  for (const [name, grid] of grids) grid.show(inputs.get(name) ?? [], bad.filter(({ input }) => input === name));
  const failing = tables.filter(({ call }) => findings(results.get(call.name) ?? "").length > 0);
  const text = failing.length === 0 ? "" : `With an error: ${failing.map(({ call }) => call.says).join("; ")}.`;
  // Said only when it changes, so that typing on is not talked over.
  if (errors.textContent !== text) errors.textContent = text;
};

const putBackDialog = (page: Document, putBack: () => void): { readonly dialog: HTMLDialogElement; readonly button: HTMLButtonElement } => {
  const dialog = element(page, "dialog");
  const question = element(page, "p", "Put the demo back? What you typed is lost.");
  question.id = "put-back-question";
  dialog.setAttribute("aria-labelledby", question.id);
  const yes = element(page, "button", "Put it back");
  const no = element(page, "button", "Keep what I typed");
  const button = element(page, "button", "Put the demo back");
  for (const each of [yes, no, button]) each.type = "button";
  dialog.append(question, element(page, "div", [no, yes], "answers"));
  button.addEventListener("click", () => dialog.showModal());
  no.addEventListener("click", () => dialog.close());
  yes.addEventListener("click", () => {
    dialog.close();
    putBack();
  });
  return { dialog, button };
};

/** Shows a job once through, step by step: tables to type in and what the functions make of them. */
export const jobPage = (page: Document, demo: Job, solve: Solve): HTMLElement => {
  const steps = element(page, "div", [], "steps");
  const errors = element(page, "p", "", "errors");
  errors.setAttribute("role", "status");

  const start = (): void => {
    let job = demo;
    const grids = new Map<string, InputGrid>();
    const tables: Shelf["tables"][number][] = [];
    const again = (): void => worked(job, solve, { grids, tables }, errors);
    const gridOf = (input: Input): HTMLElement => {
      const grid = inputGrid(page, input, (row, column, text) => {
        const now = byName(job).get(input.name);
        if (now !== undefined) job = withInput(job, typedOver(now, row, column, typedCell(text)));
        again();
      });
      grids.set(input.name, grid);
      return grid.part;
    };
    const tableOf = (call: NamedCall): HTMLElement => {
      const table = resultTable(page, call, solve);
      tables.push({ call, table });
      return table.part;
    };
    steps.replaceChildren(
      ...demo.steps.map(({ title, says, inputs, calls }, index) =>
        element(page, "section", [
          element(page, "h3", `${index + 1}. ${title}`),
          element(page, "p", says),
          element(page, "div", [
            ...(inputs.length === 0 ? [] : [element(page, "div", inputs.map(gridOf), "inputs")]),
            element(page, "div", calls.map(tableOf), "results"),
          ], "sheet"),
        ], "step"),
      ),
    );
    again();
  };

  const { dialog, button } = putBackDialog(page, () => {
    start();
    button.focus();
  });
  start();
  return element(page, "section", [
    element(page, "h2", demo.title),
    element(page, "p", `${demo.says} What you type stays on this page.`),
    element(page, "div", [button, errors], "bar"),
    steps,
    dialog,
  ], "job");
};
