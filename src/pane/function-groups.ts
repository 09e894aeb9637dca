import type { Solve } from "./answer";
import { element } from "./element";
import { exampleOutcome, statedText } from "./example-outcome";
import { jobSteps } from "./job-steps";
import type { ShownFunction } from "./shown-functions";

export interface FunctionGroups {
  readonly parts: readonly HTMLElement[];
  readonly examples: number;
  readonly differences: number;
  /** Shows only the functions in whose help every word stands; all of them for no word. */
  readonly find: (text: string) => void;
  /** Says so when none does. */
  readonly nothing: HTMLElement;
}

/** How the groups open, and what works the examples again, where there is something that can. */
export interface GroupSettings {
  readonly open: "first" | "all";
  readonly solve?: Solve;
  readonly insert?: (formula: string) => void;
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

const insertButton = (page: Document, { id, examples }: ShownFunction, insert: (formula: string) => void): HTMLElement[] => {
  const [example] = examples;
  if (example === undefined) return [];
  const button = element(page, "button", `Insert the first example of ${id} at the selected cell`);
  button.type = "button";
  button.addEventListener("click", () => insert(example.formula));
  return [button];
};

const functionPart = (page: Document, shown: ShownFunction, { solve, insert }: Pick<GroupSettings, "solve" | "insert">): Examples => {
  const { part, differences } = examplesPart(page, shown, solve);
  const summary = element(page, "summary", [element(page, "code", shown.formula), element(page, "span", shown.says, "says")]);
  if (differences > 0) summary.append(element(page, "strong", `${differences} ${differences === 1 ? "example differs" : "examples differ"}`, "differs"));
  const whole = element(page, "details", [summary], "function");
  whole.id = `function-${shown.id}`;
  whole.open = differences > 0;
  if (insert !== undefined) whole.append(...insertButton(page, shown, insert));
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

const helpText = (shown: ShownFunction): string =>
  [shown.id, shown.group, shown.says, shown.result, shown.source, ...shown.arguments.flatMap(({ name, says }) => [name, says]), ...shown.columns.flatMap(({ heading, says }) => [heading, says])]
    .join(" ")
    .toLowerCase();

/** Every function under its step of the job, with arguments, result and examples. */
export const functionGroups = (page: Document, functions: readonly ShownFunction[], settings: GroupSettings): FunctionGroups => {
  let differences = 0;
  const found: { readonly part: HTMLDetailsElement; readonly members: readonly { readonly part: HTMLElement; readonly text: string }[]; readonly opens: boolean }[] = [];
  for (const [index, step] of jobSteps(functions).entries()) {
    const members = step.functions.map((shown) => ({ ...functionPart(page, shown, settings), text: helpText(shown) }));
    const wrong = members.reduce((sum, member) => sum + member.differences, 0);
    differences += wrong;
    const part = element(page, "details", [element(page, "summary", [element(page, "h3", step.name)]), ...members.map((member) => member.part)], "group");
    const opens = settings.open === "all" || index === 0 || wrong > 0;
    part.open = opens;
    found.push({ part, members, opens });
  }
  const nothing = element(page, "p", "No function has these words in its help; try another word of the trade.", "quiet");
  nothing.hidden = true;
  return {
    parts: found.map(({ part }) => part),
    examples: functions.reduce((sum, { examples }) => sum + examples.length, 0),
    differences,
    nothing,
    find: (text) => {
      const wanted = text.toLowerCase().split(/\s+/).filter((word) => word !== "");
      let shownCount = 0;
      for (const { part, members, opens } of found) {
        for (const member of members) member.part.hidden = !wanted.every((word) => member.text.includes(word));
        const kept = members.filter((member) => !member.part.hidden).length;
        shownCount += kept;
        part.hidden = kept === 0;
        part.open = wanted.length === 0 ? opens : kept > 0;
      }
      nothing.hidden = shownCount > 0;
    },
  };
};
