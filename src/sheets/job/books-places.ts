/** Rows of moves that stand ready; what is inserted among them is read too. */
const FIRST = 9;
const ROWS = 48;
const LAST = FIRST + ROWS - 1;
/** What is typed of this job alone, under the moves. */
const JOB = LAST + 3;
const WHY = JOB + 6;
/** Rows for the goods of a job, and for the causes from bid to book. */
const GOODS = 26;
const CAUSES = 10;
const BID_TO_BOOK = WHY + GOODS + 3;
const RACK = BID_TO_BOOK + CAUSES + 4;

/** Where everything stands on Books: typed, shown, and from column AA on in full. */
export const BOOKS = {
  headings: `A${FIRST - 1}`,
  first: FIRST,
  rows: ROWS,
  goods: GOODS,
  causes: CAUSES,
  moves: `A${FIRST - 1}:K${LAST}`,
  typed: `A${FIRST}:G${LAST}`,
  kinds: `G${FIRST}:G${LAST}`,
  state: `L${FIRST}`,
  stateRows: `A${FIRST}:A${LAST}`,
  values: `L${FIRST}:L${LAST}`,
  notes: `N${FIRST}:N${LAST}`,
  aboutPart: `A${JOB - 1}`,
  about: `A${JOB}`,
  job: `B${JOB}`,
  hours: `B${JOB + 1}`,
  hoursCost: `B${JOB + 2}`,
  month: `B${JOB + 3}`,
  whyPart: `A${WHY - 1}`,
  why: `A${WHY}`,
  causesPart: `A${BID_TO_BOOK - 1}`,
  causesAt: `A${BID_TO_BOOK}`,
  rackPart: `A${RACK - 1}`,
  rack: `A${RACK}`,
} as const;
