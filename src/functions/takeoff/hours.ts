import { hours } from "../../solver/takeoff/hours";
import { declare, headings } from "../declare";
import { rates, work } from "../tables";

export const HOURS = declare({
  id: "HOURS",
  group: "Takeoff and bid",
  says: "Hours of the work by the shop's own rates.",
  parameters: {
    work: { kind: "table", table: work, badRows: "answer", says: "Items and how many, such as the result of TAKEOFF." },
    rates: { kind: "table", table: rates, badRows: "answer", says: "Hours for one of each item; 0 for work included elsewhere." },
    headings,
  },
  result: {
    kind: "table",
    says: "One row an item of the work; it goes into EXTEND, where a price for `labour` by the hour prices it.",
    columns: {
      item: { kind: "label", says: "Item of the work." },
      quantity: { kind: "number", says: "Hours." },
      unit: { kind: "text", says: "Always hour." },
      hoursEach: { kind: "number", says: "Hours for one." },
    },
  },
  problems: {
    "no-rate": { cell: "#N/A", says: 'rates: "{item}" has no rate; nearest is "{nearest}"; give its hours, or 0 where it is included elsewhere' },
    "two-rates": { cell: "#VALUE!", says: 'rates: "{item}" has two rates, {hours} and {other}; keep one' },
  },
  examples: [
    {
      given: { work: [["item", "quantity"], ["mitred return", 13], ["riser", 14]], rates: [["item", "hours"], ["riser", 0.3], ["mitred return", 0.25]] },
      gives: [["item", "quantity", "unit", "hours each"], ["mitred return", 3.25, "hour", 0.25], ["riser", 4.2, "hour", 0.3]],
      from: "by hand: 13 x 0.25, 14 x 0.3",
    },
    {
      given: { work: [["item", "quantity"], ["notch", 14]], rates: [["item", "hours"], ["riser", 0.3]], headings: false },
      gives: [["notch", '#N/A rates: "notch" has no rate; nearest is "riser"; give its hours, or 0 where it is included elsewhere', "hour", '#N/A rates: "notch" has no rate; nearest is "riser"; give its hours, or 0 where it is included elsewhere']],
      from: "by hand: no rate for notches is given",
    },
    { given: { work: [["item", "quantity"], ["notch", 14]], rates: [["item"], ["riser"]] }, fails: "#VALUE!", says: 'rates: heading "hours" is missing; found item', from: "by hand: a rate needs its hours" },
  ],
  source: "Hours = quantity x the shop's own rate.",
  solve: ({ work: pieces, rates: shop }) => hours(pieces, shop),
});
