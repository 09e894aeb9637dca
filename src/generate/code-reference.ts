import type { CodeProfile, Limit, LimitException, OutOfScope, Rule } from "../solver/code/profile";
import { profileCounts } from "../solver/code/profile-counts";
import { amendmentBlocks, coverageBlocks } from "./code-coverage";
import { type Block, page, type Page } from "./page";

const sourcesText = ({ sources }: Pick<Limit, "sources">): string =>
  sources.map(({ title, address }) => (address === undefined ? title : `${title} (${address})`)).join("; ");

const whatText = ({ rule, advisory }: Limit): string => {
  if (rule.comparator === "shown") return "shown, no verdict";
  return advisory ? "cautions" : "checked";
};

/** Figures alone, or two with "to" between: what wants its unit beside it. */
const FIGURES = /^(?:more than )?[\d./ ]*[\d](?: (?:to|or) [\d./ ]+)?(?: or more)?$/;
const WITHOUT_UNIT: readonly string[] = ["count", "ratio"];

const senseOf = (rule: Rule): string => {
  switch (rule.comparator) {
    case "min": return "at least ";
    case "max": case "slope": return "at most ";
    case "equals": return "exactly ";
    case "uniformity": return "apart at most ";
    case "sphere": return "keeps out a ball of ";
    case "required-when": return "required where ";
    case "exempt-when": return "exempt from ";
    case "every": case "either": return senseOf(rule.parts[0]);
    default: return "";
  }
};

const UNITS: Readonly<Record<string, string>> = { deg: "degrees" };

const printed = ({ rule, text, unit }: Limit): string => {
  const sense = FIGURES.test(text) || /^\d+ ft/.test(text) || rule.comparator === "slope" ? senseOf(rule) : "";
  if (!FIGURES.test(text) || WITHOUT_UNIT.includes(unit)) return `${sense}${text}`;
  return `${sense}${text.replace(/(?= or more$)|$/, ` ${UNITS[unit] ?? unit}`)}`;
};

const exceptionText = ({ words, then }: LimitException): string => {
  if (then === "judge") return `for a person to judge: ${words}`;
  if (then === "does not apply") return `exception: ${words}`;
  return then.comparator === "person" ? `for a person to judge: ${words}, ${then.sense}` : `instead: ${words}`;
};

const COUNTED: Readonly<Record<NonNullable<Limit["counts"]>, string>> = {
  flight: "counted in one flight", stair: "counted over the whole stair between two floors", storeys: "counted in storeys",
};

const limitRow = (limit: Limit): readonly string[] => [
  limit.item,
  limit.clause,
  printed(limit),
  whatText(limit),
  [
    limit.measured,
    ...(limit.counts === undefined ? [] : [COUNTED[limit.counts]]),
    ...limit.applies.map(({ words }) => `only where ${words}`),
    ...limit.exceptions.map(exceptionText),
    limit.remark,
  ]
    .filter((part) => part !== "")
    .join("; "),
  limit.status,
  sourcesText(limit),
];

const outsideRow = (record: OutOfScope): readonly string[] => [
  record.item,
  record.clause,
  record.text,
  `out of scope: ${record.reason}`,
  "",
  record.status,
  sourcesText(record),
];

const profileBlocks = (profile: CodeProfile): Block[] => {
  const { limits, checked, shown, outOfScope, confirmed } = profileCounts(profile);
  return [
    { kind: "heading", level: 2, text: `${profile.id}: ${profile.title}, ${profile.edition}`, name: profile.id },
    {
      kind: "text",
      text:
        `${profile.region}. ${limits} limits: ${checked} compared with the stair, ${shown} shown, ${outOfScope} out of scope; ` +
        `${confirmed} checked against the text of this edition.`,
    },
    {
      kind: "table",
      headings: ["item", "clause", "as printed", "how it is used", "how it is measured, conditions, exceptions", "source status", "source"],
      rows: [...profile.limits.map(limitRow), ...profile.outOfScope.map(outsideRow)],
    },
  ];
};

/** Every limit of every code with its clause, conditions and source. */
export const codeReference = (profiles: readonly CodeProfile[], version: string, caution: string): Page =>
  page("Treadsheet codes", [
    { kind: "heading", level: 1, text: `Treadsheet ${version}: building codes` },
    { kind: "text", text: caution },
    {
      kind: "text",
      text:
        "A limit is compared in the unit it is published in, exactly; a value equal to it passes, but an opening equal to the ball " +
        "of a guard rule is for a person to judge. Source status: `checked against the code's text` of this edition; `checked " +
        "against another edition`, or a text that names none; `not yet checked`.",
    },
    ...coverageBlocks(profiles),
    ...profiles.flatMap(profileBlocks),
    ...amendmentBlocks(),
  ]);
