import type { OutOfScope, SourceStatus } from "../../../../src/solver/code/profile";
import { edition, laterEdition, readInAnother } from "../../../../src/solver/code/record/edition";
import { limitRecord, outsideRecord } from "../../../../src/solver/code/record/limit-record";

const CONFIRMED: SourceStatus = "checked against the code's text";
const SOURCES = [{ title: "Alder County stair code (invented)" }];
const HEADING = { id: "alder-1", title: "Alder County (invented)", edition: "1", region: "nowhere" };

const limit = limitRecord({ unit: "in", status: CONFIRMED, sources: SOURCES });
const rowOf = (item: string, clause = "A1", status: SourceStatus = CONFIRMED) =>
  limit({ item, clause, text: "8", measured: "plumb", rule: { comparator: "max", of: "riserHeight" }, status });
const outside = (item: string, clause: string): OutOfScope =>
  outsideRecord({ status: CONFIRMED, sources: SOURCES })({ item, clause, text: "40", unit: "in", reason: "live load" });

describe("how well a code is founded stands in its title", () => {
  const titled = (confirmed: number, others: number, more: { readonly isCode?: false } = {}) =>
    edition({
      ...HEADING, ...more,
      records: [...Array(confirmed + others).keys()].map((place) =>
        rowOf(`item ${place}`, "A1", place < confirmed ? CONFIRMED : "not yet checked")),
    });
  const PLAIN = "Alder County (invented)";

  // By definition: more than a third. Of three one is a third, of five two are more.
  test.each<readonly [number, number, string]>([
    [3, 0, ""], [2, 1, ""], [3, 2, " (more than a third of the limits not confirmed)"],
    [1, 2, " (more than a third of the limits not confirmed)"],
    [0, 3, " (none of the limits confirmed)"], [0, 1, " (none of the limits confirmed)"], [0, 0, ""],
  ])("%d confirmed and %d not", (confirmed, others, words) => {
    expect(titled(confirmed, others)).toMatchObject({ title: `${PLAIN}${words}`, plainTitle: PLAIN });
  });

  test("rules of the trade are no code and are not confirmed in any", () => {
    expect(titled(0, 3, { isCode: false }).title).toBe(PLAIN);
  });

  test("what no check holds counts with the limits", () => {
    const unread: OutOfScope = { ...outside("load", "A9"), status: "not yet checked" };
    expect(edition({ ...HEADING, records: [rowOf("one")], outOfScope: [unread] }).title).toContain("more than a third");
  });
});

describe("a later edition", () => {
  const doubtful = [rowOf("riser", "A1.2"), rowOf("tread", "A1.3", "not yet checked"), rowOf("width", "A2", "not yet checked")];
  const first = edition({ ...HEADING, records: doubtful, outOfScope: [outside("load", "A9"), outside("loads at once", "B1")] });
  const later = { id: "alder-2", edition: "2" } as const;

  test("is named without the words on how well the one before is founded, and weighed on its own", () => {
    expect(first.title).toContain("more than a third");
    const read = laterEdition(first, { ...later, read: { status: CONFIRMED, sources: [] } });
    expect(read).toMatchObject({ id: "alder-2", title: "Alder County (invented)", edition: "2", region: "nowhere" });
    expect(laterEdition(first, { ...later, title: "Alder (invented)" }).title).toMatch(/^Alder \(invented\) \(more/);
  });

  test("keeps records and statuses where it was not read otherwise", () => {
    const same = laterEdition(first, later);
    expect(same.limits).toEqual(first.limits);
    expect(same.outOfScope).toEqual(first.outOfScope);
  });

  test("renumbers every clause that begins so, by the first beginning that fits", () => {
    const renumbered = laterEdition(first, { ...later, renumbered: [["A1.2", "C5"], ["A", "D"]] });
    expect(renumbered.limits.map(({ clause }) => clause)).toEqual(["C5", "D1.3", "D2"]);
    expect(renumbered.outOfScope.map(({ clause }) => clause)).toEqual(["D9", "B1"]);
  });

  test("says of what no check holds where it was read, drops some and adds some", () => {
    const changed = laterEdition(first, {
      ...later, read: { status: "checked against another edition", sources: [] }, droppedOutside: ["load"],
      addedOutside: [outside("lift", "A8")],
    });
    expect(changed.outOfScope.map(({ item, status }) => [item, status])).toEqual([
      ["loads at once", "checked against another edition"], ["lift", CONFIRMED],
    ]);
  });

  test("has a record anew that was dropped, and changes one with its conditions", () => {
    const when = { when: { given: "width" }, words: "there is a width" } as const;
    const changed = laterEdition(first, {
      ...later, dropped: ["riser"], added: [rowOf("riser", "A7")], changed: { tread: { applies: when } },
    });
    expect(changed.limits.map(({ item, clause, applies }) => [item, clause, applies])).toEqual([
      ["tread", "A1.3", [when]], ["width", "A2", []], ["riser", "A7", []],
    ]);
    expect(laterEdition(changed, { ...later, changed: { tread: { text: "9" } } }).limits[0]?.applies).toEqual([when]);
  });

  test.each<readonly [string, Partial<Parameters<typeof laterEdition>[1]>, string]>([
    ["an item changed that is not there", { changed: { rizer: { text: "7" } } }, 'alder-2: "rizer" is not in the edition it differs from.'],
    ["an item dropped that is not there", { dropped: ["rizer"] }, 'alder-2: "rizer" is not in the edition it differs from.'],
    ["an outside item dropped that is not there", { droppedOutside: ["riser"] }, 'alder-2: "riser" is not in the edition it differs from.'],
    ["a clause renumbered that no record has", { renumbered: [["E1", "F1"]] }, "alder-2: clause E1 is not in the edition it differs from."],
    ["an item added that is there", { added: [rowOf("riser")] }, 'alder-2: "riser" stands in the edition before; change it.'],
  ])("%s is a mistake of ours", (_says, difference, words) => {
    expect(() => laterEdition(first, { ...later, ...difference })).toThrow(words);
  });

  test("one clause of what no check holds is enough to renumber", () => {
    expect(laterEdition(first, { ...later, renumbered: [["B1", "B2"]] }).outOfScope[1]?.clause).toBe("B2");
  });
});

test("records of another edition say that they were read there", () => {
  const first = edition({ ...HEADING, records: [rowOf("riser"), rowOf("tread")] });
  const sources = [{ title: "another (invented)" }];
  expect(readInAnother(first, sources, ["tread"])).toEqual([{ ...rowOf("tread"), status: "checked against another edition", sources }]);
  expect(() => readInAnother(first, sources, ["tread", "width"])).toThrow('alder-1: "width" is not in the edition it differs from.');
});
