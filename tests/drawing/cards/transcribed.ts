import type { Card } from "./read-card";

/** An act as someone copies it out of the card, run by run, into the columns of a row: no row of the sheet is looked at. */
export interface Copied {
  readonly number: string;
  readonly act: string;
  readonly hookOn: string;
  readonly tape: string;
  readonly swing: string;
  readonly offset: string;
  readonly tilt: string;
}

interface Run {
  readonly rank: string;
  readonly text: string;
}

const HOOKS =
  /^(hook |burn |from mark \d+ to (?:mark \d+|the (?:left|right) [a-z]+ corner, nothing burnt)$|from the (left|right) heel|from the nose$)/;

const hushed = (text: string): string => text.replace(/to the (LEFT|RIGHT)/g, (_, side: string) => `to the ${side.toLowerCase()}`);

/** The figure a run of letters begins with, and where a burnt inch lies. */
const tapeOf = (runs: readonly Run[]): string => {
  const [first, ...others] = runs;
  if (first?.rank !== "figure" || /°|square/.test(first.text)) return "";
  const nearly = others[0]?.rank === "strong" && /^(strong|shy)$/.test(others[0].text) ? ` ${others[0].text}` : "";
  const burnt = others.slice(0, 2).find(({ rank, text }) => rank === "strong" && /^the \d+ at the /.test(text));
  return `${first.text}${nearly}${burnt === undefined ? "" : `, ${burnt.text.replace(/,$/, "")}`}`;
};

/** From a figure in degrees on, all that is said of it. */
const settingFrom = (runs: readonly Run[], way: RegExp): string => {
  const place = runs.findIndex(({ rank, text }, at) =>
    rank === "figure" && text.endsWith("°") && runs.slice(at + 1, at + 3).some((run) => run.rank === "strong" && way.test(run.text)));
  if (place < 0) return "";
  const [figure, ...others] = runs.slice(place);
  const strong = others.findIndex(({ rank }) => rank === "strong");
  const before = others.slice(0, strong).map(({ text }) => text);
  const after = others[strong + 1];
  const said = `${before.map((words) => `${words} `).join("")}${hushed(others[strong]?.text ?? "")}`;
  const more = after?.rank === "word" && /^(\(|over the piece|away from)/.test(after.text) ? ` ${after.text}` : "";
  return `${figure?.text ?? ""}${before.length === 0 ? ", " : " "}${said}${more}`;
};

const offsetOf = (runs: readonly Run[]): string => {
  const place = runs.findIndex(({ rank, text }) => rank === "word" && text.endsWith(" in by"));
  return place < 0 ? "" : `${runs[place]?.text ?? ""} ${runs[place + 1]?.text ?? ""}`;
};

/** A word run broken over two lines is one again. */
const whole = (runs: readonly Run[]): readonly Run[] =>
  runs.reduce<readonly Run[]>((joined, run) => {
    const last = joined.at(-1);
    const isApart = last === undefined || /^\(net|\)$/.test(last.text) || /^(\(|square on)/.test(run.text);
    return last?.rank === "word" && run.rank === "word" && !isApart
      ? [...joined.slice(0, -1), { rank: "word", text: `${last.text} ${run.text}` }]
      : [...joined, run];
  }, []);

const copied = (number: string, act: string, runs: readonly Run[]): Copied => {
  const hook = runs.filter(({ rank }) => rank === "word").map(({ text }) => text.split("; ")[0] ?? "").find((text) => HOOKS.test(text));
  const swing = settingFrom(runs, /^near end/);
  const lean = settingFrom(runs, /^top of the blade/);
  const shown = runs.find(({ text }) => text.startsWith("square on the end"))?.text ?? "";
  return {
    number, act,
    hookOn: /^(GAUGE|MARK|CHECK|SAW .* RETURN)/.test(act) ? (hook ?? "").replace(/^from (?=the nose$)/, "") : "",
    tape: tapeOf(runs),
    swing: swing === "" && runs.some(({ rank, text }) => rank === "figure" && text === "square") ? "square" : swing,
    offset: offsetOf(runs),
    tilt: lean !== "" ? [lean, shown].filter(Boolean).join("; ") : runs.some(({ text }) => text === "upright") ? "upright" : "",
  };
};

/** Every act of a card, copied from its texts alone. */
export const transcribed = ({ texts }: Card): readonly Copied[] => {
  const acts = new Map<string, { verb: string; runs: Run[] }>();
  for (const { part, text } of texts) {
    const [, number = "", rank = ""] = /^act (\d+) (\w+)$/.exec(part) ?? [];
    if (number === "") continue;
    const act = acts.get(number) ?? { verb: "", runs: [] };
    acts.set(number, act);
    if (rank === "verb") act.verb = text;
    else act.runs.push({ rank, text });
  }
  const found = [...acts].map(([number, { verb, runs }]) => copied(number, verb, whole(runs)));
  // Two marks in one row: where to hook stands once, behind both.
  return found.map((one, place) =>
    one.act.startsWith("MARK") && one.hookOn === "" ? { ...one, hookOn: found[place + 1]?.hookOn ?? "" } : one);
};
