import { isProblem } from "../../solver/problem";
import { glueUpList } from "../../solver/yield/glue-up/glue-up-list";
import { isFailed } from "../cells";
import { declare, headings, unit } from "../declare";
import { glueTerms } from "../glue-rows";
import { glue as glueTable, panels as panelTable, tally as tallyTable } from "../tables";
import { tallyBoards } from "../tally-boards";
import { TALLY_PROBLEMS } from "../tally-problems";

const TREADS = [["label", "length", "width", "quantity"], ["tread", 42, 11.25, 3]] as const;

const FIVE = [
  ["label", "length", "width", "thickness", "price"],
  ["A", 92, 6.5, "5/4", 36],
  ["B", 92, 8, "5/4", 44.5],
  ["C", 138, 6.25, "5/4", 52],
  ["D", 92, 5.25, "5/4", 29],
  ["E", 138, 4.5, "5/4", 37.5],
] as const;

export const GLUEUP = declare({
  id: "GLUEUP",
  words: "glue up",
  group: "Cut plan",
  says: "Panels glued up from measured boards at least cost: which board is crosscut and ripped where, and which strips make a panel.",
  parameters: {
    panels: { kind: "table", table: panelTable, rows: 200, badRows: "refuse", says: "The panels, finished; BLANK's rows for instance." },
    tally: { kind: "table", table: tallyTable, rows: 400, badRows: "refuse", says: "The boards, or the result of TALLY." },
    glue: {
      kind: "table", table: glueTable, badRows: "refuse", optional: true,
      says: "Terms of the glue-up: what jointing, roughing out, the saw and the trim take, how wide strips are, how many make a panel.",
      without: "Left out, as each term without a row: the usual, which the row `assumed` says.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per strip, panel after panel; then one row per panel, a row `total`, and a row `assumed` where terms were left out.",
    columns: {
      panel: { kind: "label", says: "The panel, numbered where several have one name; total; assumed." },
      strip: { kind: "count", says: "Number of the strip in its panel." },
      board: { kind: "label", says: "Board it is cut from; of like boards which." },
      section: { kind: "count", says: "Section of the board, counted from the end chalked 0." },
      along: { kind: "length", says: "From the end chalked 0 to where the section begins." },
      across: { kind: "length", says: "From the edge of the board as it came to the strip; half of `edge` is counted." },
      roughWidth: { kind: "length", says: "Width the strip is ripped to." },
      netWidth: { kind: "length", says: "Its width once both edges are jointed; of a panel the sum." },
      length: { kind: "length", says: "Rough length." },
      strips: { kind: "count", says: "Strips in the panel; of the total in all." },
      boards: { kind: "count", says: "Boards its strips are of; of the total boards used." },
      over: { kind: "length", says: "What the panel nets above its width and the rough width." },
      cost: { kind: "money", says: "Of the total: the boards used, a lot whole; empty where the tally has no prices." },
      note: { kind: "text", says: "Of the total: whether a cheaper choice is ruled out, and what panels of one board each cost more." },
    },
  },
  problems: {
    ...TALLY_PROBLEMS,
    "panel-without-width": { cell: "#VALUE!", says: "width: panel {panel} has none; give its finished width" },
    "panel-without-thickness": {
      cell: "#VALUE!",
      says: "thickness: panel {panel} has none, and the boards are of several, {there}; give its finished thickness",
    },
    "panel-without-grade": {
      cell: "#VALUE!",
      says: "grade: panel {panel} has none, and the boards are of several, {there}; give one, or write any under also from",
    },
    "panel-without-species": {
      cell: "#VALUE!",
      says: "species: panel {panel} has none, and the boards are of several, {there}; give the panel's",
    },
    "no-board-of-grade": {
      cell: "#N/A",
      says: "grade: no board is {grades}; panel {panel} takes no other; write one that will do under also from",
    },
    "no-board-of-species": { cell: "#N/A", says: "species: no board is {species}, and panel {panel} takes no other; add boards" },
    "panel-too-thick": {
      cell: "#N/A",
      says: "thickness: panel {panel} is {thickness} thick when glued, more than {written} dresses to ({dressed}); add thicker boards",
    },
    "panel-too-long": {
      cell: "#N/A",
      says:
        "length: panel {panel} is {length} long in the rough, more than the longest clear stretch of its boards, {longest} on board " +
        "{board}; add longer boards",
    },
    "boards-too-narrow": {
      cell: "#N/A",
      says: "least strip: panel {panel} takes strips of {least} or more, and its widest board nets {widest}; add wider boards",
    },
    "too-few-strips": {
      cell: "#N/A",
      says:
        "strips: {strips} of at most {greatest} are {all}, and panel {panel} needs {need}; write more strips or a wider greatest strip",
    },
    "least-over-greatest": {
      cell: "#VALUE!",
      says: "least strip: {least} is more than the greatest strip, {greatest}; write it smaller",
    },
    "too-many-panels": {
      cell: "#VALUE!",
      says: "panels: {count} panels are more than one plan takes; split the job into plans of {most} or fewer",
    },
    "too-many-boards": {
      cell: "#VALUE!",
      says: "tally: {count} boards are more than one plan takes; leave out what will not be used, {most} or fewer",
    },
    "tally-too-small": {
      cell: "#N/A",
      says:
        "tally: {boards} boards do not hold the panels; at {length} they net {gives} at most, and panel {panel} and its like need " +
        "{need}; add boards",
    },
    "panels-too-many": { cell: "#N/A", says: "tally: {boards} boards are too small for {panels} panels together; add boards" },
    "no-plan-found": {
      cell: "#N/A",
      says: "tally: no way was found to get all panels out of {boards} boards; without a place: panel {panel}; add boards",
    },
  },
  examples: [
    {
      given: { panels: TREADS, tally: FIVE },
      shows: [{ panel: "total", boards: 3, cost: 102.5 }],
      from: "by hand",
    },
  ],
  source: "",
  solve: ({ panels, tally, glue = [], unit: used }) => {
    const boards = tallyBoards(tally, used);
    if (isFailed(boards)) return boards;
    const given = glueTerms("glue", glue, used);
    if (isFailed(given)) return given;
    const rows = glueUpList(
      panels.map(({ label, item, step, width, depth, height, ...panel }) => {
        const name = label ?? item ?? step;
        const across = width ?? depth ?? height;
        return { ...panel, ...(name === undefined ? {} : { label: name }), ...(across === undefined ? {} : { width: across }) };
      }),
      boards,
      given.terms,
      used,
    );
    if (isProblem(rows) || given.assumed.length === 0) return rows;
    return [...rows, { panel: "assumed", note: `${given.assumed.join(", ")}: common practice, no source` }];
  },
});
