import { progressBilling } from "../../solver/bid/progress-billing";
import { declare, headings } from "../declare";
import { schedule as scheduleTable } from "../tables";

const CONTRACT = [
  ["item", "value", "done", "change"],
  ["main stair", 6000, 0.5, ""],
  ["rail", 2000, 0, ""],
  ["two more balusters", 300, 1, "yes"],
] as const;

export const PROGRESSBILLING = declare({
  id: "PROGRESSBILLING",
  words: "progress billing",
  group: "Takeoff and bid",
  says: "What is due now under a schedule of values, and what is still to bill.",
  parameters: {
    schedule: {
      kind: "table",
      table: scheduleTable,
      rows: 2_000,
      badRows: "refuse",
      says: "Contract and changes, a row for each part, at the price of the bid. Rows called total or subtotal are passed over.",
    },
    retainage: {
      kind: "rate",
      of: "the whole",
      default: 0,
      says: "Share of what is earned that is held back until the end.",
    },
    paid: { kind: "money", sign: "not negative", default: 0, says: "All that was paid on earlier bills, without the deposit." },
    deposit: {
      kind: "money",
      sign: "not negative",
      default: 0,
      says: "Deposit paid before the work; it is credited in step with what is earned.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "A row for each of the schedule; then contract and changes, what they come to and what is earned; under `earned`, taken off " +
      "it: retainage, deposit credited, paid; last what is due. Below 0, more was paid than is due.",
    columns: {
      item: { kind: "label", says: "Item as given; contract, changes, earned, retainage, deposit credited, paid, due." },
      value: { kind: "money", says: "Price of the row, in cents." },
      done: { kind: "rate", says: "Share done, as given." },
      earned: { kind: "money", says: "Value x done in cents, and what is stored." },
      balance: { kind: "money", says: "Value less earned." },
    },
  },
  problems: {
    "no-value": { cell: "#VALUE!", says: "schedule, {item}: value is empty or 0 in row {row}; give the value, or write included" },
    "earned-over-value": {
      cell: "#VALUE!",
      says:
        "schedule, {item}: done and stored come to {earned} in row {row}, beyond its value of {value}; what is built in is no " +
        "longer stored",
    },
    "deposit-over-value": {
      cell: "#VALUE!",
      says: "deposit: {deposit} is more than contract and changes come to, {value}; give the deposit of this contract",
    },
  },
  examples: [
    {
      given: { schedule: CONTRACT, retainage: "10%", paid: 500, deposit: 830 },
      gives: [
        ["item", "value", "done", "earned", "balance"],
        ["main stair", 6000, 0.5, 3000, 3000],
        ["rail", 2000, 0, 0, 2000],
        ["two more balusters", 300, 1, 300, 0],
        ["contract", 8000, "", "", ""],
        ["changes", 300, "", "", ""],
        ["earned", 8300, "", 3300, 5000],
        ["retainage", "", "", -330, ""],
        ["deposit credited", "", "", -330, ""],
        ["paid", "", "", -500, ""],
        ["due", "", "", 2140, ""],
      ],
      from: "by hand: 3,000 + 300 earned of 8,300; 10 % is 330; 830 x 3,300 / 8,300 = 330; 3,300 - 330 - 330 - 500 = 2,140",
    },
    {
      given: {
        schedule: [
          ["item", "value", "done", "stored"],
          ["main stair", 6000, 0.25, 1200],
          ["rail", 2000, "", ""],
          ["total", 8000, "", ""],
        ],
      },
      shows: [
        { item: "main stair", done: 0.25, earned: 2700, balance: 3300 },
        { item: "earned", value: 8000, earned: 2700, balance: 5300 },
        { item: "due", earned: 2700 },
      ],
      from: "by hand: 6,000 / 4 + 1,200 of goods stored; the total is no part of the work",
    },
    {
      given: {
        schedule: [
          ["item", "value", "done", "stored"],
          ["main stair", 6000, 0.9, 1200],
        ],
      },
      fails: "#VALUE!",
      says: "schedule, main stair: done and stored come to 6600 in row 2, beyond its value of 6000; what is built in is no longer stored",
      from: "by hand: 5,400 + 1,200",
    },
    {
      given: { schedule: CONTRACT, retainage: "110%" },
      fails: "#VALUE!",
      says: 'retainage: must be 100 % or less, got "110%"',
      from: "by hand: no more can be held back than is earned",
    },
  ],
  source:
    "Schedule of values with retainage, common practice, no source. Earned = value x done + stored; due = earned - retainage x earned " +
    "- deposit x earned / value - paid, each in cents.",
  solve: ({ schedule, ...terms }) => progressBilling(schedule, terms),
});
