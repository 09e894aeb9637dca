import type { Ledger } from "../solver/books/ledger/ledger";
import type { Fault } from "../solver/books/ledger/own-fault";
import { isProblem, type Problem, problem } from "../solver/problem";
import type { Failed } from "./cells";
import { moves } from "./tables";

/** The argument of every function of the ledger. */
export const MOVES = {
  kind: "table",
  table: moves,
  badRows: "answer",
  says: "Every move of goods, and every paper; in any order, but for rows of one day, which are reckoned as they stand.",
} as const;

const worded = <const Says extends string>(says: Says) => ({ cell: "#VALUE!", says: `{at}${says}{more}` }) as const;

/** What can be wrong with a row. `at` and `more` are empty in the row itself; a total that fails says where the row is, and how many. */
export const LEDGER_PROBLEMS = {
  unreadable: { cell: "#VALUE!", says: "{says}{more}" },
  "marks-alone": worded('{column}: "{name}" has no letter or figure; {instead}'),
  "no-item": worded("item: is empty; name the goods beside kind {kind}"),
  "no-cost": worded("cost: is empty or 0 beside {item}, kind {kind}; give what the paper says"),
  "cost-at-average": worded("cost: {cost} stands beside {item}, kind {kind}, which goes at the average; leave the cost empty"),
  "no-quantity": worded("quantity: is {read} beside {item}, kind {kind}; give {wanted}"),
  "quantity-of-nothing": worded(
    "quantity: must be more than 0 beside {item}, kind {kind}, got {quantity}; what a job brings back is a transfer, what a " +
      "supplier takes back a return",
  ),
  "signs-differ": worded(
    "cost: a quantity of {quantity} of {item} costs {cost}; for a return write both negative, or kind return and both positive",
  ),
  "quantity-of-money": worded("quantity: {quantity} stands beside kind {kind}, which is money and no goods; leave the quantity empty"),
  "unit-is-empty": worded('unit: is empty beside {item}, other rows are in "{other}"; give the unit'),
  "units-differ": worded('unit: {item} is in "{unit}", other rows are in "{other}", which does not convert; give one unit'),
  "to-missing": worded("to: is empty beside {item}, kind {kind}; write the job it goes to, shop or rack"),
  "to-not-read": worded('to: "{to}" stands beside kind {kind}, which goes by its job; leave to empty, or write kind transfer'),
  "same-place": worded('to: "{to}" is where {item} comes from; write where it goes'),
  "job-missing": worded(
    "job: is empty or rack beside {item}, kind {kind}; an issue goes from the rack to a job or shop, a transfer comes from one; write " +
      "which",
  ),
  "count-off-the-rack": worded("job: a count of {item} at {place}; only the rack is counted; leave the job empty"),
  "own-name": worded('{column}: "{name}" is a name of the books themselves; give the job another'),
  "of-missing": worded("of: is empty beside {item}; name what the offcut was cut from"),
  "of-itself": worded("of: {item} is cut from itself; give the offcut a name of its own"),
  "share-missing": worded("share: is empty or 0 beside {item}; write how much of one {of} one offcut is, such as =6/16"),
  "share-over-one": worded("share: {share} of one {of} is more than the whole; write how much of one {of} one offcut is, such as =6/16"),
  "offcut-costs-more": worded(
    "cost: {cost} is more than the share of {of}, {value}; leave the cost empty, or write what it would sell for where that is less",
  ),
  "opening-after-move": worded(
    "date: an opening of {item} on {date} {place}, after row {first} moved it there; date the opening before every move of it there",
  ),
  "no-invoice": worded("invoice: is empty; write the number of the paper whose total this is"),
  "no-purchases": worded("invoice: {kind} on {on} has no purchases{beside}; give the invoice of the goods, or enter them"),
  "before-purchases": worded(
    "date: {kind} on {invoice} is dated {date}, and its purchases are of {month}; date it in the month of the goods or later",
  ),
  "several-invoices": worded("invoice: is empty beside {kind}, and the purchases of {date} are of several invoices; write which"),
  "too-many-shares": worded("invoice: charges and lines of all invoices make more than {most} shares; add up charges of one invoice"),
  "credited-too-much": worded("cost: {cost} is credited on {item}, which stands at {value}; correct the credit, or the purchase"),
  "not-on-hand": worded(
    "{column}: {wanted} of {item} to {act} on {date} and {there} {place}; an invoice is missing or dated late, or a name differs{near}",
  ),
  "never-there": worded("job: {what} {place}, where there {was}{near}; correct the name or the job"),
  "never-bought": worded("item: {item} is counted and was never bought{near}; correct the name, or give an opening with a cost"),
  "total-differs": worded(
    "cost: the paper {invoice} says {cost}, its rows of {month} come to {sum}: purchases {purchases}, freight {freight}, tax {tax}; " +
      "correct the row that is wrong or missing",
  ),
  "after-bad-row": worded("{item}: row {first} is wrong, and this follows from it; put that row right first"),
} as const;

type Code = keyof typeof LEDGER_PROBLEMS;

/** What is wrong with a row, as its own note says it. */
export const rowFault = (bad: Failed | Fault): Failed | Problem<Code> =>
  isProblem(bad) ? problem(bad.problem, { ...bad.details, at: "", more: "" }) : bad;

const FOLLOWS = "after-bad-row";

/** The first row that is wrong, for a table of totals: a total without a row is wrong money. Undefined where every row is right. */
export const firstFault = ({ lines }: Ledger<Failed>): Problem<Code> | undefined => {
  const wrong = lines.filter(({ bad }) => bad !== undefined);
  const first = wrong.find(({ bad }) => !(isProblem(bad) && bad.problem === FOLLOWS)) ?? wrong[0];
  if (first?.bad === undefined) return undefined;
  const more = wrong.length > 1 ? `; ${wrong.length - 1} more: see STOCKLEDGER` : "";
  if (!isProblem(first.bad)) return problem("unreadable", { says: first.bad.says, more });
  return problem(first.bad.problem, { ...first.bad.details, at: `moves, row ${first.move.row}: `, more });
};

/** How the books are reckoned, for the reference of each function that reads them. */
export const LEDGER_RULES =
  "Moving weighted average for each item at each place; goods bought straight to a job carry their own invoice (IAS 2, 23 and 25; US " +
  "GAAP ASC 330-10-30; from memory). The last ones out take all that is left. Freight, tax and credits are shared over the purchases of " +
  "their invoice by cost, largest remainder; dated in a later month they go to what is left of the goods, the rest to price " +
  "differences, so that no later row changes a month. This is arithmetic, not accounting or tax advice.";
