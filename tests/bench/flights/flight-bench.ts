import { printTable } from "../print-table";
import { MISTAKES, type MistakeKind, type TrialCount, type TrialRow, trials } from "./flight-trials";

const SIXTEENTHS = { divisions: 16, hand: 0.012 };
const THIRTY_SECONDS = { divisions: 32, hand: 0.01 };

/** Figures to compare with, in the order of MISTAKES: found, named rightly where it differs, in brackets what closure alone flags. */
interface Published {
  readonly row: TrialRow;
  readonly figures: readonly string[];
}

/** What an earlier, independent trial of the same method on flights made by the same recipe measured, in percent. */
const ROWS: readonly Published[] = [
  {
    row: { says: "5 steps, 1/16", steps: 5, tape: SIXTEENTHS },
    figures: ["1 (3)", "100/100 (100)", "98/98 (100)", "32/31 (53)", "90/90 (0)", "100 (1)", "100 (7)"],
  },
  {
    row: { says: "11 steps, 1/16", steps: 11, tape: SIXTEENTHS },
    figures: ["4 (6)", "100/100 (100)", "99/99 (100)", "38/35 (49)", "93/93 (0)", "100 (0)", "100 (4)"],
  },
  {
    row: { says: "14 steps, 1/16", steps: 14, tape: SIXTEENTHS },
    figures: ["3 (4)", "100/100 (100)", "100/100 (99)", "57/54 (55)", "88/88 (0)", "100 (0)", "100 (6)"],
  },
  {
    row: { says: "5 steps, 1/32", steps: 5, tape: THIRTY_SECONDS },
    figures: ["0 (16)", "100/100 (100)", "100/100 (100)", "79/75 (99)", "100 (0)", "100 (2)", "100 (22)"],
  },
  {
    row: { says: "11 steps, 1/32", steps: 11, tape: THIRTY_SECONDS },
    figures: ["4 (24)", "100/100 (100)", "100/100 (100)", "85/85 (99)", "98/98 (7)", "100 (4)", "100 (25)"],
  },
  {
    row: { says: "14 steps, 1/32", steps: 14, tape: THIRTY_SECONDS },
    figures: ["5 (33)", "100/100 (100)", "100/100 (100)", "95/95 (99)", "96/96 (4)", "100 (2)", "100 (36)"],
  },
  {
    row: { says: "11, 1/16, risers too", steps: 11, tape: SIXTEENTHS, risers: true },
    figures: ["3 (2)", "100/100 (100)", "100/100 (100)", "57/53 (47)", "97/97 (0)", "100 (0)", "100 (3)"],
  },
  {
    row: { says: "11, 1/16, rough skirt", steps: 11, tape: SIXTEENTHS, crooked: { roughness: 0.03, waves: 0.09 } },
    figures: ["7 (5)", "100/100 (100)", "97/94 (99)", "31/23 (44)", "56/49 (0)", "91/90 (0)", "92/90 (10)"],
  },
  {
    row: { says: "11, 1/16, short waves", steps: 11, tape: SIXTEENTHS, crooked: { reach: 15, square: 0.25 } },
    figures: ["4 (3)", "100/100 (100)", "94/93 (100)", "26/18 (54)", "37/36 (0)", "88 (0)", "98 (6)"],
  },
];

const SEED = 20_260_711;
const FLIGHTS = 200;
/** Honest flights for each of another cell: a target of one in twenty needs more of them. */
const HONEST = 5;
/** Honest flights in which something is named, in percent: the most, in the first rows. */
const MOST_FALSE = 5;
const ROWS_WITH_A_TARGET = 6;

const percent = (part: number, of: number): string => (of === 0 ? "-" : String(Math.round((100 * part) / of)));

const figure = (mistake: MistakeKind, { flights, found, named, byClosure }: TrialCount): string =>
  mistake === "nothing"
    ? `${percent(found, flights)} (${percent(byClosure, flights)})`
    : `${percent(found, flights)}/${percent(named, flights)} (${percent(byClosure, flights)})`;

const headings: Readonly<Record<MistakeKind, string>> = {
  nothing: "nothing wrong", "1 or 1/2": "1 in or 1/2 off", "1/4": "1/4 off", "1/8": "1/8 off",
  diagonals: "diagonals swapped", "back and front": "back/front swapped", steps: "steps exchanged",
};

/** The trials of every cell beside the published figures; the target is said to be met or missed, and nothing is asserted. */
export const flightBench = (flights: number = FLIGHTS, seed: number = SEED): void => {
  const rows: string[][] = [];
  const values = { right: 0, of: 0 };
  for (const [at, { row, figures }] of ROWS.entries()) {
    const counts = MISTAKES.map((mistake, column) => trials(row, mistake, flights * (column === 0 ? HONEST : 1), seed + 100 * at + column));
    const honest = counts[0]!;
    for (const count of counts.slice(1, 3)) {
      values.right += count.valued;
      values.of += count.named;
    }
    const target = at >= ROWS_WITH_A_TARGET
      ? ""
      : honest.found * 100 <= MOST_FALSE * honest.flights ? "met" : `missed: over ${MOST_FALSE} %`;
    rows.push([row.says, ...MISTAKES.map((mistake, column) => figure(mistake, counts[column]!)), target]);
    rows.push(["  published", ...figures, ""]);
  }
  printTable(
    `Wrong readings of made-up flights in percent, ${flights} a cell and ${flights * HONEST} honest: found / named rightly (closure ` +
      `alone); seed ${seed}. The published closure is by twice a division, ours by no less than 3/32`,
    [["steps, tape", ...MISTAKES.map((mistake) => headings[mistake]), `false: ${MOST_FALSE} %`], ...rows],
  );
  console.log(`  value right to one division: ${percent(values.right, values.of)} % of errors of 1/4 and more that are named`);
};
