import { readFileSync } from "node:fs";
import path from "node:path";
import { dependencies } from "../../package.json";
import { licences } from "../../src/pane/licences";

interface Package {
  readonly version: string;
  readonly license: string;
}

const installed = (name: string): Package =>
  JSON.parse(readFileSync(path.resolve(__dirname, "../../node_modules", name, "package.json"), "utf8")) as Package;

test("every package that is delivered is named", () => {
  expect(licences.map(({ name }) => name).sort()).toEqual(Object.keys(dependencies).sort());
});

test.each(licences.filter(({ name }) => name !== "@microsoft/office-js").map((one) => [one.name, one] as const))(
  "%s is named with the version and licence that the package itself states",
  (name, { version, licence }) => {
    const stated = installed(name);
    expect([version, licence]).toEqual([stated.version, stated.license]);
  },
);

test("the platform's script is under terms of its own, in a file", () => {
  // Its package.json says LICENSE, which names no licence but the file.
  expect(installed("@microsoft/office-js").license).toBe("LICENSE");
  expect(licences.find(({ name }) => name === "@microsoft/office-js")?.licence).toContain("its LICENSE file");
});
