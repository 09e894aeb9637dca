import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import type { Answer } from "../../src/functions/cells";
import type { Table } from "../../src/functions/columns";
import type { Declaration, ExampleCell } from "../../src/functions/declare";
import { resultHeadings, tablesOf } from "../../src/functions/describe";
import { OWN_REMARKS } from "../../src/functions/headings";
import * as tables from "../../src/functions/tables";
import { wordKey } from "../../src/solver/word-key";
import { words } from "../../src/solver/words";

const declared = (id: string): Declaration => {
  const found = catalogue.find((declaration) => declaration.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

/** A call as the host makes it; error cells as their code and sentence. */
const answered = (declaration: Declaration, cells: readonly unknown[]): unknown => {
  const text = (cell: Answer): unknown => (typeof cell === "object" ? `${cell.failed} ${cell.says}` : cell);
  const answer = call(declaration, cells);
  return Array.isArray(answer) ? answer.map((row) => row.map(text)) : text(answer);
};

const headingsOf = ({ columns }: Table): string[] => Object.keys(columns).map(words);

const { stair, takeoffItems, ...readTables } = tables;
const stairLabels = headingsOf(stair);
const everyHeading = [
  ...new Set([
    ...Object.values(readTables).flatMap(headingsOf),
    ...stairLabels,
    ...headingsOf(takeoffItems),
    ...catalogue.flatMap(resultHeadings),
  ]),
];

type Rows = readonly (readonly unknown[])[];

const isKnownTo = (table: Table, heading: string): boolean => headingsOf(table).some((one) => wordKey(one) === wordKey(heading));

/** A function that reads the table, with arguments that give an answer and the table among them under its headings. */
const reader = (table: Table) => {
  for (const declaration of catalogue.filter((one) => tablesOf(one).includes(table))) {
    const names = Object.keys(declaration.parameters);
    const at = Object.values(declaration.parameters).findIndex((parameter) => parameter.kind === "table" && parameter.table === table);
    for (const example of declaration.examples) {
      const given = example.given as Readonly<Record<string, ExampleCell | undefined>>;
      const rows = given[names[at] ?? ""];
      if ("fails" in example || !Array.isArray(rows)) continue;
      const isHeaded = (rows as Rows)[0]?.some((cell) => typeof cell === "string" && isKnownTo(table, cell)) === true;
      const headed: Rows = isHeaded ? (rows as Rows) : [headingsOf(table).slice(0, (rows as Rows)[0]?.length), ...(rows as Rows)];
      const withTable = (other: Rows): unknown =>
        answered(
          declaration,
          names.map((name, place) => (place === at ? other : (given[name] ?? undefined))),
        );
      return { headed, withTable };
    }
  }
  throw new Error(`no example reads ${table.name}`);
};

const withColumn = (rows: Rows, heading: string, cell: unknown): Rows => rows.map((row, index) => [...row, index === 0 ? heading : cell]);

const ERROR = { code: "#DIV/0!", message: "divided by nothing" };

/** Columns a shop keeps for itself, none of them ours. */
const THEIR_OWN = ["remarks", "colour", "date", "customer", "bay", "checked by", "Bemerkung", "phone no."];

describe.each(Object.entries(readTables))("%s", (_, table) => {
  const { headed, withTable } = reader(table);
  const base = withTable(headed);
  const stands = (heading: string): boolean => headed[0]?.some((cell) => wordKey(String(cell)) === wordKey(heading)) === true;
  const takes = table.takes.flatMap((id) => resultHeadings(declared(id)));
  const isRemark = (heading: string): boolean => OWN_REMARKS.some((own) => wordKey(own) === wordKey(heading));
  const isTaken = (heading: string): boolean => isRemark(heading) || takes.some((one) => wordKey(one) === wordKey(heading));

  test("is answered with its own headings", () => {
    expect(Array.isArray(base)).toBe(true);
    expect(JSON.stringify(base)).not.toContain("is not read here");
  });

  test("reads every heading it knows", () => {
    for (const heading of headingsOf(table)) {
      const answer = JSON.stringify(withTable(withColumn(headed, heading, ERROR)));
      if (stands(heading)) expect(answer).toContain(`heading \\"${heading}\\" appears twice`);
      else expect([heading, answer.includes("#DIV/0!")]).toEqual([heading, true]);
    }
  });

  test("passes over the headings of the results it takes, whole or in part", () => {
    for (const heading of takes.filter((one) => !isKnownTo(table, one)))
      expect(withTable(withColumn(headed, heading, "of a result"))).toEqual(base);
  });

  test("refuses every other heading and label of ours by name, with the nearest of its own and where it belongs", () => {
    // a word for how many is the quantity of a table that has one, these two where its own heading does not stand there
    const isQuantity = (heading: string): boolean =>
      "quantity" in table.columns && (heading === "count" || (["pieces", "number"].includes(heading) && !stands("quantity")));
    const refused = everyHeading.filter((heading) => !isKnownTo(table, heading) && !isTaken(heading) && !isQuantity(heading));
    expect(refused.length).toBeGreaterThan(100);
    for (const heading of refused) {
      const answer = String(withTable(withColumn(headed, heading, 1)));
      expect(answer).toMatch(
        /^#VALUE! \w+: heading ".*" is not read here; it belongs in [^;]*(; nearest here is "[^"]*")?; rename the column or leave it out$/,
      );
      expect(answer).toMatch(
        /in (the stair table|the items of TAKEOFF|the result of [A-Z]+|[a-z]+ of [A-Z]+)( and others)?; (nearest|rename)/,
      );
      expect(answer).toContain(`heading "${heading}" is`);
      const near = /nearest here is "([^"]*)"/.exec(answer)?.[1];
      if (near !== undefined) expect(headingsOf(table)).toContain(near);
    }
  });

  test("leaves columns of the user's own alone", () => {
    for (const heading of THEIR_OWN.filter((one) => !isKnownTo(table, one)))
      expect(withTable(withColumn(headed, heading, "anything"))).toEqual(base);
  });

  test("takes only results that there are", () =>
    table.takes.forEach((id) => expect(resultHeadings(declared(id)).length).toBeGreaterThan(1)));
});

describe("the stair table", () => {
  const layout = (label: string, value: unknown): unknown =>
    answered(declared("LAYOUT"), [
      [
        ["total rise", 107.5],
        ["run", 10],
        [label, value],
      ],
    ]);

  test("reads every label it knows, and refuses every heading that it does not by name", () => {
    // Of the other names of labels, this one is a heading of another table: the rise of a step.
    const known = [...stairLabels, "rise"];
    for (const heading of everyHeading.filter((one) => wordKey(one) !== "label")) {
      const isKnown = known.some((one) => wordKey(one) === wordKey(heading));
      if (isKnown) expect([heading, layout(heading, ERROR)]).toEqual([heading, expect.stringContaining("#DIV/0!")]);
      else
        expect(layout(heading, 1)).toMatch(
          new RegExp(`^#VALUE! stair, label: "${heading.replace(/[.+*?()]/g, "\\$&")}" is not known; (nearest is|there are) "`),
        );
    }
  });
});

describe("headings that were dropped in silence", () => {
  const readings = (heading: string): unknown =>
    answered(declared("TREADFIT"), [
      [
        ["step", "run", "back", "front", heading],
        [1, 10, 36, 36, 1],
      ],
    ]);

  test.each([
    [
      "left heel",
      'readings: heading "left heel" is not read here; it belongs in the result of TREADFIT; rename the column or leave it out',
    ],
    [
      "price",
      'readings: heading "price" is not read here; it belongs in prices of EXTEND and others; rename the column or leave it out',
    ],
    [
      "height",
      'readings: heading "height" is not read here; it belongs in readings of RISERFIT and others; nearest here is "run"; rename ' +
        "the column or leave it out",
    ],
    [
      "left flare",
      'readings: heading "left flare" is not read here; it belongs in readings of RISERFIT; nearest here is "left lean"; rename ' +
        "the column or leave it out",
    ],
    [
      "top",
      'readings: heading "top" is not read here; it belongs in readings of RISERFIT and others; nearest here is "back"; rename ' +
        "the column or leave it out",
    ],
  ])("%s in tread readings", (heading, says) => expect(readings(heading)).toBe(`#VALUE! ${says}`));

  test.each([
    ["left lean", 'it belongs in readings of TREADFIT; nearest here is "left flare"'],
    ["right lean", 'it belongs in readings of TREADFIT; nearest here is "right flare"'],
    ["front", 'it belongs in readings of TREADFIT and others; nearest here is "bottom"'],
  ])("%s in riser readings", (heading, says) => {
    expect(
      answered(declared("RISERFIT"), [
        [
          ["step", "height", "top", "bottom", heading],
          [1, 7.5, 36, 36, 1],
        ],
      ]),
    ).toBe(`#VALUE! readings: heading "${heading}" is not read here; ${says}; rename the column or leave it out`);
  });

  test.each(["CUTS", "BUY", "PLAN"])("a price over pieces of %s is told to its own stock", (id) => {
    expect(
      answered(declared(id), [
        [
          ["length", "price"],
          [40, 9],
        ],
        [
          ["length", "price"],
          [96, 30],
        ],
      ]),
    ).toContain(`pieces: heading "price" is not read here; it belongs in stock of ${id} and others; rename the column`);
  });

  test("a slip of the hand is told from another table's heading", () => {
    expect(readings("leftoffset")).toBeInstanceOf(Array);
    expect(readings("left ofset")).toBe('#VALUE! readings: heading "left ofset" is not known; did you mean "left offset"?');
  });

  test("a table of another kind is refused by its first heading", () => {
    expect(
      answered(declared("TREADFIT"), [
        [
          ["price", "unit"],
          ["5", "each"],
        ],
      ]),
    ).toBe(
      '#VALUE! readings: heading "price" is not read here; it belongs in prices of EXTEND and others; rename the column or leave it out',
    );
  });
});

test("a first row of texts that names an item of the takeoff is a row of data", () => {
  expect(answered(declared("EXTEND"), [[["notch", "3", "each"]], [["notch", "2", "each"]], false])).toEqual([
    ["notch", 3, "each", 2, 6, ""],
  ]);
});

test("headings said again between rows are skipped, a row with something in a column of the user's own is a row", () => {
  const quantities = (rows: unknown[][]): unknown =>
    (
      answered(declared("HOURS"), [
        rows,
        [
          ["item", "hours"],
          ["notch", 2],
        ],
        false,
      ]) as unknown[][]
    ).map(([, quantity]) => quantity);
  expect(quantities([["item", "quantity"], ["notch", 1], ["Items", "Quantity"], ["notch", 3]])).toEqual([2, 6]);
  expect(
    quantities([
      ["item", "quantity", "colour"],
      ["notch", 1, ""],
      ["", "", "red"],
    ]),
  ).toEqual([2, expect.stringContaining("item in row 3: is empty")]);
});

test("fifteen thousand rows under headings of our own are read", () => {
  const rows = Array.from({ length: 15000 }, (_, index) => [`piece ${index}`, 1, "no"]);
  expect(answered(declared("BID"), [[["item", "costs", "taxed"], ...rows], [["burden", 0]]])).toContainEqual(["direct", 15000, 1, ""]);
});

describe("a quantity under a plain word", () => {
  const cut = (...rows: unknown[][]): unknown => answered(declared("CUTS"), [rows, [["length", "price"], [96, 30]]]);
  const worked = (...rows: unknown[][]): unknown => answered(declared("HOURS"), [rows, [["item", "hours"], ["newel", 2]]]);

  test.each(["Pcs", "pieces", "Pieces", "No.", "Nos", "count", "No. off", "How many", "number of"])("%s is the quantity", (word) => {
    // Three pieces of 40 take two sticks of 96, as they do under quantity; 5 newels at 2 hours are 10.
    expect(cut(["length", word], [40, 3])).toEqual(cut(["length", "quantity"], [40, 3]));
    expect(worked(["item", word], ["newel", 5])).toEqual(worked(["item", "quantity"], ["newel", 5]));
    expect(worked(["item", word], ["newel", 5], ["item", word], ["newel", 1])).toEqual(
      worked(["item", "quantity"], ["newel", 5], ["newel", 1]),
    );
  });

  test("beside a quantity it is a column of the user's own", () => {
    expect(worked(["No.", "item", "Qty"], [1, "newel", 5])).toEqual(worked(["item", "quantity"], ["newel", 5]));
  });

  test.each(["Qnty", "quantiy", "qtty", "Quanity"])("%s is refused as a slip", (word) => {
    expect(cut(["length", word], [40, 3])).toBe(`#VALUE! pieces: heading "${word}" is not known; did you mean "quantity"?`);
  });

  test("over the numbers of the rows, over names and beside another it is refused by name", () => {
    expect(worked(["No.", "item"], [1, "newel"], [2, "cap"], [3, "rail"])).toBe(
      '#VALUE! work: heading "No." may not be the quantity: its rows are numbered 1, 2, 3 and so on; write "quantity" over how ' +
        "many, or leave the column out",
    );
    expect(cut(["Piece", "length"], ["tread", 40], ["riser", 38])).toBe(
      '#VALUE! pieces: heading "Piece" may not be the quantity: row 2 has "tread"; write "quantity" over how many, or leave the column out',
    );
    expect(worked(["No.", "item", "Pcs"], [1, "newel", 5])).toBe(
      '#VALUE! work: headings "No." and "Pcs" may each be the quantity; write "quantity" over how many',
    );
  });

  test("without headings it is a unit in the first row", () => {
    // 5 newels at 3 each.
    expect(answered(declared("EXTEND"), [[["newel", 5, "pcs"]], [["newel", 3, "each"]]])).toContainEqual(["newel", 5, "pcs", 3, 15, ""]);
  });

  test.each(["Pcs", "count", "Qnty"])("%s over stock is asked for as available", (word) => {
    expect(
      answered(declared("CUTS"), [
        [
          ["length", "quantity"],
          [40, 3],
        ],
        [
          ["length", "price", word],
          [96, 30, 1],
        ],
      ]),
    ).toMatch(/^#VALUE! stock: heading ".*(did you mean|nearest here is) "available"/);
  });

  test("it is no label and no goods", () => {
    expect(
      answered(declared("EXTEND"), [
        [
          ["item", "quantity"],
          ["pieces", 2],
        ],
        [
          ["item", "price"],
          ["quantity", 5],
          ["pieces", 3],
        ],
      ]),
    ).toContainEqual(["pieces", 2, "", 3, 6, ""]);
  });
});
