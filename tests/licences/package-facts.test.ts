import { ownTexts } from "../../src/licences/own-texts";
import { packageFolders } from "../../src/licences/package-folder";
import { authorOf, declaredLicence, repositoryOf } from "../../src/licences/package-json";

test("a file counts for the innermost package it is in", () => {
  expect(
    packageFolders([
      "node_modules/a/lib/x.js",
      "node_modules/a/y.js",
      "node_modules/@s/b/z.js",
      "node_modules/a/node_modules/c/c.js",
      "src/solver/rise.ts",
    ]),
  ).toEqual(["node_modules/@s/b", "node_modules/a", "node_modules/a/node_modules/c"]);
});

test.each([
  [{ license: "MIT" }, "MIT"],
  [{ license: { type: "ISC", url: "x" } }, "ISC"],
  [{ licenses: [{ type: "MIT" }, { type: "Apache-2.0" }] }, "(MIT OR Apache-2.0)"],
  [{ licenses: [{ type: "MIT" }] }, "MIT"],
  [{ license: " " }, undefined],
  [{ licenses: [] }, undefined],
  [{}, undefined],
])("%j declares %p", (json, licence) => {
  expect(declaredLicence(json)).toBe(licence);
});

test("author and source are read in both forms of a package.json", () => {
  expect([authorOf({ author: "A" }), authorOf({ author: { name: "B" } }), authorOf({})]).toEqual(["A", "B", undefined]);
  expect([repositoryOf({ repository: "r" }), repositoryOf({ repository: { url: "u" } }), repositoryOf({})]).toEqual(["r", "u", undefined]);
});

const texts = (files: Readonly<Record<string, string>>) => ownTexts(Object.keys(files), (name) => files[name] ?? "");

test("licence and notice files are taken, whatever their case and ending", () => {
  expect(texts({ "license.md": "L\r\nM\n", NOTICE: "N", "index.js": "x", "LICENCE-BSD": "B" })).toEqual([
    { kind: "licence", file: "LICENCE-BSD", text: "B" },
    { kind: "notice", file: "NOTICE", text: "N" },
    { kind: "licence", file: "license.md", text: "L\nM" },
  ]);
});

test("without a licence file the README's own part on it is taken, up to the next heading", () => {
  expect(texts({ "README.md": "# a\ntext\n## License\n\nCopyright X\n\n### terms\nfree\n## Thanks\nto you" })).toEqual([
    { kind: "part of the readme", file: "README.md", text: "Copyright X\n\n### terms\nfree" },
  ]);
  expect(texts({ "README.md": "# a\nlicensed well" })).toEqual([]);
  expect(texts({ "README.md": "## License\nno", LICENSE: "yes" })).toEqual([{ kind: "licence", file: "LICENSE", text: "yes" }]);
});
