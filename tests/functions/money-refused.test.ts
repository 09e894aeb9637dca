import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";

/** What is refused of goods and bills, each by its sentence: the argument, what was read, what to write. */

const says = (id: string, ...given: readonly unknown[]): string => {
  const declaration = catalogue.find((each) => each.id === id);
  if (declaration === undefined) throw new Error(id);
  const answer = call(declaration, given);
  return isFailed(answer) ? `${answer.failed} ${answer.says}` : "answered";
};

describe("charges and waste of goods", () => {
  const plan = [["item", "quantity", "price"], ["newel", 2, 85]];
  const headings = ["item", "quantity", "price", "cost", "charges", "waste"];

  // By hand: 2 x 85.75 are 171.50, with 17.98 of freight and tax 189.48.
  test.each([
    [["newel", 2, 85.75, 189.48, 17.98, 0], "answered"],
    [
      ["newel", 2, 85.75, 171.5, 17.98, 0],
      "newel: 2 at 85.75 and charges of 17.98 are not the cost of 171.5 in row 2; the cost has the charges in it: leave the price out, " +
        "or make them agree",
    ],
    [["newel", 2, 85.75, 189.48, "", 0], "newel: 2 at 85.75 is not the cost of 189.48 in row 2; give one of the two, or make them agree"],
    [["newel", 2, "", 10, 12, 0], "newel: charges of 12 are more than the cost of 10 in row 2; the cost has the charges in it"],
    [["newel", "", "", 189.48, 17.98, 0], "newel: quantity is empty or 0 in row 2, beside money of 171.5; give the quantity"],
    [["newel", 2, "", 171.5, "", 3], "newel: waste of 3 is more than the quantity of 2 in row 2; waste is part of the quantity"],
    [["freight", "", "", 40, 40, 0], "freight: is a charge itself in row 2; leave its charges and waste empty"],
    [["freight", "", "", 40, "", 1], "freight: is a charge itself in row 2; leave its charges and waste empty"],
    [["newel", 2, "", "", "", 0], "newel: price and cost are both empty or 0 in row 2; give what was paid"],
    [
      ["newel", -1, "", 85.75, "", 0],
      "newel: a quantity of -1 costs 85.75 in row 2; a return has a negative quantity and brings money back, write -85.75",
    ],
  ])("%j", (row, sentence) => {
    for (const [id, table] of [["RECONCILE", "bought"], ["BIDVARIANCE", "actual"]] as const)
      expect(says(id, plan, [headings, row])).toBe(sentence === "answered" ? sentence : `#VALUE! ${table}, ${sentence}`);
  });

  test("waste and charges that are no numbers", () => {
    expect(says("RECONCILE", plan, [headings, ["newel", 2, 85.75, "", "freight", 0]])).toBe(
      '#VALUE! charges in row 2 (newel): must be an amount of money, got "freight"',
    );
    expect(says("RECONCILE", plan, [headings, ["newel", 2, 85.75, "", "", -1]])).toBe(
      "#VALUE! waste in row 2 (newel): must be 0 or more, got -1",
    );
  });

  test("a quantity of money, and units that do not convert", () => {
    expect(says("BIDVARIANCE", plan, [["item", "quantity", "cost"], ["freight", 3, 40]])).toBe(
      "#VALUE! actual, freight: a quantity of 3 in row 2, but this is money and no goods; give its cost with the quantity empty or 1",
    );
    expect(says("BIDVARIANCE", [["labour", 30, "hour", 58, 1740]], [["labour", 4, "day", 400, 1600]])).toBe(
      '#VALUE! actual, labour: is in "day" in row 1, other rows are in "hour", which does not convert; give one unit, or board feet ' +
        "where the plan has gross",
    );
  });
});

describe("a bill", () => {
  const bill = (row: readonly unknown[], ...terms: readonly unknown[]): string =>
    says("PROGRESSBILLING", [["item", "value", "done", "stored"], ["rail", ...row]], ...terms);

  test.each([
    [[2000, 0.5, ""], [], "answered"],
    [["", 0.5, ""], [], "schedule, rail: value is empty or 0 in row 2; give the value, or write included"],
    [["included", 1, ""], [], "answered"],
    [[2000, 60, ""], [], "done in row 2 (rail): 60 is 6000 %, write 60% or 0.6"],
    [[2000, 1.5, ""], [], "done in row 2 (rail): must be 100 % or less, got 1.5"],
    [[2000, "150%", ""], [], 'done in row 2 (rail): must be 100 % or less, got "150%"'],
    [[2000, "100%", ""], ["100%"], "answered"],
    [[2000, "half", ""], [], 'done in row 2 (rail): must be a rate such as 25% or 0.25, got "half"'],
    [
      [2000, 0.5, 1200],
      [],
      "schedule, rail: done and stored come to 2200 in row 2, beyond its value of 2000; what is built in is no longer stored",
    ],
    [[2000, 0.5, -10], [], "stored in row 2 (rail): must be 0 or more, got -10"],
    [[2000, 0.5, ""], ["150%"], 'retainage: must be 100 % or less, got "150%"'],
    [[2000, 0.5, ""], [1.1], "retainage: must be 100 % or less, got 1.1"],
    [[2000, 0.5, ""], [10], "retainage: 10 is 1000 %, write 10% or 0.1"],
    [[2000, 0.5, ""], [1_000_000], "retainage: must be a rate such as 25% or 0.25, got 1000000"],
    [[2000, 0.5, ""], [0, -5], "paid: must be 0 or more, got -5"],
    [
      [2000, 0.5, ""],
      [0, 0, 2500],
      "deposit: 2500 is more than contract and changes come to, 2000; give the deposit of this contract",
    ],
  ])("%j %j", (row, terms, sentence) => {
    expect(bill(row, ...terms)).toBe(sentence === "answered" ? sentence : `#VALUE! ${sentence}`);
  });

  test("a schedule without what it needs", () => {
    expect(says("PROGRESSBILLING", [["item", "value"], ["rail", 2000]])).toBe(
      '#VALUE! schedule: heading "done" is missing; found item, value',
    );
    expect(says("PROGRESSBILLING", [["item", "value", "done", "change"], ["rail", 2000, 1, "perhaps"]])).toBe(
      '#VALUE! change in row 2 (rail): must be yes or no, got "perhaps"',
    );
  });
});
