import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { devDependencies } from "../../package.json";
import { licences } from "../../src/pane/licences";

interface Package {
  readonly version: string;
  readonly license: string;
}

const installed = (name: string): Package =>
  JSON.parse(readFileSync(path.resolve(__dirname, "../../node_modules", name, "package.json"), "utf8")) as Package;

const lists = path.resolve(__dirname, "../../dist/tools/modules");
/** What runs on the machine that builds. */
const NOT_DELIVERED: readonly string[] = ["tools.json", "more-tools.json", "engine.json"];

test("every package that is delivered, and that the project asks for itself, is named", () => {
  const files = readdirSync(lists)
    .filter((name) => !NOT_DELIVERED.includes(name))
    .flatMap((name) => JSON.parse(readFileSync(path.join(lists, name), "utf8")) as string[]);
  const delivered = Object.keys(devDependencies).filter((name) => files.some((file) => file.includes(`node_modules/${name}/`)));
  // The few lines that webpack puts before each bundle are named in the notices; the platform's script is loaded, not delivered.
  const asked = [...delivered.filter((name) => name !== "webpack"), "@microsoft/office-js"];
  expect(licences.map(({ name }) => name).sort()).toEqual(asked.sort());
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
