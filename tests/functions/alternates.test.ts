import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import type { Answer } from "../../src/functions/cells";

type Table = readonly (readonly unknown[])[];

const answered = (id: string, ...cells: readonly unknown[]): readonly (readonly unknown[])[] | string => {
  const declaration = catalogue.find((one) => one.id === id);
  if (declaration === undefined) throw new Error(id);
  const text = (cell: Answer): unknown => (typeof cell === "object" ? `${cell.failed} ${cell.says}` : cell);
  const answer = call(declaration, cells);
  return Array.isArray(answer) ? answer.map((row) => row.map(text)) : String(text(answer));
};

/** A cell of a result by the first cell of its row and its heading. */
const cellOf = (rows: Table | string, first: string, heading: string): unknown => {
  if (typeof rows === "string") throw new Error(rows);
  const [headings = [], ...data] = rows;
  return data.find(([label]) => label === first)?.[headings.indexOf(heading)];
};

const COSTS = [
  ["item", "cost", "kind", "quantity", "unit", "option"],
  ["oak", 900, "material", "", "", ""],
  ["fitting", 580, "labour", 10, "hour", ""],
  ["white oak", 236.8, "material", "", "", "white oak"],
  ["a riser more", 74, "material", "", "", "15 risers"],
  ["fitting", 58, "labour", 1, "hour", "15 risers"],
];
const TERMS = [["label", "rate"], ["overhead on cost", 0.12], ["profit of price", 0.15], ["round up to", 5]];
const STAIR = [
  ["total rise", 109.25], ["risers", 14], ["run", 10], ["nosing", 1.25], ["width", 37], ["opening", 130], ["floor thickness", 11],
  ["handrails", "one"], ["handrail height", 36],
];
const CHANGES = [["option", "label", "value"], ["15 risers", "risers", 15]];
const PIECES = [
  ["label", "length", "quantity", "option"],
  ["riser", 36, 14, ""], ["skirt", 160, 2, ""], ["riser", 36, 15, "15 risers"], ["skirt", 170, 2, "15 risers"],
];
const STOCK = [["label", "length", "price"], ["poplar 8 ft", 96, 18], ["poplar 16 ft", 192, 38]];

const all = (stair: Table, code = "irc-2021"): Table | string =>
  answered("ALTERNATES", COSTS, TERMS, CHANGES, stair, code, undefined, PIECES, STOCK, 0.125, 0.25);

/** What a check comes to, counted row by row in its own table. */
const counted = (stair: Table, code: string): string => {
  const rows = answered("CHECK", stair, code);
  if (typeof rows === "string") throw new Error(rows);
  const [headings = [], ...data] = rows;
  const [item, verdict, clause] = ["item", "verdict", "clause"].map((heading) => headings.indexOf(heading));
  const of = (...verdicts: readonly string[]): Table => data.filter((row) => verdicts.includes(String(row[verdict ?? -1])));
  const named = (verdict: string): string => {
    const limits = of(verdict).map((row) => `${String(row[item ?? -1])} (${String(row[clause ?? -1])})`);
    return limits.slice(0, 3).join(", ") + (limits.length > 3 ? ` and ${limits.length - 3} more` : "");
  };
  const [failing, mayFail] = [named("fail"), named("assumed: would fail")];
  const open = of("judge", "assumed: would fail", "not on file", "not given", "caution", "assumed: would pass").length;
  return `${failing === "" ? "none fail" : `fails ${failing}`}${mayFail === "" ? "" : `; may fail ${mayFail}`}; ${open} to settle`;
};

const withRisers = (risers: number): Table => STAIR.map((row) => (row[0] === "risers" ? ["risers", risers] : row));

describe.each(["irc-2021", "ibc-2021"])("by %s", (code) => {
  test("the verdict of each row is that of CHECK on its own stair", () => {
    const rows = all(STAIR, code);
    expect([cellOf(rows, "as drawn", "verdict"), cellOf(rows, "15 risers", "verdict")]).toEqual([
      counted(STAIR, code), counted(withRisers(15), code),
    ]);
    // By hand: 109 1/4 / 14 = 7.804; IRC R311.7.5.1 at most 7 3/4, IBC 1011.5.2 at most 7, except in dwellings, and nobody gave that.
    expect(cellOf(rows, "as drawn", "verdict")).toMatch(code === "irc-2021" ? /^fails riser height/ : /^none fail; may fail riser height/);
    expect(cellOf(rows, "white oak", "verdict")).toBe("as drawn");
  });

  test("a result of LAYOUT stands for the stair as typed", () => {
    const layout = answered("LAYOUT", STAIR);
    expect(all(layout as Table, code)).toEqual(all(STAIR, code));
  });
});

test("the boards of each row are those BUY lists for its pieces", () => {
  const bought = (risers: number, skirt: number): string => {
    const pieces = [["label", "length", "quantity"], ["riser", 36, risers], ["skirt", skirt, 2]];
    const goods = answered("BUY", pieces, STOCK, 0.125, 0.25, undefined, undefined, false);
    if (typeof goods === "string") throw new Error(goods);
    const counts = goods.map((row) => `${String(row[2])} ${String(row[0])}`);
    return `${goods.reduce((sum, row) => sum + Number(row[2]), 0)}: ${counts.join(", ")}`;
  };
  const rows = all(STAIR);
  const found = ["as drawn", "15 risers"].map((option) => cellOf(rows, option, "boards to buy"));
  expect(found).toEqual([bought(14, 160), bought(15, 170)]);
});

test("cost and price of each row are those of BID", () => {
  const rows = all(STAIR);
  for (const option of ["", "white oak", "15 risers"]) {
    const bid = answered("BID", COSTS, TERMS, option);
    const row = option === "" ? "as drawn" : option;
    expect([cellOf(rows, row, "cost"), cellOf(rows, row, "price")]).toEqual([cellOf(bid, "direct", "cost"), cellOf(bid, "price", "cost")]);
  }
});

test("in millimetres lengths are the stair's, and the answer is the same", () => {
  const metric = (rows: Table, ...columns: readonly number[]): Table =>
    rows.map((row) => row.map((cell, place) => (columns.includes(place) && typeof cell === "number" ? cell * 25.4 : cell)));
  const lengths = ["total rise", "run", "nosing", "width", "opening", "floor thickness", "handrail height"];
  const stair = [["unit", "mm"], ...STAIR.map(([label, value]) => [label, lengths.includes(String(label)) ? Number(value) * 25.4 : value])];
  const inches = answered("ALTERNATES", COSTS, TERMS, CHANGES, STAIR, "irc-2021", undefined, PIECES, STOCK, 0.5, 0.25);
  const [pieces, stock] = [metric(PIECES, 1), metric(STOCK, 1)];
  expect(answered("ALTERNATES", COSTS, TERMS, CHANGES, stair, "irc-2021", undefined, pieces, stock, 12.7, 6.35)).toEqual(inches);
});

const refused = (changed: Readonly<Record<number, unknown>>): unknown => {
  const cells: unknown[] = [COSTS, TERMS, CHANGES, STAIR, "irc-2021", undefined, PIECES, STOCK];
  for (const [place, cell] of Object.entries(changed)) cells[Number(place)] = cell;
  return answered("ALTERNATES", ...cells);
};

describe("what is no fault of one alternate is refused", () => {
  const twentyOne = Array.from({ length: 21 }, (_, place) => ["oak", 1, `option ${place}`]);
  test.each<readonly [string, Readonly<Record<number, unknown>>, string | RegExp]>([
    [
      "too many", { 0: [["item", "cost", "option"], ...twentyOne] },
      "#VALUE! costs: 22 alternates are more than one table takes; give 20 or fewer",
    ],
    ["code", { 4: "irc-2012" }, /^#N\/A code: "irc-2012" is not known; nearest is "irc-2018"; known are /],
    ["amendment", { 5: [["item", "limit"], ["tread dept", "9 in"]] }, /^#VALUE! amendments, item: "tread dept" is no limit of irc-2021; /],
    [
      "amended limit", { 5: [["item", "limit"], ["tread depth", "nine"]] },
      '#VALUE! amendments, tread depth: read "nine", which is no limit of that kind; write it as CHECK prints it, or none',
    ],
    ["terms", { 1: [["profit of price", 0.5], ["overhead of price", 0.5]] }, /leave nothing for the cost; write less$/],
    ["a piece as drawn", { 6: [["label", "length"], ["riser", "long"]] }, /^#VALUE! length in row 2 \(riser\): read "long", which is /],
    ["stock", { 7: [["length", "price"], ["long", 9]] }, /^#VALUE! length in row 2: read "long", which is not a length; /],
    ["changes", { 2: [["option", "label", "value"], ["", "risers", 15]] }, "#VALUE! option in row 2 (risers): is empty or 0; give a value"],
    ["unit", { 10: "mm" }, "#VALUE! stair: is in inches, but unit is mm; give the stair a row unit with mm, or leave unit out"],
    ["heading", { 2: [["option", "label", "price"], ["15 risers", "risers", 15]] }, /^#VALUE! changes: heading "price" is not read here; /],
  ])("%s", (_, changed, says) => {
    if (typeof says === "string") expect(refused(changed)).toBe(says);
    else expect(refused(changed)).toMatch(says);
  });
});

describe("what is wrong with one alternate stands in its row", () => {
  test.each<readonly [string, Readonly<Record<number, unknown>>, string, string]>([
    ["a label", { 2: [["option", "label", "value"], ["15 risers", "rissers", 15]] }, "verdict",
      'not checked: changes, label: "rissers" is not known; nearest is "risers"'],
    ["a value", { 2: [["option", "label", "value"], ["15 risers", "run", "ten"]] }, "verdict",
      'not checked: run: read "ten", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"'],
    ["an error", { 2: [["option", "label", "value"], ["15 risers", "run", { code: "#N/A" }]] }, "verdict",
      "not checked: value in row 2 (run): the cell given holds #N/A"],
    ["a piece", { 6: [...PIECES.slice(0, 4), ["skirt", "", 2, "15 risers"]] }, "boards to buy",
      "not planned: length in row 5 (skirt): is empty or 0; give a value"],
    // By hand: 16 ft less twice nothing.
    ["a long piece", { 6: [...PIECES.slice(0, 4), ["skirt", 200, 2, "15 risers"]] }, "boards to buy",
      'cannot be cut: length: piece skirt is 200", more than the 192" that can be cut from the longest stock of its grade'],
  ])("%s", (_, changed, heading, says) => {
    const rows = refused(changed) as Table;
    expect(cellOf(rows, "15 risers", heading)).toBe(says);
    expect(cellOf(rows, "as drawn", heading)).toBe(cellOf(refused({}) as Table, "as drawn", heading));
    // By hand: 1,480 x 1.12 / 0.85 = 1,950.12, 1,612 gives 2,124.05; to the next whole 5.
    expect([cellOf(rows, "as drawn", "price"), cellOf(rows, "15 risers", "price")]).toEqual([1955, 2125]);
  });
});

test("boards that could be ripped are planned and bought as BUY does", () => {
  const pieces = [
    ["label", "length", "width", "quantity", "option"],
    ["riser", 36, 7.25, 14, ""], ["riser", 36, 7.25, 15, "15 risers"], ["shim", 36, 2, 14, "15 risers"],
  ];
  const stock = [["label", "length", "width", "price"], ["poplar 1x10", 144, 9.5, 40], ["poplar 1x8", 144, 7.5, 34]];
  const rows = answered("ALTERNATES", COSTS, TERMS, CHANGES, STAIR, "", undefined, pieces, stock, 0.125, 0.25);
  // By hand, as drawn: 3 x 36 and two kerfs are 108 1/4 of 143 1/2, so 14 risers take 5 boards, and no two lie side by side. With shims
  // both are ripped, a quarter off each edge: 7 wide holds no riser, 9 wide holds one and no shim beside it, so 15 risers take 5 of 1x10;
  // 7 wide holds 3 x 2 and two kerfs, 9 a board, so 14 shims take 2 of 1x8 at 34.
  const listed = (wanted: Table): string => {
    const bought = answered("BUY", wanted, stock, 0.125, 0.25);
    if (typeof bought === "string") return bought;
    const goods = bought.slice(1).map(([item, , quantity]) => ({ item: String(item), quantity: Number(quantity) }));
    const named = goods.map(({ item, quantity }) => `${quantity} ${item}`);
    return `${goods.reduce((sum, { quantity }) => sum + quantity, 0)}: ${named.join(", ")}`;
  };
  const without = (option: string): Table =>
    pieces.filter((row, at) => at === 0 || row[4] === option).map((row) => row.slice(0, 4));
  expect([cellOf(rows, "as drawn", "boards to buy"), listed(without(""))]).toEqual(["5: 5 poplar 1x8", "5: 5 poplar 1x8"]);
  const ripped = "7: 5 poplar 1x10, 2 poplar 1x8";
  expect([cellOf(rows, "15 risers", "boards to buy"), listed(without("15 risers"))]).toEqual([ripped, ripped]);
});

test("of boards that are all on hand there is nothing to buy", () => {
  const onHand = [["label", "length", "available", "owned"], ["poplar 16 ft", 192, 40, "yes"]];
  const rows = refused({ 7: onHand }) as Table;
  expect([cellOf(rows, "as drawn", "boards to buy"), cellOf(rows, "15 risers", "boards to buy")]).toEqual(Array(2).fill("nothing to buy"));
});

test("as drawn and three alternates are planned, a fourth says so and keeps its price", () => {
  const more = (place: number): unknown[] => [`${place} risers`, "risers", place];
  const pieces = [PIECES[0]!, PIECES[1]!, ...[15, 16, 17, 18].map((count) => ["riser", 36, count, `${count} risers`])];
  const rows = refused({ 2: [["option", "label", "value"], ...[15, 16, 17, 18].map(more)], 6: pieces }) as Table;
  const boards = (option: string): unknown => cellOf(rows, option, "boards to buy");
  for (const option of ["as drawn", "15 risers", "16 risers", "17 risers"]) expect(boards(option)).toMatch(/^\d+: /);
  expect(boards("18 risers")).toBe("not planned: one call plans as drawn and three alternates; BUY plans this one");
  expect(boards("white oak")).toBe("as drawn");
});

test("a change in the other unit has a row unit of its own", () => {
  const changed = (...rows: unknown[][]): unknown =>
    cellOf(refused({ 2: [["option", "label", "value"], ...rows] }) as Table, "15 risers", "verdict");
  // 11 in are 279.4 mm: as a number it is of the unit its own row says.
  expect(changed(["15 risers", "unit", "mm"], ["15 risers", "run", 279.4])).toBe(changed(["15 risers", "run", 11]));
  expect(changed(["15 risers", "run", 279.4])).toContain("not checked: run: 279.4 in is over 24 in");
});

test("a change is in the unit of the stair where it has no row unit", () => {
  const lengths = ["total rise", "run", "nosing", "width", "opening", "floor thickness", "handrail height"];
  const inMillimetres = ([label, value]: readonly unknown[]) => [label, lengths.includes(String(label)) ? Number(value) * 25.4 : value];
  const metric = [["unit", "mm"], ...STAIR.map(inMillimetres)];
  const verdict = (stair: Table, run: number): unknown =>
    cellOf(refused({ 2: [["option", "label", "value"], ["15 risers", "run", run]], 3: stair }) as Table, "15 risers", "verdict");
  // By hand: 11 x 25.4 = 279.4.
  expect(verdict(metric, 279.4)).toBe(verdict(STAIR, 11));
  expect(verdict(STAIR, 11)).toMatch(/to settle$/);
});

test("an error beside an alternate is its code and its sentence", () => {
  const changed = (cell: object): unknown =>
    cellOf(refused({ 2: [["option", "label", "value"], ["15 risers", "run", cell]] }) as Table, "15 risers", "verdict");
  expect(changed({ code: "#N/A", message: "not found" })).toBe("not checked: #N/A value in row 2 (run): not found");
  expect(changed({ code: "#VALUE!", message: "not found" })).toBe("not checked: value in row 2 (run): not found");
});
