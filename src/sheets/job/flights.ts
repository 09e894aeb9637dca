import { FLIGHTS } from "../../functions/layout/flights";
import { HEADROOM } from "../../functions/layout/headroom";
import { ONEFLIGHT } from "../../functions/layout/oneflight";
import type { Unit } from "../../solver/length/length";
import { placesOf, spillOf } from "../result-looks";
import { type Answer, asksFor, type Block, type Entry, MONEY, page, passing } from "../sheet-builder";
import type { ChoiceList, SheetData } from "../sheet-data";
import { call } from "./call";
import { CODE_CHOICES } from "./code-choices";
import { type Filling, lengthFormat, moneyOf } from "./filling";

/** The sheet of a stair of two flights, which the sheets of both read. */
export const FLIGHTS_SHEET = "Flights";

/** What the sheet of the whole stair is filled with. */
export interface FlightsFilling extends Pick<Filling, "unit" | "job" | "customer" | "code"> {
  /** By the labels of the stair table: what the flights share. */
  readonly sizes: Readonly<Record<string, Entry>>;
  /** Further labels that the code asks for, each with its value. */
  readonly further: readonly (readonly [label: string, value: Entry])[];
  /** By the columns of the table of flights: the lower flight, then the upper one. */
  readonly flights: Readonly<Record<string, readonly [Entry, Entry]>>;
  /** Of the opening in the upper floor, over the lower flight, level from its top nosing. */
  readonly opening: Entry;
  /** Over the upper flight, to the ceiling. */
  readonly ceiling: Entry;
  readonly says: string;
}

export const KNOWN = { job: "B8", customer: "B9", code: "B10" } as const;

const STAIR_ROW = 13;
/** What the flights share, in the order in which it is asked; total rise and run first. */
const STAIR = [
  "total rise", "run", "width", "nosing", "tread thickness", "riser thickness", "lower build up", "upper build up", "overhang",
  "return width", "run past", "lap", "skirt thickness", "skirt shows", "skirt foot", "skirt head", "stringer board", "headroom",
  "floor thickness", "handrail height", "guard", "guard height", "landing guard height", "open risers",
] as const;
/** Rows for labels the user adds. */
const FURTHER = 4;
const LAST = STAIR_ROW + STAIR.length;
const TABLE = `A${STAIR_ROW - 1}:B${LAST + FURTHER}`;

/** Where a label that the user added stands, with its value beside it. */
export const FURTHER_AT: readonly (readonly [label: string, value: string])[] = Array.from({ length: FURTHER }, (_, row) => [
  `A${LAST + 1 + row}`, `B${LAST + 1 + row}`,
]);

const cellOf = (label: (typeof STAIR)[number]): string => `B${STAIR_ROW + 1 + STAIR.indexOf(label)}`;

const FLIGHT_ROW = 8;
/** Rows of the table of flights, which stands on its side. */
const OF_FLIGHTS = [
  "risers", "run", "width", "turn", "landing depth", "landing build up", "newel past", "open end", "open sides", "handrails",
  "landing tread",
] as const;
const FLIGHT_TABLE = `TRANSPOSE(D${FLIGHT_ROW}:F${FLIGHT_ROW + OF_FLIGHTS.length})`;
const CHOICES: Readonly<Partial<Record<(typeof OF_FLIGHTS)[number], readonly string[]>>> = {
  turn: ["none", "quarter left", "quarter right", "half left", "half right"],
  "open end": ["none", "left", "right", "both"],
  "open sides": ["none", "one", "both"],
  handrails: ["none", "one", "both"],
};
const WORDS: readonly string[] = Object.keys(CHOICES);

const rowOf = (column: (typeof OF_FLIGHTS)[number]): number => FLIGHT_ROW + 1 + OF_FLIGHTS.indexOf(column);

/** Where the whole stair is worked out, and each flight as a stair of its own. */
const FIGURES = "AO8";
export const FLIGHT_AT = { lower: "AA8", upper: "AH8" } as const;
const ROWS = 44;
const FLIGHT_ROWS = 48;

/** What an empty cell of the table of flights stands for. */
const EMPTY = "Empty: as the stair has it. Landing depth: as wide as the next flight.";

const HEADROOM_ROW = FLIGHT_ROW + OF_FLIGHTS.length + 3;
const OPENING = `E${HEADROOM_ROW}`;
export const HEADROOM_AT = { lower: `E${HEADROOM_ROW + 2}`, upper: `E${HEADROOM_ROW + 3}` } as const;
const BY_FLIGHT = HEADROOM_ROW + 6;

const [NAME, LABEL, VALUE, UNIT, NOTE] = placesOf(FLIGHTS, "flight", "label", "value", "unit", "note").map(String);

/** One figure of the stair or of a flight, whose name stands in a cell. */
const figure = (flight: string, label: string): string =>
  `INDEX(FILTER(CHOOSECOLS(${FIGURES}#,${VALUE}),(CHOOSECOLS(${FIGURES}#,${NAME})=${flight})*` +
  `(CHOOSECOLS(${FIGURES}#,${LABEL})="${label}")),1)`;
const ofStair = (label: string): string => figure('"stair"', label);
const ofLower = (label: string): string => figure(`E${FLIGHT_ROW}`, label);

const lengthText = (unit: Unit, length: string): string =>
  (unit === "mm" ? `TEXT(${length},"0.0")` : `STAIR.TAPE(${length},16,FALSE,TRUE)`);

const answers = (filling: FlightsFilling): readonly Answer[] => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  const headroom = `MIN(${HEADROOM_AT.lower},${HEADROOM_AT.upper})`;
  const asked = cellOf("headroom");
  return [
    {
      over: ["A", "B"], name: "rise, alike in all flights", from: FIGURES, under: `risers × rise, ${unit}`,
      value: `${ofStair("risers")}&" × "&${lengthText(unit, ofStair("unit rise"))}`,
    },
    {
      over: ["D", "D"], name: "landing at, finished", from: FIGURES, format: length, value: ofLower("landing height"),
      under: `${unit} over the lower floor`,
    },
    {
      over: ["E", "F"], name: "turn", from: FIGURES, value: `E${rowOf("turn")}`, under: "seen going up", isText: true,
    },
    {
      over: ["H", "I"], name: "in plan", from: FIGURES, under: `${unit}, along × across the lower flight`,
      value: `${lengthText(unit, ofStair("length in plan"))}&" × "&${lengthText(unit, ofStair("width in plan"))}`,
    },
    {
      over: ["J", "K"], name: "rails apart at the newel", from: FIGURES, format: length, value: ofLower("rails apart at the newel"),
      under: `${unit}, plumb`,
    },
    {
      over: ["L", "L"], name: "headroom", from: FIGURES, isText: true,
      value: `IF(${headroom}>=${asked},"✓ enough","✗ too little")`,
      under: `="least "&${lengthText(unit, headroom)}&", asked "&${lengthText(unit, asked)}`,
    },
  ];
};

/** Every figure, a length as on the tape. */
const figures = ({ unit }: FlightsFilling): string => {
  const column = (place: string | undefined): string => `CHOOSECOLS(t,${String(place)})`;
  const shown = `LET(t,DROP(${FIGURES}#,1),v,${column(VALUE)},u,${column(UNIT)},HSTACK(${column(NAME)},${column(LABEL)},` +
    `IF((u="${unit}")*ISNUMBER(v),IFERROR(${lengthText(unit, "v")},v),v&""),u,${column(NOTE)}))`;
  return `=${passing(FIGURES, shown)}`;
};

/** Headroom under the edge of the opening over the lower flight: its line of nosings goes on up as far as the upper flight climbs. */
const underTheEdge = ({ unit }: FlightsFilling): string => {
  const lower = (label: string): string => `STAIR.PICK(${FLIGHT_AT.lower}#,"${label}")`;
  const upwards = `STAIR.PICK(${FLIGHT_AT.upper}#,"risers")*${lower("run")}`;
  const found = call(HEADROOM, unit, {
    rise: ofStair("unit rise"), run: lower("run"), opening: `${OPENING}+${upwards}`, floorThickness: cellOf("floor thickness"),
  });
  return `=IF(OR(${OPENING}="",${cellOf("floor thickness")}=""),"",${passing(FIGURES, found)})`;
};

const typedBlocks = (filling: FlightsFilling): readonly Block[] => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  return [
    { at: "A7", style: "part", rows: [["What is known", ""]] },
    { at: KNOWN.job.replace("B", "A"), inputs: [1], rows: [["job", filling.job], ["customer", filling.customer], ["code", filling.code]] },
    {
      at: `A${STAIR_ROW - 1}`, headings: true, numbers: [1], rows: [["label", "value"], ["unit", unit]],
    },
    {
      at: `A${STAIR_ROW + 1}`, numbers: [1], inputs: [1], formats: { 1: length },
      rows: STAIR.map((label) => [label, filling.sizes[label] ?? ""]),
    },
    {
      at: `A${LAST + 1}`, numbers: [1], inputs: [0, 1], rows: Array.from({ length: FURTHER }, (_, row) => filling.further[row] ?? ["", ""]),
    },
    {
      at: `D${FLIGHT_ROW - 1}`, style: "part", rows: [[`The flights, ${unit}; sides seen going up`, "", ""]],
    },
    { at: `D${FLIGHT_ROW}`, headings: true, numbers: [1, 2], rows: [["flight", ...(filling.flights["flight"] ?? ["1 lower", "2 upper"])]] },
    ...OF_FLIGHTS.map((column): Block => ({
      at: `D${rowOf(column)}`, inputs: [1, 2], numbers: [1, 2],
      formats: column === "risers" || WORDS.includes(column) ? {} : { 1: length, 2: length },
      rows: [[column, ...(filling.flights[column] ?? ["", ""])]],
    })),
    { at: `D${HEADROOM_ROW - 2}`, style: "says", rows: [[EMPTY]] },
    { at: `D${HEADROOM_ROW - 1}`, style: "part", rows: [[`Headroom, ${unit}, plumb over the nosings`, "", ""]] },
    {
      at: `D${HEADROOM_ROW}`, numbers: [1], inputs: [1], formats: { 1: length },
      rows: [
        ["opening over lower flight", filling.opening],
        ["needed over it", `=${passing(FIGURES, `IFERROR(${ofLower("opening over this flight")},"")`)}`],
        ["headroom under its edge", underTheEdge(filling)],
        ["upper flight, to the ceiling", filling.ceiling],
      ],
    },
  ];
};

const toSheet = (name: string): string => `=HYPERLINK("#${name.includes(" ") ? `'${name}'` : name}!A1","${name} ›")`;

/** The cells of a flight's sheets that are shown here, of the second flight under the names its sheets have. */
const flightRows = (): readonly (readonly Entry[])[] =>
  ["", " 2"].map((further) => {
    const quoted = (name: string): string => (further === "" ? name : `'${name}${further}'`);
    return [toSheet(`Job${further}`), `=IFERROR(${quoted("Takeoff")}!A4,"–")`, `=IFERROR(${quoted("Check")}!A4,"–")`];
  });

const blocks = (filling: FlightsFilling): readonly Block[] => {
  const { unit } = filling;
  const given = { stair: TABLE, flights: FLIGHT_TABLE };
  const risers = rowOf("risers");
  const asked = (answers: string): string =>
    [cellOf("total rise"), `E${risers}`, `F${risers}`].reduceRight(
      (inner, cell) => `IF(${cell}="",${asksFor(`${FLIGHTS_SHEET} ${cell}`)},${inner})`, answers,
    );
  const oneFlight = (number: string): string => `=${passing(FIGURES, call(ONEFLIGHT, unit, { ...given, number }))}`;
  return [
    ...typedBlocks(filling),
    {
      at: `D${BY_FLIGHT - 1}`, style: "part", rows: [["Flight by flight", "", ""]],
    },
    {
      at: `D${BY_FLIGHT}`, headings: true, numbers: [1],
      rows: [["its sheets begin with", `cost, ${moneyOf(filling)}`, "as framed"]],
    },
    { at: `D${BY_FLIGHT + 1}`, styles: { 0: "link", 2: "middle" }, numbers: [1], formats: { 1: MONEY }, rows: flightRows() },
    {
      at: `D${BY_FLIGHT + 3}`, styles: { 0: "link" }, numbers: [1], formats: { 1: MONEY },
      rows: [[toSheet("Bid"), '=IFERROR(Bid!A4,"–")', "price"]],
    },
    { at: "H7", headings: true, numbers: [2], rows: [["flight", "what follows", "value", "unit", "where from"], [figures(filling)]] },
    { at: "AA7", style: "part", rows: [["The lower flight, as a stair of its own"]] },
    { at: FLIGHT_AT.lower, rows: [[oneFlight("1")]] },
    { at: "AH7", style: "part", rows: [["The upper flight, as a stair of its own"]] },
    { at: FLIGHT_AT.upper, rows: [[oneFlight("2")]] },
    { at: "AO7", style: "part", rows: [["All that follows, in full"]] },
    { at: FIGURES, rows: [[`=${asked(call(FLIGHTS, unit, given))}`]] },
  ];
};

const lists = (): readonly ChoiceList[] => [
  { cells: KNOWN.code, options: CODE_CHOICES.map(({ id }) => id) },
  ...(["guard", "open risers"] as const).map((label) => ({ cells: cellOf(label), options: ["yes", "no"] })),
  ...OF_FLIGHTS.flatMap((column) => {
    const options = CHOICES[column];
    return options === undefined ? [] : [{ cells: `E${rowOf(column)}:F${rowOf(column)}`, options }];
  }),
];

/** The whole stair of two flights with a landing: what both share, each flight, and all that follows. */
export const flights = (filling: FlightsFilling): SheetData => {
  const { unit } = filling;
  return page({
    name: FLIGHTS_SHEET,
    title: `=IF(${KNOWN.job}="","Flights",${KNOWN.job})&": the whole stair"`,
    says: filling.says,
    answers: answers(filling),
    widths: { A: 160, B: 168, C: 8, D: 200, E: 118, F: 118, G: 8, H: 70, I: 216, J: 84, K: 40, L: 460 },
    heights: { [HEADROOM_ROW - 2]: 34 },
    merged: [`D${HEADROOM_ROW - 2}:F${HEADROOM_ROW - 2}`],
    hidesGridLines: true,
    verdicts: [`F${BY_FLIGHT + 1}:F${BY_FLIGHT + 2}`],
    lists: lists(),
    blocks: blocks(filling),
    spills: [
      { at: "H8", rows: ROWS, formats: {}, styles: { 2: "right" } },
      ...Object.values(FLIGHT_AT).flatMap((at) => spillOf(ONEFLIGHT, at, FLIGHT_ROWS, unit)),
      ...spillOf(FLIGHTS, FIGURES, ROWS, unit),
    ],
  });
};
