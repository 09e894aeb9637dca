import { TURNS } from "../solver/layout/flights/flight-given";
import { COST_KINDS } from "../solver/bid/cost";
import { TERM_NAMES, TERM_OF } from "../solver/bid/terms";
import { MOVE_KINDS } from "../solver/books/ledger/move";
import type { StairLabelName } from "../solver/layout/stair-facts";
import { STAIR_LABELS, type StairLabel } from "../solver/stair-labels";
import { TAKEOFF_ITEMS, TAKEOFF_UNITS } from "../solver/takeoff/items";
import { words } from "../solver/words";
import { GLUE_LABELS } from "../solver/yield/glue-up/glue-terms";
import { type Column, type Sign, table } from "./columns";

/** What users type into their own sheets. Headings and labels are the keys below as words; the order is the order read without headings. */

const stepLabel = { kind: "label", says: "Step the row is about; steps count from the bottom." } as const;
const itemLabel = { kind: "label", says: "Name the rows of several tables are matched by.", required: true } as const;

const sideGaps = {
  leftGap: {
    kind: "reading",
    sign: "not negative",
    zero: "not given",
    words: { none: 0 },
    says: "Clearance to the left skirt on this step, in place of the argument `gap`; `none` for none.",
  },
  rightGap: {
    kind: "reading",
    sign: "not negative",
    zero: "not given",
    words: { none: 0 },
    says: "Clearance to the right skirt on this step.",
  },
} as const;

export const treadReadings = table("readings", "One row per tread, read at sub-tread level, seen by a person facing the stair.", {
  step: stepLabel,
  run: {
    kind: "reading",
    sign: "positive",
    plausible: "run",
    says:
      "Distance between the two lines measured, as riser on says: `both`, the default, from the finished riser behind to the " +
      "finished face of the riser in front; `off` and `behind` to the sub-tread's edge.",
  },
  back: { kind: "reading", sign: "positive", required: true, says: "Length along the riser face, skirt to skirt." },
  front: {
    kind: "reading",
    sign: "positive",
    says: "Length along the front edge of the sub-tread; may be left out where both angles are given.",
  },
  diagonal: { kind: "reading", sign: "positive", words: { "not taken": 0 }, says: "Back left to front right." },
  secondDiagonal: { kind: "reading", sign: "positive", words: { "not taken": 0 }, says: "Back right to front left." },
  leftOffset: {
    kind: "reading",
    sign: "any",
    zero: "not given",
    words: { square: 0 },
    says: "How far the front left corner lies right of the back left one; `square` for a measured zero.",
  },
  leftAngle: {
    kind: "angle",
    zero: "not given",
    words: { square: 0 },
    says: "Left cut angle in degrees from square to the riser, positive when the front is longer; `square` for a measured zero.",
  },
  leftLean: {
    kind: "angle",
    default: 0,
    says:
      "Lean of the left skirt in degrees, along the nose, against a square stood on the sub-tread; positive away from the tread " +
      "going up. The same surface as the angle of this end of the riser, whose sign is the other way round.",
  },
  rightLean: {
    kind: "angle",
    default: 0,
    says: "Lean of the right skirt in degrees, read alike; positive away from the tread going up.",
  },
  depth: {
    kind: "reading",
    sign: "positive",
    says:
      "Depth of the piece, before any back gap, where it is not what run, nosing and risers make it; without `run` the readings " +
      "were taken at this depth, at the piece's own back and nose.",
  },
  rightAngle: {
    kind: "angle",
    zero: "not given",
    words: { square: 0 },
    says: "Right cut angle, as the left one. Back and both angles are a full reading; with front too they are checked.",
  },
  at: {
    kind: "reading",
    sign: "positive",
    says:
      "How far in front of the back line the length under `back` was read, as on the bar of a template; needs both angles. A " +
      "length read along the front: the run.",
  },
  leftRun: {
    kind: "reading",
    sign: "positive",
    plausible: "run",
    says: "Run at the left skirt, square to the riser behind, where the step is deeper at one end; give right run too.",
  },
  rightRun: { kind: "reading", sign: "positive", plausible: "run", says: "Run at the right skirt, alike." },
  ...sideGaps,
  backGap: {
    kind: "reading",
    sign: "not negative",
    zero: "not given",
    words: { none: 0 },
    says: "Clearance behind the back edge on this step, in place of the argument `back gap`; `none` for none.",
  },
});

export const newels = table("newels", "One row per newel the rail runs between, from the bottom up.", {
  place: {
    kind: "reading",
    sign: "any",
    required: true,
    says: "Centre of the newel, level, behind the first nosing; negative where it stands in front of it.",
  },
  width: { kind: "reading", sign: "positive", required: true, says: "Width of the newel, face to face up the stair." },
});

export const riserReadings = table("readings", "One row per riser, read at the back of the riser, seen by a person facing the stair.", {
  step: stepLabel,
  height: {
    kind: "reading",
    sign: "positive",
    required: true,
    plausible: "rise",
    says: "Distance between the two lines measured: bottom and top of the rough opening.",
  },
  top: { kind: "reading", sign: "positive", required: true, says: "Length along the top." },
  bottom: { kind: "reading", sign: "positive", says: "Length along the bottom; may be left out where both angles are given." },
  diagonal: { kind: "reading", sign: "positive", words: { "not taken": 0 }, says: "Top left to bottom right." },
  secondDiagonal: { kind: "reading", sign: "positive", words: { "not taken": 0 }, says: "Top right to bottom left." },
  leftOffset: {
    kind: "reading",
    sign: "any",
    zero: "not given",
    words: { square: 0 },
    says: "How far the bottom left corner lies right of the top left one; `square` for a measured zero.",
  },
  leftAngle: {
    kind: "angle",
    zero: "not given",
    words: { square: 0 },
    says: "Left cut angle in degrees, positive when the bottom is longer; `square` for a measured zero.",
  },
  cutHeight: {
    kind: "reading",
    sign: "positive",
    plausible: "rise",
    says: "Height of the piece, from the top down, where it is not the measured height.",
  },
  leftFlare: {
    kind: "angle",
    default: 0,
    says:
      "Angle of the left skirt in plan in degrees, positive when it opens to the front. The same surface as the angle of this end " +
      "of the tread, with the same sign.",
  },
  rightFlare: { kind: "angle", default: 0, says: "Angle of the right skirt in plan in degrees, positive when it opens to the front." },
  rightAngle: {
    kind: "angle",
    zero: "not given",
    words: { square: 0 },
    says: "Right cut angle, as the left one. Top and both angles are a full reading; with bottom too they are checked.",
  },
  ...sideGaps,
});

export const steps = table("steps", "One row per step as built.", {
  step: stepLabel,
  rise: { kind: "length", sign: "positive", plausible: "rise", says: "Finished rise of the step." },
  run: { kind: "length", sign: "positive", plausible: "run", says: "Run of the step, nosing to nosing." },
  width: { kind: "length", sign: "positive", says: "Clear width at the step." },
  nosing: { kind: "length", sign: "positive", says: "Nosing projection of the step." },
});

const PIECES = {
  length: { kind: "length", sign: "positive", plausible: "board length", required: true, says: "Length of the piece." },
  quantity: { kind: "count", sign: "positive", default: 1, says: "How many of them." },
  label: { kind: "label", says: "What the piece is; `item`, then `step`, serves where there is no label." },
  grade: { kind: "text", default: "", says: "Cut only from stock of this grade." },
  step: stepLabel,
  width: {
    kind: "length",
    sign: "positive",
    plausible: "board width",
    says: "Finished width, one piece across the board; without it the board's own. Cut only from stock at least as wide.",
  },
  thickness: {
    kind: "length",
    sign: "positive",
    says: "Finished thickness; without it the board's own. Cut only from stock at least as thick.",
  },
  item: { kind: "label", says: "What the piece is, as BLANK calls it." },
  depth: { kind: "length", sign: "positive", says: "Width of a tread, as TREADFIT gives it, where there is no `width`." },
  height: { kind: "length", sign: "positive", says: "Width of a riser, as RISERFIT gives it, where there is no `width`." },
} as const;

/** Results that may stand as pieces. */
const OF_PIECES = { takes: ["TREADFIT", "RISERFIT", "BLANK"] };

export const pieces = table(
  "pieces",
  "One row per piece, or a number of like pieces.",
  {
    ...PIECES,
    grain: {
      kind: "choice", options: ["fixed", "free"], default: "fixed", onlyHeaded: true,
      says: "Of sheets: fixed, its length runs with the grain; free, it may be turned.",
    },
  },
  OF_PIECES,
);

export const alternatePieces = table(
  "pieces",
  "One row per piece, or a number of like pieces, with the alternate it is of.",
  {
    ...PIECES,
    quantity: {
      kind: "count", sign: "not negative", zero: "not given", default: 1, words: { none: 0 },
      says: "How many of them; `none` where an alternate does without the label.",
    },
    option: {
      kind: "text",
      default: "",
      onlyHeaded: true,
      says:
        "The alternate whose piece it is: it stands in place of the pieces of the same label. Left empty, the piece is cut whatever is " +
        "chosen.",
    },
  },
  OF_PIECES,
);

export const stock = table(
  "stock",
  "One row per length that can be bought, or that is on hand.",
  {
    length: { kind: "length", sign: "positive", plausible: "board length", required: true, says: "Length of a stick or blank." },
    price: { kind: "money", sign: "not negative", says: "Price of one." },
    available: {
      kind: "count",
      sign: "not negative",
      default: Infinity,
      words: { any: Infinity },
      says: "How many there are; `any` for no limit.",
    },
    owned: { kind: "flag", default: false, says: "On hand already: costs nothing unless priced." },
    label: { kind: "label", says: "Name of the stock." },
    grade: { kind: "text", default: "", says: "Grade of the stock." },
    width: {
      kind: "length",
      sign: "positive",
      plausible: "board width",
      says: "Width of the stock as it is, not as it is called; for a blank its depth. Needed where a piece has a width.",
    },
    thickness: {
      kind: "length",
      sign: "positive",
      says: "Thickness of the stock as it is, not as it is called. Needed where a piece has a thickness.",
    },
  },
  { takes: ["OFFCUTS"] },
);

export const tally = table(
  "tally",
  "One row per measured board, or per number of like boards; headings are required.",
  {
    label: { kind: "label", says: "The board's number, as chalked on it; no two are alike." },
    length: { kind: "length", sign: "positive", required: true, says: "As measured, fractions and all." },
    width: { kind: "length", sign: "positive", required: true, says: "As measured at the narrowest place to be used." },
    thickness: {
      kind: "label", required: true,
      says: "Rough: 4/4, 5/4, 6/4, 8/4 as text, or a length up to 16 in; a bare 5/4 becomes a date in a sheet.",
    },
    surfaced: { kind: "flag", default: false, says: "yes: the thickness is the finished one." },
    grade: { kind: "text", default: "", says: "Grade of the board." },
    species: { kind: "text", default: "", says: "Wood of the board." },
    price: { kind: "money", sign: "not negative", zero: "not given", says: "Money of one board; either it or the board foot price." },
    boardFootPrice: {
      kind: "money", sign: "not negative", zero: "not given",
      says: "Money of one board foot: TALLY counts them by its rule, all others by surface measure.",
    },
    lot: { kind: "label", says: "Boards sold together have one name here." },
    lotPrice: {
      kind: "money", sign: "not negative", zero: "not given",
      says: "Money of the whole lot, paid once; the same on each of its rows, or on one.",
    },
    owned: { kind: "flag", default: false, says: "On hand already: costs nothing." },
    defects: {
      kind: "text",
      says: "Ranges from the end chalked 0 that cannot be used, over the whole width: `31 to 34; 88 1/2 to 92`.",
    },
    clear: { kind: "text", says: "In place of defects, the ranges that may be used, written alike." },
    edge: { kind: "length", sign: "not negative", says: "Width lost to straighten both edges together." },
    boardFeet: {
      kind: "number", sign: "not negative", zero: "not given",
      says: "Of the whole row as on the paper, in place of what `rule` gives.",
    },
    quantity: { kind: "count", sign: "positive", default: 1, says: "How many like boards; with defects or clear 1." },
  },
  { ambiguous: () => "measured boards are not read by their place;", takes: ["TALLY"], hasTotals: true },
);

/** Pieces as they are cut from measured boards: ripped too, and from other grades. */
export const rippedPieces = table(
  "ripped",
  "One row per piece, or a number of like pieces.",
  {
    ...PIECES,
    width: {
      kind: "length", sign: "positive", plausible: "board width",
      says: "Finished width; without it the whole width of its board, less the edges.",
    },
    thickness: { kind: "length", sign: "positive", says: "Finished thickness: no more than its board dresses to." },
    grade: { kind: "text", default: "", says: "Grade wanted." },
    alsoFrom: {
      kind: "text", default: "", onlyHeaded: true,
      says: "Other grades that will do, in any order: `FAS, Select`; `any` for all. Empty: only its own.",
    },
    species: { kind: "text", default: "", onlyHeaded: true, says: "Wood of the piece; may be left out where the tally has one." },
  },
  { takes: pieces.takes },
);

/** Pieces as they are ordered by the board foot: what is needed to count them, and their wood. */
export const lumberPieces = table(
  "lumber",
  "One row per piece, or a number of like pieces.",
  {
    length: { kind: "length", sign: "positive", required: true, says: "Length of the piece." },
    quantity: { kind: "count", sign: "positive", default: 1, says: "How many of them." },
    label: { kind: "label", says: "What the piece is; `item`, then `step`, serves where there is no label." },
    grade: { kind: "text", default: "", says: "Grade the piece is made of." },
    step: stepLabel,
    width: { kind: "length", sign: "positive", says: "Finished width." },
    thickness: { kind: "length", sign: "positive", says: "Finished thickness; ordered in the least rough one that dresses to it." },
    item: { kind: "label", says: "What the piece is, as BLANK calls it." },
    depth: { kind: "length", sign: "positive", says: "Width of a tread, as TREADFIT gives it, where there is no `width`." },
    height: { kind: "length", sign: "positive", says: "Width of a riser, as RISERFIT gives it, where there is no `width`." },
    species: { kind: "text", default: "", onlyHeaded: true, says: "Wood of the piece." },
  },
  { takes: ["TREADFIT", "RISERFIT", "BLANK"] },
);

export const panels = table(
  "panels",
  "One row per panel to be glued up, or a number of like panels.",
  {
    length: {
      kind: "length", sign: "positive", plausible: "board length", required: true, says: "Finished length; the grain runs along it.",
    },
    quantity: { kind: "count", sign: "positive", default: 1, says: "How many of them." },
    label: { kind: "label", says: "What the panel is; `item`, then `step`, serves where there is no label." },
    grade: { kind: "text", default: "", says: "Grade of its boards; may be left empty where all boards are of one." },
    step: stepLabel,
    width: { kind: "length", sign: "positive", plausible: "board width", says: "Finished width, across the strips." },
    thickness: {
      kind: "length", sign: "positive",
      says: "Finished thickness; its boards dress to it at least. May be left empty where all boards are of one.",
    },
    item: { kind: "label", says: "What the panel is, as BLANK calls it." },
    depth: { kind: "length", sign: "positive", says: "Width of a tread, as TREADFIT gives it, where there is no `width`." },
    height: { kind: "length", sign: "positive", says: "Width of a riser, as RISERFIT gives it, where there is no `width`." },
    species: { kind: "text", default: "", onlyHeaded: true, says: "Wood of its boards; may be left empty where all boards are of one." },
    alsoFrom: {
      kind: "text", default: "", onlyHeaded: true, says: "Other grades that will do, in any order: `FAS, Select`; `any` for all.",
    },
  },
  { takes: ["TREADFIT", "RISERFIT", "BLANK"] },
);

export const glue = table("glue", "One row per term of the glue-up; a term left out is as usual.", {
  label: { kind: "label", required: true, says: `One of ${GLUE_LABELS.map(words).join(", ")}.` },
  value: {
    kind: "label", required: true, zero: "not given", words: { none: 0 },
    says:
      "A length, `none` for 0; beside strips the most in a panel, or any; beside together `board` for each panel of one board, or any. " +
      "least and greatest strip are net widths.",
  },
});

export const lumberAllowances = table("allowances", "One row per grade, or per thickness and grade, that gets a share more.", {
  item: { kind: "label", required: true, says: "A grade such as FAS, or with its thickness 5/4 FAS; the row that says most counts." },
  allowance: {
    kind: "rate", sign: "not negative", of: "the quantity", required: true,
    says: "Share added to the net: 50% added is 33 1/3 % of what is bought.",
  },
  least: { kind: "number", sign: "positive", says: "Least board feet of it that are sold." },
});

/** Goods are counted in units of their own, kept apart and converted by the closed list of the solver. */
const UNIT_SAYS = "Unit of the quantity. A table that gives no unit at all counts pieces.";

const workedQuantity = {
  kind: "number", sign: "any", required: true, zero: "not given", words: { included: 0 },
  says: "How many, in the row's unit; `included` for none on purpose. 0 and an empty cell are none too, and the note says so.",
} as const;

export const quantities = table("quantities", "One row per item to be priced.", {
  item: itemLabel,
  quantity: workedQuantity,
  unit: { kind: "text", default: "", says: UNIT_SAYS },
  hoursEach: { kind: "label", onlyHeaded: true, says: "As HOURS gives it: `included` says that no hours are meant." },
}, { takes: ["TAKEOFF", "HOURS", "BLANK", "ORDER", "BUY", "EXTEND", "LUMBERORDER"] });

export const prices = table("prices", "One row per price.", {
  item: itemLabel,
  price: {
    kind: "money", sign: "any", required: true, zero: "not given", words: { included: 0 },
    says: "Price of one unit; `included` for an item that costs nothing here. 0 and an empty cell cost nothing too, and the note says so.",
  },
  unit: { kind: "text", default: "", says: "Unit the price is for; an empty unit fits any unit of an item that has no other price." },
}, { takes: ["ORDER", "BUY", "EXTEND"] });

const COSTS = {
  item: itemLabel,
  cost: {
    kind: "money",
    sign: "any",
    required: true,
    zero: "not given",
    words: { included: 0 },
    says:
      "Cost of the row, rounded to cents; a credit is negative; `included` for a row that costs nothing here. 0 and an empty cell " +
      "cost nothing too, and the note says so.",
  },
  kind: {
    kind: "choice",
    options: COST_KINDS,
    says: "material, labour or subcontract; left empty, labour where the unit is of time or the item is labour, else material.",
  },
  taxed: {
    kind: "flag",
    onlyHeaded: true,
    says: "Whether a tax on materials falls on the row; left empty, it does where the row is material.",
  },
  part: { kind: "text", default: "", onlyHeaded: true, says: "The stair or line of the quote that the row belongs to." },
  option: {
    kind: "text",
    default: "",
    onlyHeaded: true,
    says: "The alternate that the row belongs to; what it saves is negative. Left empty, the row stands whatever is chosen.",
  },
  unit: { kind: "text", default: "", onlyHeaded: true, says: "As EXTEND gives it: a unit of time makes the row labour." },
  price: { kind: "label", onlyHeaded: true, says: "As EXTEND gives it: `included` says that a cost of 0 is meant." },
} as const;

/** Item, cost and kind: the columns that need no heading. */
const COSTS_IN_ORDER = Object.values(COSTS).filter((column) => !("onlyHeaded" in column)).length;

const COSTS_FURTHER = {
  ambiguous: (columns: number) => (columns > COSTS_IN_ORDER ? "which of the columns is the cost?" : undefined),
  takes: ["EXTEND", "ORDER", "BUY"],
};

export const costs = table("costs", "One row per cost.", COSTS, COSTS_FURTHER);

/** The same for two bids beside one another, in which how many there are says why a cost is another. */
const { price: _asExtendGivesIt, ...COSTS_ALONE } = COSTS;
export const changedCosts = table("changed costs", "One row per cost.", {
  ...COSTS_ALONE,
  quantity: {
    kind: "number",
    sign: "any",
    zero: "not given",
    onlyHeaded: true,
    says: "How many, as EXTEND gives it; a return is negative.",
  },
}, COSTS_FURTHER);

/** The same for alternates side by side: how many hours the labour is. */
export const countedCosts = table("costs", "One row per cost, with the hours of labour.", {
  ...COSTS,
  quantity: {
    kind: "number",
    sign: "any",
    zero: "not given",
    onlyHeaded: true,
    says: "How many, as EXTEND gives it; of labour with a unit of time the hours. What an alternate saves is negative.",
  },
}, COSTS_FURTHER);

export const changes = table("changes", "One row per label of the stair that is another with an alternate.", {
  option: { kind: "text", required: true, says: "The alternate, as the costs name it." },
  label: { kind: "label", required: true, says: "A label of the stair table, such as risers or run." },
  value: { kind: "label", required: true, says: "What it is with the alternate, in the unit of the stair." },
});

export const terms = table("terms", "One row per term of the bid; its label says what the rate is of.", {
  label: { kind: "label", required: true, says: `One of ${TERM_NAMES.map((name) => `${words(name)} (${TERM_OF[name]})`).join(", ")}.` },
  rate: {
    kind: "label",
    required: true,
    zero: "not given",
    says: "A share such as 22% or 0.22; beside round up to an amount of money. Left empty, the bid has no such term.",
  },
});

export const work = table("work", "One row per piece of work.", {
  item: itemLabel,
  quantity: workedQuantity,
  unit: { kind: "text", default: "", says: UNIT_SAYS },
}, { takes: ["TAKEOFF", "BLANK", "ORDER", "BUY"] });

export const rates = table("rates", "One row per rate of the shop.", {
  item: itemLabel,
  hours: {
    kind: "number", sign: "not negative", required: true, zero: "not given", words: { included: 0 },
    says: "Hours for one; `included` for work that takes none here. 0 and an empty cell take none too, and the note says so.",
  },
  unit: { kind: "text", default: "", says: "Unit the rate is for; an empty unit fits any unit of an item that has no other rate." },
});

export const allowances = table("allowances", "One row per item that gets a share more.", {
  item: itemLabel,
  allowance: { kind: "rate", sign: "not negative", of: "the quantity", required: true, says: "The share: 0.1 or 10% is ten percent more." },
}, { takes: ["TAKEOFF"] });

const goods = {
  item: itemLabel,
  quantity: {
    kind: "number",
    sign: "any",
    required: true,
    says: "How many; a return is negative. Empty or 1 for freight, tax and the like.",
  },
  unit: { kind: "text", default: "", says: UNIT_SAYS },
  price: { kind: "money", sign: "any", words: { included: 0 }, says: "Price of one; either it or the cost." },
  cost: { kind: "money", sign: "any", says: "Cost of the row, rounded to cents." },
} as const;

const PRICE_OR_COST = {
  ambiguous: (columns: number) => (columns === Object.keys(goods).length - 1 ? "is the fourth column price or cost?" : undefined),
};

export const planned = table(
  "planned",
  "One row per item planned; several rows of an item add up.",
  {
    ...goods,
    net: { kind: "number", sign: "not negative", says: "Board feet in the pieces of the row." },
    gross: { kind: "number", sign: "not negative", says: "Board feet of the row." },
    length: {
      kind: "reading",
      sign: "positive",
      says: "Length of one, as BUY gives it: where gross is quantity x length, net and gross are lengths and no board feet.",
    },
    waste: { kind: "number", sign: "not negative", onlyHeaded: true, says: "How many of the quantity may be wasted." },
  },
  { ...PRICE_OR_COST, takes: ["ORDER", "BUY", "EXTEND"] },
);

export const bought = table(
  "bought",
  "One row per line of an invoice, or per item of a job.",
  {
    ...goods,
    cost: { kind: "money", sign: "any", says: "Cost of the row, the charges in it, rounded to cents." },
    charges: {
      kind: "money",
      sign: "any",
      onlyHeaded: true,
      says: "Freight, tax and credits on the goods of the row: part of the cost, and added to quantity x price where no cost is given.",
    },
    waste: { kind: "number", sign: "not negative", onlyHeaded: true, says: "How many of the quantity were wasted." },
  },
  { ...PRICE_OR_COST, takes: ["ORDER", "BUY", "EXTEND", "JOBCOST"] },
);

export const used = table("used", "One row per item used.", {
  item: itemLabel,
  quantity: { kind: "number", sign: "any", required: true, says: "How many were used." },
  unit: { kind: "text", default: "", says: UNIT_SAYS },
}, { takes: ["ORDER", "BUY", "EXTEND"] });

export const schedule = table(
  "schedule",
  "One row per part of the work, as the customer is to be billed for it.",
  {
    item: { kind: "label", says: "Part of the work.", required: true },
    value: {
      kind: "money", sign: "any", required: true, zero: "not given", words: { included: 0 },
      says: "Price of the part; a deduct is negative; `included` for a part that has no price of its own.",
    },
    done: { kind: "rate", sign: "not negative", of: "the whole", required: true, says: "Share done up to now: 60% or 0.6." },
    stored: { kind: "money", sign: "not negative", says: "Goods for it that are on site and not yet built in." },
    change: { kind: "flag", default: false, says: "Whether the row is an accepted change of the contract." },
  },
  { hasTotals: true },
);

export const moves = table(
  "moves",
  "One row per move of goods, or of money for goods; headings are required.",
  {
    date: {
      kind: "date", required: true,
      says: "A date of the sheet, in its 1900 system, or text such as 2026-03-04; no other text, because 3/4/26 reads two ways.",
    },
    job: {
      kind: "label",
      says:
        "Where goods go; of transfer, offcut, scrap and return where they come from. Empty or `rack` for the rack, `shop` for supplies " +
        "and overhead; any other name is a job. No name is marks alone, such as - or ?.",
    },
    item: { kind: "label", says: "Name of the goods; of freight, tax and credit the only goods of the invoice it is for." },
    quantity: {
      kind: "number", sign: "any", required: true, zero: "not given", words: { none: 0 },
      says: "How many, more than 0; `none` for a count of nothing. Empty for money: freight, tax, credit, invoice total.",
    },
    unit: { kind: "text", default: "", says: "Unit of the quantity. Empty only where every row of the item leaves it empty." },
    cost: {
      kind: "money", sign: "any", required: true, zero: "not given",
      says: "Money of the row as on the paper, never a price of one; rounded to cents once, here. Empty where goods go at the average.",
    },
    kind: {
      kind: "choice", options: MOVE_KINDS, required: true,
      says: "What the row is. A purchase with quantity and cost both negative is a return; a negative credit is a debit note.",
    },
    to: { kind: "label", says: "Where a transfer or an offcut goes: a job, `shop` or `rack`." },
    invoice: { kind: "label", says: "Number of the paper: ties freight, tax, credit and invoice total to its purchases." },
    of: { kind: "label", says: "Of an offcut: the item it was cut from." },
    share: {
      kind: "number", sign: "positive",
      says: "Of an offcut: how much of one of those one offcut is, up to 1; by length for sticks, =6/16.",
    },
  },
  { ambiguous: () => "eleven columns are not read by their place;" },
);

export const amendments = table("amendments", "One row per limit the local authority has changed.", {
  item: itemLabel,
  limit: { kind: "label", required: true, says: "The limit in force, written as CHECK prints it: 7 3/4, 34 to 38, 1:20, or none." },
  authority: { kind: "text", default: "", says: "Who amended it." },
}, { takes: ["CHECK"] });

/** A label as a column is read. Angles and slopes are plain numbers: 0 is an empty cell there. */
const labelColumn = ({ kind, plausible, options = [], default: standIn, says, ...label }: StairLabel): Column => {
  const sign: Sign = label.sign ?? "positive";
  switch (kind) {
    case "length":
      return { kind, sign, says, ...(plausible === undefined ? {} : { plausible }) };
    case "count":
      return { kind, sign, says };
    case "number":
    case "angle":
    case "ratio":
      return { kind: "number", sign, says };
    case "choice":
      return { kind, options, says };
    case "flag":
      return { kind, default: standIn !== undefined && "value" in standIn && standIn.value === true, says };
    case "text":
      return { kind, says };
  }
};

export const stair = table(
  "stair",
  "Labels in the first column, values in the second; further columns are the user's own.",
  Object.fromEntries(Object.entries<StairLabel>(STAIR_LABELS).map(([name, label]) => [name, labelColumn(label)])) as Readonly<
    Record<StairLabelName, Column>
  >,
);

/** A column under the very label of the stair table, whose row it overrides for its flight. */
const ofTheFlight = <const Name extends StairLabelName>(name: Name, more = "") => {
  const { says }: StairLabel = STAIR_LABELS[name];
  return `${says} ${more}In place of the stair's row, for this flight.`.replace(/ {2,}/g, " ");
};

const SIDES = "Left and right as seen going up this flight. ";

/** Empty is the stair's; a 0 that is meant has a word. */
const orNone = { zero: "not given", words: { none: 0 } } as const;

export const flights = table("flights", "One row per flight, from the bottom; its landing is the one at its top.", {
  flight: { kind: "label", says: "Name or number of the flight; numbers count from the bottom." },
  risers: {
    kind: "count", sign: "positive", required: true, says: "Risers of the flight, with the last, whose top is the landing or the floor.",
  },
  run: { kind: "length", sign: "positive", plausible: "run", says: "Nosing to nosing; without it the stair's." },
  width: { kind: "length", sign: "positive", says: "Skirt to skirt, finished; without it the stair's." },
  turn: {
    kind: "choice", options: TURNS, default: "none",
    says:
      "Turn on the landing at the top of this flight, as seen going up; none goes straight on, flush on the left. The last flight " +
      "has none.",
  },
  landingDepth: {
    kind: "length", sign: "positive",
    says: "Landing along this flight; without it as deep as the next flight is wide, at a half turn as the wider of the two.",
  },
  well: { kind: "length", sign: "not negative", says: "At a half turn, the gap between the two flights in plan." },
  setBack: {
    kind: "length", sign: "not negative",
    says:
      "At a turn, how far the next flight's first riser face stands back into the landing: at a half turn past the last riser face " +
      "below, at a quarter turn past the side of this flight it leaves by.",
  },
  landingBuildUp: {
    kind: "length", sign: "not negative", ...orNone,
    says: "Floor still to be laid on the landing; without it the stair's upper build up; `none` for none.",
  },
  newelPast: {
    kind: "length", sign: "not negative",
    says: "Centre of the newel at the turn past this flight's last riser face; 0 where the newel is centred on the riser face.",
  },
  newelShort: {
    kind: "length", sign: "any", zero: "not given", words: { "on the face": 0 },
    says:
      "Centre of the newel short of the next flight's first riser face, against the way up; negative past it; `on the face` for 0. " +
      "Without it one newel serves both rails: as far as newel past; at a half turn that less the set back; straight on the landing " +
      "depth less newel past.",
  },
  openEnd: { kind: "choice", options: STAIR_LABELS.openEnd.options, says: ofTheFlight("openEnd", SIDES) },
  overhang: { kind: "length", sign: "not negative", ...orNone, says: ofTheFlight("overhang", "`none` for none. ") },
  returnWidth: { kind: "length", sign: "positive", says: ofTheFlight("returnWidth") },
  runPast: { kind: "length", sign: "not negative", ...orNone, says: ofTheFlight("runPast", "`none` for none. ") },
  openSides: { kind: "choice", options: STAIR_LABELS.openSides.options, says: ofTheFlight("openSides") },
  handrails: { kind: "choice", options: STAIR_LABELS.handrails.options, says: ofTheFlight("handrails") },
  landingTread: {
    kind: "length", sign: "positive", ...orNone,
    says:
      "Depth of the landing's own nosing piece, from its nose back; without it the stair's landing tread, else the least: nosing + " +
      "riser thickness; `none` for a landing without one.",
  },
  landingTreadLength: { kind: "length", sign: "positive", says: "Length of that piece; without it the stair's, else that of a tread." },
});

/** Items of a takeoff, each by its rule; a stair has those there is any of. */
export const takeoffItems = table(
  "takeoff items",
  "Items TAKEOFF counts and HOURS rates, in the order of the work; a stair has a row for those there is any of.",
  Object.fromEntries(
    Object.entries(TAKEOFF_ITEMS).map(([key, { counts, rule }]) => [
      key,
      {
        kind: "number",
        sign: "not negative",
        says: `${counts === "each" ? "each" : `${TAKEOFF_UNITS.in[counts]}, in a stair in mm ${TAKEOFF_UNITS.mm[counts]}`}: ${rule}.`,
      } as const,
    ]),
  ),
);
