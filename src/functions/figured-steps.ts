/** A method in the words of its declaration: the steps that lead to one answer, with their figures, and what else is said of it. */
export interface FiguredSteps {
  readonly steps: readonly string[];
  readonly rest: string;
}

interface Clause {
  readonly text: string;
  /** What stands before its equals sign, undefined where it has none. */
  readonly of: string | undefined;
  readonly stop: string;
}

const BREAK = /^(?:[.;:,] |[.]$)/;
const EQUALS = " = ";

/** The parts of a text between its stops, outside of brackets. */
const parts = (text: string): readonly { readonly text: string; readonly stop: string }[] => {
  const found: { text: string; stop: string }[] = [];
  let depth = 0;
  let from = 0;
  for (let place = 0; place < text.length; place += 1) {
    const sign = text[place];
    if (sign === "(") depth += 1;
    if (sign === ")") depth -= 1;
    const [stop] = depth > 0 ? [] : (BREAK.exec(text.slice(place)) ?? []);
    if (stop === undefined) continue;
    found.push({ text: text.slice(from, place), stop: stop.trim() });
    from = place + stop.length;
  }
  return from < text.length ? [...found, { text: text.slice(from), stop: "" }] : found;
};

/** Sentences and equations, each by itself: what follows a comma belongs to the equation before it, unless it is one. */
const clausesOf = (source: string): readonly Clause[] => {
  const clauses: Clause[] = [];
  let before = "";
  for (const { text, stop } of parts(source)) {
    const at = text.indexOf(EQUALS);
    const last = clauses[clauses.length - 1];
    if (before === "," && at < 0 && last !== undefined) clauses[clauses.length - 1] = { ...last, text: `${last.text}, ${text}`, stop };
    else clauses.push({ text, of: at < 0 ? undefined : text.slice(0, at).toLowerCase(), stop });
    before = stop;
  }
  return clauses;
};

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The longest names first, whole words only. */
const namesIn = (names: Iterable<string>): RegExp => {
  const longest = [...names].sort((one, other) => other.length - one.length).map(escaped);
  return new RegExp(`(^|[^a-z0-9])(${longest.join("|")})(?![a-z0-9])`, "gi");
};

/** Clauses that are left, as sentences: one behind which something is gone ends, and the next one begins. */
const sentencesOf = (clauses: readonly (Clause & { readonly step: string | undefined })[]): string =>
  clauses.flatMap(({ text, stop, step }, place) => {
    if (step !== undefined) return [];
    const [before, after] = [clauses[place - 1], clauses[place + 1]];
    const begins = before === undefined || before.step !== undefined || before.stop === ".";
    const ends = after === undefined || after.step !== undefined;
    return [`${begins ? `${text.charAt(0).toUpperCase()}${text.slice(1)}` : text}${ends ? "." : stop}`];
  }).join(" ");

/**
 * The equations of a method that lead to one answer, the figures behind the names in them. A name of several values has none here; one
 * whose value is empty makes its equation none of this answer. What is said besides comes last, as it stands.
 */
export const figuredSteps = (
  source: string, answer: { readonly name: string | undefined; readonly value: string }, figures: ReadonlyMap<string, string>,
): FiguredSteps => {
  const clauses = clausesOf(source);
  const known = new Map([...figures].map(([name, text]) => [name.toLowerCase(), text]));
  // A function of one answer calls it what it likes.
  const asked = answer.name?.toLowerCase() ?? clauses.find(({ of }) => of !== undefined)?.of;
  if (asked === undefined || answer.value === "") return { steps: [], rest: source };
  known.set(asked, answer.value);
  const pattern = namesIn(known.keys());
  const wanted = new Set<string>();
  const want = (name: string | undefined): void => {
    if (name === undefined || wanted.has(name)) return;
    const own = clauses.filter(({ of }) => of === name);
    if (own.length === 0) return;
    wanted.add(name);
    for (const { text } of own) for (const [, , found] of text.slice(name.length).matchAll(pattern)) want(found?.toLowerCase());
  };
  want(asked);
  const figured = (text: string, own: string): string =>
    text.replace(pattern, (whole, before: string, name: string) =>
      name.toLowerCase() === own ? whole : `${before}${name} (${known.get(name.toLowerCase()) ?? ""})`);
  const step = ({ of, text }: Clause): string | undefined => {
    if (of === undefined || !wanted.has(of)) return undefined;
    const behind = text.slice(of.length);
    const named = [...behind.matchAll(pattern)].map(([, , name = ""]) => name.toLowerCase()).filter((name) => name !== of);
    if (named.length === 0 || named.some((name) => known.get(name) === "")) return undefined;
    return `${text.slice(0, of.length)} (${known.get(of) ?? ""})${figured(behind, of)}`;
  };
  const found = clauses.map((clause) => ({ ...clause, step: step(clause) }));
  return {
    steps: found.flatMap((clause) => clause.step ?? []),
    rest: sentencesOf(found),
  };
};
