import fc from "fast-check";
import { freeName, MOST_NAME, workbookName } from "../../src/web/free-name";

const ODD = fc.oneof(
  fc.string({ unit: "binary", maxLength: 90 }),
  fc
    .array(fc.constantFrom(".", " ", "/", "\\", "a", "9", "\t", "😀", "\u202e", "Job", ":", "..", "\u0000"), { maxLength: 90 })
    .map((parts) => parts.join("")),
);

// What no file may be named on one system or another: Microsoft, Naming Files, Paths, and Namespaces.
const NO_FILE = /[\\/:*?"<>|\p{Cc}]|^[. ]|[. ]$/u;

test("whatever is typed as a name becomes one that a file may have, and stays so", () => {
  fc.assert(
    fc.property(ODD, (given) => {
      const name = workbookName(given);
      expect(name).not.toMatch(NO_FILE);
      expect(name.length).toBeGreaterThan(0);
      expect(name.length).toBeLessThanOrEqual(MOST_NAME);
      expect(workbookName(name)).toBe(name);
      // Half a sign is left of one that was cut through.
      expect(name).not.toMatch(/[\ud800-\udbff]$/);
    }),
    { numRuns: 2000 },
  );
});

test("a name that is taken gets the next number, however long it is and however often", () => {
  fc.assert(
    fc.property(ODD, fc.integer({ min: 1, max: 30 }), (given, count) => {
      const taken: string[] = [];
      for (let more = 0; more < count; more += 1) taken.push(freeName(given, taken));
      expect(new Set(taken.map((one) => one.toLowerCase())).size).toBe(count);
      for (const name of taken) expect(workbookName(name)).toBe(name);
    }),
    { numRuns: 200 },
  );
});
