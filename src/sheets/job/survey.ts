import { LIMIT } from "../../functions/code/limit";
import { EQUALIZE } from "../../functions/survey/equalize";
import { FINISHED } from "../../functions/survey/finished";
import { UNIFORMITY } from "../../functions/survey/uniformity";
import { viewOf, placesOf, spillOf } from "../result-looks";
import { type Answer, ASKS_IN, asksFor, type Block, lacks, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, lengthFormat, onTape } from "./filling";
import { greatestRise } from "./greatest-rise";
import { JOB } from "./job";

/** Rows for readings of a job of one's own: more risers than a flight between two floors has. */
const READINGS = 24;
const FIRST = 8;

const readingsOf = ({ roughRises }: Filling): { readonly count: number; readonly last: number; readonly cells: string } => {
  const count = roughRises.length === 0 ? READINGS : roughRises.length;
  const last = FIRST + count - 1;
  return { count, last, cells: `B${FIRST}:B${last}` };
};

const FLOORS = { treadThickness: "I8", lowerBuildUp: "I9", upperBuildUp: "I10" };
/** What the floors may still come up, and how near to one another the rises are to be. */
const [LOWER_MORE, UPPER_MORE, ALIKE_WITHIN] = ["I11", "I12", "I13"];
const PLAN_SAID = "H14";
/** How alike the rises are: a heading, and the table below it. */
const AS_FRAMED = { heading: "H20", table: "H21" };
const ONCE_PACKED = { heading: "H28", table: "H29" };

/** The readings follow one another from the first riser up to the floor; one left out, and the next below the floor, is asked for. */
const finished = (filling: Filling): string => {
  const { cells, count } = readingsOf(filling);
  const taken = call(FINISHED, filling.unit, { roughRises: `TAKE(${cells},n)`, ...FLOORS });
  const between = `MAX((${cells}<>"")*SEQUENCE(${count}))>n`;
  const leftOut = `"${ASKS_IN}B"&${FIRST - 1}+XMATCH("",${cells}&"")`;
  // Half a rise from the floor no step is left out, whatever Job says of their number.
  const short = `(n<${JOB.risers})*(SUM(${taken})<${JOB.totalRise}*(1-0.5/${JOB.risers}))`;
  const next = `IF(IFERROR(${short},0),"${ASKS_IN}B"&${FIRST}+n,${taken})`;
  return (
    `=LET(n,COUNTA(${cells}),IF(n=0,${asksFor(`B${FIRST}`)},IF(I8="",${asksFor("I8")},IF(${between},${leftOut},${next}))))`
  );
};

/** A column of the plan, step by step. */
const planned = (key: string): string => {
  const [place = 1] = placesOf(EQUALIZE, key);
  return `TAKE(CHOOSECOLS(DROP(AA8#,2),${place}),ROWS(C8#))`;
};

/** A column of the last row of the plan: the total and the spread. */
const inAll = (key: string): string => `INDEX(TAKE(AA8#,-1),1,${String(placesOf(EQUALIZE, key)[0])})`;

/** What goes under the sub-tread of each step, in words, beside what the plan says of the step. */
const whatToDo = ({ unit }: Filling): string => {
  const packed = `"pack "&IFERROR(${onTape(unit, "p")},"")&" under sub-tread "&SEQUENCE(ROWS(p))`;
  const said = 'x&IF((x<>"")*(n<>""),"; ","")&n';
  const todo = `LET(p,${planned("packing")},n,${planned("note")},x,IF(ISNUMBER(p),IF(p>0,${packed},""),""),${said})`;
  return `=${passing("AA8", todo)}`;
};

/** What the plan comes to; the floors are named by the cells in which they are typed. */
const planSaid = ({ unit }: Filling): string => {
  const note = `SUBSTITUTE(SUBSTITUTE(${inAll("note")},"(lowerMore)","(${LOWER_MORE})"),"(upperMore)","(${UPPER_MORE})")`;
  const [place = 1] = placesOf(EQUALIZE, "packing");
  const raised = `INDEX(AA8#,2,${place})`;
  const floor =
    `IF(${raised}>0,". The lower floor comes up by "&${onTape(unit, raised)}&": add it to the lower build up, and take it off the total ` +
    `rise on Job","")`;
  const upper = `INDEX(AA8#,ROWS(AA8#)-1,${place})`;
  const ceiling =
    `IF(${upper}>0,". The upper floor comes up by "&${onTape(unit, upper)}&": add it to the upper build up, and to the total rise on ` +
    `Job","")`;
  // EQUALIZE's own; a tape's marks stand in quotes.
  const within = unit === "mm" ? "9.5 mm" : '3/8""';
  const assumed =
    `IF((${ALIKE_WITHIN}="")*(LEFT(${verdictOf(ONCE_PACKED.table)},1)="○"),". Within ${within} is assumed: the code has no one figure ` +
    `for it, see Check; type another in ${ALIKE_WITHIN}","")`;
  return `=IF(${lacks("AA8")},"","The plan: "&${note}&${floor}&${ceiling}&${assumed}&".")`;
};

const tolerance = (filling: Filling): string =>
  `IFERROR(INDEX(${call(LIMIT, filling.unit, { code: JOB.code, item: '"riser uniformity"' })},1,1),"")`;

/** The plan: the rises as near to one another as typed, or as the code has them, none over the code's greatest. */
const plan = (filling: Filling): string => {
  const { unit } = filling;
  const greatest = `LET(g,${greatestRise(unit, JOB.code)},IF(ISNUMBER(g),g,""))`;
  return call(EQUALIZE, unit, {
    roughRises: `TAKE(${readingsOf(filling).cells},ROWS(C8#))`, ...FLOORS,
    spread: `IF(${ALIKE_WITHIN}="",${tolerance(filling)},${ALIKE_WITHIN})`, lowerMore: LOWER_MORE, upperMore: UPPER_MORE, maxRise: greatest,
  });
};

const alike = (filling: Filling, rises: string): string =>
  `=${passing(rises, call(UNIFORMITY, filling.unit, { values: `${rises}#`, tolerance: tolerance(filling) }))}`;

const verdictOf = (cell: string): string =>
  `SWITCH(STAIR.PICK(${cell}#,"verdict","value"),"pass","✓ alike","fail","✗ not alike","○ no limit on file")`;

const answers = ({ unit }: Filling): readonly Answer[] => [
  {
    over: ["A", "B"], name: "steps add up to", value: "SUM(C8#)", from: "C8", format: lengthFormat(unit),
    under: `=IF(ABS(A4-${JOB.totalRise})<=${unit === "mm" ? 3 : "1/8"},"${unit}, as on Job","✗ on Job: "&${onTape(unit, JOB.totalRise)})`,
  },
  { over: ["C", "C"], name: "steps", value: "ROWS(C8#)", from: "C8", under: `=${JOB.risers}&" on Job"` },
  {
    over: ["D", "D"], name: "spread", value: `STAIR.PICK(${AS_FRAMED.table}#,"spread","value")`, from: AS_FRAMED.table,
    format: lengthFormat(unit), under: `${unit} apart`,
  },
  {
    over: ["E", "F"], name: "as framed", value: verdictOf(AS_FRAMED.table), from: AS_FRAMED.table,
    under: `="worst neighbours: steps "&STAIR.PICK(${AS_FRAMED.table}#,"worst neighbours","where")`, isText: true,
  },
  {
    over: ["G", "J"], name: "once packed", value: verdictOf(ONCE_PACKED.table), from: ONCE_PACKED.table,
    under: `="spread "&${onTape(unit, inAll("rise"))}&", packing "&${onTape(unit, inAll("packing"))}`, isText: true,
  },
];

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const { count } = readingsOf(filling);
  return [
    {
      at: "A7", headings: true, numbers: [1], inputs: [1], formats: { 1: lengthFormat(unit) }, styles: { 0: "middle" },
      rows: [["step", `rough rise, ${unit}`], ...Array.from({ length: count }, (_, step) => [step + 1, filling.roughRises[step] ?? ""])],
    },
    {
      at: "C7", headings: true, numbers: [0, 1, 2],
      rows: [
        [`finished rise, ${unit}`, `pack under, ${unit}`, `once packed, ${unit}`, "what to do"],
        [
          finished(filling), `=${passing("AA8", planned("packing"))}`, `=${passing("AA8", planned("rise"))}`, whatToDo(filling),
        ],
      ],
    },
    {
      at: "H7", headings: true, numbers: [1], inputs: [1], formats: { 1: lengthFormat(unit) },
      rows: [
        ["floors still to be laid", unit],
        ["tread thickness", filling.floors.treadThickness],
        ["lower build up", filling.floors.lowerBuildUp],
        ["upper build up", filling.floors.upperBuildUp],
        ["lower floor may come up", ""],
        ["upper floor may come up", ""],
        ["rises alike within", filling.alikeWithin],
      ],
    },
    { at: PLAN_SAID, style: "caution", rows: [[planSaid(filling)]] },
    { at: AS_FRAMED.heading, style: "part", rows: [["How alike, as framed", "", ""]] },
    { at: AS_FRAMED.table, rows: [[alike(filling, "C8")]] },
    { at: ONCE_PACKED.heading, style: "part", rows: [["How alike, once packed", "", ""]] },
    { at: ONCE_PACKED.table, rows: [[alike(filling, "E8")]] },
    { at: "AA7", style: "part", rows: [["The plan, in full"]] },
    { at: "AA8", rows: [[`=${passing("C8", plan(filling))}`]] },
  ];
};

/** What was taped at the stair: how high it is and how alike its steps are, as framed and once packed. */
export const survey = (filling: Filling): SheetData => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  const { count } = readingsOf(filling);
  return page({
    name: "Survey",
    title: "Survey: how high, and how alike",
    says:
      "Type the rough rise of each step, sub-tread to sub-tread from the bottom, and the floors still to be laid. Each row then says " +
      "the finished rise, what to pack under that sub-tread, and the rise once packed; risers are cut to it.",
    answers: answers(filling),
    heights: { 7: 34 },
    widths: { A: 46, B: 80, C: 84, D: 84, E: 100, F: 220, G: 8, H: 184, I: 124, J: 76 },
    merged: [`${PLAN_SAID}:J19`],
    verdicts: ["C8"],
    blocks: blocks(filling),
    spills: [
      { at: "C8", rows: count, formats: { 0: length, 1: length, 2: length }, styles: { 0: "right", 1: "right", 2: "right" } },
      ...viewOf(UNIFORMITY, ["label", "value", "where"], AS_FRAMED.table, 5, unit, { value: length }),
      ...viewOf(UNIFORMITY, ["label", "value", "where"], ONCE_PACKED.table, 5, unit, { value: length }),
      ...spillOf(EQUALIZE, "AA8", count + 3, unit),
    ],
  });
};
