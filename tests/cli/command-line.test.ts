import { asked, HELP } from "../../src/cli/command-line";
import { EXIT, EXIT_SAYS } from "../../src/cli/exit-codes";

test("a recalculation is read with what was asked of it", () => {
  expect(asked(["recalc", "bid.xlsx", "--out", "new.xlsx", "--values", "--sheet", "Bid", "--limit", "5", "--json"])).toMatchObject({
    command: "recalc", file: "bid.xlsx", out: "new.xlsx", isValues: true, isInPlace: false, isCheck: false, isJson: true, sheet: "Bid",
    at: undefined, limit: 5,
  });
});

test("mending is read with what was asked of it", () => {
  expect(asked(["mend", "bid.xlsx", "--in-place", "--without-spills"])).toEqual({
    command: "mend", file: "bid.xlsx", out: undefined, isInPlace: true, isCheck: false, isJson: false, isWithoutSpills: true,
  });
});

test("a day alone is that day here, whatever the time zone", () => {
  const { at } = asked(["recalc", "bid.xlsx", "--at", "2026-11-29"]) as { readonly at?: Date };
  expect([at?.getFullYear(), at?.getMonth(), at?.getDate()]).toEqual([2026, 10, 29]);
});

test("a drawing is asked for by a cell of a sheet", () => {
  expect(asked(["draw", "bid.xlsx", "'Bob''s stair'!$d$1", "--out", "stair.svg"])).toEqual({
    command: "draw", file: "bid.xlsx", sheet: "Bob's stair", address: "D1", out: "stair.svg",
  });
  for (const cell of ["Lay out!D1", "'Lay out!D1'", "'Lay out'!D1"])
    expect(asked(["draw", "bid.xlsx", cell])).toMatchObject({ sheet: "Lay out", address: "D1", out: undefined });
});

test("a formula is one with or without its equals sign", () => {
  expect([asked(["eval", "=1+1"]), asked(["eval", "1+1"])]).toEqual([
    { command: "eval", formula: "=1+1", isJson: false }, { command: "eval", formula: "=1+1", isJson: false },
  ]);
});

test.each([
  [["recalc"], "recalc: name the workbook"],
  [["recalc", "a.xlsx", "b.xlsx"], 'recalc: read "b.xlsx" besides'],
  [["recalc", "a.xlsx", "--out", "b.xlsx", "--in-place"], "--out and --in-place: give one of them"],
  [["recalc", "a.xlsx", "--check", "--in-place"], "--check writes nothing: leave out --in-place"],
  [["recalc", "a.xlsx", "--values"], "--values: say where it goes"],
  [["recalc", "a.xlsx", "--at", "soon"], '--at: read "soon", which is no day; write 2026-11-29'],
  [["recalc", "a.xlsx", "--limit", "0"], '--limit: read "0", which is no number of seconds over 0'],
  [["recalc", "a.xlsx", "--quick"], "'--quick'"],
  [["mend"], "mend: name the workbook, as in treadsheet mend bid.xlsx"],
  [["mend", "a.xlsx", "--out", "b.xlsx", "--in-place"], "--out and --in-place: give one of them"],
  [["mend", "a.xlsx", "--check", "--out", "b.xlsx"], "--check writes nothing: leave out --out"],
  [["mend", "a.xlsx", "--values"], "mend takes no --values"],
  [["recalc", "a.xlsx", "--without-spills"], "recalc takes no --without-spills"],
  [["draw"], "draw: name the workbook and a cell, as in treadsheet draw bid.xlsx 'Layout!AA7'"],
  [["draw", "a.xlsx"], "draw: name the cell, too, as in treadsheet draw a.xlsx 'Layout!AA7'"],
  [["draw", "a.xlsx", "D1"], `draw: read "D1", which is no cell of a sheet; write 'Layout!AA7' or 'My sheet!AA7', with the quotes`],
  [["draw", "a.xlsx", "A!B1", "C!D1"], 'draw: read "A!B1 C!D1" besides'],
  [["draw", "a.xlsx", "A!B1", "--in-place"], "draw takes no --in-place"],
  [["eval", "=1", "--check"], "eval takes no --check"],
  [["eval"], "eval: give a formula in quotes"],
  [["price", "a.xlsx"], 'There is no command "price"; there are recalc, mend, draw, eval and functions'],
])("%j is refused in a sentence that says what would do", (args, sentence) => {
  expect(() => asked(args)).toThrow(sentence);
});

test("the help names every way it ends", () => {
  expect(EXIT_SAYS.map(([code]) => code).sort()).toEqual(Object.values(EXIT).sort());
  for (const [code, says] of EXIT_SAYS) expect(HELP).toContain(`${code}  ${says}`);
});
