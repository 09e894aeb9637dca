import { call } from "../../../src/functions/call";
import { catalogue } from "../../../src/functions/catalogue";
import { type Answer, isFailed } from "../../../src/functions/cells";
import { moveCells, type TypedMove } from "../../solver/books/random-moves";

const answered = (id: string, ...cells: readonly unknown[]): string | Answer[][] => {
  const answer = call(catalogue.find((each) => each.id === id)!, cells);
  return Array.isArray(answer) ? answer : isFailed(answer) ? `${answer.failed} ${answer.says}` : String(answer);
};

/** Rows of STOCKLEDGER by heading. */
const ledgerOf = (moves: readonly unknown[]): readonly Readonly<Record<string, Answer>>[] => {
  const [headings = [], ...rows] = answered("STOCKLEDGER", moves) as Answer[][];
  return rows.map((row) => Object.fromEntries(row.map((cell, place) => [String(headings[place]), cell])));
};

const oak = { item: "oak", unit: "each" } as const;
const bought: TypedMove = { ...oak, date: "2026-03-02", kind: "purchase", quantity: 10, cost: 500, invoice: "A-1" };
const atElm: TypedMove = { ...bought, job: "Elm 12" };
const issued: TypedMove = { ...oak, date: "2026-03-03", kind: "issue", quantity: 4, job: "Elm 12" };
const date = "2026-03-05";
const end: TypedMove = { item: "end", unit: "each", date, kind: "offcut", quantity: 1, job: "Elm 12", to: "rack" };

/** [the rows, the wrong one of them counted from 1, its sentence]; that they are wrong is a bookkeeper's common practice, no source. */
const CASES: readonly (readonly [string, readonly TypedMove[], number, string])[] = [
  [
    "more issued than there is",
    [bought, { ...issued, quantity: 12 }], 2,
    "quantity: 12 of oak to issue on 2026-03-03 and 10 on the rack; an invoice is missing or dated late, or a name differs",
  ],
  [
    "more transferred, in a unit of its own",
    [
      { date, kind: "purchase", item: "cove", quantity: 10, unit: "LF", cost: 12, job: "Elm 12" },
      { date, kind: "transfer", item: "cove", quantity: 144, unit: "in", job: "Elm 12", to: "rack" },
    ], 2,
    "quantity: 12 ft of cove to transfer on 2026-03-05 and 10 ft at Elm 12; an invoice is missing or dated late, or a name differs",
  ],
  [
    "a name of one slip",
    [bought, { ...bought, item: "oka", quantity: 3 }, { ...issued, item: "oka", quantity: 4 }], 3,
    'quantity: 4 of oka to issue on 2026-03-03 and 3 on the rack; an invoice is missing or dated late, or a name differs ' +
      '(like "oak" in row 2)',
  ],
  ["scrapped out of nothing", [atElm, { ...oak, date, kind: "scrap", quantity: 1 }], 2,
    "quantity: 1 of oak to scrap on 2026-03-05 and 0 on the rack; an invoice is missing or dated late, or a name differs"],
  ["no cost", [{ ...bought, cost: 0 }], 1, "cost: is empty or 0 beside oak, kind purchase; give what the paper says"],
  ["a cost where goods go at the average", [bought, { ...issued, cost: 200 }], 2,
    "cost: 200.00 stands beside oak, kind issue, which goes at the average; leave the cost empty"],
  ["no quantity", [{ ...bought, quantity: 0 }], 1,
    "quantity: is empty or 0 beside oak, kind purchase; give how many, more than 0"],
  ["none of what must be some", [{ ...bought, quantity: "none" }], 1,
    'quantity: is "none" beside oak, kind purchase; give how many, more than 0'],
  ["a count left out", [bought, { ...oak, date, kind: "count" }], 2,
    'quantity: is empty or 0 beside oak, kind count; give how many were counted, or "none"'],
  ["less than none", [bought, { ...issued, quantity: -1 }], 2, 
    "quantity: must be more than 0 beside oak, kind issue, got -1; what a job brings back is a transfer, what a supplier takes back a " +
      "return"],
  ["less than none for money", [{ ...bought, quantity: -1 }], 1,
    "cost: a quantity of -1 of oak costs 500.00; for a return write both negative, or kind return and both positive"],
  ["a quantity of money", [bought, { date, kind: "freight", quantity: 1, cost: 20, invoice: "A-1" }], 2,
    "quantity: 1 stands beside kind freight, which is money and no goods; leave the quantity empty"],
  ["no name", [{ date, kind: "purchase", quantity: 1, unit: "each", cost: 5 }], 1, "item: is empty; name the goods beside kind purchase"],
  ["a unit left out", [bought, { ...issued, unit: "" }], 2, 'unit: is empty beside oak, other rows are in "each"; give the unit'],
  ["a unit that does not convert", [{ ...bought, unit: "bf" }, issued], 2,
    'unit: oak is in "each", other rows are in "bf", which does not convert; give one unit'],
  ["a transfer to nowhere", [atElm, { ...oak, date, kind: "transfer", quantity: 1, job: "Elm 12" }], 2,
    "to: is empty beside oak, kind transfer; write the job it goes to, shop or rack"],
  ["a transfer to where it is", [atElm, { ...oak, date, kind: "transfer", quantity: 1, job: "Elm 12", to: "elm 12" }], 2,
    'to: "elm 12" is where oak comes from; write where it goes'],
  ["an issue to two places", [bought, { ...issued, to: "Ash 9" }], 2,
    'to: "Ash 9" stands beside kind issue, which goes by its job; leave to empty, or write kind transfer'],
  ["an issue to nobody", [bought, { ...oak, date, kind: "issue", quantity: 1 }], 2,
    "job: is empty or rack beside oak, kind issue; an issue goes from the rack to a job or shop, a transfer comes from one; write which"],
  ["a count at a job", [atElm, { ...oak, date, kind: "count", quantity: 9, job: "Elm 12" }], 2,
    "job: a count of oak at Elm 12; only the rack is counted; leave the job empty"],
  ["a job called like a row of the books", [{ ...bought, job: "Total" }], 1,
    'job: "Total" is a name of the books themselves; give the job another'],
  ["goods at a dash", [{ ...bought, job: "-" }], 1,
    'job: "-" has no letter or figure; write the job or shop, or leave it empty for the rack'],
  ["an issue to a question mark", [bought, { ...issued, job: "?" }], 2,
    'job: "?" has no letter or figure; write the job or shop, or leave it empty for the rack'],
  ["a transfer to a dash", [atElm, { ...oak, date, kind: "transfer", quantity: 1, job: "Elm 12", to: "—" }], 2,
    'to: "—" has no letter or figure; write the job it goes to, shop or rack'],
  ["a dash where nothing is read", [{ ...bought, to: "--" }], 1, 'to: "--" has no letter or figure; leave it empty'],
  // Freight would be shared over all the goods of a year whose paper has a dash, too.
  ["papers with a dash", [{ ...bought, invoice: "-" }], 1,
    'invoice: "-" has no letter or figure; write the number of the paper, or leave it empty'],
  ["goods called by a mark", [{ ...bought, item: "???" }], 1, 'item: "???" has no letter or figure; name the goods'],
  ["freight on goods called by a mark", [bought, { date, kind: "freight", cost: 20, invoice: "A-1", item: "…" }], 2,
    'item: "…" has no letter or figure; name the goods, or leave it empty'],
  ["an offcut of a mark", [atElm, { ...end, of: "*", share: 0.5 }], 2,
    'of: "*" has no letter or figure; name what the offcut was cut from'],
  ["an offcut of what", [atElm, { ...end, share: 0.5 }], 2,
    "of: is empty beside end; name what the offcut was cut from"],
  ["an offcut of itself", [atElm, { ...oak, date, kind: "offcut", quantity: 1, job: "Elm 12", to: "rack", of: "oak", share: 0.5 }], 2,
    "of: oak is cut from itself; give the offcut a name of its own"],
  ["an offcut without a share", [atElm, { ...end, of: "oak" }], 2,
    "share: is empty or 0 beside end; write how much of one oak one offcut is, such as =6/16"],
  ["an offcut larger than the whole",
    [atElm, { ...end, of: "oak", share: 1.5 }], 2,
    "share: 1.5 of one oak is more than the whole; write how much of one oak one offcut is, such as =6/16"],
  ["an offcut dearer than its share",
    [atElm, { ...end, of: "oak", share: 0.5, cost: 30 }], 2,
    "cost: 30.00 is more than the share of oak, 25.00; leave the cost empty, or write what it would sell for where that is less"],
  ["an offcut of what was never there",
    [atElm, { ...end, of: "ash", share: 0.5 }], 2,
    "of: some of ash to cut offcuts from on 2026-03-05 and none at Elm 12; an invoice is missing or dated late, or a name differs"],
  ["an opening after a move", [bought, { ...oak, date, kind: "opening", quantity: 1, cost: 50 }], 2,
    "date: an opening of oak on 2026-03-05 on the rack, after row 2 moved it there; date the opening before every move of it there"],
  ["a total of no paper", [bought, { date, kind: "invoice total", cost: 500 }], 2,
    "invoice: is empty; write the number of the paper whose total this is"],
  ["a charge on a paper that is not there", [bought, { date, kind: "freight", cost: 20, invoice: "A-2" }], 2,
    "invoice: freight on A-2 has no purchases; give the invoice of the goods, or enter them"],
  ["a charge for goods that are not on it", [bought, { date, kind: "freight", cost: 20, invoice: "A-1", item: "ash" }], 2,
    "invoice: freight on A-1 has no purchases of ash; give the invoice of the goods, or enter them"],
  ["a charge of a day without purchases", [bought, { date, kind: "tax", cost: 20 }], 2,
    "invoice: tax on 2026-03-05 has no purchases; give the invoice of the goods, or enter them"],
  ["a charge before the month of its goods", [{ date: "2026-02-20", kind: "freight", cost: 20, invoice: "A-1" }, bought], 1,
    "date: freight on A-1 is dated 2026-02-20, and its purchases are of 2026-03; date it in the month of the goods or later"],
  ["a charge of a day with two papers",
    [bought, { ...bought, invoice: "A-2" }, { date: "2026-03-02", kind: "freight", cost: 20 }], 3,
    "invoice: is empty beside freight, and the purchases of 2026-03-02 are of several invoices; write which"],
  ["more credited than goods cost", [bought, { date, kind: "credit", cost: 501, invoice: "A-1" }], 2,
    "cost: 501.00 is credited on oak, which stands at 500.00; correct the credit, or the purchase"],
  ["more credited for a return than they stand at", [bought, { ...oak, date, kind: "return", quantity: 1, cost: 501 }], 2,
    "cost: 501.00 is credited on oak, which stands at 500.00; correct the credit, or the purchase"],
  ["more for scrap than the goods stand at", [atElm, { date, kind: "credit", cost: 501, job: "Elm 12", item: "oak" }], 2,
    "cost: 501.00 is credited on oak, which stands at 500.00; correct the credit, or the purchase"],
  ["a return of what a place never had", [bought, { ...oak, date, kind: "return", quantity: 1, cost: 50, job: "Elm 12" }], 2,
    "job: 1 of oak to take back at Elm 12, where there was never any; correct the name or the job"],
  ["scrap sold of what is gone",
    [
      bought, { ...atElm, quantity: 1, cost: 50, invoice: "A-3" },
      { ...oak, date, kind: "transfer", quantity: 1, job: "Elm 12", to: "rack" },
      { date, kind: "credit", cost: 5, job: "Elm 12", item: "oak" },
    ], 4,
    "job: 5.00 credited on oak at Elm 12, where there is none; correct the name or the job"],
  ["a count of what was never bought", [atElm, { ...oak, date, kind: "count", quantity: 2 }], 2,
    "item: oak is counted and was never bought; correct the name, or give an opening with a cost"],
  ["a paper that does not agree",
    [bought, { date, kind: "freight", cost: 20, invoice: "A-1" }, { date, kind: "invoice total", cost: 530, invoice: "a-1" }], 3,
    "cost: the paper a-1 says 530.00, its rows of 2026-03 come to 520.00: purchases 500.00, freight 20.00, tax 0.00; correct the row " +
      "that is wrong or missing"],
];

describe("what is wrong with a row", () => {
  test.each(CASES)("%s", (_, moves, wrong, says) => {
    const row = ledgerOf(moveCells(moves)).find((line) => line["row"] === wrong + 1)!;
    expect(row["note"]).toBe(says);
    expect(row["value"]).toEqual({ failed: "#VALUE!", says });
    expect(row["cost"]).toEqual({ failed: "#VALUE!", says });
    for (const id of ["RACK", "JOBCOST", "MONTHCLOSE"]) {
      const answer = String(answered(id, moveCells(moves)));
      expect(answer.startsWith(`#VALUE! moves, row ${wrong + 1}: ${says}`)).toBe(true);
    }
  });

  test("every sentence there is has a case", () => {
    const { problems } = catalogue.find(({ id }) => id === "STOCKLEDGER")!;
    const worded = Object.entries(problems).map(([code, { says }]) => [code, says] as const);
    const NOT_HERE = ["unreadable", "after-bad-row", "too-many-shares"];
    const parts = (says: string): readonly string[] => says.replace("{at}", "").replace("{more}", "").split(/\{\w+\}/);
    const isSaid = (template: string): boolean => CASES.some(([, , , says]) => parts(template).every((part) => says.includes(part)));
    expect(worded.filter(([code, says]) => !NOT_HERE.includes(code) && !isSaid(says))).toEqual([]);
  });
});

describe("what cannot be read", () => {
  const typed = (change: Readonly<Record<number, unknown>>): unknown[][] =>
    moveCells([bought, issued]).map((row, at) => row.map((cell, place) => (at === 1 && place in change ? change[place] : cell)));

  test.each([
    [0, "3/4/26", 'date in row 2 (oak): must be a date, or text such as 2026-03-04, got "3/4/26"'],
    [0, "2026-02-30", 'date in row 2 (oak): must be a date, or text such as 2026-03-04, got "2026-02-30"'],
    [0, 2026, "date in row 2 (oak): must be a date, or text such as 2026-03-04, got 2026"],
    [0, 46083.5, "date in row 2 (oak): must be a date without a time of day, got 46083.5"],
    [3, "ten", 'quantity in row 2 (oak): must be a number, got "ten"'],
    [6, "purchas", 'kind in row 2 (oak): "purchas" is not known; nearest is "purchase"; write opening, purchase, freight, tax, credit, ' +
      "invoice total, return, issue, transfer, offcut, scrap or count"],
    [6, "", "kind in row 2 (oak): is empty or 0; give a value"],
  ])("column %s, %s", (place, cell, says) => {
    const rows = ledgerOf(typed({ [place]: cell }));
    expect(rows.map(({ row, note }) => [row, note])).toContainEqual([2, says]);
    // What was bought in it is uncertain, and so is what is taken out.
    const follows = "oak: row 2 is wrong, and this follows from it; put that row right first";
    expect(rows.map(({ row, note }) => [row, note])).toContainEqual([3, follows]);
    expect(answered("RACK", typed({ [place]: cell }))).toBe(`#VALUE! ${says}; 1 more: see STOCKLEDGER`);
  });

  test("an error cell keeps its code", () => {
    const [row] = ledgerOf(typed({ 5: { code: "#N/A", message: "no price" } }));
    expect(row!["value"]).toMatchObject({ failed: "#N/A" });
  });
});

describe("what follows from a wrong row", () => {
  test("every later row of the item there, the places it goes to, and no other", () => {
    const moves: readonly TypedMove[] = [
      bought, { ...bought, item: "ash", invoice: "A-2" }, { ...issued, quantity: 12 }, { ...issued, date, quantity: 1 },
      { ...oak, date, kind: "transfer", quantity: 1, job: "Elm 12", to: "Ash 9" }, { ...issued, date, item: "ash" },
    ];
    const notes = ledgerOf(moveCells(moves)).map(({ row, note }) => [row, note]);
    const follows = "oak: row 4 is wrong, and this follows from it; put that row right first";
    expect(notes).toEqual([[2, ""], [3, ""], [4, expect.stringContaining("12 of oak to issue")], [5, follows], [6, follows], [7, ""]]);
    expect(answered("MONTHCLOSE", moveCells(moves))).toBe(
      "#VALUE! moves, row 4: quantity: 12 of oak to issue on 2026-03-03 and 10 on the rack; an invoice is missing or dated late, or a " +
        "name differs; 2 more: see STOCKLEDGER",
    );
  });

  test("goods that lie nobody knows where are uncertain everywhere", () => {
    const moves: readonly TypedMove[] = [{ ...bought, job: "?" }, issued, { ...issued, date, item: "ash" }];
    const follows = "oak: row 2 is wrong, and this follows from it; put that row right first";
    expect(ledgerOf(moveCells(moves)).map(({ note }) => note).slice(0, 2)).toEqual([expect.stringContaining('job: "?"'), follows]);
  });

  test("a wrong line of an invoice: its charges, and the lines they are shared over", () => {
    const moves: readonly TypedMove[] = [
      bought, { ...bought, item: "ash", cost: 0 }, { date, kind: "freight", cost: 20, invoice: "A-1" },
      { ...bought, item: "elm", invoice: "B-1" },
    ];
    const wrong = ledgerOf(moveCells(moves)).filter(({ value }) => isFailed(value)).map(({ row }) => row);
    expect(wrong).toEqual([2, 3, 4]);
  });
});

test("names like others are said in both, goods and jobs", () => {
  const moves: readonly TypedMove[] = [
    { ...bought, item: "oak blank" }, { ...bought, item: "oak blnak" }, { ...issued, item: "oak blank", job: "Birch" },
    { ...issued, item: "oak blnak", job: "Brich" },
  ];
  const notes = ledgerOf(moveCells(moves)).map(({ note }) => note);
  expect(notes).toEqual([
    'like "oak blnak" in row 3: same goods?',
    'like "oak blank" in row 2: same goods?',
    'like "oak blnak" in row 3: same goods?; like job "Brich" in row 5: same job?',
    'like "oak blank" in row 2: same goods?; like job "Birch" in row 4: same job?',
  ]);
  const column = (id: string, heading: string): readonly unknown[] => {
    const [headings = [], ...rows] = answered(id, moveCells(moves)) as Answer[][];
    return rows.map((row) => row[headings.indexOf(heading)]);
  };
  expect(column("RACK", "note")).toEqual([notes[0], notes[1], ""]);
  expect(column("JOBCOST", "note")).toEqual(notes.slice(2));
});

describe("more than a cell has time for", () => {
  test("months and jobs", () => {
    // By hand: 300 jobs, the rack and the total are 302 rows a month, 166 months more than 50,000.
    const month = (at: number): string => `${2000 + Math.floor(at / 12)}-${String((at % 12) + 1).padStart(2, "0")}-01`;
    const moves = [
      ...Array.from({ length: 300 }, (_, job) => ({ ...bought, date: month(0), job: `J${job}` })),
      ...Array.from({ length: 200 }, (_, at) => ({ ...bought, date: month(at) })),
    ];
    expect(answered("MONTHCLOSE", moveCells(moves))).toBe(
      "#VALUE! moves: months and jobs make more than 50000 rows; give the moves of fewer years, with openings",
    );
  });

  test("charges of lines", () => {
    // By hand: 500 charges of 500 lines are 250,000 shares.
    const moves = [
      ...Array.from({ length: 500 }, () => bought),
      ...Array.from({ length: 500 }, (): TypedMove => ({ date, kind: "tax", cost: 1, invoice: "A-1" })),
    ];
    expect(answered("RACK", moveCells(moves))).toContain(
      "invoice: charges and lines of all invoices make more than 200000 shares; add up charges of one invoice",
    );
  });
});

test("JOBCOST of a job whose goods all came back says that none are left there", () => {
  const back: TypedMove = { ...oak, date, kind: "transfer", quantity: 4, job: "Elm 12", to: "rack" };
  expect(answered("JOBCOST", moveCells([bought, issued, back]), "elm 12")).toBe(
    '#N/A job: no goods are left at "elm 12"; enter issues, or a later last day',
  );
});

test("JOBCOST goes into RECONCILE as what was bought: its headings are known there", () => {
  const [headings = []] = answered("JOBCOST", moveCells([bought, issued])) as Answer[][];
  const rows = [headings, ["Elm 12", "oak", "each", 4, 50, "", "", "", "", ""]];
  const plan = [["item", "quantity", "unit", "price"], ["oak", 4, "each", 49]];
  const [first = [], row = []] = answered("RECONCILE", plan, rows) as Answer[][];
  expect(row[first.indexOf("price variance")]).toBe(4);
});
