import { reconciliation } from "../../solver/books/reconciliation";
import { isProblem } from "../../solver/problem";
import { declare, headings } from "../declare";
import { bought, planned, used } from "../tables";

export const RECONCILE = declare({
  id: "RECONCILE",
  group: "Books",
  says: "Planned, bought and used goods by item: price, usage, what lies on the rack, and what was wasted.",
  parameters: {
    planned: { kind: "table", table: planned, badRows: "refuse", says: "Goods planned, such as the results of ORDER and BUY." },
    bought: { kind: "table", table: bought, badRows: "refuse", says: "Invoices; a return has a negative quantity." },
    used: { kind: "table", table: used, badRows: "refuse", says: "What was fitted or cut." },
    headings,
  },
  result: {
    kind: "table",
    says: "One row an item, then the total: spent less planned cost is price variance, usage variance and rack together, without a balancing row. Positive is unfavourable.",
    columns: {
      item: { kind: "label", says: "Item, matched by letters and digits." },
      unit: { kind: "text", says: "Unit of the quantities." },
      planned: { kind: "number", says: "Quantity planned." },
      bought: { kind: "number", says: "Quantity bought, returns taken off." },
      used: { kind: "number", says: "Quantity used." },
      plannedCost: { kind: "money", says: "Cost planned." },
      spent: { kind: "money", says: "Cost of what was bought." },
      priceVariance: { kind: "money", says: "Spent less bought at the planned price." },
      usageVariance: { kind: "money", says: "Used less planned, at the planned price." },
      onTheRack: { kind: "money", says: "Bought less used, at the planned price." },
      net: { kind: "number", says: "Board feet in the pieces used; none where the plan gives lengths." },
      gross: { kind: "number", says: "Board feet of what was used." },
      yield: { kind: "rate", says: "Net over gross." },
      wasteCost: { kind: "money", says: "What the ripped and cut off part of the used goods cost." },
      note: { kind: "text", says: "Items that were not planned, planned without a price or not bought." },
    },
  },
  problems: {
    "units-differ": { cell: "#VALUE!", says: '{table}, {item}: is in "{other}" where the plan has "{unit}"; give one unit, or board feet where the plan has gross' },
    "bought-without-price": { cell: "#VALUE!", says: "bought, {item}: price and cost are both empty or 0; give what was paid" },
    "planned-nothing-for-money": { cell: "#VALUE!", says: "planned, {item}: a quantity of 0 costs {cost}; give the quantity" },
    "cost-against-quantity": { cell: "#VALUE!", says: "{item}: a quantity of {quantity} costs {cost}; a return brings money back, write {instead}" },
    "price-and-cost-differ": { cell: "#VALUE!", says: "{item}: {quantity} at {price} is not the cost of {cost}; give one of the two, or make them agree" },
  },
  examples: [
    {
      given: {
        planned: [["item", "quantity", "price"], ["tread blank", 13, 52], ["riser 16 ft", 2, 38]],
        bought: [["item", "quantity", "price"], ["tread blank", 13, 53.5], ["tread blank", 1, 58], ["riser 16 ft", 3, 38]],
        used: [["item", "quantity"], ["tread blank", 14], ["riser 16 ft", 2]],
      },
      shows: [
        { item: "tread blank", planned: 13, bought: 14, used: 14, plannedCost: 676, spent: 753.5, priceVariance: 25.5, usageVariance: 52, onTheRack: 0 },
        { item: "riser 16 ft", priceVariance: 0, usageVariance: 0, onTheRack: 38 },
        { item: "total", plannedCost: 752, spent: 867.5, priceVariance: 25.5, usageVariance: 52, onTheRack: 38 },
      ],
      from: "by hand: 13 x 53.50 + 58 = 753.50 less 14 x 52 = 25.50; (14 - 13) x 52; (3 - 2) x 38; 867.50 - 752 = 115.50 = 25.50 + 52 + 38",
    },
    {
      given: { planned: [["item", "quantity", "unit", "price"], ["oak", 40, "bf", 9]], bought: [["item", "quantity", "unit", "price"], ["oak", 3, "each", 120]], used: [["item", "quantity"], ["oak", 38]] },
      fails: "#VALUE!",
      says: 'bought, oak: is in "each" where the plan has "bf"; give one unit, or board feet where the plan has gross',
      from: "by hand: pieces and board feet do not add",
    },
    {
      given: { planned: [["cove", 6, "each", 6.6]], bought: [["item", "quantity", "cost"], ["cove", 7, 46.2], ["cove", -1, 6.6]], used: [["cove", 6]] },
      fails: "#VALUE!",
      says: "cove: a quantity of -1 costs 6.6; a return brings money back, write -6.6",
      from: "by hand: one cove sent back is a credit of 6.60",
    },
  ],
  source: "OpenStax, Principles of Accounting, Volume 2, 8.2: price variance on quantity bought, usage variance on quantity used; the rack is what was bought and not used.",
  solve: ({ planned: plan, bought: invoices, used: fitted }) => {
    const rows = reconciliation(plan, invoices, fitted);
    return isProblem(rows) ? rows : rows.map((row) => ({ ...row }));
  },
});
