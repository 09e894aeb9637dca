import { FACT_LABELS } from "../../../src/solver/code/fact-labels";
import { irc2021 } from "../../../src/solver/code/profiles/irc-2021";

// Stair and guard rows of the 2021 edition in its own numbering: R311.7.1 to R311.7.10.1, R312.1, Table R301.5.
// Eight of spirals and loads, and three in words alone: landings at either end, the handrail without a break, stairs that are free.
const RECORDS = 48;

test("every record of the code is checked, only shown, or out of scope, and none twice", () => {
  const shown = irc2021.limits.filter(({ rule }) => rule.comparator === "shown");
  const checked = irc2021.limits.length - shown.length;
  expect({ checked, shown: shown.length, outOfScope: irc2021.outOfScope.length }).toEqual({ checked: 37, shown: 0, outOfScope: 11 });
  const items = [...irc2021.limits, ...irc2021.outOfScope].map(({ item }) => item);
  expect(new Set(items).size).toBe(RECORDS);
});

test("only spiral stairs, live loads and what no label states are out of scope", () => {
  expect(new Set(irc2021.outOfScope.map(({ reason }) => reason))).toEqual(new Set(["spiral stair", "live load", "not in the stair table"]));
});

test("all 48 records were checked against the text of this edition", () => {
  // The stair, guard and load sections of the 2021 edition as adopted by Texas, record by record.
  const all = [...irc2021.limits, ...irc2021.outOfScope].map(({ status }) => status);
  expect(all.filter((status) => status === "checked against the code's text")).toHaveLength(RECORDS);
});

test("every limit states clause, printed text, how it is measured, and its source", () => {
  for (const { item, clause, text, measured, sources } of irc2021.limits) {
    expect([item, clause.startsWith("R31"), text !== "", measured !== ""]).toEqual([item, true, true, true]);
    for (const { title } of sources) expect(title).toContain("2021");
    expect(sources.length).toBeGreaterThan(0);
  }
});

// Millimetres printed beside the inches, typed from the same texts; 196, 787 and 698 are roundings that no exact conversion gives.
test.each([
  ["riser height", ["196"]], ["clear width at handrail one side", ["787"]], ["clear width at handrail two sides", ["698"]],
  ["headroom", ["2032"]], ["flight vertical rise", ["3835"]], ["handrail height", ["864", "965"]], ["nosing projection", ["19", "32"]],
  ["guard opening stair triangle", ["153"]],
])("%s is printed as %s mm", (item, printed) => {
  expect(irc2021.limits.find((limit) => limit.item === item)?.printedMillimetres).toEqual(printed);
});

test("no two facts share a label", () => {
  const labels = Object.values(FACT_LABELS).map(({ label }) => label);
  expect(new Set(labels).size).toBe(labels.length);
});
