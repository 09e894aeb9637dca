import { drawingsPage } from "../../src/pane/drawings-page";

const svg = (name: string): string => `<svg class="draft" width="10mm" height="5mm"><title>${name}</title></svg>`;

test("a page of drawings has each on a sheet of its own, lying, under whose it is, and asks nobody for anything", () => {
  const html = drawingsPage("Smith & Co <A1>", [
    { name: "one", title: "One", svg: svg("one") }, { name: "two", title: "Two", svg: svg("two") },
  ]);
  expect(html.match(/<section>/g)).toHaveLength(2);
  expect(html).toContain(`<section><p>Smith &amp; Co &lt;A1&gt;</p>${svg("one")}</section>`);
  expect(html).toContain("<title>Smith &amp; Co &lt;A1&gt;</title>");
  expect(html).toMatch(/@page \{ size: landscape/);
  expect(html).not.toMatch(/https?:|<script|src=|href=/);
});
