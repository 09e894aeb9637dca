import { CHECK } from "../../functions/code/check";
import { placesOf } from "../result-looks";
import { type Answer, asksFor, lacks, page, passing, SIGNED } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, UNIT_WORDS } from "./filling";
import { JOB } from "./job";

/** Rows a code can have. */
const ROWS = 70;
const LAST = 7 + ROWS;

/** A verdict with its mark; what begins otherwise is to be given or looked up. */
const marked = (verdict: string): string =>
  `IF(${verdict}="pass","✓ pass",IF(${verdict}="fail","✗ FAIL",IF(${verdict}="does not apply","– n/a",IF(${verdict}="","","○ ` +
    `"&${verdict}))))`;

/** Failures first, then what was not given, then what passes. */
const rank = (mark: string): string => `XMATCH(LEFT(${mark},1),{"✗","○","✓","–",""})`;

const [ITEM, GIVEN, LIMIT, MARGIN, VERDICT, CLAUSE, NOTE, UNIT] = placesOf(
  CHECK, "item", "given", "limit", "margin", "verdict", "clause", "note", "unit",
);
const column = (table: string, place: number | undefined): string => `CHOOSECOLS(${table},${String(place)})`;

/**
 * A figure as it is read: inches as on the tape, millimetres in tenths, with their unit where it is not that of the job; whatever else
 * plain. Parts that are repeated once or not at all stand for IF, of which Calc takes other rows where one stands in another.
 */
const figure = (unit: Filling["unit"], table: string, place: number | undefined): string => {
  const [size, of] = [column(table, place), column(table, UNIT)];
  const isMetric = `(${of}="mm")+(${of}="cm")`;
  const isOther = `(${of}<>"")*(${of}<>"${unit}")`;
  const tape = `IFERROR(STAIR.TAPE(${size},16,FALSE,TRUE)&"",${size}&"")`;
  const plain = `IFERROR(ROUND(${size},3)&"","")`;
  // a limit in words has no unit: alike, no figure
  const endsInFigure = `ISNUMBER(SEARCH(RIGHT(${size},1),"0123456789"))`;
  const metric = `IFERROR(TEXT(${size},"0.0"),"")`;
  return (
    `IF(ISNUMBER(${size}),REPT(${tape},--(${of}="in"))&REPT(${metric},${isMetric})&REPT(${plain},1-(${of}="in")-(${isMetric}))&` +
    `REPT(" "&${of},${isOther}*(${of}<>"in")),${size}&REPT(" "&${of},(${size}<>"")*${endsInFigure}*${isOther}))`
  );
};

/** What is left to the limit: a number in the unit of the job, with its unit in another. */
const margin = (unit: Filling["unit"], table: string): string => {
  const [size, of] = [column(table, MARGIN), column(table, UNIT)];
  return `IF(ISNUMBER(${size})*(${of}<>"")*(${of}<>"${unit}"),IFERROR(ROUND(${size},2),"")&" "&${of},${size})`;
};

/** The check of the steps as they were read on Survey, or as they are once packed. */
const checked = (filling: Filling, rises?: string): string =>
  call(CHECK, filling.unit, {
    stair: "Layout!AA7#", code: JOB.code,
    ...(rises === undefined ? {} : { steps: `HSTACK(VSTACK("step",SEQUENCE(ROWS(Survey!${rises}#))),VSTACK("rise",Survey!${rises}#))` }),
  });

/** The check once there is a code to check against. */
const coded = (checks: string): string => `IF(${JOB.code}="",${asksFor(JOB.code.replace("!", " "))},${checks})`;

/** Both checks in full, in cells of their own, as a spreadsheet without LET writes each name out: as framed, and as designed. */
const AS_FRAMED = "AC8";
const AS_DESIGNED = "AN8";

/** Both checks in one table, row by row: the steps as framed, and the stair as designed. */
const both = (filling: Filling): string => {
  const designed = column("d", VERDICT);
  const found = (table: string, place: number | undefined): string => figure(filling.unit, table, place);
  const framed = `IF(isTaped,${column("f", VERDICT)},IF(${designed}="","","not taped"))`;
  return (
    `LET(d,DROP(${AS_DESIGNED}#,1),isTaped,NOT(${lacks("Survey!C8")}),f,DROP(${AS_FRAMED}#,1),m,${marked(framed)},g,${marked(designed)},` +
    `SORTBY(HSTACK(m,${column("f", ITEM)},${found("f", GIVEN)},${found("f", LIMIT)},${margin(filling.unit, "f")},${found("d", GIVEN)},g,` +
    `${column("f", CLAUSE)},${column("f", NOTE)}),IF(isTaped,${rank("m")},${rank("g")}),1,${rank("g")},1))`
  );
};

const FRAMED = `A8:A${LAST}`;
const DESIGNED = `G8:G${LAST}`;
const failing = (cells: string): string => `IF(COUNTIF(${cells},"✗*")=0,"✓ none fail","✗ "&COUNTIF(${cells},"✗*")&" FAIL")`;
const isTaped = `NOT(${lacks("Survey!C8")})`;

const answers = ({ flight }: Filling): readonly Answer[] => [
  {
    over: ["A", "A"], name: "as framed", value: `IF(${isTaped},${failing(FRAMED)},"○ not taped")`, from: "A8",
    under: `=IF(${isTaped},COUNTIF(${FRAMED},"○*")&" to settle","see Survey")`, isText: true,
  },
  {
    over: ["B", "B"], name: "first to mend", value: 'IF(LEFT(A8,1)="✗",B8,IF(LEFT(G8,1)="✗",B8,"none"))', from: "A8",
    under: '=IF(LEFT(A8,1)="✗","as framed",IF(LEFT(G8,1)="✗","as designed",""))', isText: true,
  },
  {
    over: ["C", "D"], name: "once packed", value: `IF(AA7=0,"✓ none fail","✗ "&AA7&" FAIL")`, from: "AA7",
    under: "with the packing of Survey", isText: true,
  },
  {
    over: ["E", "F"], name: "as designed", value: failing(DESIGNED), from: "A8", under: `=COUNTIF(${DESIGNED},"○*")&" to settle"`,
    isText: true,
  },
  { over: ["G", "H"], name: "code", value: JOB.code, from: "A8", under: `typed on ${flight?.sheet ?? "Job"}`, isText: true },
];

/** The code check: the steps as framed beside the stair as designed, failures first. */
export const check = (filling: Filling): SheetData => {
  const { unit } = filling;
  const packed = `LET(t,${checked(filling, "E8")},SUM(--(${column("t", VERDICT)}="fail")))`;
  return page({
    name: "Check",
    title: `="Code check: "&${JOB.code}`,
    says:
      `Failures first, then what is to be given or looked up, then what passes: the steps as framed (Survey) beside the stair as ` +
      `designed (Layout), which stands for what Survey does not read. In ${UNIT_WORDS[unit]} but where a unit stands behind a figure. ` +
      `The building official has the last word.`,
    answers: answers(filling),
    widths: { A: 190, B: 236, C: 88, D: 150, E: 84, F: 88, G: 190, H: 128, I: 520 },
    verdicts: [FRAMED, DESIGNED],
    blocks: [
      {
        at: "A7", headings: true, numbers: [2, 3, 4, 5],
        rows: [
          ["as framed", "item", "found", "limit", "margin", "designed", "as designed", "clause", "note"],
          [`=IF(ISERROR(Survey!C8),Survey!C8,${passing(AS_DESIGNED, passing(AS_FRAMED, both(filling)))})`],
        ],
      },
      { at: "AC6", style: "part", rows: [["As framed, in full; as designed where nothing is taped"]] },
      {
        at: AS_FRAMED,
        rows: [[`=${passing(AS_DESIGNED, `IF(${lacks("Survey!C8")},${AS_DESIGNED}#,${checked(filling, "C8")})`)}`]],
      },
      { at: "AN6", style: "part", rows: [["As designed, in full"]] },
      { at: AS_DESIGNED, rows: [[`=${passing("Layout!AA7", coded(checked(filling)))}`]] },
      { at: "AA6", style: "part", rows: [["Limits that fail once packed"]] },
      { at: "AA7", rows: [[`=${passing("Survey!E8", passing("Layout!AA7", coded(packed)))}`]] },
    ],
    spills: [{ at: "A8", rows: ROWS, formats: { 4: SIGNED }, styles: { 2: "right", 3: "right", 4: "right", 5: "right" } }],
  });
};

