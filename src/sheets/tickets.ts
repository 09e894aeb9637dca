import type { PlainValue } from "./sheet-data";

/** A cell of MARKS or RISERMARKS as the sheet shows it; an error or an empty cell is empty, its sentence stands in the note. */
export type ActCell = PlainValue | null | { readonly error: string };

/** What one step needs of an act: the figure that is set or marked, and under it what is this step's own. */
export interface TicketCell {
  readonly figure: string;
  readonly under: readonly string[];
}

/** One act of every step of a ticket, in cutting order. */
export interface TicketAct {
  readonly number: string;
  readonly act: string;
  /** What holds for each of the steps. */
  readonly says: readonly string[];
  readonly cells: readonly TicketCell[];
}

/** One page for the bench and the saw: up to five steps whose acts are the same ones, every value as text. */
export interface Ticket {
  readonly title: string;
  /** The unit of its lengths and how fine they are. */
  readonly measure: string;
  readonly steps: readonly string[];
  readonly acts: readonly TicketAct[];
  /** By the verb of several acts: what holds for every one of them. */
  readonly always: readonly string[];
  /** What the sheet says over the readings beside what they are, such as where heights come from. */
  readonly over: string;
  /** How the piece lies. */
  readonly lies: string;
  /** Which step is to be read again, and why. */
  readonly doubts: readonly string[];
}

/** Treads and risers are cut and fitted four or five at a time: common practice, no source. */
const STEPS_A_TICKET = 5;

/** What stands in place of the acts of a step whose readings do not hold; MARKS and RISERMARKS write it. */
const READ_AGAIN = "READ AGAIN";
/** In the place of a figure that does not hold: nobody should cut it. */
const NO_FIGURE: TicketCell = { figure: "–", under: [] };

const MEASURES: Readonly<Record<string, string>> = {
  in: "Inches, to the nearest 1/32; strong: 1/64 more, shy: 1/64 less.",
  mm: "Millimetres, to the nearest half.",
};

/** How the piece lies where left and right are said, and what wins where a saw's scale and a mark disagree by a hair. */
const LIES = {
  treads: "Face: the side walked on. Left and right: face up, nose toward you. Degrees set the saw; the marks win.",
  risers: "Face: the side seen. Left and right: face up, bottom toward you. Degrees set the saw; the marks win.",
} as const;

/** An act of one step, by the headings of its columns. */
type Act = Readonly<Record<string, string>>;

interface Step {
  readonly step: string;
  readonly acts: readonly Act[];
  readonly isDoubtful: boolean;
}

const textOf = (cell: ActCell | undefined): string =>
  cell === null || cell === undefined || typeof cell === "object" ? "" : String(cell);

/** The steps of a result in their order; each begins with its act number 1. */
const stepsOf = (marks: readonly (readonly ActCell[])[]): readonly Step[] => {
  const [headings = [], ...rows] = marks;
  const names = headings.map(textOf);
  const acts = rows.map((row): Act => Object.fromEntries(names.map((name, column) => [name, textOf(row[column])])));
  const steps: Act[][] = [];
  for (const act of acts) {
    const last = steps[steps.length - 1];
    const isNext = Number(act["number"]) > 1 && last?.[0]?.["step"] === act["step"];
    if (isNext) last?.push(act);
    else steps.push([act]);
  }
  return steps.map((own): Step => {
    const [first] = own;
    const act = first?.["act"] ?? "";
    return { step: first?.["step"] ?? "", acts: own, isDoubtful: act === "" || act === READ_AGAIN };
  });
};

interface Said {
  /** What is worked to. */
  readonly figure: string;
  readonly words: readonly string[];
}

const apart = (said: string | undefined): readonly string[] => (said ?? "").split("; ").filter((part) => part !== "");

/** A setting or a tape reading apart from its words: "1.5°" and which way it goes. */
const setting = (said: string | undefined): Said => {
  const [, figure, words, more] = /^(\d[^,(]*?)(?:,? (on the .*?|the .*?|near .*?|top .*?|off .*?))?(?: \((.*)\))?$/.exec(said ?? "") ?? [];
  if (figure === undefined) return { figure: "", words: apart(said) };
  return { figure, words: [...apart(words), ...apart(more)] };
};

/** The figure of an act that is worked to, and everything else that is said of it. */
const saidOf = (act: Act): Said => {
  const [tape, swing, tilt] = [setting(act["tape"]), setting(act["swing"]), setting(act["tilt"])];
  const tilted = tilt.figure === "" ? [] : [`tilt ${tilt.figure}`];
  const parts = [
    tape.figure, swing.figure, ...apart(act["offset"]), ...tilted,
    ...apart(act["hook on"]), ...tape.words, ...swing.words, ...tilt.words, ...apart(act["note"]),
  ].filter((part) => part !== "");
  const [figure = "", ...words] = parts;
  return { figure, words };
};

/** One line of a ticket: what all its sound steps have in common once, the rest under each figure. */
const ticketAct = (steps: readonly Step[], place: number): TicketAct => {
  const sound = steps.flatMap(({ acts, isDoubtful }) => (isDoubtful || acts[place] === undefined ? [] : [acts[place]]));
  const said = sound.map(saidOf);
  const common = (said[0]?.words ?? []).filter((words) => said.every((each) => each.words.includes(words)));
  const cellOf = ({ acts, isDoubtful }: Step): TicketCell => {
    if (isDoubtful) return place === 0 ? { figure: READ_AGAIN, under: [] } : NO_FIGURE;
    const { figure, words } = saidOf(acts[place] ?? {});
    return { figure, under: words.filter((each) => !common.includes(each)) };
  };
  return {
    number: String(place + 1),
    act: sound[0]?.["act"] ?? READ_AGAIN,
    says: common,
    cells: steps.map(cellOf),
  };
};

const verbOf = ({ act }: TicketAct): string => act.split(" ")[0] ?? "";

/** Words that all acts of one verb have are said once. */
const lifted = (acts: readonly TicketAct[]): { readonly acts: readonly TicketAct[]; readonly always: readonly string[] } => {
  const shared = new Map(
    [...new Set(acts.map(verbOf))].map((verb) => {
      const [first, ...others] = acts.filter((act) => verbOf(act) === verb);
      const words = others.length === 0 ? [] : first?.says.filter((said) => others.every(({ says }) => says.includes(said)));
      return [verb, words ?? []];
    }),
  );
  return {
    acts: acts.map((act) => ({ ...act, says: act.says.filter((said) => shared.get(verbOf(act))?.includes(said) !== true) })),
    always: [...shared].flatMap(([verb, words]) => (words.length === 0 ? [] : [`${verb}: ${words.join("; ")}`])),
  };
};

const patternOf = ({ acts }: Step): string => acts.map((act) => act["act"]).join();

/** Steps of a batch by the acts they have in common; one that is to be read again goes with the first of them. */
const alike = (batch: readonly Step[]): readonly (readonly Step[])[] => {
  const first = batch.find(({ isDoubtful }) => !isDoubtful);
  const keyOf = (step: Step): string => patternOf(step.isDoubtful && first !== undefined ? first : step);
  return [...new Set(batch.map(keyOf))].map((key) => batch.filter((step) => keyOf(step) === key));
};

const named = (steps: readonly Step[], batch: readonly Step[]): string => {
  const names = steps.map(({ step }) => step).filter((step) => step !== "");
  if (names.length === 0) return "";
  if (names.length === 1) return `, step ${String(names[0])}`;
  if (steps.length === batch.length) return `, steps ${String(names[0])} to ${String(names[names.length - 1])}`;
  return `, steps ${names.slice(0, -1).join(", ")} and ${String(names[names.length - 1])}`;
};

const doubts = (steps: readonly Step[]): readonly string[] =>
  steps.flatMap(({ step, acts, isDoubtful }) => {
    const note = acts[0]?.["note"] ?? "";
    return isDoubtful && note !== "" ? [`step ${step}: ${note}`] : [];
  });

/**
 * Tickets of one result of MARKS or RISERMARKS, its heading row first, in batches of steps with the same acts. A step whose readings
 * disagree shows no figure: it would be cut. `over` is what the sheet says over the readings: what they are; and what else there is to say.
 * `chosen` leaves of each batch only the steps of these names.
 */
export const tickets = (
  sheet: string, pieces: keyof typeof LIES, marks: readonly (readonly ActCell[])[], over = "", chosen?: ReadonlySet<string>,
): readonly Ticket[] => {
  const steps = stepsOf(marks);
  const left = (group: readonly Step[]): readonly Step[] => group.filter(({ step }) => chosen?.has(step) ?? true);
  return Array.from({ length: Math.ceil(steps.length / STEPS_A_TICKET) }, (_, place) =>
    steps.slice(place * STEPS_A_TICKET, (place + 1) * STEPS_A_TICKET),
  ).flatMap((batch) =>
    alike(batch).map(left).filter(({ length }) => length > 0).map((group): Ticket => ({
      title: `${sheet}: ${pieces}${named(group, batch)}`,
      measure: MEASURES[group.flatMap(({ acts }) => acts.flatMap((act) => act["unit"] ?? [])).find((unit) => unit !== "") ?? ""] ?? "",
      steps: group.map(({ step }) => step),
      ...lifted(Array.from({ length: Math.max(...group.map(({ acts }) => acts.length)) }, (__, act) => ticketAct(group, act))),
      over: over.split("; ").slice(1).join("; "),
      lies: LIES[pieces],
      doubts: doubts(group),
    })),
  );
};
