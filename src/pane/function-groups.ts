import type { Solve } from "../sheets/job-run";
import { element } from "./element";
import { exampleOutcome, statedText } from "./example-outcome";
import { jobSteps } from "./job-steps";
import type { ShownFunction } from "./shown-functions";

export interface FunctionGroups {
  readonly parts: readonly HTMLElement[];
  readonly examples: number;
  readonly differences: number;
}

/** How the groups open, and what works the examples again, where there is something that can. */
export interface GroupSettings {
  readonly open: "first" | "all";
  readonly solve?: Solve;
}

const table = (page: Document, className: string, headings: readonly string[], rows: readonly HTMLTableRowElement[]): HTMLElement => {
  const head = element(page, "tr", headings.map((heading) => {
    const cell = element(page, "th", heading);
    cell.scope = "col";
    return cell;
  }));
  // In a box of its own, so that a wide table scrolls and the page does not.
  const box = element(page, "div", [element(page, "table", [element(page, "thead", [head]), element(page, "tbody", rows)], className)], "scroll");
  box.tabIndex = 0;
  box.setAttribute("role", "region");
  box.setAttribute("aria-label", headings.join(", "));
  return box;
};

const textRow = (page: Document, cells: readonly string[]): HTMLTableRowElement =>
  element(page, "tr", cells.map((cell) => element(page, "td", cell)));

interface Examples {
  readonly part: HTMLElement;
  readonly differences: number;
}

const examplesPart = (page: Document, { id, examples }: ShownFunction, solve: Solve | undefined): Examples => {
  if (solve === undefined) {
    const rows = examples.map(({ formula, stated, from }) =>
      element(page, "tr", [element(page, "td", [element(page, "code", formula)]), element(page, "td", statedText(stated), "lines"), element(page, "td", from)]),
    );
    return { part: table(page, "examples", ["example", "gives", "from"], rows), differences: 0 };
  }
  let differences = 0;
  const rows = examples.map((example) => {
    const { stated, answered, agrees } = exampleOutcome(id, example, solve);
    const answer = element(page, "td", answered, "lines");
    if (!agrees) {
      differences += 1;
      answer.prepend(element(page, "strong", "differs"), " ");
    }
    const cells = [element(page, "td", [element(page, "code", example.formula)]), element(page, "td", stated, "lines"), answer, element(page, "td", example.from)];
    return element(page, "tr", cells, agrees ? undefined : "differs");
  });
  return { part: table(page, "examples", ["example", "stated", "worked again here", "from"], rows), differences };
};

const functionPart = (page: Document, shown: ShownFunction, solve: Solve | undefined): Examples => {
  const { part, differences } = examplesPart(page, shown, solve);
  const summary = element(page, "summary", [element(page, "code", shown.formula), element(page, "span", shown.says, "says")]);
  if (differences > 0) summary.append(element(page, "strong", `${differences} ${differences === 1 ? "example differs" : "examples differ"}`, "differs"));
  const whole = element(page, "details", [summary], "function");
  whole.id = `function-${shown.id}`;
  whole.open = differences > 0;
  if (shown.arguments.length > 0) {
    whole.append(table(page, "arguments", ["argument", "kind", "default", "meaning"], shown.arguments.map((one) => textRow(page, [one.name, one.kind, one.default, one.says]))));
  }
  whole.append(element(page, "p", `Result: ${shown.result}`));
  if (shown.columns.length > 0) {
    whole.append(table(page, "columns", ["heading", "meaning"], shown.columns.map(({ heading, says }) => textRow(page, [heading, says]))));
  }
  whole.append(part, element(page, "p", `Method: ${shown.source}`, "quiet"));
  if (shown.caution !== "") whole.append(element(page, "p", shown.caution, "quiet"));
  return { part: whole, differences };
};

/** Every function under its step of the job, with arguments, result and examples. */
export const functionGroups = (page: Document, functions: readonly ShownFunction[], { open, solve }: GroupSettings): FunctionGroups => {
  let differences = 0;
  const parts = jobSteps(functions).map((step, index) => {
    const members = step.functions.map((shown) => functionPart(page, shown, solve));
    const found = members.reduce((sum, member) => sum + member.differences, 0);
    differences += found;
    const group = element(page, "details", [element(page, "summary", [element(page, "h2", step.name)]), ...members.map(({ part }) => part)], "group");
    group.open = open === "all" || index === 0 || found > 0;
    return group;
  });
  return { parts, examples: functions.reduce((sum, { examples }) => sum + examples.length, 0), differences };
};
