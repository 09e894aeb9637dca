import { exact } from "../../../../src/solver/length/exact";
import { lengthOf, measure } from "../../../../src/solver/length/length";
import { isProblem } from "../../../../src/solver/problem";
import { glueUpList, type GlueRow } from "../../../../src/solver/yield/glue-up/glue-up-list";
import { GLUE_DEFAULTS, GLUE_LENGTHS, type GlueTerms } from "../../../../src/solver/yield/glue-up/glue-terms";
import { board, type Plain } from "../tally/board";

/** Panels and terms of a test, in inches. */
export interface PlainPanel {
  readonly label?: string;
  readonly length: number;
  readonly width: number;
  readonly thickness?: number;
  readonly quantity?: number;
  readonly grade?: string;
  readonly alsoFrom?: string;
  readonly species?: string;
}

export type PlainTerms = { readonly [K in (typeof GLUE_LENGTHS)[number]]?: number } & Partial<Pick<GlueTerms, "strips" | "together">>;

/** Boards are named by letters where they have no label. */
export interface PlainGlueUp {
  readonly panels: readonly PlainPanel[];
  readonly tally: readonly Plain[];
  readonly terms?: PlainTerms;
}

const inches = (value: number) => lengthOf(exact(value), "in");

const termsOf = ({ strips = Infinity, together = "any", ...lengths }: PlainTerms): GlueTerms => ({
  ...GLUE_DEFAULTS, strips, together, ...Object.fromEntries(Object.entries(lengths).map(([name, value]) => [name, inches(value)])),
});

export const answered = ({ panels, tally, terms = {} }: PlainGlueUp) =>
  glueUpList(
    panels.map(({ length, width, thickness, quantity = 1, label = "panel", grade = "", alsoFrom = "", species = "" }, place) => ({
      row: place + 2, label, length: inches(length), width: inches(width), quantity, grade, alsoFrom, species,
      ...(thickness === undefined ? {} : { thickness: inches(thickness) }),
    })),
    tally.map((one, place) => board({ label: "ABCDEFGHIJKLMNOPQRSTUVWXYZ".charAt(place), ...one }, place + 2)),
    termsOf(terms),
    "in",
  );

/** A row in inches and money. */
export interface PlainRow {
  readonly panel: string;
  readonly board?: string;
  readonly section?: number;
  readonly along?: number;
  readonly across?: number;
  readonly roughWidth?: number;
  readonly netWidth?: number;
  readonly length?: number;
  readonly stripsInAll?: number;
  readonly boardsInAll?: number;
  readonly over?: number;
  readonly cost?: number;
  readonly note?: string;
}

const plainRow = ({ panel, board: name, cost, along, across, roughWidth, netWidth, length, over, ...row }: GlueRow): PlainRow => {
  const sizes = Object.entries({ along, across, roughWidth, netWidth, length, over })
    .flatMap(([key, value]) => (value === undefined ? [] : [[key, measure(value, "in")]]));
  return {
    ...row, panel: String(panel), ...(name === undefined ? {} : { board: String(name) }),
    ...(cost === undefined ? {} : { cost: cost.toNumber() }), ...Object.fromEntries(sizes),
  };
};

/** The rows of a plan there is. */
export const planned = (job: PlainGlueUp): readonly PlainRow[] => {
  const rows = answered(job);
  if (isProblem(rows)) throw new Error(`${rows.problem} ${JSON.stringify(rows.details)}`);
  return rows.map(plainRow);
};

export const totalOf = (rows: readonly PlainRow[]): PlainRow => rows.find(({ panel }) => panel === "total")!;
const BEST = /^best possible \((proven|searched, not certified)\): no choice/;

/** No choice of boards costs less: shown by what they give, or by a search as well. */
export const isProven = (rows: readonly PlainRow[]): boolean => BEST.test(totalOf(rows).note ?? "");
/** The share that may still be saved, as the words say. */
export const gapOf = (rows: readonly PlainRow[]): number => {
  const found = /at most ([\d.]+) %/.exec(totalOf(rows).note ?? "");
  return found === null ? 0 : Number(found[1]) / 100;
};
