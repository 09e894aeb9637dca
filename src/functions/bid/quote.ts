import { quote } from "../../solver/bid/quote";
import { BID_PROBLEMS, COST_RULES, TERM_RULES } from "../bid-rules";
import { withTerms } from "../bid-terms";
import { declare, headings } from "../declare";
import { costs as costTable, terms as termTable } from "../tables";

export const QUOTE = declare({
  id: "QUOTE",
  group: "Takeoff and bid",
  says: "What a customer is asked, part by part and with each alternate, without a cost in sight.",
  parameters: {
    costs: {
      kind: "table",
      table: costTable,
      badRows: "refuse",
      says: "Costs, as for BID; `part` names the line of the quote, `option` an alternate.",
    },
    terms: { kind: "table", table: termTable, rows: 100, badRows: "refuse", says: "The terms, as for BID." },
    headings,
  },
  result: {
    kind: "table",
    says: "A row per part, their total, then a row per alternate; parts add up to the total in price and tax, to the cent.",
    columns: {
      part: {
        kind: "label",
        says: "Part as first written; `other work` for rows without a part, `work` where no row has one; total; of an alternate, its part.",
      },
      option: { kind: "text", says: "The alternate, beside its price." },
      price: {
        kind: "money",
        says: "The part's share of the rounded price; of an alternate, the price with it less the price without it.",
      },
      tax: { kind: "money", says: "The part's share of the tax; of an alternate, the tax with it less the tax without it." },
      total: { kind: "money", says: "Price and tax." },
    },
  },
  problems: {
    "taxed-without-goods": BID_PROBLEMS["taxed-without-goods"],
    "nothing-left": BID_PROBLEMS["nothing-left"],
    "no-such-option": BID_PROBLEMS["no-such-option"],
    "no-options": BID_PROBLEMS["no-options"],
  },
  examples: [
    {
      given: {
        costs: [
          ["part", "item", "cost", "kind", "option"],
          ["Main stair", "blanks and boards", 1312.45, "material", ""],
          ["Main stair", "fitting", 2088, "labour", ""],
          ["Basement stair", "boards", 417.38, "material", ""],
          ["Basement stair", "fitting", 812, "labour", ""],
          ["Rail", "rail and newels", 640, "material", ""],
          ["Rail", "hang rail", 348, "labour", ""],
          ["Rail", "finisher", 275, "subcontract", ""],
          ["White oak instead of red", "difference", 236.8, "material", "white oak"],
        ],
        terms: [
          ["label", "rate"],
          ["burden", 0.28],
          ["tax paid on materials", 0.065],
          ["contingency", 0.03],
          ["overhead of price", 0.22],
          ["profit of price", 0.08],
          ["round up to", 10],
        ],
      },
      gives: [
        ["part", "option", "price", "tax", "total"],
        ["Main stair", "", 5991.81, 0, 5991.81],
        ["Basement stair", "", 2184.32, 0, 2184.32],
        ["Rail", "", 2063.87, 0, 2063.87],
        ["total", "", 10240, 0, 10240],
        ["White oak instead of red", "white oak", 370, 0, 370],
      ],
      from:
        "by hand: costs with tax paid and burden are 4,070.399, 1,483.870 and 1,402.040, together 6,956.309, and the price of 10,240 is " +
        "shared by them; with white oak the price is 10,610",
    },
    {
      given: {
        costs: [["part", "item", "cost"], ["stair", "oak", 60], ["rail", "oak", 30], ["", "delivery", 30], ["stair", "included", 0]],
        terms: [["label", "rate"], ["profit on cost", 0.5], ["tax on price", 0.1]],
      },
      gives: [
        ["part", "option", "price", "tax", "total"],
        ["stair", "", 90, 9, 99],
        ["rail", "", 45, 4.5, 49.5],
        ["other work", "", 45, 4.5, 49.5],
        ["total", "", 180, 18, 198],
      ],
      from: "by hand: 120 x 1.5 = 180, a half and two quarters of it; a tenth is tax",
    },
    {
      given: {
        costs: [["item", "cost", "kind", "option"], ["oak", 200, "", ""], ["fitting", 100, "labour", ""], ["ash", -50, "", "ash"]],
        terms: [["label", "rate"], ["tax on materials", 0.1]],
      },
      gives: [
        ["part", "option", "price", "tax", "total"],
        ["work", "", 300, 20, 320],
        ["total", "", 300, 20, 320],
        ["ash", "ash", -50, -5, -55],
      ],
      from: "by hand: 10 % of the 200 of materials, of 150 with ash",
    },
    {
      given: {
        costs: [["part", "item", "cost", "kind"], ["stair", "oak", 200, ""], ["rail", "hang rail", 100, "labour"]],
        terms: [["label", "rate"], ["tax on materials", 0.1]],
      },
      shows: [
        { part: "stair", price: 200, tax: 20, total: 220 },
        { part: "rail", price: 100, tax: 0, total: 100 },
      ],
      from: "by hand: the tax falls on the oak alone",
    },
  ],
  source:
    "The price is linear in the costs, so the prices of the parts before cents add up; the rounded price is shared by them, the tax by " +
    `what it falls on, the cents left over to the largest remainders. ${TERM_RULES} ${COST_RULES}`,
  solve: ({ costs, terms }) => withTerms("terms", terms, (stated) => quote(costs, stated)),
});
