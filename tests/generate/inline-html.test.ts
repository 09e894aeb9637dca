import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/functions/catalogue";
import { CAUTION } from "../../src/functions/caution";
import * as tables from "../../src/functions/tables";
import { codeReference } from "../../src/generate/code-reference";
import { documentPage } from "../../src/generate/document";
import { functionsJson } from "../../src/generate/functions-json";
import { inlineHtml, plainHtml } from "../../src/generate/inline-html";
import { page } from "../../src/generate/page";
import { reference } from "../../src/generate/reference";
import { PROFILES } from "../../src/solver/code/profiles";

const project = path.resolve(__dirname, "../..");
const documents = readdirSync(path.join(project, "docs")).filter((name) => name.endsWith(".md")).map((name) => `docs/${name}`);
const generated: readonly (readonly [string, string])[] = [
  ["reference.html", reference(catalogue, tables, "0.1.0", CAUTION).html],
  ["codes.html", codeReference(PROFILES, "0.1.0", CAUTION).html],
  ...[...documents, "CHANGELOG.md"].map((name) => [name, documentPage(readFileSync(path.join(project, name), "utf8"))] as const),
];

test.each(generated)("%s has no backtick and no mark of Markdown outside code", (_, html) => {
  const text = html.replace(/<(pre|code)>.*?<\/\1>/gs, "").replace(/<[^>]*>/g, "\n");
  expect(text.split("\n").filter((line) => /`|\*\*|\]\(|^#+ /.test(line))).toEqual([]);
});

test("a host, which shows descriptions as they stand, is given none with a backtick", () => {
  expect(JSON.stringify(functionsJson(catalogue))).not.toContain("`");
});

test("what stands between backticks is code, and nothing of it is read as HTML", () => {
  expect(inlineHtml("give `a < b` or none")).toBe("give <code>a &lt; b</code> or none");
  expect(inlineHtml("one ` alone & \"two\"")).toBe("one ` alone &amp; &quot;two&quot;");
});

test.each([
  ["a name with hyphens stays whole", "irc-2024 or none", '<span class="whole">irc-2024</span> or none'],
  ["a long formula parts between its arguments", "=STAIR.LAYOUT(A1:B7,FALSE)", "=STAIR.LAYOUT(<wbr>A1:B7,<wbr>FALSE)"],
  ["a clause stays whole", "29 CFR 1910.25(c)(1)", '29 CFR <span class="whole">1910.25(c)(1)</span>'],
  ["an address parts between its names", "https://example.org/one/two", '<span class="whole">https://</span><wbr>example.org/<wbr>one/<wbr>two'],
  ["a word never does", "Donaudampfschifffahrtsgesellschaft", "Donaudampfschifffahrtsgesellschaft"],
])("%s", (_, text, html) => expect(plainHtml(text)).toBe(html));

test("a table names its columns at each cell, for a screen on which they stand one below the other", () => {
  const { html } = page("A page", [{ kind: "table", headings: ["label", "meaning"], rows: [["run", "from `nosing` to nosing"]] }]);
  expect(html).toContain('<tr><td>run</td><td data-heading="meaning">from <code>nosing</code> to nosing</td></tr>');
});
