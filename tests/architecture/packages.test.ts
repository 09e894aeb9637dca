import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { licences } from "../../src/pane/licences";

const project = path.resolve(__dirname, "../..");
const read = (name: string): string => readFileSync(path.join(project, name), "utf8");

interface Locked {
  readonly integrity?: string;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
  readonly version?: string;
}

const lockOf = (folder: string): Readonly<Record<string, Locked>> =>
  (JSON.parse(read(path.join(folder, "package-lock.json"))) as { packages: Record<string, Locked> }).packages;

const LOCKS = [".", "tests/browser", "tests/mutants"];
/** The project itself, and the empty package in a folder of its own. */
const OWN = /^(src\/.*)?$/;

const { devDependencies, ...manifest } = JSON.parse(read("package.json")) as {
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly dependencies?: unknown;
  readonly jest: { readonly transform: Readonly<Record<string, unknown>> };
};

/** Names what is shipped, used or not. */
const LICENCES = path.join(project, "src/pane/licences.ts");

/** Every file of the project in which a package can be named. */
const files = (folder: string): readonly string[] =>
  readdirSync(path.join(project, folder), { withFileTypes: true }).flatMap((entry) => {
    const name = path.join(folder, entry.name);
    if (entry.name === "node_modules" || entry.name.startsWith(".")) return [];
    if (entry.isDirectory()) return files(name);
    return /[.](ts|cjs|mjs|js)$/.test(entry.name) && ![__filename, LICENCES].includes(path.join(project, name)) ? [name] : [];
  });

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");

const requires = (name: string, needed: string): boolean => {
  const folder = path.join("node_modules", name);
  const { main = "index.js" } = JSON.parse(read(path.join(folder, "package.json"))) as { readonly main?: string };
  const inside = readdirSync(path.join(project, folder, path.dirname(main)), { recursive: true, encoding: "utf8" });
  return inside.some((one) => one.endsWith(".js") && read(path.join(folder, path.dirname(main), one)).includes(`require("${needed}")`));
};

/** What DEVELOPERS.md says of packages. */
const [packagesTold = ""] = (read("DEVELOPERS.md").split("\n## Packages\n")[1] ?? "").split("\n## ");

test("DEVELOPERS.md tells of each package that is shipped, with its version, and of each other what it is for", () => {
  const family = (name: string): string => name.replace(/^(@univerjs|@types)\/.*/, "$1/*");
  const rows = [...packagesTold.matchAll(/^\| (\S+) \| .+ \| ([\d.]+) \| \d{4}-\d\d-\d\d \|$/gm)];
  const shipped = new Set(rows.map(([, name = ""]) => name));
  expect([...shipped].sort()).toEqual([...new Set(licences.map(({ name }) => family(name)))].sort());
  for (const { name, version } of licences) expect(rows.map(([, ...cells]) => cells)).toContainEqual([family(name), version]);
  const others = [...new Set(Object.keys(devDependencies).map(family))].filter((name) => !shipped.has(name));
  const [, rest = ""] = packagesTold.split("The rest build and test");
  const words = new Set(rest.split("install scripts; ")[0]?.split(/[\s,()|]+/));
  expect(others.filter((name) => !words.has(name))).toEqual([]);
});

test("there is no package that nothing uses", () => {
  expect(manifest.dependencies).toBeUndefined();
  const texts = [...files("src"), ...files("tests"), "webpack.config.js"].map(read);
  const isNamed = (name: string): boolean => {
    const quoted = new RegExp(`["'/]${escaped(name)}["'/]`);
    return texts.some((text) => quoted.test(text));
  };
  const unused = Object.keys(devDependencies).filter((name) => {
    const typed = /^@types\/(.+)$/.exec(name)?.[1];
    // Types are read for what has none of its own; those of the platform and of the tests stand for globals.
    if (typed !== undefined)
      return !(typed in devDependencies || ["node", "jest", "office-js", "custom-functions-runtime"].includes(typed));
    return !isNamed(name) && !JSON.stringify(manifest.jest).includes(name);
  });
  // The stand-in is what office-addin-debugging asks for and never calls here; semver a package of it needs and does not say so.
  expect(unused).toEqual(["@microsoft/m365agentstoolkit-cli", "semver"]);
  expect(devDependencies["@microsoft/m365agentstoolkit-cli"]).toMatch(/^file:src\//);
  expect(requires("office-addin-dev-settings", "semver")).toBe(true);
});

test.each(LOCKS)("every package of the lock in %s has a version and a checksum", (folder) => {
  const bad = Object.entries(lockOf(folder)).filter(([name, { integrity = "", link, version = "" }]) =>
    !OWN.test(name) && link !== true && !(integrity.startsWith("sha512-") && /^\d/.test(version)));
  expect(bad).toEqual([]);
});

test("the install scripts are those told of in DEVELOPERS.md", () => {
  const found = LOCKS.flatMap((folder) => Object.entries(lockOf(folder)).flatMap(([name, { hasInstallScript }]) =>
    hasInstallScript === true ? [name.replace(/^.*node_modules\//, "")] : []));
  const [, section = ""] = packagesTold.split("install scripts; ");
  const told = [...section.matchAll(/^\| (\S+) \|.*\|.*\|$/gm)].map(([, name]) => name);
  expect(told.filter((name) => name !== "package" && name !== "---")).toEqual(found);
});
