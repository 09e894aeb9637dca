import { reconciliation } from "../../solver/books/reconciliation";
import { isProblem } from "../../solver/problem";
import { declare, headings } from "../declare";
import { GOODS_PROBLEMS } from "../goods-problems";
import { GOODS_RULES } from "../goods-rules";
import { bought, planned, used } from "../tables";

export const RECONCILE = declare({
  id: "RECONCILE",
  group: "Books",
  says:
    "Planned, bought and used goods by item: price, usage, what was not planned or not bought, " +
    "what lies on the rack, freight and tax, and what was wasted.",
  parameters: {
    planned: {
      kind: "table",
      table: planned,
      rows: 2_000,
      badRows: "refuse",
      says: "Goods planned, such as the results of ORDER and BUY.",
    },
    bought: {
      kind: "table",
      table: bought,
      rows: 2_000,
      badRows: "refuse",
      says: "Invoices, or the result of JOBCOST; a return has a negative quantity.",
    },
    used: {
      kind: "table",
      table: used,
      rows: 2_000,
      badRows: "refuse",
      optional: true,
      defaultsTo: "bought",
      says: "What was fitted or cut; without it, all that was bought.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per item, then freight and tax where they are rows of their own, then the total: spent less planned cost is price " +
      "variance, usage variance, scope, rack and charges together, to the cent, without a balancing row. Positive is unfavourable; " +
      "on the rack it is stock still owned.",
    columns: {
      item: { kind: "label", says: "Item as first written." },
      unit: { kind: "text", says: "Unit of the quantities." },
      planned: { kind: "number", says: "Quantity planned." },
      bought: { kind: "number", says: "Quantity bought, returns taken off." },
      used: { kind: "number", says: "Quantity used." },
      plannedCost: { kind: "money", says: "Cost planned: each row in cents, added." },
      spent: { kind: "money", says: "Cost of what was bought, charges in it: each row in cents, added." },
      priceVariance: { kind: "money", says: "Spent less charges, less bought at the planned price." },
      usageVariance: { kind: "money", says: "Used less planned, at the planned price." },
      scope: {
        kind: "money",
        says: "What was not planned, at the price paid; less what was planned and neither bought nor used.",
      },
      onTheRack: { kind: "money", says: "Bought less used, at the planned price." },
      charges: {
        kind: "money",
        says: "Freight, tax and credits paid; in the row `freight and tax`, those of rows of their own less what was planned of them.",
      },
      net: { kind: "number", says: "Board feet in the pieces used; none where the plan gives lengths." },
      gross: { kind: "number", says: "Board feet of what was used." },
      yield: {
        kind: "rate",
        says: "Net over gross; empty where nothing was used, or net or gross is 0 or empty in the plan, and the note says so.",
      },
      wasteCost: { kind: "money", says: "What the ripped and cut off part of the used goods cost." },
      note: {
        kind: "text",
        says:
          "Items that were not planned, planned without a price or not bought, used more than bought, wasted, without a yield, or " +
          "with a name like another: same goods?",
      },
    },
  },
  problems: GOODS_PROBLEMS,
  examples: [
    {
      given: {
        planned: [
          ["item", "quantity", "price"],
          ["tread blank", 13, 52],
          ["riser 16 ft", 2, 38],
        ],
        bought: [
          ["item", "quantity", "price"],
          ["tread blank", 13, 53.5],
          ["tread blank", 1, 58],
          ["riser 16 ft", 3, 38],
        ],
        used: [
          ["item", "quantity"],
          ["tread blank", 14],
          ["riser 16 ft", 2],
        ],
      },
      shows: [
        {
          item: "tread blank",
          planned: 13,
          bought: 14,
          used: 14,
          plannedCost: 676,
          spent: 753.5,
          priceVariance: 25.5,
          usageVariance: 52,
          onTheRack: 0,
        },
        { item: "riser 16 ft", priceVariance: 0, usageVariance: 0, onTheRack: 38 },
        { item: "total", plannedCost: 752, spent: 867.5, priceVariance: 25.5, usageVariance: 52, onTheRack: 38 },
      ],
      from: "by hand: 13 x 53.50 + 58 = 753.50 less 14 x 52 = 25.50; (14 - 13) x 52; (3 - 2) x 38; 867.50 - 752 = 115.50 = 25.50 + 52 + 38",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "price"],
          ["oak blank", 10, 52],
          ["skirt board", 1, 84],
        ],
        bought: [
          ["item", "quantity", "cost"],
          ["oak blnak", 10, 520],
          ["freight", "", 40],
        ],
        used: [
          ["item", "quantity"],
          ["oak blank", 10],
        ],
      },
      shows: [
        {
          item: "oak blank",
          usageVariance: 0,
          scope: 0,
          onTheRack: -520,
          note: 'used more than bought: from stock, or a name differs; like "oak blnak" in row 2 of bought: same goods?',
        },
        { item: "skirt board", scope: -84, note: "planned, not bought" },
        {
          item: "oak blnak",
          onTheRack: 520,
          note: 'not planned: counted at the price paid; like "oak blank" in row 2 of planned: same goods?',
        },
        { item: "freight and tax", scope: 0, onTheRack: 0, charges: 40, note: "not planned" },
        { item: "total", plannedCost: 604, spent: 560, priceVariance: 0, usageVariance: 0, scope: -84, onTheRack: 0, charges: 40 },
      ],
      from: "by hand: 560 - 604 = -44 = 40 of freight less a skirt board of 84; the slip of the pen shows as -520 and 520",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "unit", "price"],
          ["oak blank", 7, "each", 52],
          ["freight", "", "", 30],
        ],
        bought: [
          ["job", "item", "unit", "quantity", "price", "cost", "charges", "waste", "waste cost", "note"],
          ["Birch 4", "oak blank", "each", 8, 53.03875, 458.81, 34.5, 1, 57.35, ""],
        ],
      },
      shows: [
        {
          item: "oak blank",
          plannedCost: 364,
          spent: 458.81,
          priceVariance: 8.31,
          usageVariance: 52,
          charges: 34.5,
          note: "waste 1, allowed 0: 52.00 of the usage variance",
        },
        { item: "freight and tax", plannedCost: 30, charges: -30, note: "planned; what was paid stands with its goods" },
        { item: "total", plannedCost: 394, spent: 458.81, priceVariance: 8.31, usageVariance: 52, charges: 4.5 },
      ],
      from: "by hand: 458.81 - 34.50 - 8 x 52 = 8.31; (8 - 7) x 52; 34.50 - 30; 458.81 - 394 = 64.81 = 8.31 + 52 + 4.50",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "unit", "price"],
          ["oak", 40, "bf", 9],
        ],
        bought: [
          ["item", "quantity", "unit", "price"],
          ["oak", 3, "each", 120],
        ],
      },
      fails: "#VALUE!",
      says:
        'bought, oak: is in "each" in row 2, other rows are in "bf", which does not convert; give one unit, or board feet where ' +
        "the plan has gross",
      from: "by hand: pieces and board feet do not add",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "price"],
          ["cove", 6, 6.6],
        ],
        bought: [["cove", 7, "each", 46.2]],
      },
      fails: "#VALUE!",
      says: "bought: is the fourth column price or cost? give headings",
      from: "by hand: 46.20 as a price would make 323.40 of an invoice of 46.20",
    },
    {
      given: {
        planned: [
          ["item", "quantity", "price"],
          ["cove", 6, 6.6],
        ],
        bought: [
          ["item", "quantity", "cost"],
          ["cove", 7, 46.2],
          ["cove", -1, 6.6],
        ],
      },
      fails: "#VALUE!",
      says: "bought, cove: a quantity of -1 costs 6.6 in row 3; a return has a negative quantity and brings money back, write -6.6",
      from: "by hand: one cove sent back is a credit of 6.60",
    },
  ],
  source:
    "OpenStax, Principles of Accounting, Volume 2, 8.2: price variance on quantity bought, usage variance on quantity used; the " +
    "rack is what was bought and not used. " +
    `Freight, delivery, tax and discounts are money and no goods: charges. ${GOODS_RULES}`,
  solve: ({ planned: plan, bought: invoices, used: fitted }) => {
    const rows = reconciliation(plan, invoices, fitted === invoices ? undefined : fitted);
    return isProblem(rows) ? rows : rows.map((row) => ({ ...row }));
  },
});
