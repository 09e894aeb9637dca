import { isProblem } from "../../solver/problem";
import { glueUpList } from "../../solver/yield/glue-up/glue-up-list";
import { isFailed } from "../cells";
import { declare, headings, unit } from "../declare";
import { givenGlueUp } from "../given-glue-up";
import { GLUE_PROBLEMS } from "../glue-problems";
import { glue as glueTable, panels as panelTable, tally as tallyTable } from "../tables";

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
      stripsInAll: { kind: "count", says: "Of a panel or the total: how many strips." },
      boardsInAll: { kind: "count", says: "Of a panel or the total: how many boards they are of." },
      over: { kind: "length", says: "What the panel nets above its width and the rough width." },
      cost: { kind: "money", says: "Of the total: the boards used, a lot whole; empty where the tally has no prices." },
      note: { kind: "text", says: "Of the total: whether a cheaper choice is ruled out, and what panels of one board each cost more." },
    },
  },
  problems: GLUE_PROBLEMS,
  examples: [
    {
      given: {
        panels: [["label", "length", "width", "quantity"], ["side", 31, 16.875, 2]],
        tally: [["label", "length", "width", "thickness", "price"], [7, 130, 11, "4/4", 60]],
        glue: [["label", "value"], ["rough width", "none"], ["joint", 0.03125], ["greatest strip", 8.4375]],
      },
      gives: [
        [
          "panel", "strip", "board", "section", "along", "across", "rough width", "net width", "length", "strips in all",
          "boards in all", "over", "cost", "note",
        ],
        ["side 1", 1, 7, 1, 0, 0, 8.5, 8.4375, 32, "", "", "", "", ""],
        ["side 1", 2, 7, 2, 32.125, 0, 8.5, 8.4375, 32, "", "", "", "", ""],
        ["side 2", 1, 7, 3, 64.25, 0, 8.5, 8.4375, 32, "", "", "", "", ""],
        ["side 2", 2, 7, 4, 96.375, 0, 8.5, 8.4375, 32, "", "", "", "", ""],
        ["side 1", "", "", "", "", "", "", 16.875, 32, 2, 1, 0, "", ""],
        ["side 2", "", "", "", "", "", "", 16.875, 32, 2, 1, 0, "", ""],
        ["total", "", "", "", "", "", "", "", "", 4, 1, "", 60, "best possible (proven): no choice of boards costs less"],
        [
          "assumed", "", "", "", "", "", "", "", "", "", "", "", "",
          'rough length 1", least strip 2", plane none, kerf 1/8", trim none, strips any, together any: common practice, no source',
        ],
      ],
      from:
        "a woodworking article: two case sides 16 7/8 x 31 out of one board 11 x 130, ripped to 8 1/2; by hand 31 + 1 and a kerf four " +
        "times are 128 3/8 of 130 + 1/8, and 2 x (8 1/2 - 1/16) = 16 7/8",
    },
    {
      given: { panels: [["label", "length", "width", "quantity"], ["tread", 42, 11.25, 3]], tally: FIVE },
      shows: [
        { panel: "tread 2", stripsInAll: 3, netWidth: 11.5, over: 0, length: 43 },
        { panel: "total", stripsInAll: 9, boardsInAll: 3, cost: 102.5 },
      ],
      from:
        "by hand: a section nets A 6 1/8, D 5 1/8, E 4 3/8; 2, 2 and 3 of them are 35 5/8 of 3 x 11 1/2; no two boards net as much, and " +
        "these are the cheapest three; three strips of 5 1/2 at most are the fewest",
    },
    {
      given: { panels: [["label", "length", "width", "quantity"], ["tread", 42, 11.25, 3]], tally: FIVE, glue: [["together", "board"]] },
      shows: [{ panel: "total", boardsInAll: 3, cost: 118, note: "best possible (proven): no choice of boards costs less" }],
      from: "by hand: A 12 1/4, B 15 1/4, C 17 5/8 and E 13 1/8 hold one tread each, D none; A, B and E are the cheapest three",
    },
    {
      given: {
        panels: [
          ["label", "length", "width", "thickness", "grade", "species", "also from"],
          ["a", 42, 5, 1, "FAS", "oak", ""],
          ["b", 42, 5, 0.75, "FAS", "oak", ""],
          ["c", 42, 5, 0.75, "1C", "oak", ""],
          ["d", 42, 5, 0.75, "1C", "ash", ""],
          ["e", 42, 5, 0.75, "FAS", "oak", "1C"],
        ],
        tally: [
          ["label", "length", "width", "thickness", "grade", "species", "price"],
          ["P", 44, 5.5, "4/4", "FAS", "oak", 12],
          ["Q", 44, 5.5, "5/4", "FAS", "oak", 16],
          ["R", 44, 5.5, "4/4", "1C", "oak", 8],
          ["S", 44, 5.5, "4/4", "1C", "ash", 7],
          ["T", 44, 5.5, "4/4", "1C", "oak", 6],
          ["U", 44, 5.5, "4/4", "FAS", "oak", 20],
        ],
      },
      shows: [
        { panel: "a", board: "Q", roughWidth: 5.375, netWidth: 5.25 },
        { panel: "b", board: "P" },
        { panel: "d", board: "S" },
        { panel: "total", boardsInAll: 5, cost: 49 },
      ],
      from:
        "by hand: 1 in only from 5/4, which dresses to 1 1/16; e takes 1C too: 16 + 12 + 8 + 7 + 6; one strip of 5 + 1/4 + 1/8 is in 5 1/2",
    },
    {
      given: {
        panels: [["label", "length", "width", "grade", "species"], ["a", 42, 5, "FAS", "oak"], ["b", 42, 5, "1C", "ash"]],
        tally: [
          ["label", "length", "width", "thickness", "grade", "species", "price"],
          ["P", 44, 5.5, "4/4", "FAS", "oak", 12],
          ["Q", 44, 5.5, "4/4", "1C", "oak", 8],
          ["R", 44, 5.5, "4/4", "FAS", "ash", 11],
          ["S", 44, 5.5, "4/4", "1C", "ash", 7],
        ],
      },
      shows: [{ panel: "a", board: "P" }, { panel: "b", board: "S" }, { panel: "total", cost: 19 }],
      from: "by hand: one board is of each grade and species; 12 + 7",
    },
    {
      given: {
        panels: [["item", "length", "depth"], ["tread", 42, 8], ["landing tread", 27, 4]],
        tally: [["label", "length", "width", "thickness", "edge", "defects", "price"], ["A", 120, 5, "5/4", 0.25, "46 to 47 1/2", 40]],
        glue: [["label", "value"], ["trim", 0.5], ["rough width", 0.25]],
      },
      shows: [
        { panel: "tread", strip: 1, board: "A", section: 1, along: 0.5, across: 0.125, length: 43 },
        { panel: "tread", strip: 2, board: "A", section: 2, along: 47.5, across: 0.125, length: 43 },
        { panel: "landing tread", strip: 1, board: "A", section: 3, along: 90.625, roughWidth: 4.375, netWidth: 4.25, length: 28 },
        { panel: "tread", stripsInAll: 2, netWidth: 8.25, length: 43 },
        { panel: "total", stripsInAll: 3, boardsInAll: 1, cost: 40 },
      ],
      from:
        "by hand: 1/2 + 43 of the 46 before the defect, 47 1/2 + 43 + 1/8 + 28 of 119 1/2; a strip nets at most 5 - 1/4 - 1/8 = 4 5/8, a " +
        "tread of 8 + 1/4 takes two",
    },
    {
      given: {
        panels: [["step", "length", "height"], [1, 36, 6.875], [2, 36, 6.5]],
        tally: [["length", "width", "thickness", "quantity", "board foot price"], [76, 7.5, "4/4", 2, 4.5]],
        glue: [["greatest strip", 7.25]],
      },
      shows: [
        { panel: 1, strip: 1, board: "row 2 (1)", netWidth: 7.125 },
        { panel: 2, stripsInAll: 1, netWidth: 6.75 },
        { panel: "total", boardsInAll: 1, cost: 18 },
      ],
      from: "by hand: 6 7/8 + 1/4 of 7 1/2 - 1/8; 37 twice and a kerf are 74 1/8 of 76; 6 ft x 7 1/2 / 12 = 3 3/4, 4 x 4.50",
    },
    {
      given: {
        panels: [["label", "length", "width"], ["return", 12, 1.25]],
        tally: [["label", "length", "width", "thickness", "price"], ["A", 44, 5.5, "5/4", 9]],
      },
      shows: [{ panel: "return", stripsInAll: 1, netWidth: 2, over: 0.5 }],
      from: "by hand: 1 1/4 + 1/4 is under the least strip, 2",
    },
    {
      given: {
        panels: [["label", "length", "width"], ["cap", 300, 60]],
        tally: [["label", "length", "width", "thickness"], ["A", 330, 70, "4/4"]],
        unit: "mm",
      },
      shows: [{ panel: "cap", strip: 1, board: "A", along: 0, roughWidth: 69.6, netWidth: 66.4, length: 325.4 }],
      from: "by hand: 60 + 6.35 up to 66.4 in tenths; two joints of 1.5875, up to 1.6, are 3.2; 300 + 25.4",
    },
    {
      given: { panels: [["label", "length", "width"], ["tread", 42, 11.25]], tally: FIVE, glue: [["strips", 2]] },
      fails: "#N/A",
      says: 'strips: 2 of at most 5 1/2" are 11", and panel tread needs 11 1/2"; write more strips or a wider greatest strip',
      from: "by hand: 2 x 5 1/2 against 11 1/4 + 1/4",
    },
    {
      given: { panels: [["label", "length", "width", "quantity"], ["tread", 42, 11.25, 9]], tally: FIVE },
      fails: "#N/A",
      says: 'tally: at 43" its boards net 68 1/2" at most, and panel tread and its like need 103 1/2"; add boards',
      from: "by hand: 12 1/4 + 15 1/4 + 17 5/8 + 10 1/4 + 13 1/8 against 9 x 11 1/2",
    },
  ],
  source:
    "A board is crosscut into sections, each ripped into strips: in a clear stretch the sections and kerfs add to no more than its " +
    "length and one kerf, in a section the rough strips to no more than its width and one kerf. The trim is cut off the board's two " +
    "ends, `edge` off both its edges together; a defect narrower than the kerf takes the kerf. A strip nets its rough width less two " +
    "joints, from the least to the greatest strip; a panel is its width and the rough width at least, a rough length longer, and its " +
    "boards dress to its thickness and `plane`: 4/4 to 13/16, 5/4 to 1 1/16, 8/4 to 1 3/4 (hardwood thickness table of an extension " +
    "service), 6/4 to 1 5/16, 10/4 to 2 1/4, 12/4 to 2 3/4 (from memory). Least cost: boards by their price or their board feet by " +
    "surface measure, each counted by itself, a lot once; then least board feet and fewest boards; for those boards, as far as a fixed " +
    "amount of work goes, fewest strips, then fewest boards a panel. Proven: every cheaper choice of boards nets too little, with as " +
    "many strips as such panels have at least; searched: every filling of the others was looked through. " +
    "Without prices the least board feet count. Planned on marks of 1/64 in or 0.1 mm, panels rounded up, boards down; up to 200 " +
    "panels and 400 boards. Terms that are assumed: common practice, no source.",
  solve: (given) => {
    const job = givenGlueUp(given);
    if (isFailed(job)) return job;
    const rows = glueUpList(job.panels, job.boards, job.terms, job.unit);
    if (isProblem(rows) || job.assumed.length === 0) return rows;
    return [...rows, { panel: "assumed", note: `${job.assumed.join(", ")}: common practice, no source` }];
  },
});
