import { LIMIT } from "../../functions/code/limit";
import { EQUALIZE } from "../../functions/survey/equalize";
import { FINISHED } from "../../functions/survey/finished";
import { UNIFORMITY } from "../../functions/survey/uniformity";
import { viewOf, placesOf, spillOf } from "../result-looks";
import { type Answer, ASKS_IN, asksFor, type Block, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, inUnit, lengthFormat, onTape } from "./filling";
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

/** Packing under a sub-tread raises its own rise and lowers the next; the upper floor is not packed, and packing takes nothing down. */
const PACKED = `=${passing("AA8", "LET(p,IF(ISNUMBER(D8#),IF(D8#>0,D8#,0),0),C8#+p-VSTACK(0,DROP(p,-1)))")}`;

/** What EQUALIZE says of each step; how much too high one is that packing cannot mend. */
const whatToDo = ({ unit }: Filling, packing: number, note: number): string => {
  const column = (place: number): string => `TAKE(CHOOSECOLS(DROP(AA8#,1),${place}),ROWS(C8#))`;
  const high = `${onTape(unit, "-p")}&" high, nothing to pack"`;
  return `=${passing("AA8", `LET(p,${column(packing)},n,${column(note)},IF(LEFT(n,4)="must",IFERROR(${high},n),n))`)}`;
};

const tolerance = (filling: Filling): string =>
  `IFERROR(INDEX(${call(LIMIT, filling.unit, { code: JOB.code, item: '"riser uniformity"' })},1,1),"")`;

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
    over: ["D", "D"], name: "spread", value: 'STAIR.PICK(H13#,"spread","value")', from: "H13", format: lengthFormat(unit),
    under: `${unit} apart`,
  },
  {
    over: ["E", "F"], name: "as framed", value: verdictOf("H13"), from: "H13",
    under: '="worst neighbours: steps "&STAIR.PICK(H13#,"worst neighbours","where")', isText: true,
  },
  {
    over: ["G", "J"], name: "once packed", value: verdictOf("H20"), from: "H20",
    under: `="spread "&${onTape(unit, 'STAIR.PICK(H20#,"spread","value")')}`, isText: true,
  },
];

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const { count } = readingsOf(filling);
  const [packing = 3, note = 5] = placesOf(EQUALIZE, "packing", "note");
  const { cells } = readingsOf(filling);
  const floors = Object.fromEntries(Object.entries(FLOORS).map(([name, cell]) => [name, inUnit(unit, cell)]));
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
          finished(filling), `=${passing("AA8", `TAKE(CHOOSECOLS(DROP(AA8#,1),${packing}),ROWS(C8#))`)}`, PACKED,
          whatToDo(filling, packing, note),
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
      ],
    },
    { at: "H12", style: "part", rows: [["How alike, as framed", "", ""]] },
    { at: "H13", rows: [[alike(filling, "C8")]] },
    { at: "H19", style: "part", rows: [["How alike, once packed", "", ""]] },
    { at: "H20", rows: [[alike(filling, "E8")]] },
    { at: "AA7", style: "part", rows: [["Packing, in full"]] },
    { at: "AA8", rows: [[`=${passing("C8", call(EQUALIZE, unit, { roughRises: inUnit(unit, `TAKE(${cells},ROWS(C8#))`), ...floors }))}`]] },
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
      "the finished rise, what to pack under that sub-tread, and the rise once packed.",
    answers: answers(filling),
    heights: { 7: 34 },
    widths: { A: 46, B: 92, C: 92, D: 92, E: 98, F: 170, G: 10, H: 150, I: 76, J: 84 },
    verdicts: ["C8"],
    blocks: blocks(filling),
    spills: [
      { at: "C8", rows: count, formats: { 0: length, 1: length, 2: length }, styles: { 0: "right", 1: "right", 2: "right" } },
      ...viewOf(UNIFORMITY, ["label", "value", "where"], "H13", 5, unit, { value: length }),
      ...viewOf(UNIFORMITY, ["label", "value", "where"], "H20", 5, unit, { value: length }),
      ...spillOf(EQUALIZE, "AA8", count + 1, unit),
    ],
  });
};
