import { BALUSTERS } from "../../functions/layout/balusters";
import { LAYOUT } from "../../functions/layout/layout";
import { RAIL } from "../../functions/layout/rail";
import { SKIRT } from "../../functions/layout/skirt";
import { STORYPOLE } from "../../functions/layout/storypole";
import { placesOf, spillOf, viewOf } from "../result-looks";
import { ANGLE, type Answer, asksFor, type Block, DECIMALS, type Entry, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, lengthFormat, onTape } from "./filling";
import { JOB } from "./job";

const FIRST = 8;

/** An empty cell elsewhere stays one here; a reference alone would read 0. */
const linked = (place: string): string => `=IF(${place}="","",${place})`;

/** What stands on Job and Survey already, by the labels of the stair table. */
const LINKED: readonly (readonly [label: string, place: string])[] = [
  ["total rise", JOB.totalRise], ["risers", JOB.risers], ["run", JOB.run], ["width", JOB.width], ["open end", JOB.openEnd],
  ["handrails", JOB.handrails], ["tread thickness", "Survey!I8"], ["lower build up", "Survey!I9"], ["upper build up", "Survey!I10"],
];

/** What else a shop knows of a stair, in the order in which it is asked. */
const TYPED = [
  "nosing", "riser thickness", "overhang", "return width", "run past", "lap", "skirt thickness", "skirt shows", "skirt foot", "skirt head",
  "stringer board", "headroom", "opening", "floor thickness", "handrail height", "guard", "guard height", "open risers",
] as const;

const TOTAL_RISE = `B${FIRST + 1}`;
const RISERS = `B${FIRST + 2}`;
const BALUSTERS_AT = "N28";
const BALUSTER_WIDTH = "O25";

/** Typed for the width of a baluster where there are none: a flight between two walls. */
export const NO_BALUSTERS = "none";

/** What follows from others, and is still the user's to type over. */
const following = ({ flight }: Filling): readonly (readonly [label: string, entry: Entry])[] => [
  ["fall height", flight?.fallHeight ?? `=IF(OR(${TOTAL_RISE}="",${RISERS}=""),"",${TOTAL_RISE}-${TOTAL_RISE}/${RISERS})`],
  ["guard gap", `=IF(OR(${BALUSTER_WIDTH}="",${BALUSTER_WIDTH}="${NO_BALUSTERS}"),"",INDEX(${BALUSTERS_AT}#,1,2))`],
];

const stairRows = (filling: Filling): readonly (readonly Entry[])[] => [
  ["unit", filling.unit],
  ...LINKED.map(([label, place]) => [label, linked(place)] as const),
  ...TYPED.map((label) => [label, filling.sizes[label] ?? ""] as const),
  ...following(filling),
  ...(filling.flight?.sizes ?? []),
];

/** Labels whose figures are no lengths. */
const COUNTS: readonly string[] = ["risers", "stair risers", "risers before turn"];

/** Rows for labels the user adds. */
const SPARE = 4;
/** Rows of labels that LAYOUT works out, beside those it was given. */
const WORKED_OUT = 18;

interface Places {
  /** The last row with a label. */
  readonly last: number;
  readonly table: string;
  /** The rows for labels the user adds. */
  readonly spare: string;
  /** Rows LAYOUT spills, with room for those. */
  readonly laidOut: number;
}

const placesIn = (filling: Filling): Places => {
  const rows = stairRows(filling).length;
  const last = FIRST + rows - 1;
  return { last, table: `A7:B${last + SPARE}`, spare: `A${last + 1}:B${last + SPARE}`, laidOut: rows + WORKED_OUT };
};

/** What no stair is laid out without: each is asked for where it is empty on Job and no other size was added in its place. */
const NEEDED = [JOB.totalRise, JOB.run, JOB.width, JOB.openEnd] as const;

const askedOnJob = (answers: string, spare: string): string =>
  NEEDED.reduceRight((inner, place) =>
    `IF((${place}="")*(COUNTA(${spare})=0),${asksFor(place.replace("!", " "))},${inner})`, answers);

const pick = (label: string): string => `STAIR.PICK(AA7#,"${label}")`;

/** Where a size is typed that a sheet further on cannot do without, for its request. */
export const typedPlace = (label: (typeof TYPED)[number]): string => `Layout B${FIRST + 1 + LINKED.length + TYPED.indexOf(label)}`;

/** A size of the layout for a formula of another sheet; nothing where it was not given, so that the function assumes and says so. */
export const sizeOf = (label: string): string => `IFERROR(STAIR.PICK(Layout!AA7#,"${label}"),"")`;

const ANSWERS = ({ unit }: Filling): readonly Answer[] => {
  const length = lengthFormat(unit);
  const rise = unit === "mm" ? `TEXT(${pick("unit rise")},"0.0")` : `STAIR.TAPE(${pick("unit rise")},16,FALSE,TRUE)`;
  return [
    { over: ["A", "A"], name: "unit rise", value: rise, from: "D8", under: `="exact "&TEXT(${pick("unit rise")},"0.0000")&" ${unit}"` },
    { over: ["B", "C"], name: "run", value: pick("run"), from: "D8", format: length, under: unit },
    {
      over: ["D", "D"], name: "total run", value: pick("total run"), from: "D8", format: length,
      under: `="${unit}, "&${pick("treads")}&" treads"`,
    },
    { over: ["E", "F"], name: "pitch", value: pick("pitch"), from: "D8", format: ANGLE, under: "from level" },
    {
      over: ["G", "I"], name: "headroom", value: `${pick("headroom found")}+0`, from: "D8", format: length,
      under: `=IFERROR("asked "&${onTape(unit, `(${pick("headroom")}+0)`)},"opening not given")`,
    },
    {
      over: ["J", "K"], name: "enough?", value: `IF(${pick("headroom found")}+0>=${pick("headroom")}+0,"✓ headroom","✗ headroom")`,
      from: "D8", under: "found against asked", isText: true,
    },
    { over: ["L", "M"], name: "throat", value: pick("throat"), from: "D8", format: length, under: `${unit}, once cut` },
  ];
};

const [ASSUMED = 4] = placesOf(LAYOUT, "assumed");

/** Every size that follows, a length as on the tape with + or - where it is a little over or under the mark, and exact beside it. */
const SIZES = ({ unit }: Filling): string => {
  const tape = unit === "mm" ? 'IF(u="mm",TEXT(v,"0.0"),"")' : 'IF((u="in")*ISNUMBER(v),STAIR.TAPE(v,16,FALSE,TRUE),"")';
  const named = `CHOOSECOLS(t,1)&IF(LEFT(CHOOSECOLS(t,${ASSUMED}),7)="assumed"," (assumed)","")`;
  const sizes = `LET(t,DROP(AA7#,1),v,CHOOSECOLS(t,2),u,CHOOSECOLS(t,3),HSTACK(${named},${tape},IF(ISNUMBER(v),ROUND(v,4),v),u))`;
  return `=${passing("AA7", sizes)}`;
};

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const { last, table, spare } = placesIn(filling);
  const length = lengthFormat(unit);
  const marks = call(STORYPOLE, unit, { totalRise: pick("total rise"), risers: pick("risers") });
  const pole = placesOf(STORYPOLE, "riser", "height", "mark", "riseBetweenMarks");
  return [
    { at: "A7", headings: true, rows: [["label", "value"]], numbers: [1] },
    ...stairRows(filling).map(([label = "", value = ""], row): Block => ({
      at: `A${FIRST + row}`, numbers: [1], inputs: [1], rows: [[label, value]],
      formats: COUNTS.includes(String(label)) ? {} : { 1: length },
    })),
    {
      at: `A${last + 1}`, inputs: [0, 1], numbers: [1], formats: { 1: length },
      rows: Array.from({ length: SPARE }, () => ["", ""]),
    },
    { at: "D7", headings: true, numbers: [1, 2], rows: [["size", "on the tape", "exact", "unit"], [SIZES(filling)]] },
    {
      at: "I7", headings: true, numbers: [0, 1, 2, 3],
      rows: [
        ["riser", `height, ${unit}`, `mark, ${unit}`, `rise, ${unit}`],
        [
          `=${passing("AA7", `CHOOSECOLS(DROP(${marks},1),${pole.join()})`)}`,
        ],
      ],
    },
    { at: "N7", style: "part", rows: [["Skirts", "", "", ""]] },
    { at: "N8", rows: [[`=${passing("AA7", call(SKIRT, unit, { stair: "AA7#" }))}`]] },
    { at: "N16", style: "part", rows: [["Rail", "", "", ""]] },
    { at: "N17", rows: [[`=${passing("AA7", call(RAIL, unit, { stair: "AA7#" }))}`]] },
    { at: "N24", style: "part", rows: [["Balusters", "", "", ""]] },
    { at: "N25", numbers: [1], inputs: [1], formats: { 1: length }, rows: [[`width of one, ${unit}`, filling.balusterWidth]] },
    {
      at: "N27", headings: true, numbers: [0, 1],
      rows: [
        ["to a run", `clear gap, ${unit}`],
        [
          `=IF(${BALUSTER_WIDTH}="",${asksFor(BALUSTER_WIDTH)},IF(${BALUSTER_WIDTH}="${NO_BALUSTERS}","${NO_BALUSTERS}",` +
            `${call(BALUSTERS, unit, { opening: JOB.run, width: BALUSTER_WIDTH, repeat: "TRUE" })}))`,
        ],
      ],
    },
    { at: "AA6", style: "part", rows: [["The layout as other sheets read it", "", "", ""]] },
    { at: "AA7", rows: [[`=${askedOnJob(`LET(t,${table},${call(LAYOUT, unit, { stair: 'FILTER(t,CHOOSECOLS(t,2)<>"")' })})`, spare)}`]] },
  ];
};

/** The stair as designed: every size that follows from what is typed here, on Job and on Survey. */
export const layout = (filling: Filling): SheetData => {
  const { unit, flight } = filling;
  const { laidOut } = placesIn(filling);
  const length = lengthFormat(unit);
  return page({
    name: "Layout",
    title: "Layout: every size that follows",
    says:
      `${flight === undefined
        ? "Type the sizes of the stair in the yellow cells; white ones come from Job and Survey."
        : `White sizes come from ${flight.sheet}, where the whole stair is typed.`} A size left empty is assumed where ` +
      "practice has one, and the list says so. + and - behind a size: a little over or under that mark; the exact size stands beside " +
      "it.",
    answers: ANSWERS(filling),
    heights: { 7: 34 },
    widths: {
      A: flight === undefined ? 130 : 156, B: 72, C: 8, D: 256, E: 84, F: 84, G: 48, H: 8, I: 56, J: 76, K: 76, L: 88, M: 12, N: 310,
      O: 96, P: 50, Q: 220,
    },
    lists: [
      { cells: `B${FIRST + 1 + LINKED.length + TYPED.indexOf("guard")}`, options: ["yes", "no"] },
      { cells: `B${FIRST + 1 + LINKED.length + TYPED.indexOf("open risers")}`, options: ["yes", "no"] },
    ],
    blocks: blocks(filling),
    spills: [
      { at: "E8", rows: laidOut, formats: { 1: "General" }, styles: { 0: "right", 1: "right" } },
      { at: "I8", rows: 24, formats: { 1: lengthFormat(unit), 2: length, 3: length } },
      ...spillOf(SKIRT, "N8", 6, unit, { value: DECIMALS }),
      ...spillOf(RAIL, "N17", 6, unit, { value: DECIMALS }),
      ...viewOf(LAYOUT, ["label", "value", "unit", "assumed"], "AA7", laidOut, unit),
      { at: "O28", rows: 1, formats: { 0: length } },
    ],
  });
};
