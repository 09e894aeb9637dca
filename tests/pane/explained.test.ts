/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { explained, type Explained } from "../../src/pane/explained";
import { cellPlace } from "../../src/sheets/cell-address";
import { standIn } from "../../src/workbook/stand-in";
import type { Workbook } from "../../src/workbook/workbook";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedData, openedWorkbook } from "../workbook/opened-workbook";
import { standingHost } from "./standing-host";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => {
  const found = functions.get(id);
  if (found === undefined) throw standIn().error("#NAME?", `no function ${id}`);
  return found(...args);
};

const of = (workbook: Workbook, address: string, sheet = "Mine"): Promise<Explained> =>
  explained({ sheet, ...cellPlace(address) }, standingHost(workbook, sheet, address).cells, solve);

const saidOf = ({ lines }: Explained, name: string): readonly string[] => lines.flatMap((one) => (one.name === name ? [one.says] : []));

test("RISERS: the function, each argument as it was read, what was left out, the sum with its figures, and the source", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "9' 1/2\"", B1: "=STAIR.RISERS(A1)" } });
  // By hand: 9 ft 1/2 in are 108 1/2 in; 14 x 7 3/4 = 108 1/2.
  expect(await of(workbook, "B1")).toEqual({
    says: "Mine B1 shows 14.",
    lines: [
      { name: "Function", says: "STAIR.RISERS: Fewest equal risers between two finished floors." },
      { name: "totalRise", says: '108 1/2", from A1. Finish floor to finish floor, measured plumb.' },
      { name: "Left out", says: 'maxRise: 7 3/4"; unit: in' },
      { name: "Answer", says: "Number of risers." },
      { name: "Steps", says: 'Risers (14) = total rise (108 1/2") / max rise (7 3/4"), rounded up, in exact arithmetic' },
      { name: "Source", says: "The default is the greatest rise of the IRC, R311.7.5.1: 7 3/4 in." },
    ],
  });
});

test("in millimetres every length says so", async () => {
  const workbook = await openedWorkbook({ Mine: { B1: '=STAIR.RISERS(2781,,"mm")' } });
  // By hand: 7 3/4 in x 25.4 = 196.85 mm; 15 x 196.85 = 2,952.75.
  const found = await of(workbook, "B1");
  expect(found.says).toBe("Mine B1 shows 15.");
  expect(saidOf(found, "totalRise")[0]).toContain("2781 mm. ");
  expect(saidOf(found, "Left out")).toEqual(["maxRise: 196.85 mm"]);
});

test("a range where one value may stand: the value of that cell", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 108.5, A2: 93, B1: "=STAIR.RISERS(A1:A2)" } });
  const found = await of(workbook, "B2");
  // By hand: 12 x 7 3/4 = 93.
  expect(found.says).toBe("Mine B2 shows 12.");
  expect(saidOf(found, "totalRise")[0]).toContain('93", from A1:A2.');
});

describe("a stair table", () => {
  const STAIR = { A1: "total rise", B1: 84, A2: "risers", B2: 12, A3: "total run", B3: 104.5 };

  test("LAYOUT: a value by its label, with the labels it follows from", async () => {
    const workbook = await openedWorkbook({ Mine: { ...STAIR, D1: "=STAIR.LAYOUT(A1:B3)" } });
    const row = workbook.spill("Mine", "D1").findIndex(([label]) => label === "unit rise");
    const found = await of(workbook, `E${row + 1}`);
    // By hand: 84 / 12 = 7.
    expect(found.says).toBe(`Mine E${row + 1} shows 7": unit rise, value.`);
    expect(saidOf(found, "stair")[0]).toContain('total rise 84", risers 12, total run 104 1/2", from A1:B3.');
    expect(saidOf(found, "Steps")).toEqual(['unit rise (7") = total rise (84") / risers (12)']);
    expect(saidOf(found, 'Label "unit rise"').length).toBe(1);
  });

  test("LAYOUT: what was assumed, and a step that rests on another", async () => {
    const workbook = await openedWorkbook({ Mine: { ...STAIR, D1: "=STAIR.LAYOUT(A1:B3)" } });
    const rows = workbook.spill("Mine", "D1");
    const at = (label: string): string => `E${rows.findIndex(([one]) => one === label) + 1}`;
    expect(saidOf(await of(workbook, at("nosing")), "Assumed")).toEqual(["common practice, no source"]);
    // By hand: 104 1/2 / 11 = 9 1/2; hypot(7, 9.5) = 11.8004; 11 1/4 - 7 x 9.5 / 11.8004 = 5.6146.
    expect(saidOf(await of(workbook, at("throat")), "Steps")).toContain(
      'throat (5.6146 in) = stringer board (11 1/4") - unit rise (7") x run (9 1/2") / slope length (11.8004 in)',
    );
  });

  test("CHECK: what was compared, the clause, the edition and where it was read", async () => {
    const check = { A1: "total rise", B1: 108.5, A2: "risers", B2: 14, A3: "run", B3: 10, D1: '=STAIR.CHECK(A1:B3,"IRC 2021")' };
    const workbook = await openedWorkbook({ Mine: check });
    const row = workbook.spill("Mine", "D1").findIndex(([item]) => item === "riser height") + 1;
    const verdict = await of(workbook, `H${row}`);
    expect(verdict.says).toBe(`Mine H${row} shows "pass": riser height, verdict.`);
    expect(saidOf(verdict, "code")[0]).toContain("IRC 2021. ");
    // IRC 2021 R311.7.5.1: 7 3/4 in; by hand 108 1/2 / 14 = 7 3/4.
    expect(saidOf(verdict, "Compared")).toEqual(['given 7 3/4", limit 7 3/4", margin 0": pass.']);
    expect(saidOf(verdict, "Clause")).toEqual(["R311.7.5.1, as printed: 7 3/4 in; checked against the code's text."]);
    expect(saidOf(verdict, "Code")).toEqual(["International Residential Code, edition 2021."]);
    expect(saidOf(verdict, "Read in")).toEqual(["International Residential Code, 2021, as adopted by Texas."]);
    expect((await of(workbook, `F${row}`)).says).toBe(`Mine F${row} shows 7 3/4": riser height, limit.`);
  });
});

test("LIMIT: the clause of one limit, its figure in the unit asked for", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: '=STAIR.LIMIT("irc-2021","riser height","mm")' } });
  const found = await of(workbook, "A1");
  // IRC 2021 R311.7.5.1: 7 3/4 in; by hand x 25.4.
  expect(found.says).toBe("Mine A1 shows 196.85 mm: limit.");
  expect(saidOf(found, "Clause")[0]).toContain("R311.7.5.1, as printed: 7 3/4 in");
});

test("TREADFIT: step and column with the column's meaning, the saw's caution, and a heading", async () => {
  const head = { A1: "step", B1: "run", C1: "back", D1: "front", E1: "left offset" };
  const workbook = await openedWorkbook({ Mine: { ...head, A2: 2, B2: 12, C2: 30, D2: 39, E2: "square", G1: "=STAIR.TREADFIT(A1:E2,0)" } });
  const headings = workbook.spill("Mine", "G1")[0] ?? [];
  const column = (heading: string): string => String.fromCharCode("G".charCodeAt(0) + headings.indexOf(heading));
  const angle = await of(workbook, `${column("right angle")}2`);
  // By hand: the right side runs 9 out over 12, atan(9/12) = 36.8699 degrees.
  expect(angle.says).toBe(`Mine ${column("right angle")}2 shows 36.8699 deg: step 2, right angle.`);
  expect(saidOf(angle, "readings")[0]).toContain("1 row, from A1:E2.");
  expect(saidOf(angle, "nosing")[0]).toContain('0". ');
  expect(saidOf(angle, 'Column "right angle"')).toEqual(["Cut angle of the right end, from square to the nose."]);
  expect(saidOf(angle, "Caution").length).toBe(1);
  expect(saidOf(angle, "Source")[0]).toContain("Plane coordinates of the four corners");
  expect((await of(workbook, `${column("back")}1`)).says).toBe(`Mine ${column("back")}1 shows "back": the heading of its column.`);
  // Nothing is open, so there is no heel.
  expect((await of(workbook, `${column("heel")}2`)).says).toBe(
    `Mine ${column("heel")}2 is empty: nothing stands for step 2, heel.`);
});

test("CUTS: no sum to trace, so what it does and its source", async () => {
  const workbook = await openedWorkbook({
    Mine: {
      A1: "label", B1: "length", C1: "quantity", A2: "tread", B2: 36, C2: 2,
      E1: "length", F1: "price", G1: "available", E2: 96, F2: 20, G2: "any",
      I1: "=STAIR.CUTS(A1:C2,E1:G2)",
    },
  });
  const found = await of(workbook, "M2");
  expect(found.says).toBe('Mine M2 shows 36": stick 1, length.');
  expect(saidOf(found, "pieces")[0]).toContain("1 row, from A1:C2.");
  expect(saidOf(found, "Steps")).toEqual([]);
  expect(saidOf(found, "Source")[0]).toContain("A stick holds pieces whose lengths and kerfs add to no more than its length");
});

test("BID: the price with the rows it is made of", async () => {
  const workbook = await openedWorkbook({
    Mine: {
      A1: "item", B1: "kind", C1: "cost", A2: "oak", B2: "materials", C2: 1000,
      E1: "label", F1: "rate", E2: "overhead on cost", F2: "10%", E3: "profit on cost", F3: "20%",
      H1: "=STAIR.BID(A1:C2,E1:F3)",
    },
  });
  const rows = workbook.spill("Mine", "H1");
  const row = rows.findIndex(([label]) => label === "price") + 1;
  expect(row).toBeGreaterThan(1);
  const found = await of(workbook, `I${row}`);
  // By hand: (1,000 + 100) x 1.2 = 1,320.
  expect(found.says).toBe(`Mine I${row} shows 1,320.00: price, cost.`);
  expect(saidOf(found, "Steps").join()).toContain("price (1,320.00) = (direct (1,000.00) + contingency (0.00) + overheads on them) x");
});

test("an error: its sentence, then the function and its arguments as they stand", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 2781, B1: "=STAIR.RISERS(A1)" } });
  const found = await of(workbook, "B1");
  expect(found.says).toBe('Mine B1 shows #VALUE!: totalRise: 2781 in is over 400 in; if this is millimetres, write "2781 mm"');
  expect(saidOf(found, "Function")[0]).toContain("STAIR.RISERS: ");
  expect(saidOf(found, "totalRise")).toEqual(["A1. Finish floor to finish floor, measured plumb."]);
});

test("an argument that only the sheet works out stands as it is in the formula", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 108.5, B1: "=STAIR.RISERS(AVERAGE(A1:A1))" } });
  const found = await of(workbook, "B1");
  expect(found.says).toBe("Mine B1 shows 14.");
  expect(saidOf(found, "totalRise")).toEqual(["AVERAGE(A1:A1). Finish floor to finish floor, measured plumb."]);
});

test.each([
  ["an empty cell", "Z9", "Mine Z9 is empty."],
  ["a number", "A1", "Mine A1 holds 108.5, typed in: nothing is worked out there."],
  ["a text", "A2", 'Mine A2 holds the text "oak", typed in: nothing is worked out there.'],
])("%s says so", async (_, address, says) => {
  const workbook = await openedWorkbook({ Mine: { A1: 108.5, A2: "oak" } });
  expect(await of(workbook, address)).toEqual({ says, lines: [] });
});

test("of a merged block whichever cell is selected, what the block shows; a link says its text", async () => {
  const cells = { C4: { formula: '=A1&" FAIL"' }, A1: { value: 1 }, D8: { formula: '=HYPERLINK("#Mine!A1","Survey ›")' } };
  const workbook = await openedData({ version: 1, sheets: [{ name: "Mine", cells, merged: ["C4:D5"] }] });
  for (const at of ["C4", "D4", "D5"]) {
    const host = standingHost(workbook, "Mine", at).cells;
    const place = await host.selected();
    expect((await explained(place!, host, solve)).says).toBe('Mine C4 shows "1 FAIL": a formula of the spreadsheet\'s own.');
  }
  expect(await of(workbook, "D8")).toEqual({
    says: 'Mine D8 shows "Survey ›": a formula of the spreadsheet\'s own.',
    lines: [{ name: "Formula", says: '=HYPERLINK("#Mine!A1","Survey ›")' }],
  });
});

test("a formula of the spreadsheet's own: what it reads, and what fills that", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 108.5, B1: "=STAIR.RISERS(A1)", C1: "=A1/B1" } });
  expect(await of(workbook, "C1")).toEqual({
    says: "Mine C1 shows 7.75: a formula of the spreadsheet's own.",
    lines: [
      { name: "Formula", says: "=A1/B1" },
      { name: "Reads", says: "A1 shows 108.5; B1 shows 14, filled by STAIR.RISERS" },
    ],
  });
});

test("a formula of its own around one of ours says both", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 108.5, B1: '=IF(A1>0,STAIR.RISERS(A1)+1,"")' } });
  const found = await of(workbook, "B1");
  expect(found.says).toBe("Mine B1 shows 15: a formula of the spreadsheet's own, around STAIR.RISERS.");
  expect(saidOf(found, "totalRise")[0]).toContain('108 1/2", from A1.');
  expect(saidOf(found, "Source").length).toBe(1);
});
