import { folded } from "../functions/cells";
import type { Solve } from "./answer";
import { element } from "./element";
import { exampleOutcome, statedText } from "./example-outcome";
import { jobSteps } from "./job-steps";
import type { ShownFunction } from "./shown-functions";

export interface FunctionGroups {
  readonly parts: readonly HTMLElement[];
  readonly examples: number;
  readonly differences: number;
  /** Shows only the functions in whose help every word stands, in either spelling, singular or plural; all of them for no word. */
  readonly find: (text: string) => void;
  /** Says so when none does. */
  readonly nothing: HTMLElement;
}

/** How the groups open, and what works the examples again, where there is something that can. */
export interface GroupSettings {
  readonly open: "first" | "all";
  readonly solve?: Solve;
  /** Inserts a function by its id. */
  readonly insert?: (id: string) => void;
}

/** A sentence of a declaration, its names of arguments, between backticks, as code. */
const sentence = (page: Document, text: string): (Node | string)[] =>
  text.split("`").map((part, place) => (place % 2 === 1 ? element(page, "code", part) : part));

/** Terms, each with its description in a line under it; readable however narrow the pane is. */
const terms = (
  page: Document,
  className: string,
  title: string,
  rows: readonly (readonly [term: string, beside: string, says: string])[],
): HTMLElement[] => {
  if (rows.length === 0) return [];
  const parts = rows.flatMap(([term, beside, says]) => [
    element(page, "dt", [element(page, "b", term), ...(beside === "" ? [] : [element(page, "span", `  ${beside}`)])]),
    element(page, "dd", sentence(page, says)),
  ]);
  return [element(page, "h4", title), element(page, "dl", parts, className)];
};

interface Examples {
  readonly parts: readonly HTMLElement[];
  readonly differences: number;
}

const line = (page: Document, name: string, content: string, className?: string): HTMLElement =>
  element(page, "p", [element(page, "span", `${name} `, "quiet"), element(page, "span", content, "lines")], className);

const examplesPart = (page: Document, { id, examples }: ShownFunction, solve: Solve | undefined): Examples => {
  let differences = 0;
  const items = examples.map((example) => {
    const code = element(page, "code", example.formula);
    const from = line(page, "from", example.from);
    if (solve === undefined) return element(page, "li", [code, line(page, "result", statedText(example.stated)), from]);
    const { stated, answered, agrees } = exampleOutcome(id, example, solve);
    if (!agrees) differences += 1;
    // An example that gives its stated result prints it once.
    const worked = agrees
      ? [line(page, "result", stated)]
      : [line(page, "expected", stated), line(page, "result here", answered)];
    return element(page, "li", [code, ...worked, from], agrees ? undefined : "differs");
  });
  return { parts: [element(page, "h4", "Examples"), element(page, "ul", items, "examples")], differences };
};

const insertButton = (page: Document, id: string, insert: (id: string) => void): HTMLElement => {
  const button = element(page, "button", `Insert ${id} at the selected cell`);
  button.type = "button";
  button.addEventListener("click", () => insert(id));
  return button;
};

interface FunctionPart {
  readonly part: HTMLElement;
  readonly differences: number;
}

const functionPart = (page: Document, shown: ShownFunction, { solve, insert }: Pick<GroupSettings, "solve" | "insert">): FunctionPart => {
  const { parts, differences } = examplesPart(page, shown, solve);
  const summary = element(page, "summary", [element(page, "code", shown.formula), element(page, "span", shown.says, "says")]);
  if (differences > 0)
    summary.append(element(page, "strong", `${differences} ${differences === 1 ? "example differs" : "examples differ"}`, "differs"));
  const whole = element(page, "details", [summary], "function");
  whole.id = `function-${shown.id}`;
  whole.open = differences > 0;
  if (insert !== undefined) whole.append(insertButton(page, shown.id, insert));
  whole.append(
    ...terms(
      page,
      "arguments",
      "Arguments",
      shown.arguments.map((one) => [
        one.name,
        `${one.kind}; ${one.default === "required" || one.default === "may be left out" ? one.default : `left out: ${one.default}`}`,
        one.says,
      ]),
    ),
    ...(shown.labels.length === 0 ? [] : [element(page, "p", `Labels of the stair table it reads: ${shown.labels.join(", ")}.`, "quiet")]),
    element(page, "h4", "Result"),
    element(page, "p", sentence(page, shown.result)),
    ...terms(
      page,
      "columns",
      "Columns of the result",
      shown.columns.map(({ heading, says }) => [heading, "", says]),
    ),
    ...parts,
    ...(shown.errors.length === 0
      ? []
      : [
          element(page, "h4", "Errors"),
          element(
            page,
            "ul",
            shown.errors.map(({ cell, says }) => element(page, "li", `${cell} ${says}`)),
            "errors",
          ),
        ]),
    element(page, "p", `Method: ${shown.source}`, "quiet"),
  );
  if (shown.caution !== "") whole.append(element(page, "p", shown.caution, "quiet"));
  return { part: whole, differences };
};

const helpText = (shown: ShownFunction): string =>
  [
    shown.id,
    shown.group,
    shown.says,
    shown.result,
    shown.source,
    ...shown.arguments.flatMap(({ name, says }) => [name, says]),
    ...shown.labels,
    ...shown.columns.flatMap(({ heading, says }) => [heading, says]),
  ]
    .join(" ")
    .toLowerCase();

/** The words of a text in one spelling and the singular. */
const inOneSpelling = (text: string): string => text.split(/[^\p{L}\p{N}+]+/u).map(folded).join(" ");

const NOTATION = "Notation";

/** How lengths are read and written serves every step, and is no step itself: it comes last. */
const notationLast = <Step extends { readonly name: string }>(steps: readonly Step[]): readonly Step[] =>
  [...steps.filter(({ name }) => name !== NOTATION), ...steps.filter(({ name }) => name === NOTATION)];

/** Every function under its step of the job, with arguments, result and examples. */
export const functionGroups = (page: Document, functions: readonly ShownFunction[], settings: GroupSettings): FunctionGroups => {
  let differences = 0;
  const found: {
    readonly part: HTMLDetailsElement;
    readonly members: readonly { readonly part: HTMLElement; readonly text: string; readonly words: string }[];
    readonly opens: boolean;
  }[] = [];
  for (const [index, step] of notationLast(jobSteps(functions)).entries()) {
    const members = step.functions.map((shown) => ({
      ...functionPart(page, shown, settings),
      text: helpText(shown),
      words: inOneSpelling(helpText(shown)),
    }));
    const wrong = members.reduce((sum, member) => sum + member.differences, 0);
    differences += wrong;
    const part = element(
      page,
      "details",
      [element(page, "summary", [element(page, "h3", step.name)]), ...members.map((member) => member.part)],
      "group",
    );
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
        for (const member of members)
          member.part.hidden = !wanted.every((word) => member.text.includes(word) || member.words.includes(folded(word)));
        const kept = members.filter((member) => !member.part.hidden).length;
        shownCount += kept;
        part.hidden = kept === 0;
        part.open = wanted.length === 0 ? opens : kept > 0;
      }
      nothing.hidden = shownCount > 0;
    },
  };
};
