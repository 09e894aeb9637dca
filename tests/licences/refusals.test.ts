import { refusals } from "../../src/licences/refusals";
import type { ShippedPackage } from "../../src/licences/shipped-package";

const shipped = (rest: Partial<ShippedPackage>): ShippedPackage => ({
  name: "planted",
  version: "1.2.3",
  declared: "MIT",
  author: undefined,
  repository: undefined,
  texts: [{ kind: "licence", file: "LICENSE", text: "Permission is granted." }],
  bundles: ["pages"],
  ...rest,
});

test.each(["MIT", "ISC", "Apache-2.0", "BSD-3-Clause", "0BSD", "(MIT OR GPL-3.0-only)", "MIT AND ISC"])(
  "a package under %s may be shipped",
  (declared) => {
    expect(refusals([shipped({ declared })])).toEqual([]);
  },
);

test.each([
  "GPL-3.0-only",
  "AGPL-3.0-or-later",
  "MPL-2.0",
  "MIT AND GPL-3.0-only",
  "UNLICENSED",
  "SEE LICENSE IN terms.md",
  "CC-BY-NC-4.0",
  "Apache",
])("a package under %s is refused, and the sentence names it", (declared) => {
  expect(refusals([shipped({ declared })])).toEqual([
    expect.stringContaining(`planted 1.2.3 (in pages) is under "${declared}", which is not among the licences`) as string,
  ]);
});

test("a package that names no licence is refused", () => {
  expect(refusals([shipped({ declared: undefined })]).join()).toMatch(/^planted 1\.2\.3 \(in pages\) names no licence/);
});

test("a licence read by hand counts for the version it was read in and for no other", () => {
  const telemetry = { name: "@univerjs/telemetry", declared: undefined };
  expect(refusals([shipped({ ...telemetry, version: "0.25.1" })])).toEqual([]);
  expect(refusals([shipped({ ...telemetry, version: "0.25.2" })])).toHaveLength(1);
});

test("a package without the words of its licence is refused where we have none to put in their place", () => {
  expect(refusals([shipped({ declared: "BSD-3-Clause", texts: [] })]).join()).toContain("whose text must go with it");
  expect(refusals([shipped({ declared: "MIT", texts: [] })])).toEqual([]);
  expect(refusals([shipped({ declared: "Apache-2.0", texts: [] })])).toHaveLength(1);
  expect(refusals([shipped({ declared: "Apache-2.0", texts: [] }), shipped({ name: "other", declared: "Apache-2.0" })])).toEqual([]);
});
