import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "../..");
const dist = path.join(project, "dist");
const text = readFileSync(path.join(dist, "third-party-notices.txt"), "utf8");

/** The names between node_modules/ and the next part of the path, by a reading of its own. */
const packageOf = (file: string): string => {
  const parts = file.split("node_modules/").at(-1)?.split("/") ?? [];
  return parts.slice(0, parts[0]?.startsWith("@") ? 2 : 1).join("/");
};

const versionOf = (name: string): string =>
  (JSON.parse(readFileSync(path.join(project, "node_modules", name, "package.json"), "utf8")) as { version: string }).version;

const isNamedIn = (notices: string, name: string): boolean => notices.includes(`\n${name} ${versionOf(name)}\nLicence: `);
const isNamed = (name: string): boolean => isNamedIn(text, name);

const packagesOf = (bundle: string): readonly string[] => [
  ...new Set((JSON.parse(readFileSync(path.join(dist, "tools/modules", `${bundle}.json`), "utf8")) as string[]).map(packageOf)),
];

test.each(["functions", "pages", "sheet-page", "tools", "more-tools", "engine", "command", "library", "long-search"])(
  "the notices name every package in the module list of the bundle %s",
  (bundle) => {
    const names = packagesOf(bundle);
    expect(names).toContain("webpack");
    expect(names.filter((name) => !isNamed(name))).toEqual([]);
  },
);

test("the notices in the package of npm name what its bundles are made of, and nothing else", () => {
  const notices = readFileSync(path.join(dist, "tools/package/third-party-notices.txt"), "utf8");
  const names = new Set(["functions", "command", "library", "long-search"].flatMap(packagesOf));
  expect([...names].filter((name) => !isNamedIn(notices, name))).toEqual([]);
  expect(notices.match(/^-{80}$/gm)).toHaveLength(names.size);
  for (const said of notices.matchAll(/Its text stands in this file under (\S+)\./g)) expect(names).toContain(said[1]);
});

test("every bundle that webpack makes has its module list", () => {
  const { length } = jest.requireActual<readonly unknown[]>("../../webpack.config.js");
  expect(readdirSync(path.join(dist, "tools/modules"))).toHaveLength(length);
});

test.each(["tools/engine.cjs", "tools/generate.js", "tools/licences.js"])(
  "the notices name every package that %s itself says it holds",
  (file) => {
    // In bundles that are not made small, webpack writes above each module it joins where that module is from.
    const names = new Set(
      [...readFileSync(path.join(dist, file), "utf8").matchAll(/^;\/\/ (?:CONCATENATED MODULE: )?\.\/(node_modules\/\S+)/gm)].map(
        ([, from = ""]) => packageOf(from),
      ),
    );
    expect([...names].filter((name) => !isNamed(name))).toEqual([]);
    if (file === "tools/engine.cjs") expect(names.size).toBeGreaterThan(10);
  },
);

test("the part of each package holds words of its licence, or says where they stand", () => {
  const parts = text.split(/^-{80}\n/m).slice(1);
  expect(parts.length).toBeGreaterThan(50);
  expect(parts.filter((part) => !/^\S+ \d[^\n]*\nLicence: \S/.test(part) || part.length < 500)).toEqual(
    parts.filter((part) => part.includes("Its text stands in this file under")),
  );
});

describe("the list of licences, asked for in a project of one planted package,", () => {
  const run = (json: unknown, files: Readonly<Record<string, string>> = { LICENSE: "Permission is granted." }) => {
    const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-licences-"));
    try {
      mkdirSync(path.join(folder, "dist/tools/modules"), { recursive: true });
      cpSync(path.join(dist, "tools/licences.js"), path.join(folder, "dist/tools/licences.js"));
      writeFileSync(path.join(folder, "dist/tools/modules/pages.json"), '["node_modules/planted/index.js"]');
      mkdirSync(path.join(folder, "node_modules/planted"), { recursive: true });
      for (const [name, content] of Object.entries({ ...files, "package.json": JSON.stringify(json) })) {
        writeFileSync(path.join(folder, "node_modules/planted", name), content);
      }
      for (const name of ["spdx-satisfies"])
        symlinkSync(path.join(project, "node_modules", name), path.join(folder, "node_modules", name), "junction");
      const { status, stdout, stderr } = spawnSync(process.execPath, ["dist/tools/licences.js", "--list"], {
        cwd: folder,
        encoding: "utf8",
      });
      return { status, stdout, stderr, written: readdirSync(path.join(folder, "dist")).includes("third-party-notices.txt") };
    } finally {
      rmSync(folder, { recursive: true });
    }
  };

  test("names it with its licence", () => {
    expect(run({ name: "planted", version: "1.0.0", license: "MIT" })).toEqual({
      status: 0,
      stdout: "planted  1.0.0  MIT  pages\n",
      stderr: "",
      written: true,
    });
  });

  test.each([
    [{ name: "planted", version: "1.0.0" }, "names no licence"],
    [{ name: "planted", version: "1.0.0", license: "GPL-3.0-only" }, 'is under "GPL-3.0-only"'],
  ])("ends with an error for %j, lists it all the same and writes no notices", (json, says) => {
    const { status, stdout, stderr, written } = run(json);
    expect({ status, written }).toEqual({ status: 1, written: false });
    expect(stdout).toContain("planted  1.0.0");
    expect(stderr).toContain(says);
  });
});
