import { answered } from "./answered";

test("headings, labels and words of choice are read in either spelling, singular or plural", () => {
  const american = answered("TREADFIT", [["step", "run", "back", "front", "left offset"], [1, 10, 36, 36, "square"]]);
  expect(answered("TREADFIT", [["Steps", "Going", "back", "front", "Left offsets"], [1, 10, 36, 36, "square"]])).toEqual(american);
  expect(
    answered("LAYOUT", [
      ["total rise", 107.5],
      ["riser", 14],
      ["going", 10],
      ["strings", 3],
    ]),
  ).toEqual(
    answered("LAYOUT", [
      ["total rise", 107.5],
      ["risers", 14],
      ["run", 10],
      ["stringers", 3],
    ]),
  );
  expect(
    answered("TREADFIT", [
      ["run", "going", "back", "front"],
      [10, 10, 36, 36],
    ]),
  ).toBe('#VALUE! readings: heading "run" appears twice; keep one');
  // Two of 48 and the kerf of 1/8 between them are more than a stick of 96: two sticks; one piece would take one.
  expect(answered("PLAN", [["length", "qty"], [48, 2]], [["length", "price"], [96, 10]])).toContainEqual(["sticks", 2]);
});

test("the stair table takes the words of the codes for the unit rise, and says so where both disagree", () => {
  const unitRise = answered("LAYOUT", [["total rise", 108.5], ["unit rise", 7.75], ["run", 10]]);
  for (const word of ["riser height", "Rise", "riser heights"])
    expect([
      word,
      answered("LAYOUT", [
        ["total rise", 108.5],
        [word, 7.75],
        ["run", 10],
      ]),
    ]).toEqual([word, unitRise]);
  expect(
    answered("LAYOUT", [
      ["total rise", 108.5],
      ["unit rise", 7.75],
      ["riser height", 7.5],
      ["run", 10],
    ]),
  ).toContain("appears twice with two values");
});

describe("PICK", () => {
  const goods = [["item", "price"], ["oak 4/4", 5], ["oak 44", 300], ["Oak stringer", 7]];

  test("takes a name as it is written first, and other numbers for another name", () => {
    expect(answered("PICK", goods, "oak 44")).toBe(300);
    expect(answered("PICK", [["item", "price"], ["oak", ""], ["ash", null]], "ash", "price")).toBe(
      '#N/A table: the row "ash" has nothing in "price"; fill that cell, or pick another',
    );
    expect(answered("PICK", [["ash", null]], "ash")).toBe(
      '#N/A table: the row "ash" has nothing in its second column; fill that cell, or pick another',
    );
    expect(answered("PICK", goods, "OAK  4/4")).toBe(5);
    expect(answered("PICK", [["item", "price"], ["oak 4/4", 5]], "oak 44")).toBe('#N/A label: "oak 44" is not known; nearest is "oak 4/4"');
  });

  test("finds a label in another spelling or number, and refuses where it may be two", () => {
    expect(answered("PICK", goods, "oak strings", "prices")).toBe(7);
    expect(answered("PICK", [["label", "value"], ["total run", 130]], "total going")).toBe(130);
    expect(
      answered(
        "PICK",
        [
          ["item", "price"],
          ["oak tread", 5],
          ["Oak-Tread", 6],
        ],
        "oak treads",
      ),
    ).toBe('#N/A label: "oak treads" may be "oak tread" or "Oak-Tread"; write it as it stands there');
  });
});

test("a limit and an amendment are found by the word of either side", () => {
  expect(answered("LIMIT", "uk-adk-private", "run")).toEqual(answered("LIMIT", "uk-adk-private", "going"));
  expect(answered("LIMIT", "irc-2021", "riser heights")).toEqual([[7.75]]);
});
