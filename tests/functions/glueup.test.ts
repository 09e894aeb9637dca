import { call } from "../../src/functions/call";
import { isFailed } from "../../src/functions/cells";
import { TREADFIT } from "../../src/functions/fit/treadfit";
import { BLANK } from "../../src/functions/order/blank";
import { ORDER } from "../../src/functions/order/order";
import { GLUEUP } from "../../src/functions/yield/glueup";
import { TALLY } from "../../src/functions/yield/tally";

type Cells = readonly (readonly unknown[])[];

const answered = (declaration: Parameters<typeof call>[0], ...cells: unknown[]): Cells => {
  const answer = call(declaration, cells);
  if (!Array.isArray(answer)) throw new Error(isFailed(answer) ? answer.says : String(answer));
  return answer;
};
const says = (...cells: unknown[]): string => {
  const answer = call(GLUEUP, cells);
  return isFailed(answer) ? answer.says : "no error";
};
const totalOf = (rows: Cells): Readonly<Record<string, unknown>> => {
  const [headings = [], ...body] = rows;
  return Object.fromEntries(headings.map((heading, place) => [heading, body.find(([panel]) => panel === "total")?.[place]]));
};

const PANEL = [["label", "length", "width"], ["tread", 42, 11.25]] as const;
const HEADINGS = ["label", "length", "width", "thickness", "price"] as const;
const BOARDS = [[...HEADINGS], ["A", 138, 8, "5/4", 40], ["B", 138, 8, "5/4", 44]] as const;
const panel = (heading: string, cell: unknown): Cells => [[...PANEL[0], heading], [...PANEL[1], cell]];
const boards = (heading: string, ...cells: unknown[]): Cells =>
  [[...HEADINGS, heading], ...cells.map((cell, place) => ["AB".charAt(place), 138, 8, "5/4", 40, cell])];

describe("what is wrong with a glue-up, in a sentence", () => {
  test.each<[string, Cells, Cells, Cells | undefined]>([
    ["width: panel tread has none; give its finished width", [["label", "length"], ["tread", 42]], BOARDS, undefined],
    [
      "thickness: panel tread has none, and the boards are of several, 5/4, 6/4; give its finished thickness",
      PANEL, [[...HEADINGS], ["A", 138, 8, "5/4", 40], ["B", 138, 8, "6/4", 44]], undefined,
    ],
    [
      "grade: panel tread has none, and the boards are of several, FAS, 1C; give one, or write any under also from",
      PANEL, boards("grade", "FAS", "1C"), undefined,
    ],
    [
      "species: panel tread has none, and the boards are of several, oak, none; give the panel's",
      PANEL, boards("species", "oak", ""), undefined,
    ],
    [
      'grade: no board is "FAS" or "Select"; panel tread takes no other; write one that will do under also from',
      [[...PANEL[0], "grade", "also from"], [...PANEL[1], "FAS", "Select"]], boards("grade", "1C", "1C"), undefined,
    ],
    [
      'species: no board is "ash", and panel tread takes no other; add boards',
      panel("species", "ash"), boards("species", "oak"), undefined,
    ],
    [
      'thickness: panel tread is 1 1/4" thick when glued, more than 5/4 dresses to (1 1/16"); add thicker boards',
      panel("thickness", 1.25), BOARDS, undefined,
    ],
    [
      'thickness: panel tread is 1 1/8" thick when glued, more than 5/4 dresses to (1 1/16"); add thicker boards',
      panel("thickness", 1), BOARDS, [["plane", 0.125]],
    ],
    [
      'length: panel tread is 43" long in the rough, more than the longest clear stretch of its boards, 38" on board B; add longer boards',
      PANEL, boards("clear", "2 to 30", "4 to 42"), undefined,
    ],
    [
      'least strip: panel tread takes strips of 2" or more, and its widest board nets 1 7/8"; add wider boards',
      PANEL, [[...HEADINGS], ["A", 138, 2, "5/4", 40]], undefined,
    ],
    [
      'strips: 2 of at most 5 1/2" are 11", and panel tread needs 11 1/2"; write more strips or a wider greatest strip',
      PANEL, BOARDS, [["strips", 2]],
    ],
    ['least strip: 6" is more than the greatest strip, 5 1/2"; write it smaller', PANEL, BOARDS, [["least strip", 6]]],
    [
      "panels: 201 panels are more than one plan takes; split the job into plans of 200 or fewer",
      panel("quantity", 201), BOARDS, undefined,
    ],
    [
      "tally: 401 boards are more than one plan takes; leave out what will not be used, 400 or fewer",
      PANEL, [[...HEADINGS, "quantity"], ["A", 138, 8, "5/4", 40, 401]], undefined,
    ],
    [
      'tally: at 43" its boards net 45 3/4" at most, and panel tread and its like need 46"; add boards',
      panel("quantity", 4), BOARDS, undefined,
    ],
    [
      // By hand: at most three sections of 7 5/8 net, and 6 1/4 twice and 11 are 23 1/2.
      "tally: its boards are too small for all 3 panels together; add boards",
      [["length", "width", "quantity"], [42, 6, 2], [30, 10.75, 1]], [[...HEADINGS], ["A", 120, 8, "5/4", 40]], undefined,
    ],
    [
      // By hand: 7 1/2 takes two strips, two panels four; C at 5 1/8 gives two of 2 3/8, under 2 1/2, and A and B no two either.
      "tally: no way was found to get all panels out of its boards; without a place: panel tread; add boards",
      [["label", "length", "width", "quantity"], ["tread", 42, 7.25, 2]],
      [[...HEADINGS], ["A", 43, 5.25, "5/4", 1], ["B", 43, 5.25, "5/4", 1], ["C", 43, 5.125, "5/4", 1]], [["least strip", 2.5]],
    ],
    [
      'glue, label in row 1: "joints" is not known; nearest is "joint"; write joint, rough length, rough width, least strip, ' +
        "greatest strip, plane, kerf, trim, strips or together",
      PANEL, BOARDS, [["joints", 1]],
    ],
    ["joint in row 1 of glue: is empty or 0; write none for 0, or leave the row out for the usual", PANEL, BOARDS, [["joint", ""]]],
    [
      "trim in row 2 of glue: is empty or 0; write none for 0, or leave the row out for the usual",
      PANEL, BOARDS, [["strips", 4], ["trim", 0]],
    ],
    ['glue: "kerf" stands there twice; keep one', PANEL, BOARDS, [["kerf", 0.125], ["Kerf", 0.25]]],
    ["strips in row 1 of glue: must be a whole number, got 2.5", PANEL, BOARDS, [["strips", 2.5]]],
    ['together in row 1 of glue: "beard" is not known; nearest is "board"; write any or board', PANEL, BOARDS, [["together", "beard"]]],
    ["plane in row 1 of glue: must be 0 or more, got -1", PANEL, BOARDS, [["plane", -1]]],
    ["greatest strip in row 1 of glue: must be more than 0, got 0", PANEL, BOARDS, [["greatest strip", "none"]]],
    ["label: board A stands in rows 2 and 3; give each board its own", PANEL, [...BOARDS.slice(0, 2), BOARDS[1]], undefined],
    ["defects: board A: 140\" to 146\" lies past its end (138\"); measure again", PANEL, boards("defects", "140 to 146"), undefined],
  ])("%s", (sentence, panels, tally, glue) => {
    expect(says(panels, tally, glue)).toBe(sentence);
  });
});

describe("a glue-up as it is typed", () => {
  test("TALLY's result goes in as it stands, its totals passed over: the same boards and money", () => {
    const tally = [
      [...HEADINGS.slice(0, 4), "board foot price"], ["A", 138, 8, "5/4", 5], ["B", 96, 8, "5/4", 4.5], ["C", 96, 6.5, "5/4", 4],
    ];
    const glued = answered(GLUEUP, PANEL, answered(TALLY, tally));
    expect(glued).toEqual(answered(GLUEUP, PANEL, tally));
    // By hand: C alone nets 2 x 6 1/8, 8 x 6 1/2 / 12 = 4 1/3 is 4, 4 x 1.25 x 4.00.
    expect(totalOf(glued)).toMatchObject({ cost: 20, "boards in all": 1 });
  });

  test("a total in cents, half a cent up", () => {
    // By hand: 8 ft x 8 / 12 = 5 1/3 is 5, 5 x 1.25 x 4.50 = 28.125.
    const tally = [[...HEADINGS.slice(0, 4), "board foot price"], ["B", 96, 8, "5/4", 4.5]];
    expect(totalOf(answered(GLUEUP, PANEL, tally))).toMatchObject({ cost: 28.13 });
  });

  test("all terms given: no row assumed; any and none are words", () => {
    const glue = [
      ["label", "value"], ["joint", "none"], ["rough length", "none"], ["rough width", "none"], ["least strip", 1], ["greatest strip", 8],
      ["plane", "none"], ["kerf", "none"], ["trim", "none"], ["strips", "any"], ["together", "any"],
    ];
    // By hand: 11 1/4 is 8 and 3 1/4 out of the two lengths of 42 of one board.
    const rows = answered(GLUEUP, PANEL, BOARDS, glue);
    expect(rows.map(([first]) => first)).toEqual(["panel", "tread", "tread", "tread", "total"]);
    expect(totalOf(rows)).toMatchObject({ "strips in all": 2, "boards in all": 1, cost: 40 });
  });

  test("millimetres, defects in them, and a thickness in them", () => {
    const tally = [["label", "length", "width", "thickness", "defects"], ["A", 1200, 130, 32, "500 to 600"]];
    const rows = answered(GLUEUP, [["label", "length", "width", "thickness"], ["cap", 560, 100, 25]], tally, undefined, "mm");
    // By hand: 560 + 25.4 of the 600 from 600 on; 500 are too short. 32 mm rough is over 5/4, which dresses to 27.
    expect(rows[1]?.slice(0, 9)).toEqual(["cap", 1, "A", 1, 600, 0, 109.6, 106.4, 585.4]);
  });

  test("a board in millimetres that is too long for one says so in them", () => {
    expect(says([["length", "width"], [560, 100]], [["length", "width", "thickness"], [20_000, 130, 32]], undefined, "mm")).toBe(
      'length: board in row 2: 20000 mm is over 18288 mm; if this is inches, write "20000 in" or leave the unit out',
    );
  });

  test("inches to millimetres scale every length by 25.4 and nothing else, where all of them are on both grids", () => {
    const glued = (per: number, unit: string): Cells =>
      answered(
        GLUEUP,
        [["label", "length", "width", "quantity"], ["tread", 42 * per, 11 * per, 3], ["cap", 30 * per, 5 * per, 1]],
        [
          ["label", "length", "width", "thickness", "edge", "defects", "price"],
          ["A", 138 * per, 8 * per, "5/4", 0.5 * per, `${44 * per} to ${46 * per}`, 40], ["B", 96 * per, 6.5 * per, "5/4", 0, "", 30],
          ["C", 120 * per, 7 * per, "5/4", 0, "", 36], ["D", 140 * per, 5.5 * per, "5/4", 0, "", 33],
        ],
        [
          ["joint", 0.5 * per], ["rough length", per], ["rough width", 0.5 * per], ["least strip", 2 * per], ["greatest strip", 5.5 * per],
          ["plane", "none"], ["kerf", 0.5 * per], ["trim", 0.5 * per], ["strips", 5], ["together", "any"],
        ],
        unit,
      );
    const [inches, metric] = [glued(1, "in"), glued(25.4, "mm")];
    const lengths = ["along", "across", "rough width", "net width", "length", "over"];
    const [headings = []] = inches;
    expect(metric).toEqual(
      inches.map((row, down) =>
        row.map((cell, place) =>
          down > 0 && typeof cell === "number" && lengths.includes(String(headings[place])) ? Number((cell * 25.4).toPrecision(15)) : cell,
        ),
      ),
    );
  });
});

describe("treads that no blank covers", () => {
  const STAIR = [["total rise", 107.5], ["risers", 14], ["run", 10.5], ["width", 36.75]] as const;

  test("ORDER says where to go, and BLANK's rows go into GLUEUP as they stand", () => {
    const order = answered(ORDER, STAIR, [["label", "length", "width", "thickness", "price"], ["oak 42", 42, 11.5, 1, 52]]);
    expect(order.map((row) => row[row.length - 1]).join(" ")).toMatch(
      /the widest long enough is 11 1\/2"; glue it up from measured boards: GLUEUP plans that/,
    );
    const blanks = answered(BLANK, STAIR);
    const boards = [
      ["label", "length", "width", "thickness", "price", "quantity"], ["A", 120, 8, "5/4", 55, 12], ["B", 144, 6.5, "5/4", 52, 8],
    ];
    const treads = blanks.filter(([item], down) => down === 0 || item === "tread");
    const glued = answered(GLUEUP, treads, boards);
    // By hand: 10 1/2 + 1 1/4 = 11 3/4 and 1/4 are 12, 13 of them under a floor that is the last; 36 3/4 + 1 = 37 3/4.
    const panels = glued.filter(([panel, strip]) => String(panel).startsWith("tread") && strip === "");
    const [headings = []] = glued;
    expect(panels).toHaveLength(13);
    expect(panels.map((row) => row[headings.indexOf("length")])).toEqual(panels.map(() => 37.75));
    for (const row of panels) expect(Number(row[headings.indexOf("net width")])).toBeGreaterThanOrEqual(12);
    // All of them at once, risers and landing nosing too: every row of BLANK is a panel.
    const all = answered(GLUEUP, blanks, [...boards, ["C", 144, 8, "5/4", 60, 12]]);
    const quantities = blanks.slice(1).reduce((sum, row) => sum + Number(row[blanks[0]!.indexOf("quantity")]), 0);
    expect(all.filter(([panel, strip]) => strip === "" && panel !== "total" && panel !== "assumed")).toHaveLength(quantities);
  });

  test("a tread of TREADFIT goes in by its depth, under its step", () => {
    const fitted = answered(TREADFIT, [["step", "run", "back", "front", "diagonal", "second diagonal"], [4, 10, 36, 36, 37.625, 37.625]]);
    const glued = answered(GLUEUP, fitted, [["label", "length", "width", "thickness"], ["A", 120, 8, "5/4"]]);
    const [headings = [], first = []] = glued;
    expect(first[0]).toBe(4);
    // By hand: 36 + 1.
    expect(first[headings.indexOf("length")]).toBeCloseTo(37, 1);
  });
});
