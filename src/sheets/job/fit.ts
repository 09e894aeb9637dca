import { MARKS } from "../../functions/fit/marks";
import { NOTCH } from "../../functions/fit/notch";
import { RISERFIT } from "../../functions/fit/riserfit";
import { RISERHEIGHT } from "../../functions/fit/riserheight";
import { RISERMARKS } from "../../functions/fit/risermarks";
import { TREADFIT } from "../../functions/fit/treadfit";
import { riserReadings, treadReadings } from "../../functions/tables";
import { chosen, headingsOf, spillOf, viewOf } from "../result-looks";
import { ANGLE, type Answer, asksFor, type Block, type Entry, lacks, page, passing, SIXTYFOURTHS, THIRTYSECONDS, whileAsking } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, lengthFormat, UNIT_WORDS } from "./filling";
import { JOB } from "./job";
import { sizeOf, typedPlace } from "./layout";
import { TREADS_TITLE } from "./taped-tables";
import { TOO_LARGE, treadsTooLarge } from "./treads-too-large";

/** Rows for readings of a job of one's own; a flight between two floors has no more. */
const READINGS = 24;
const TREADS = 9;

/** Where each table stands: the risers below the treads. */
interface Places {
  readonly treads: number;
  readonly lastTread: number;
  readonly risers: number;
  readonly lastRiser: number;
}

const placesIn = ({ treads, risersRead }: Filling): Places => {
  const lastTread = TREADS + (treads.length || READINGS) - 1;
  const risers = lastTread + 4;
  return { treads: TREADS, lastTread, risers, lastRiser: risers + (risersRead.length || READINGS) - 1 };
};

/** Where RISERFIT spills, for the sheets that cut what it says. */
export const RISERS_FITTED = "AA40";
const NOTCH_AT = "AA70";
/** Where the tickets stand, act by act; what is printed for the bench comes from here. */
const MARKS_AT = "CA8";
const RISERMARKS_AT = "CN8";
/** Acts a step has at most, and a step or two of them over: rows that show their lengths as such. */
const ACTS = 20;

const TREAD_VIEW = ["step", "length", "back", "front", "toe", "heelAtTheHook", "mitre"] as const;
const RISER_VIEW = ["step", "length", "top", "bottom", "height"] as const;
const SETS = ["leftSet", "rightSet"] as const;

/** The readings down to the last that was taped, with their headings. */
const taped = (heading: number, last: number, corner: string, column: string): { typed: string; range: string } => {
  const cells = `${column}${heading + 1}:${column}${last}`;
  return {
    typed: `COUNTA(${cells})=0,${asksFor(`Fit ${column}${heading + 1}`)}`,
    range: `TAKE(A${heading}:${corner}${last},1+MAX((${cells}<>"")*SEQUENCE(${last - heading})))`,
  };
};

/** Of the treads as taped: what they measure, or what is done to make them. */
const ofTreads = (filling: Filling, declaration: typeof TREADFIT | typeof MARKS): string => {
  const { treads, lastTread } = placesIn(filling);
  const { typed, range } = taped(treads - 1, lastTread, "G", "C");
  const fitted = call(declaration, filling.unit, {
    readings: range, nosing: sizeOf("nosing"), openEnd: sizeOf("open end"), overhang: sizeOf("overhang"),
    returnWidth: sizeOf("return width"), thickness: sizeOf("tread thickness"),
    riserOn: sizeOf("riser on"), riserThickness: sizeOf("riser thickness"),
  });
  return `=${passing("Layout!AA7", `IF(${typed},${fitted})`)}`;
};

/** The same of the risers; `more` is what only the bench needs. */
const ofRisers = (
  filling: Filling, declaration: typeof RISERFIT | typeof RISERMARKS, more: Readonly<Record<string, string>> = {},
): string => {
  const { risers, lastRiser } = placesIn(filling);
  const { typed, range } = taped(risers - 1, lastRiser, "H", "C");
  const fitted = call(declaration, filling.unit, {
    readings: range, openEnd: sizeOf("open end"), runPast: sizeOf("run past"), thickness: sizeOf("riser thickness"), ...more,
  });
  return `=${passing("Layout!AA7", `IF(${typed},${fitted})`)}`;
};

/** Room for the tread in a notch: common practice, no source. */
const clearanceIn = (unit: Filling["unit"]): string => (unit === "mm" ? "1" : '"1/32"');

/** How high each riser is cut: from the rises once packed, or as designed while none were read. */
const cutHeight = (filling: Filling): string => {
  const rises = whileAsking("Survey!E8", `STAIR.PICK(Layout!AA7#,"unit rise")+0*SEQUENCE(${JOB.risers})`, "Survey!E8#");
  const heights = call(
    RISERHEIGHT, filling.unit,
    { rise: rises, treadThickness: 'STAIR.PICK(Layout!AA7#,"tread thickness")', lap: sizeOf("lap"), first: "1" },
  );
  return `=${passing("Layout!AA7", heights)}`;
};

/**
 * Runs further from the one on Job than runs of a flight may differ: 3/8 in, IRC R311.7.5.2. A piece with a name, as the landing's, has
 * its own.
 */
const farRuns = (filling: Filling): string => {
  const { treads, lastTread } = placesIn(filling);
  const runs = `B${treads}:B${lastTread}`;
  const allowed = filling.unit === "mm" ? "9.5" : "3/8";
  const far = `(${runs}<>"")*ISNUMBER(A${treads}:A${lastTread})*IFERROR(--(ABS(${runs}-${JOB.run})>${allowed}),0)`;
  const steps = `TEXTJOIN(", ",TRUE,IF(${far},A${treads}:A${lastTread},""))`;
  const says = `"Read on another run than Job has: step "&${steps}&"; read again, or mend Job."`;
  return `IF(SUM(${far})=0,"",${says})`;
};

const disagree = (cell: string, declaration: typeof TREADFIT | typeof RISERFIT): string =>
  `IF(${lacks(cell)},0,SUM(--ISNUMBER(SEARCH("disagree",${chosen(declaration, `${cell}#`, "note")}))))`;

/** Steps whose readings could not be read. */
const inError = (cell: string, declaration: typeof TREADFIT | typeof RISERFIT): string =>
  `IF(${lacks(cell)},0,SUM(--ISERROR(${chosen(declaration, `${cell}#`, "length")})))`;

const closures = (cell: string, declaration: typeof TREADFIT | typeof RISERFIT): string =>
  `IF(${lacks(cell)},0,MAX(IFERROR(ABS(DROP(${chosen(declaration, `${cell}#`, "closure")},1)),0)))`;

const read = (cell: string): string => `IF(ISERROR(${cell}),NA(),IF(${lacks(cell)},0,ROWS(${cell}#)-1))`;

/** Whether all readings close; what cannot be read comes before what disagrees. */
const verdict = (): string => {
  const wrong = `${inError("AA8", TREADFIT)}+${inError(RISERS_FITTED, RISERFIT)}`;
  const apart = `${disagree("AA8", TREADFIT)}+${disagree(RISERS_FITTED, RISERFIT)}`;
  return `IF(A4+C4=0,"–",IF(${wrong}>0,"✗ "&(${wrong})&" in error",IF(${apart}=0,"✓ they close","✗ read again")))`;
};

const answers = ({ unit }: Filling): readonly Answer[] => [
  { over: ["A", "B"], name: "treads read", value: read("AA8"), under: "steps" },
  { over: ["C", "C"], name: "risers read", value: read(RISERS_FITTED), under: "steps" },
  {
    over: ["D", "E"], name: "do they close?", value: verdict(), under: "of treads and risers", isText: true,
  },
  {
    over: ["F", "G"], name: "worst closure", under: unit, format: unit === "mm" ? "0.0" : SIXTYFOURTHS,
    value: `IF(A4+C4=0,"–",MAX(${closures("AA8", TREADFIT)},${closures(RISERS_FITTED, RISERFIT)}))`,
  },
  {
    over: ["H", "K"], name: "longest tread", value: `MAX(DROP(${chosen(TREADFIT, "AA8#", "length")},1))`, from: "I8",
    format: lengthFormat(unit), under: `=IF(${JOB.openEnd}="none","${unit}","${unit}, with its return")`,
  },
  {
    over: ["L", "M"], name: "notch, wide", value: `INDEX(${NOTCH_AT}#,1,1)`, from: NOTCH_AT,
    format: unit === "mm" ? "0.0" : THIRTYSECONDS, under: unit,
  },
  {
    over: ["N", "O"], name: "notch, high", value: `INDEX(${NOTCH_AT}#,1,2)`, from: NOTCH_AT,
    format: unit === "mm" ? "0.0" : THIRTYSECONDS, under: unit,
  },
];

/** What of a fit goes on the saw; the request without its sheet, for the columns are narrow and nothing reads it on. */
const viewed = (fits: string, first: string, view: string): string =>
  `=IF(${lacks(fits)},IF(ISERROR(${fits}),${fits},${asksFor(first)}),${view})`;

const empty = (columns: number): readonly Entry[] => Array.from({ length: columns }, () => "");

const typedBlocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const { treads, lastTread, risers, lastRiser } = placesIn(filling);
  const length = lengthFormat(unit);
  const lengths = { 1: length, 2: length, 3: length, 4: length, 5: length, 6: length };
  const rowsOf = (rows: Filling["treads"], count: number, columns: number): readonly (readonly Entry[])[] =>
    Array.from({ length: count }, (_, row) => rows[row] ?? [row + 1, ...empty(columns - 1)]);
  return [
    { at: "A7", style: "part", rows: [[`${TREADS_TITLE}${unit}`, ...empty(6)]] },
    {
      at: `A${treads - 1}`, headings: true, numbers: [1, 2, 3, 4, 5, 6], inputs: [0, 1, 2, 3, 4, 5, 6], formats: { ...lengths, 6: ANGLE },
      rows: [
        headingsOf(treadReadings, "step", "run", "back", "front", "diagonal", "secondDiagonal", "leftLean"),
        ...rowsOf(filling.treads, lastTread - treads + 1, 7),
      ],
    },
    {
      at: `A${lastTread + 1}`, style: "caution",
      rows: [
        [
          `=IF(${lacks("AA8")},"",TEXTJOIN(" ",TRUE,${farRuns(filling)},IF(${TOO_LARGE}="","","Larger than the blank on Order: step ` +
            `"&${TOO_LARGE}&"; order a larger one.")))`,
        ],
      ],
    },
    {
      at: `A${risers - 2}`, style: "part",
      rows: [
        [
          `="Risers as taped, ${unit}; cut heights "&IF(${lacks("Survey!E8")},"as designed","from Survey")`,
          ...empty(7),
        ],
      ],
    },
    {
      at: `A${risers - 1}`, headings: true, numbers: [1, 2, 3, 4, 5, 6, 7], inputs: [0, 1, 2, 3, 4, 5, 7],
      formats: { ...lengths, 7: ANGLE },
      rows: [
        headingsOf(riserReadings, "step", "height", "top", "bottom", "diagonal", "secondDiagonal", "cutHeight", "leftFlare"),
        ...rowsOf(filling.risersRead, lastRiser - risers + 1, 7).map((
          [step = "", height = "", top = "", bottom = "", one = "", other = "", flare = ""], row,
        ) => [
          step, height, top, bottom, one, other, row === 0 ? cutHeight(filling) : null, flare,
        ]),
      ],
    },
  ];
};

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const { treads, risers } = placesIn(filling);
  const clearance = clearanceIn(unit);
  const skirt = sizeOf("skirt thickness");
  const notch = call(NOTCH, unit, { skirtThickness: skirt, runPast: sizeOf("run past"), lap: sizeOf("lap"), clearance });
  const asked =
    `IF(${skirt}="",${asksFor(typedPlace("skirt thickness"))},IF(${sizeOf("run past")}="",${asksFor(typedPlace("run past"))},${notch}))`;
  return [
    ...typedBlocks(filling),
    {
      at: "I7", style: "part",
      rows: [
        [
          `="On the saw; "&SWITCH(${JOB.openEnd},"none","no return","both","both ends open: toe to toe, heel to heel",` +
            '"marks from the nose corner at the wall")',
          ...empty(8),
        ],
      ],
    },
    { at: `I${treads - 1}`, rows: [[viewed("AA8", `C${treads}`, chosen(TREADFIT, "AA8#", ...TREAD_VIEW))]] },
    { at: `P${treads - 1}`, rows: [[viewed("AA8", `C${treads}`, chosen(TREADFIT, "AA8#", ...SETS))]] },
    { at: `R${treads - 1}`, rows: [[viewed("AA8", `C${treads}`, chosen(TREADFIT, "AA8#", "note"))]] },
    { at: `R${risers - 1}`, rows: [[viewed(RISERS_FITTED, `C${risers}`, chosen(RISERFIT, `${RISERS_FITTED}#`, "note"))]] },
    { at: `I${risers - 2}`, style: "part", rows: [["On the saw", ...empty(8)]] },
    { at: `I${risers - 1}`, rows: [[viewed(RISERS_FITTED, `C${risers}`, chosen(RISERFIT, `${RISERS_FITTED}#`, ...RISER_VIEW))]] },
    { at: `P${risers - 1}`, rows: [[viewed(RISERS_FITTED, `C${risers}`, chosen(RISERFIT, `${RISERS_FITTED}#`, ...SETS))]] },
    { at: "AA7", style: "part", rows: [["Treads, in full"]] },
    { at: "AA8", rows: [[ofTreads(filling, TREADFIT)]] },
    { at: "AD69", headings: true, rows: [["treads larger than their blank"], [treadsTooLarge("AA8")]] },
    { at: "AA39", style: "part", rows: [["Risers, in full"]] },
    { at: RISERS_FITTED, rows: [[ofRisers(filling, RISERFIT)]] },
    { at: "CA7", style: "part", rows: [["Treads, act by act: the tickets"]] },
    { at: MARKS_AT, rows: [[ofTreads(filling, MARKS)]] },
    { at: "CN7", style: "part", rows: [["Risers, act by act: the tickets"]] },
    {
      at: RISERMARKS_AT,
      rows: [[ofRisers(filling, RISERMARKS, { skirtThickness: skirt, lap: sizeOf("lap"), clearance })]],
    },
    {
      at: "AA69", headings: true, numbers: [0, 1],
      rows: [
        ["notch width", "notch height"],
        [`=${passing("Layout!AA7", asked)}`],
      ],
    },
  ];
};

/** The readings of treads and risers as taped, and on the same row what goes on the saw. */
export const fit = (filling: Filling): SheetData => {
  const { unit } = filling;
  const { treads, lastTread, risers, lastRiser } = placesIn(filling);
  const [treadRows, riserRows] = [lastTread - treads + 1, lastRiser - risers + 1];
  const exact = { closure: unit === "mm" ? "0.00" : "0.000" };
  const notch = unit === "mm" ? "0.0" : THIRTYSECONDS;
  return page({
    name: "Fit",
    title: "Fit: the next treads and risers",
    says:
      `Type the readings as taped at the sub-tread, in ${UNIT_WORDS[unit]}, lean and flare in degrees; the run from finished riser to ` +
      `finished riser, or add a row riser on to Layout: off, or behind. On the same row stands what goes on the saw: lengths, the marks ` +
      `of the return from the nose corner, and the set of each end in words.`,
    answers: answers(filling),
    heights: { [treads - 1]: 40, [risers - 1]: 40 },
    widths: {
      A: 44, B: 58, C: 72, D: 72, E: 74, F: 74, G: 66, H: 50, I: 48, J: 72, K: 72, L: 72, M: 72, N: 76, O: 56, P: 220, Q: 220, R: 320,
    },
    merged: [`A${lastTread + 1}:H${lastTread + 1}`],
    blocks: blocks(filling),
    spills: [
      { at: `G${risers}`, rows: riserRows, formats: { 0: lengthFormat(unit) }, styles: { 0: "right" } },
      ...viewOf(TREADFIT, TREAD_VIEW, `I${treads - 1}`, treadRows, unit),
      ...viewOf(TREADFIT, SETS, `P${treads - 1}`, treadRows, unit),
      ...viewOf(RISERFIT, RISER_VIEW, `I${risers - 1}`, riserRows, unit),
      ...viewOf(RISERFIT, SETS, `P${risers - 1}`, riserRows, unit),
      ...viewOf(TREADFIT, ["note"], `R${treads - 1}`, treadRows, unit),
      ...viewOf(RISERFIT, ["note"], `R${risers - 1}`, riserRows, unit),
      ...spillOf(TREADFIT, "AA8", treadRows, unit, exact),
      ...spillOf(RISERFIT, RISERS_FITTED, riserRows, unit, exact),
      ...spillOf(MARKS, MARKS_AT, treadRows * ACTS, unit),
      ...spillOf(RISERMARKS, RISERMARKS_AT, riserRows * ACTS, unit),
      { at: NOTCH_AT, rows: 1, formats: { 0: notch, 1: notch } },
    ],
  });
};

