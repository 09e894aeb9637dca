import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";

type Cells = readonly (readonly (string | number)[])[];

const called = (id: string, ...given: readonly unknown[]): unknown => call(catalogue.find((each) => each.id === id)!, given);

const cells = (id: string, ...given: readonly unknown[]): Cells => {
  const answer = called(id, ...given);
  if (!Array.isArray(answer)) throw new Error(isFailed(answer) ? answer.says : String(answer));
  return answer as Cells;
};

const sentence = (id: string, ...given: readonly unknown[]): string => {
  const answer = called(id, ...given);
  return isFailed(answer) ? answer.says : "";
};

/** Invented: 14 risers to 107 1/2, run 10, 36 3/4 between skirts, no open end. */
const STAIR = [["total rise", 107.5], ["risers", 14], ["run", 10], ["width", 36.75], ["landing nosing", "no"]];
const HEADINGS = ["label", "length", "width", "thickness", "price"];
const OAK = ["oak 10 ft", 120, 11.25, 1, 75];
const POPLAR = ["poplar 10 ft", 120, 7.25, 0.75, 22];

describe("blanks cut from boards", () => {
  test("CUTS takes BLANK as it stands: treads out of the wide boards, risers out of the narrow ones, each under its name", () => {
    const blanks = cells("BLANK", STAIR);
    const [, ...rows] = cells("CUTS", blanks, [HEADINGS, OAK, POPLAR]);
    // By hand: 13 treads of 36 3/4 x 11 1/4 and 14 risers; 3 of 36 3/4 and their kerfs are 110 5/8 of 120.
    const count = (stock: string, label: string): number => rows.filter((row) => row[1] === stock && row[3] === label).length;
    expect([
      count("oak 10 ft", "tread"),
      count("poplar 10 ft", "tread"),
      count("oak 10 ft", "riser") + count("poplar 10 ft", "riser"),
    ]).toEqual([13, 0, 14]);
    // By hand: 5 oak hold 15 and leave two places for risers; 12 risers take 4 poplar: 5 x 75 + 4 x 22.
    expect(new Map(cells("PLAN", blanks, [HEADINGS, OAK, POPLAR]).map(([label, value]) => [label, value])).get("cost")).toBe(463);
  });

  test("boards too narrow for the treads are refused with both sizes, in every function of the plan", () => {
    const blanks = cells("BLANK", STAIR);
    for (const id of ["CUTS", "BUY", "PLAN", "OFFCUTS"]) {
      expect(sentence(id, blanks, [HEADINGS, POPLAR], 0.125, 0, 12)).toBe(
        'width: piece tread is 11 1/4" wide, and the widest available stock of its grade is 7 1/4"; add wider stock',
      );
    }
  });

  test("stock without a width is refused where the pieces have one", () => {
    expect(sentence("BUY", cells("BLANK", STAIR), [["label", "length", "price"], ["oak", 120, 75]])).toBe(
      'width: stock oak (120") has none, and piece tread is 11 1/4" wide; give the width of the stock',
    );
  });

  test("a metric stair is cut from metric boards", () => {
    const stair = [["unit", "mm"], ["total rise", 2750], ["risers", 15], ["run", 250], ["width", 900], ["landing nosing", "no"]];
    const stock = [["label", "length", "width", "thickness", "price"], ["oak 2.4", 2400, 290, 32, 95], ["mdf 2.4", 2400, 220, 25, 18]];
    // By hand: run 250 + nosing 31.75 = 281.75 is under 290; 14 treads, two to a board of 2400.
    const goods = cells("BUY", cells("BLANK", stair), stock, 3, 0, "", "mm");
    expect(goods.find(([item]) => item === "oak 2.4")![2]).toBeGreaterThanOrEqual(7);
    expect(sentence("BUY", cells("BLANK", stair), [stock[0], stock[2]], 3, 0, "", "mm")).toBe(
      "width: piece tread is 281.75 mm wide, and the widest available stock of its grade is 220 mm; add wider stock",
    );
  });
});

describe("millimetres are not taken for inches", () => {
  const stair = [["unit", "mm"], ["total rise", 2750], ["risers", 15], ["run", 250], ["width", 900], ["landing nosing", "no"]];

  test("a metric stair's blanks without the unit are refused, and so are its boards", () => {
    expect(sentence("CUTS", cells("BLANK", stair), [HEADINGS, OAK])).toMatch(
      /^length in row 2 \(tread\): 900 in is over 720 in; if this is millimetres, write "900 mm"$/,
    );
    expect(sentence("CUTS", [["length"], [36]], [HEADINGS, ["oak", 2400, 290, 25, 95]])).toMatch(
      /^length in row 2 \(oak\): 2400 in is over 720 in/,
    );
    expect(sentence("CUTS", [["length"], [36]], [HEADINGS, ["oak", 120, 290, 25, 95]])).toMatch(
      /^width in row 2 \(oak\): 290 in is over 72 in/,
    );
  });
});

describe("fits cut from boards", () => {
  test("TREADFIT's depth is the width of the tread, RISERFIT's height that of the riser", () => {
    const treads = cells("TREADFIT", [["step", "run", "back", "front", "left angle"], [1, 10, 36, 36, "square"]], 1.25);
    expect(sentence("CUTS", treads, [HEADINGS, POPLAR])).toBe(
      'width: piece 1 is 11 1/4" wide, and the widest available stock of its grade is 7 1/4"; add wider stock',
    );
    expect(cells("CUTS", treads, [HEADINGS, OAK])).toHaveLength(2);
    const risers = cells("RISERFIT", [["step", "height", "top", "bottom", "left angle"], [1, 7.5, 36, 36, "square"]]);
    expect(sentence("CUTS", risers, [HEADINGS, POPLAR])).toBe(
      'width: piece 1 is 7 1/2" wide, and the widest available stock of its grade is 7 1/4"; add wider stock',
    );
  });

  test("a width beside them is the one that counts", () => {
    expect(cells("CUTS", [["length", "width", "depth"], [36, 7, 11.25]], [HEADINGS, POPLAR])).toHaveLength(2);
  });
});
