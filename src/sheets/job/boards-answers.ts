import { TOINCHES } from "../../functions/notation/toinches";
import { TOMM } from "../../functions/notation/tomm";
import { GLUEUP } from "../../functions/yield/glueup";
import { chosen } from "../result-looks";
import { type Answer, type Block, lacks, MONEY, PERCENT } from "../sheet-builder";
import { GLUED, OTHER_BOARDS, PANELS, RIPPED_PLAN, SHEET_PLAN, TREAD_BOARDS, WAYS } from "./boards-places";
import { call } from "./call";
import { type Filling, moneyOf } from "./filling";

const total = (heading: string): string => `STAIR.PICK(${GLUED}#,"total","${heading}")`;
const plan = (at: string, label: string): string => `STAIR.PICK(${at}#,"${label}")`;

const BEST = "best possible";
const PROVEN = `${BEST} (proven)`;

/** A verdict with its mark. */
const marked = (verdict: string): string => `LET(v,${verdict},IF(LEFT(v,${BEST.length})="${BEST}","✓ ","○ ")&v)`;

/** A count with its word. */
const counted = (count: string, one: string, many: string): string => `${count}&IF(${count}=1," ${one}"," ${many}")`;

/** Places of the panels' columns. */
const PANEL_PLACES = { length: 2, width: 3, quantity: 7 } as const;

/** What panels have of the boards they are of, both by their face. */
const gluedYield = ({ unit }: Filling): string => {
  const { first, last, labels } = TREAD_BOARDS;
  // Of the boards that are cut alone: what a row without a board measures is an error, which Calc makes one of all.
  const measured = (column: string): string =>
    call(unit === "mm" ? TOMM : TOINCHES, unit, { measure: `FILTER(${column}${first}:${column}${last},used)` });
  const used = `ISNUMBER(XMATCH(${labels},${chosen(GLUEUP, `${GLUED}#`, "board")}))*(${labels}<>"")`;
  const face = (["length", "width", "quantity"] as const).map((key) => `DROP(CHOOSECOLS(${PANELS}#,${PANEL_PLACES[key]}),1)`).join("*");
  return `LET(used,${used},SUM(${face})/SUM(${measured("B")}*${measured("C")}))`;
};

const leftOfPanels = counted(`(COUNTA(${TREAD_BOARDS.lengths})-${total("boards in all")})`, "board whole", "boards whole");
const ends = (at: string): string => `IFERROR(${counted(plan(at, "offcuts kept"), "end kept", "ends kept")},"")`;
const leftOfBoards = `TEXTJOIN(", ",TRUE,${counted(plan(RIPPED_PLAN, "boards left"), "board whole", "boards whole")},${ends(RIPPED_PLAN)})`;

/** Up to what the note of a glue-up adds to its verdict. */
const gluedVerdict = `LET(n,${total("note")},LEFT(n,FIND(":",SUBSTITUTE(n,";",":")&":")-1))`;
const rippedVerdict =
  `${plan(RIPPED_PLAN, "verdict")}&IFERROR(LET(b,${plan(RIPPED_PLAN, "from a better grade")},` +
  `IF(b=0,"","; "&b&" from another grade")),"")`;

/** Cost, how much of the wood is in the pieces, what is left over, and how good the plan is. */
export const ways = (filling: Filling): readonly Block[] => {
  const row = (what: string, at: string, ...[cost, share, left, verdict]: readonly [string, string, string, string]) => {
    const known = (value: string): string => `=IF(${lacks(at)},"–",IFERROR(${value},"–"))`;
    return [what, known(cost), known(share), known(left), null, known(marked(verdict))];
  };
  return [
    { at: `A${WAYS - 2}`, style: "part", rows: [[`What each comes to, ${moneyOf(filling)}`, "", "", "", "", "", "", "", ""]] },
    {
      at: `A${WAYS - 1}`, headings: true, numbers: [1, 2], formats: { 1: MONEY, 2: PERCENT },
      rows: [
        ["", "cost", "used, of what is cut", "left over", "", "how good the plan is", "", "", ""],
        row("treads, glued up", GLUED, total("cost"), gluedYield(filling), leftOfPanels, gluedVerdict),
        row("risers, skirts: boards", RIPPED_PLAN, plan(RIPPED_PLAN, "cost"), plan(RIPPED_PLAN, "yield"), leftOfBoards, rippedVerdict),
        row(
          "risers, skirts: sheets", SHEET_PLAN, plan(SHEET_PLAN, "cost"), plan(SHEET_PLAN, "yield"), ends(SHEET_PLAN),
          plan(SHEET_PLAN, "verdict"),
        ),
      ],
    },
  ];
};

/** The terms of the glue-up that were left out, as it took them. */
export const assumedTerms = (): string =>
  `=IF(${lacks(GLUED)},"",IFERROR("Assumed of the glue-up: "&STAIR.PICK(${GLUED}#,"assumed","note"),""))`;

/** A board that stands in both lists would be cut twice. */
export const standTwice = (): string => {
  const [ones, others] = [TREAD_BOARDS.labels, OTHER_BOARDS.labels];
  const twice = `FILTER(${ones},(${ones}<>"")*ISNUMBER(XMATCH(${ones},${others})),"")`;
  return `=LET(t,TEXTJOIN(", ",TRUE,${twice}),IF(t="","","In both lists of boards, and cut once only: "&t&". Leave it in one."))`;
};

const [TREADS_AT, BOARDS_AT, SHEETS_AT] = [`B${WAYS}`, `B${WAYS + 1}`, `B${WAYS + 2}`];
const VERDICTS = `F${WAYS}:F${WAYS + 2}`;
const begins = (text: string): string => `SUM(--(LEFT(${VERDICTS},${text.length})="${text}"))`;

/** Plans that what is typed does not allow, and where the first of them says why. */
const PLANS = [GLUED, RIPPED_PLAN, SHEET_PLAN];
const FAILED = PLANS.map((at) => `ISERROR(${at})`).join("+");
const firstFailed = PLANS.reduceRight((otherwise, at) => `IF(ISERROR(${at}),"${at}",${otherwise})`, '""');

export const answers = (filling: Filling): readonly Answer[] => {
  const money = moneyOf(filling);
  const answered = `${begins("✓")}+${begins("○")}`;
  return [
    {
      over: ["A", "B"], name: "treads, glued up", value: TREADS_AT, from: GLUED, format: MONEY,
      under: `="${money}; bought as blanks "&TEXT(Order!C4,"#,##0.00")`,
    },
    { over: ["C", "E"], name: "risers and skirts, from boards", value: BOARDS_AT, from: RIPPED_PLAN, format: MONEY, under: money },
    {
      over: ["F", "I"], name: "risers and skirts, from sheets for paint", value: SHEETS_AT, from: SHEET_PLAN, format: MONEY,
      under:
        `="${money}"&IF(ISNUMBER(${BOARDS_AT}),"; "&TEXT(ABS(${BOARDS_AT}-${SHEETS_AT}),"#,##0.00")&` +
        `IF(${BOARDS_AT}<${SHEETS_AT}," more"," less")&" than from boards","")`,
    },
    {
      over: ["K", "M"], name: "is there a cheaper plan?", isText: true,
      value:
        `IF(${FAILED}>0,"✗ "&(${FAILED})&" without a plan",IF(${answered}=0,"–",IF(${begins("○")}>0,"○ perhaps",` +
        `IF(${begins(`✓ ${PROVEN}`)}=${answered},"✓ no, proven","✓ none was found"))))`,
      under:
        `=IF(${FAILED}>0,"see "&${firstFailed},IF(${answered}=0,"type boards and sheets",` +
        `${counted(`(${answered})`, "plan", "plans")}&"; in F${WAYS} how good each is"))`,
    },
    {
      over: ["N", "R"], name: "left over", value: `D${WAYS}&"; "&D${WAYS + 1}`, from: RIPPED_PLAN, isText: true,
      under: "of boards for treads; for risers and skirts",
    },
  ];
};
