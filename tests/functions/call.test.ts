import { answered } from "./answered";

const column = (rows: unknown, heading: string): unknown[] => {
  const [headings = [], ...data] = rows as unknown[][];
  return data.map((row) => row[headings.indexOf(heading)]);
};

const SQUARE = [["step", "run", "back", "front", "left offset"], [1, 10, 36, 36, "square"], [2, 10, 37, 37, "square"]];

describe("a table is read by its headings", () => {
  const backs = (table: unknown): unknown => column(answered("TREADFIT", table), "back");

  test("whatever their case, spaces, punctuation and order", () => {
    expect(backs([["FRONT", "Left-Offset", "Run ", "back"], [36, "Square", 10, 36]])).toEqual([36]);
  });

  test("or by position where the first row holds none", () => {
    expect(backs([[1, 10, 36, 36, "", "", "square"]])).toEqual([36]);
  });

  test("columns of the user's own are passed over, rows of blanks and zeros and repeated headings are skipped", () => {
    expect(
      backs([
        ["date", ...(SQUARE[0] ?? [])],
        [46000, 1, 10, 36, 36, "square"],
        ["", "", 0, null, 0, ""],
        ["date", ...(SQUARE[0] ?? [])],
        [46001, 2, 10, 37, 37, "square"],
      ]),
    ).toEqual([36, 37]);
  });

  test("a slip of the hand in a heading is named with the heading meant", () => {
    expect(
      answered("TREADFIT", [
        ["step", "run", "bak", "front"],
        [1, 10, 36, 36],
      ]),
    ).toBe('#VALUE! readings: heading "bak" is not known; did you mean "back"?');
    expect(
      answered("TREADFIT", [
        ["step", "run", "back", "frnot"],
        [1, 10, 36, 36],
      ]),
    ).toBe('#VALUE! readings: heading "frnot" is not known; did you mean "front"?');
  });

  test("a heading that is missing or appears twice, and a table of nothing, fail the call", () => {
    expect(
      answered("TREADFIT", [
        ["step", "run", "front"],
        [1, 10, 36],
      ]),
    ).toBe('#VALUE! readings: heading "back" is missing; found step, run, front');
    expect(
      answered("TREADFIT", [
        ["back", "front", "back"],
        [36, 36, 36],
      ]),
    ).toBe('#VALUE! readings: heading "back" appears twice; keep one');
    expect(
      answered("TREADFIT", [
        ["step", "run", "back", "front"],
        ["", 0, "", 0],
      ]),
    ).toBe("#VALUE! readings: has no rows; give a table with back");
    expect(answered("TREADFIT", [[0, 0], [null, ""]])).toBe("#VALUE! readings: has no rows; give a table with back");
  });
});

describe("good rows answer beside bad ones", () => {
  const rows = answered("TREADFIT", [
    ...SQUARE,
    [3, 10, "", 36, "square"],
    [4, 10, "wide", 36, "square"],
    [5, 10, -36, 36, "square"],
    [6, 1, 36, 36, "square"],
    [7, 10, { code: "#DIV/0!" }, 36, "square"],
    [8, 10, 38, 38, "square"],
  ]);

  test("each bad one with its sentence, in its place", () => {
    expect(column(rows, "step")).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(column(rows, "back").filter((cell) => typeof cell === "number")).toEqual([36, 37, 38]);
    expect(column(rows, "note").slice(2, 7)).toEqual([
      "back in step 3: is empty or 0; give a value",
      'back in step 4: read "wide", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
      "back in step 5: must be more than 0, got -36",
      'run in step 6: 1 in is under 4 in; if this is millimetres, write "1 mm"',
      "back in step 7: the cell given holds #DIV/0!; put that cell right first",
    ]);
    expect(column(rows, "length")[6]).toBe("#DIV/0! back in step 7: the cell given holds #DIV/0!; put that cell right first");
  });
});

test("a thousand readings go in one call, rows out of order keep their order, and one bad row spoils none", () => {
  const rows = Array.from({ length: 1000 }, (_, index) => [
    1000 - index,
    10,
    index === 500 ? "" : 36 + index / 1000,
    36 + index / 1000,
    "square",
  ]);
  const fitted = answered("TREADFIT", [SQUARE[0], ...rows]);
  expect(column(fitted, "step")).toEqual(rows.map(([step]) => step));
  expect(column(fitted, "back").filter((cell) => typeof cell === "number")).toHaveLength(999);
  expect(column(fitted, "note")[500]).toBe("back in step 500: is empty or 0; give a value");
});

describe("empty and 0 are one thing in a table", () => {
  test("a diagonal of 0, an empty one and `not taken` say the same", () => {
    const withDiagonal = (diagonal: unknown) =>
      answered("TREADFIT", [
        ["step", "run", "back", "front", "diagonal", "left offset"],
        [1, 10, 36, 36, diagonal, "square"],
      ]);
    expect(withDiagonal(0)).toEqual(withDiagonal(""));
    expect(withDiagonal(null)).toEqual(withDiagonal("not taken"));
  });

  test("an offset of 0 is not a measured zero; `square` is", () => {
    const noted = (offset: unknown) =>
      column(
        answered("TREADFIT", [
          ["run", "back", "front", "left offset"],
          [10, 36, 36, offset],
        ]),
        "note",
      );
    expect(noted(0)).toEqual(noted(null));
    expect(noted(0)).toEqual(['diagonal: is missing; give a diagonal, a left offset or an angle, and write "square" for a measured zero']);
    expect(noted("square")).toEqual(["unchecked: one more diagonal would check this step"]);
  });
});

describe("the stair table", () => {
  const value = (table: unknown, label: string): unknown => {
    const rows = answered("LAYOUT", table);
    return Array.isArray(rows) ? (rows as unknown[][]).find(([name]) => name === label)?.[1] : rows;
  };

  test("labels match by their letters, and an unknown one is named with the nearest", () => {
    expect(value([["Total Rise", 107.5], ["RISERS", 14], ["run:", 10]], "treads")).toBe(13);
    expect(
      value(
        [
          ["totl rise", 107.5],
          ["run", 10],
        ],
        "treads",
      ),
    ).toBe('#VALUE! stair, label: "totl rise" is not known; nearest is "total rise"');
  });

  test("its unit row sets the unit of bare numbers and of the result, wherever it stands", () => {
    expect(value([["total rise", 2700], ["risers", 14], ["run", 250], ["unit", "mm"]], "board depth")).toBe(281.75);
    expect(value([["total rise", "2700 mm"], ["risers", 14], ["run", "10 in"], ["unit", "mm"]], "run")).toBe(254);
    expect(
      value(
        [
          ["total rise", 107.5],
          ["run", 10],
          ["unit", "cm"],
        ],
        "run",
      ),
    ).toBe('#VALUE! unit: "cm" is not known; write in or mm');
  });

  test("sizes that no stair has are taken for the wrong unit or a date", () => {
    expect(
      value(
        [
          ["total rise", 2700],
          ["run", 10],
        ],
        "run",
      ),
    ).toBe('#VALUE! total rise: 2700 in is over 400 in; if this is millimetres, write "2700 mm"');
    expect(
      value(
        [
          ["total rise", 107.5],
          ["run", 254],
        ],
        "run",
      ),
    ).toBe('#VALUE! run: 254 in is over 24 in; if this is millimetres, write "254 mm"');
    // 400 in are 10,160 mm, 4 in are 101.6.
    expect(
      value(
        [
          ["unit", "mm"],
          ["total rise", 12000],
          ["run", 250],
        ],
        "run",
      ),
    ).toBe('#VALUE! total rise: 12000 mm is over 10160 mm; if this is inches, write "12000 in" or leave the unit out');
    expect(
      value(
        [
          ["unit", "mm"],
          ["total rise", 2750],
          ["run", 10],
        ],
        "run",
      ),
    ).toBe('#VALUE! run: 10 mm is under 101.6 mm; if this is inches, write "10 in" or leave the unit out');
    expect(
      value(
        [
          ["total rise", 107.5],
          ["run", 46024],
        ],
        "run",
      ),
    ).toBe("#VALUE! run: 46024 is over 20,000; the cell may hold a date: format it as text, or type the length with a space as in 7 5/8");
  });

  test("a label that appears twice must say the same", () => {
    expect(value([["total rise", 107.5], ["run", 10], ["run", 10]], "run")).toBe(10);
    expect(value([["total rise", 107.5], ["run", 10], ["run", 9]], "run")).toBe("#VALUE! run: appears twice with two values; keep one");
  });

  test("an empty nosing is a nosing of 0, a nosing left out is the usual one, and the layout says which", () => {
    expect(value([["total rise", 107.5], ["run", 10], ["nosing", ""]], "board depth")).toBe(10);
    expect(value([["total rise", 107.5], ["run", 10]], "board depth")).toBe(11.25);
  });

  test("a layout goes in as it stands and comes out the same", () => {
    const first = answered("LAYOUT", [
      ["total rise", "8' 11 1/2\""],
      ["risers", 14],
      ["run", 10],
      ["width", 36],
      ["headroom", 80],
      ["floor thickness", 11],
    ]) as unknown[][];
    const again = answered("LAYOUT", first) as unknown[][];
    const numbers = (rows: unknown[][]) =>
      Object.fromEntries(rows.map(([label, cell]) => [label, typeof cell === "number" ? Number(cell.toPrecision(12)) : cell]));
    expect(numbers(again)).toEqual(numbers(first));
  });
});

describe("a unit written beside a value of the stair table", () => {
  const stair = (...rows: unknown[][]): unknown[][] => [["total rise", 107.5], ["risers", 14], ["run", 10], ...rows];

  test("is refused where it is not the table's, and nothing is read in the wrong one", () => {
    expect(answered("LAYOUT", stair(["nosing", 25, "mm"]))).toBe(
      '#VALUE! nosing: 25 has "mm" beside it, but the table\'s unit is in; write the unit in the cell, as in "25 mm", or add a row unit',
    );
    expect(
      answered("LAYOUT", [
        ["unit", "mm"],
        ["total rise", 2750],
        ["risers", 15],
        ["run", 250],
        ["nosing", 1.25, "in"],
      ]),
    ).toMatch(/^#VALUE! nosing: 1[.]25 has "in" beside it/);
    expect(answered("LAYOUT", stair(["opening", 10, "ft"]))).toMatch(/^#VALUE! opening: 10 has "ft" beside it/);
  });

  test("is the user's own where it agrees, or stands beside text with its own unit, or is a remark", () => {
    const plain = JSON.stringify(answered("LAYOUT", stair(["nosing", 1.25])));
    for (const beside of ["in", "inches", '"', "", "to the face", 7])
      expect(JSON.stringify(answered("LAYOUT", stair(["nosing", 1.25, beside])))).toBe(plain);
    expect(JSON.stringify(answered("LAYOUT", [["unit", "in"], ...stair(["nosing", "31.75 mm", "mm"])]))).toBe(plain);
  });
});

describe("a stair table without a unit", () => {
  const metric = [["total rise", "2750 mm"], ["risers", 15], ["run", "250 mm"], ["width", "920 mm"]];

  test("is in mm where every length is metric text", () => {
    // By hand: 2750 / 15 = 183.333 mm, and the board is 250 + 31.75 = 281.75 mm deep.
    const rows = answered("LAYOUT", metric) as unknown[][];
    expect(rows[1]?.slice(0, 2)).toEqual(["unit", "mm"]);
    expect(rows.find(([label]) => label === "unit rise")?.[1]).toBeCloseTo(2750 / 15, 9);
    expect(rows.find(([label]) => label === "board depth")?.[1]).toBe(281.75);
    expect(rows.find(([label]) => label === "run")?.[1]).toBe(250);
  });

  test("is refused where metric text stands beside bare numbers, and read with a row unit", () => {
    expect(
      answered("LAYOUT", [
        ["total rise", "2750 mm"],
        ["risers", 15],
        ["run", 10],
      ]),
    ).toBe(
      '#VALUE! run: 10 has no unit and counts as inches, but total rise is metric, "2750 mm"; write all lengths in one unit, ' +
        'here "10 mm" if it is millimetres, or add a row unit',
    );
    const rows = answered("LAYOUT", [["unit", "in"], ["total rise", "2750 mm"], ["risers", 15], ["run", 10]]) as unknown[][];
    expect(rows.find(([label]) => label === "run")?.[1]).toBe(10);
  });
});

describe("what was found by trying it", () => {
  test("a comma for thousands is not turned into a thousandth", () => {
    expect(answered("TOINCHES", "1,000 mm")).toBe(
      '#VALUE! measure: read "1,000 mm", which has a comma; write 1000 mm or 1.000 mm, whichever is meant',
    );
    expect(answered("TOINCHES", "7,5")).toBe('#VALUE! measure: read "7,5", which has a comma; write 7.5 with a point');
  });

  test("a hair under 0 is shy of it", () => {
    expect([answered("TAPE", -0.03, 16, false, true), answered("TAPE", 0.03, 16, false, true)]).toEqual(['0"−', '0"+']);
  });

  test("the packing of a flight is not its finished rises: CHECK does not pass it over", () => {
    const packing = answered("EQUALIZE", [[7.5], [8], [7.75]], 1);
    expect(
      answered(
        "CHECK",
        [
          ["total rise", 108.5],
          ["risers", 14],
          ["run", 10],
        ],
        "irc-2021",
        packing,
      ),
    ).toMatch(/^#VALUE! steps: heading "(as found|packing|unit)" is not read here/);
  });
});

describe("one value or a range of them", () => {
  test("a column in gives a column out, a row a row, with nothing where nothing stood", () => {
    expect(answered("TAPE", [[7.5], [7.0625], [""]])).toEqual([['7 1/2"'], ['7 1/16"'], [""]]);
    expect(answered("RISERS", [[107.5, 0, "", 120]])).toEqual([[14, "", "", 16]]);
    expect(answered("TOINCHES", [["1/2"], ["x"], ["2 ft"]])).toEqual([
      [0.5],
      ['#VALUE! measure: read "x", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"'],
      [24],
    ]);
  });

  test("two ranges go together cell by cell, and must be of one size", () => {
    expect(answered("PITCH", [[3], [4]], [[4], [4]])).toEqual([[expect.closeTo(36.8699, 4)], [45]]);
    expect(answered("PITCH", [[3], [4]], 4)).toEqual([[expect.closeTo(36.8699, 4)], [45]]);
    expect(answered("PITCH", [[3], [4]], [[4, 4]])).toBe(
      "#VALUE! run: is 1 x 2 cells where rise is 2 x 1; give ranges of one size, or one value",
    );
  });

  test("a range where one value belongs is refused by name", () => {
    expect(answered("STORYPOLE", [[30], [31]], 4)).toBe("#VALUE! totalRise: takes one value, got a range of 2 x 1 cells");
  });
});

describe("single arguments", () => {
  test("left out takes the default, 0 is 0", () => {
    expect(answered("RISERS", 108.5)).toBe(14);
    expect(answered("RISERS", 108.5, null)).toBe(14);
    expect(answered("RISERS", 108.5, "")).toBe(14);
    expect(answered("RISERS", 108.5, 0)).toBe("#VALUE! maxRise: must be more than 0, got 0");
  });

  test("a required one that is missing says what it is", () => {
    expect(answered("RISERS")).toBe("#VALUE! totalRise: is missing; give finish floor to finish floor, measured plumb");
  });

  test("a default is inches whatever the unit", () => {
    // By hand: 14 x 196.85 = 2,755.9.
    expect(answered("RISERS", 2755.9, undefined, "mm")).toBe(14);
    expect(answered("RISERS", 2756, undefined, "mm")).toBe(15);
    expect(answered("RISERS", 2781, undefined, "mm")).toBe(15);
  });

  test("the host may pass an error cell under any of its names", () => {
    for (const error of [{ code: "#N/A" }, { errorCode: "#N/A" }, { type: "Error", basicValue: "#N/A" }]) {
      expect(answered("RISERS", error)).toBe("#N/A totalRise: the cell given holds #N/A; put that cell right first");
    }
    expect(answered("RISERS", { code: "#REF!" })).toBe("#VALUE! totalRise: the cell given holds #REF!; put that cell right first");
  });
});

describe("the host's own object comes last and is no cell", () => {
  // The platform's documentation of custom functions: the invocation object is the last argument, with functionName, address and
  // parameterAddresses.
  const invocation = { functionName: "RISERS", address: "Sheet1!B2" };

  test("with the metadata of this version, or of one with fewer arguments", () => {
    expect(answered("RISERS", 108.5, null, null, invocation)).toBe(14);
    expect(answered("RISERS", 108.5, null, invocation)).toBe(14);
    expect(answered("RISERS", 108.5, invocation)).toBe(14);
    expect(answered("RISERS", invocation)).toBe("#VALUE! totalRise: is missing; give finish floor to finish floor, measured plumb");
  });

  test("an object of a cell in last place is a cell", () => {
    // CellValue of the platform's documentation: `type` is a CellValueType, `basicValue` what a function that knows no data types gets.
    expect(answered("RISERS", { type: "Double", basicType: "Double", basicValue: 108.5, numberFormat: "0.0" })).toBe(14);
    expect(answered("RISERS", 108.5, { type: "String", basicType: "String", basicValue: "7 3/4" })).toBe(14);
    expect(answered("RISERS", { type: "Entity", text: "stair", properties: {}, basicType: "Error", basicValue: "#VALUE!" })).toBe(
      "#VALUE! totalRise: the cell given holds #VALUE!; put that cell right first",
    );
    expect(answered("RISERS", { code: "#N/A" })).toBe("#N/A totalRise: the cell given holds #N/A; put that cell right first");
  });
});

describe("ranges have a promised size", () => {
  const rows = (count: number) => Array.from({ length: count }, (_, index) => [`row ${index + 1}`, index + 1]);

  test("125,000 rows are picked from, whole columns too", () => {
    expect(answered("PICK", rows(125_000), "row 125000")).toBe(125_000);
    expect(answered("PICK", [...rows(2), ...Array.from({ length: 300_000 }, () => ["", 0])], "row 2")).toBe(2);
  });

  test("more of them than promised is said with both numbers", () => {
    expect(answered("PICK", rows(200_001), "row 1")).toBe("#VALUE! table: is 200,001 rows; this function takes up to 200,000");
    expect(
      answered(
        "UNIFORMITY",
        Array.from({ length: 20_001 }, () => [7.5]),
      ),
    ).toBe("#VALUE! values: is 20,001 rows; this function takes up to 20,000");
    expect(
      answered(
        "TAPE",
        Array.from({ length: 10_001 }, () => [7, 8]),
      ),
    ).toBe("#VALUE! length: is 20,002 cells; this function takes up to 20,000");
    expect(answered("EXTEND", rows(125_000), [["a", 1]])).toBe("#VALUE! quantities: is 125,000 rows; this function takes up to 5,000");
  });

  test("PICK names the row and column of a cell that holds no value", () => {
    const table = [["label", "value"], ["total rise", {}]];
    const says = 'the cell given holds something that is neither text nor number';
    expect(answered("PICK", table, "total rise")).toBe(`#VALUE! table: the row "total rise", its second column: ${says}`);
    expect(answered("PICK", table, "total rise", "value")).toBe(`#VALUE! table: the row "total rise", "value": ${says}`);
  });

  test("the nearest of long labels is told by their first letters", () => {
    const long = (start: string) => `${start}${"x".repeat(30_000)}`;
    expect(
      answered(
        "PICK",
        [
          [long("oak"), 1],
          [long("ash"), 2],
          ["elm", 3],
        ],
        long("oik"),
      ),
    ).toMatch(/^#N\/A label: "oikx{77}…" is not known; nearest is "oakx{77}…"$/);
  });
});

describe("a rate is what it says", () => {
  const costs = [["item", "cost"], ["material", 1000]];

  test.each([
    // By hand: 20 x 3.5; 71.25 x 2.33 = 166.0125; 20 x 11.
    ["250%", 20, 70], ["250 %", 20, 70], [2.5, 20, 70], ["133%", 71.25, 166.01], ["1000%", 20, 220], [5, 20, 120], [0, 20, 20],
  ])("a markup of %s", (rate, cost, price) => {
    expect(answered("SELLINGPRICE", cost, rate)).toBe(price);
  });

  test.each([
    [25, "rate: 25 is 2500 %, write 25% or 0.25"],
    [5.01, "rate: 5.01 is 501 %, write 5.01% or 0.0501"],
    ["1001%", 'rate: must be 1000 % or less, got "1001%"'],
    [-0.1, "rate: must be 0 or more, got -0.1"],
  ])("a markup of %s is refused", (rate, says) => {
    expect(answered("SELLINGPRICE", 15, rate)).toBe(`#VALUE! ${says}`);
  });

  test("a margin leaves something for the cost, a tax is never more than what it falls on unless it says so", () => {
    expect(answered("SELLINGPRICE", 15, 1.5, "margin")).toBe("#VALUE! rate: a margin of 150 % leaves no cost; write less than 100 %");
    expect(answered("BID", costs, [["overhead on cost", 2.5], ["profit of price", 1.5]])).toBe(
      '#VALUE! rate in row 2 (profit of price): 1.5 is 150 %, more than the whole; write "150%" if it is meant, else a share under 1',
    );
    expect(answered("BID", costs, [["tax on price", 1.33]])).toBe(
      '#VALUE! rate in row 1 (tax on price): 1.33 is 133 %, more than the whole; write "133%" if it is meant, else a share under 1',
    );
    expect(answered("BID", costs, [["tax on price", 7]])).toBe("#VALUE! rate in row 1 (tax on price): 7 is 700 %, write 7% or 0.07");
    // By hand: overhead 250 % of 1,000 is 2,500; markup 133 % of 3,500 is 4,655; the price 8,155.
    expect(column(answered("BID", costs, [["overhead on cost", "250%"], ["profit on cost", "133%"]]), "cost").slice(5)).toEqual([
      1000, 0, 2500, 4655, 0, 8155, 0, 8155,
    ]);
  });
});

test("a text longer than a cell holds, 32,767 characters (Excel specifications and limits), ends in dots", () => {
  const stock = [["label", "length", "price"], ["y".repeat(32_767), 96, 24]];
  const [label] = column(answered("OFFCUTS", [["length"], [40]], stock, undefined, undefined, 12), "label") as string[];
  expect([label?.length, label?.slice(0, 12), label?.slice(-2)]).toEqual([32_767, "offcut of yy", "y…"]);
});
