import { type ReadySheet, readySheets } from "../sheets/ready-sheets";
import { element } from "./element";
import type { AskedCell, SheetsHost, ShownAnswer, ToDo } from "./host";
import { messageOf } from "./message-of";

const GENERAL: ToDo = {
  says:
    "Start a job of your own, or add the sheet of a step below; the sheets that it reads come with it. Then fill in the yellow cells, " +
    "sheet by sheet in this order. Everything else follows from them.",
};

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The sheets of a workbook that go by the name of a ready one: Layout, and of a second stair Layout 2. */
const sheetsOf = (ready: string, names: readonly string[]): readonly string[] => {
  const wanted = new RegExp(`^${escaped(ready)}(?: \\d+)?$`, "i");
  return names.filter((name) => wanted.test(name));
};

/** What a step is for, without what there is to try in it. */
const firstSentence = (says: string): string => /^.*?[.](?= |$)/.exec(says)?.[0] ?? says;

const button = (page: Document, words: string, act: () => void): HTMLButtonElement => {
  const made = element(page, "button", words);
  made.type = "button";
  made.addEventListener("click", act);
  return made;
};

/** What the parts of the job need of whoever shows them. */
interface Acting {
  readonly sheets: SheetsHost;
  readonly add: (name: string) => void;
  readonly act: (work: () => Promise<string>) => void;
  /** Asks for a job of one's own and begins it; missing where something else does. */
  readonly start?: () => void;
}

const stepItem = (page: Document, ready: ReadySheet, names: readonly string[], { sheets, add, act }: Acting): HTMLElement => {
  const show = (name: string): HTMLButtonElement =>
    button(page, name, () => act(async () => {
      await sheets.show(name);
      return `${name} is shown.`;
    }));
  const found = sheetsOf(ready.name, names);
  const here = found.length === 0
    ? [element(page, "b", ready.name), button(page, `Add ${ready.name}`, () => add(ready.name))]
    : found.map(show);
  return element(page, "li", [element(page, "p", here, "here"), element(page, "p", firstSentence(ready.says), "quiet")]);
};

/** One under another, for a screen on which they do not stand beside one another. */
const answerList = (page: Document, answers: readonly ShownAnswer[]): HTMLElement =>
  element(page, "dl", answers.flatMap(({ name, answer, unit }) => [
    element(page, "dt", name),
    element(page, "dd", [element(page, "b", answer), ` ${unit}`]),
  ]), "shown-answers");

/** A button that selects a cell. */
const goTo = (page: Document, { sheets, act }: Acting, words: string, { sheet, address }: AskedCell["at"]): HTMLButtonElement =>
  button(page, words, () => act(async () => {
    await sheets.show(sheet, address);
    return `${sheet} ${address} is selected.`;
  }));

/** The cells that sheets wait for, sheet after sheet. */
const askedList = (page: Document, acting: Acting | undefined, asks: readonly AskedCell[]): HTMLElement =>
  element(page, "ul", asks.map(({ at, says }) => {
    const words = `${at.sheet} ${at.address}`;
    return element(page, "li", [
      acting === undefined ? element(page, "b", words) : goTo(page, acting, words, at), says === "" ? "" : ` ${says}`,
    ]);
  }), "asked");

/** The parts, and how to show them as they are now. */
export interface JobPart {
  readonly parts: readonly HTMLElement[];
  readonly draw: () => void;
}

/** What to do in the workbook, and the steps of the job, each with its sheet. */
export const jobPart = (page: Document, acting: Acting | undefined): JobPart => {
  const todo = element(page, "div");
  const steps = element(page, "ol", [], "steps");
  const answers = element(page, "div");
  const start = acting?.start === undefined ? [] : [element(page, "p", [button(page, "Start my job", acting.start)], "starting")];
  const parts = [
    element(page, "section", [element(page, "h2", "What to do"), ...start, todo, answers]),
    element(page, "section", [element(page, "h2", "Steps of the job"), steps]),
  ];
  const showTodo = ({ says, at, asks = [] }: ToDo): void => {
    const go = at === undefined || acting === undefined ? [] : [goTo(page, acting, `Show ${at.sheet} ${at.address}`, at)];
    todo.replaceChildren(element(page, "p", says), ...go, ...(asks.length === 0 ? [] : [askedList(page, acting, asks)]));
  };
  let drawn = "";
  const drawNow = async (): Promise<void> => {
    const sheets = acting?.sheets;
    const [names, next, shown] = await Promise.all([sheets?.names() ?? [], sheets?.toDo?.() ?? GENERAL, sheets?.answers?.() ?? []]);
    // What a person is about to press must not be taken away while nothing has changed.
    const now = JSON.stringify([names, next, shown]);
    if (now === drawn) return;
    drawn = now;
    showTodo(next);
    answers.replaceChildren(...(shown.length === 0 ? [] : [answerList(page, shown)]));
    steps.replaceChildren(
      ...readySheets.map((ready) =>
        acting === undefined
          ? element(page, "li", [element(page, "b", ready.name), element(page, "p", firstSentence(ready.says), "quiet")])
          : stepItem(page, ready, names, acting),
      ),
    );
  };
  const draw = (): void => void drawNow().catch((error: unknown) => showTodo({ says: messageOf(error) }));
  draw();
  return { parts, draw };
};
