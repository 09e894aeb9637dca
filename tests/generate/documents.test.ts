import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/functions/catalogue";
import { argumentsOf } from "../../src/functions/formula";
import { documentPage, pageName } from "../../src/generate/document";
import { associated } from "../host/stand-in";

const project = path.resolve(__dirname, "../..");
const text = (file: string): string => readFileSync(path.join(project, file), "utf8");
const names = readdirSync(path.join(project, "docs")).filter((name) => name.endsWith(".md")).sort();
const CHANGELOG = "../CHANGELOG.md";
const links = (markdown: string): readonly string[] => [...markdown.matchAll(/\]\(([^)\s]+)\)/g)].map(([, to = ""]) => to);

test("there is a page for each way in, updating and removing, which Excel gets what, offline, Excel's functions, LibreOffice", () => {
  expect(names).toEqual([
    "install-admin.md",
    "install-host.md",
    "install-mac.md",
    "install-web.md",
    "install-windows.md",
    "install.md",
    "libreoffice.md",
    "native-functions.md",
    "offline.md",
    "update-and-remove.md",
    "which-excel.md",
  ]);
});

describe.each(names)("docs/%s", (name) => {
  const markdown = text(`docs/${name}`);

  test("says where it is from, or what was checked and what was not", () => {
    expect(markdown).toMatch(
      name === "install.md"
        ? /^## What was checked, and what was not\n\nNothing on these pages has been opened in Excel/m
        : /^## Where this is from\n\n\S/m,
    );
  });

  test("leads to pages that are there, and elsewhere to the two platforms alone", () => {
    const [own, away] = [links(markdown).filter((to) => !to.startsWith("https:")), links(markdown).filter((to) => to.startsWith("https:"))];
    expect(own.filter((to) => !names.includes(to) && to !== CHANGELOG)).toEqual([]);
    const platforms = /^https:\/\/(api\.libreoffice\.org\/|(learn|support)\.microsoft\.com\/|office\.com\/|github\.com\/OfficeDev\/)/;
    expect(away.filter((to) => !platforms.test(to))).toEqual([]);
  });

  test("is built as a page under its first heading, with a policy and with links to pages", () => {
    const html = text(`dist/${name.replace(/[.]md$/, ".html")}`);
    expect(html).toContain(`<title>${/^# (.+)$/m.exec(markdown)?.[1]}</title>`);
    expect(html).toContain("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';");
    expect([...html.matchAll(/href="([\w-]+[.]\w+)"/g)].map(([, to]) => to).filter((to) => !to?.endsWith(".css"))).toEqual(
      links(markdown).filter((to) => !to.startsWith("https:")).map((to) => pageName(to)),
    );
  });

  test("is led to from the README or from the first page", () => {
    expect([...links(text("README.md")).map((to) => to.replace("docs/", "")), ...links(text("docs/install.md"))]).toContain(name);
  });
});

test("a page keeps code, tables and steps, and turns its links to pages of ours into HTML", () => {
  const html = documentPage(
    "# A & B\n\n1. do `x <y>`\n2. see [it](other-page.md#part)\n\n| a | b |\n| --- | --- |\n| 1 | [2](https://example.org/c.md) |\n",
  );
  expect(html).toContain("<title>A &amp; B</title>");
  expect(html).toMatch(/<ol>\s*<li>do <code>x &lt;y&gt;<\/code><\/li>\s*<li>see <a href="other-page\.html#part">it<\/a><\/li>\s*<\/ol>/);
  expect(html).toContain("<td>1</td>");
  expect(html).toContain('<a href="https://example.org/c.md">2</a>');
});

test("the changelog is a page beside the others, and no heading of the reference stands twice", () => {
  expect(documentPage(`# A\n\n[what changed](${CHANGELOG}#everywhere)\n`)).toContain('<a href="changelog.html#everywhere">');
  expect(text("dist/changelog.html")).toContain("<title>Changelog</title>");
  const headings = [...text("dist/reference.md").matchAll(/^#+ .*$/gm)].map(([heading]) => heading);
  expect(headings.length).toBeGreaterThan(catalogue.length);
  expect(headings.filter((heading, at) => headings.indexOf(heading) !== at)).toEqual([]);
});

describe("what the pages say of Treadsheet is so:", () => {
  test("the manifest asks for the sets that which-excel.md names", () => {
    const asked = [...text("manifest.xml").matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)].map(
      ([, set, version]) => `${set} ${version}`,
    );
    expect(asked).toEqual(["SharedRuntime 1.1", "CustomFunctionsRuntime 1.3"]);
    for (const set of asked) expect(text("docs/which-excel.md")).toContain(set);
  });

  test("every example of every function answers numbers, text, true or false, and errors alone", () => {
    const functions = associated();
    const answers = catalogue.flatMap((declaration) =>
      declaration.examples.flatMap(({ given }) => {
        try {
          return [functions.get(declaration.id)?.(...argumentsOf(declaration, given).map((cell) => cell ?? undefined))].flat(2);
        } catch (error) {
          return [error];
        }
      }),
    );
    expect(answers.length).toBeGreaterThan(catalogue.length);
    const isPlain = (cell: unknown): boolean =>
      ["number", "string", "boolean"].includes(typeof cell) || /^#/.test((cell as { readonly code?: string })?.code ?? "");
    expect(answers.filter((cell) => !isPlain(cell))).toEqual([]);
    expect(text("dist/functions.json")).not.toMatch(/cellValueType|allowCustomDataForDataTypeAny/);
  });

  test("the first formula to try answers what install.md says", () => {
    const [, given, answer] = /`=STAIR\.RISERS\((\d+)\)` answers (\d+)/.exec(text("docs/install.md")) ?? [];
    expect([associated().get("RISERS")?.(Number(given))].flat(2)).toEqual([Number(answer)]);
  });

  test("the files that install-host.md lists are in dist or made for the host", () => {
    const listed = [...text("docs/install-host.md").matchAll(/^\| (.*?) \|/gm)].flatMap(([, cell = ""]) =>
      [...cell.matchAll(/`([^`]+)`/g)].map(([, file = ""]) => file),
    );
    expect(listed.length).toBeGreaterThan(5);
    const built = [...readdirSync(path.join(project, "dist")), "hosting.txt", "worker.js"];
    expect(listed.filter((file) => !built.includes(file))).toEqual([]);
  });
});
