import { type Figure, svg } from "../drawing/figure";
import { escaped, inlineHtml, plainHtml } from "./inline-html";

/** A page as a list of blocks, so that HTML and Markdown say the same. */
export type Block =
  | { readonly kind: "heading"; readonly level: 1 | 2 | 3 | 4; readonly text: string; readonly name?: string }
  | { readonly kind: "text"; readonly text: string }
  /** A way to another page, which bears one name as HTML and as Markdown. */
  | { readonly kind: "link"; readonly text: string; readonly page: string }
  | { readonly kind: "code"; readonly text: string }
  | { readonly kind: "figure"; readonly figure: Figure }
  /** A drafting drawing, as SVG text. */
  | { readonly kind: "drawing"; readonly svg: string; readonly says: string }
  | { readonly kind: "table"; readonly headings: readonly string[]; readonly rows: readonly (readonly string[])[] };

const linkName = (name: string | undefined): string => (name === undefined ? "" : ` id="${escaped(name.replace(/ /g, "-"))}"`);

/** A table of more columns than this is moved sideways on a telephone and printed lying; others stand cell under cell on a telephone. */
const MOST_STACKED = 8;
/** How long a column's longest cell is, in characters, for the column to be as wide as a phrase or a sentence wants. */
const PHRASE = 24;
const SENTENCE = 80;

const isWide = (block: Block): boolean => block.kind === "table" && block.headings.length > MOST_STACKED;

const headingCell = (heading: string, cells: readonly string[]): string => {
  const longest = Math.max(...cells.map(({ length }) => length));
  const width = longest > SENTENCE ? ' class="of-sentences"' : longest > PHRASE ? ' class="of-phrases"' : "";
  return `<th scope="col"${width}>${inlineHtml(heading)}</th>`;
};

const htmlTable = (block: Extract<Block, { readonly kind: "table" }>): string => {
  const { headings } = block;
  const head = headings.map((heading, column) => headingCell(heading, block.rows.map((row) => row[column] ?? "")));
  const said = (column: number): string => (isWide(block) || column === 0 ? "" : ` data-heading="${escaped(headings[column] ?? "")}"`);
  const rows = block.rows.map((row) => `<tr>${row.map((cell, column) => `<td${said(column)}>${inlineHtml(cell)}</td>`).join("")}</tr>`);
  // What can only be moved sideways is reached by key as well.
  const way = isWide(block) ? `wide" role="group" tabindex="0" aria-label="Table: ${escaped(headings.join(", "))}` : "stacked";
  return `<div class="sideways ${way}"><table><thead><tr>${head.join("")}</tr></thead><tbody>${rows.join("")}</tbody></table></div>`;
};

const htmlBlock = (block: Block): string => {
  switch (block.kind) {
    case "heading":
      return `<h${block.level}${linkName(block.name)}>${inlineHtml(block.text)}</h${block.level}>`;
    case "text":
      return `<p>${inlineHtml(block.text)}</p>`;
    case "link":
      return `<p><a href="${escaped(block.page)}.html">${inlineHtml(block.text)}</a></p>`;
    case "figure":
      return `<figure>${svg(block.figure)}<figcaption>${inlineHtml(block.figure.says)}</figcaption></figure>`;
    case "drawing":
      return `<figure class="drafted">${block.svg}<figcaption>${inlineHtml(block.says)}</figcaption></figure>`;
    case "code":
      return `<pre>${plainHtml(block.text)}</pre>`;
    case "table":
      return htmlTable(block);
  }
};

const plainCell = (text: string): string => text.replace(/\|/g, "\\|").replace(/\n/g, " ");

const markdownBlock = (block: Block): string => {
  switch (block.kind) {
    case "heading":
      return `${"#".repeat(block.level)} ${block.text}`;
    case "text":
      return block.text;
    case "link":
      return `[${block.text}](${block.page}.md)`;
    case "figure":
      return `*Figure: ${block.figure.says}*`;
    case "code":
      return `\`${block.text}\``;
    case "drawing":
      return `*Drawing: ${block.says}*`;
    case "table":
      return [block.headings, block.headings.map(() => "---"), ...block.rows]
        .map((row) => `| ${row.map(plainCell).join(" | ")} |`)
        .join("\n");
  }
};

export interface Page {
  readonly html: string;
  readonly markdown: string;
}

/** No script, no request, styles and pictures of our own files alone. */
export const PAGE_POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

const policy = `<meta http-equiv="Content-Security-Policy" content="${PAGE_POLICY}">`;

/** A page of our own style around what stands in it, which is HTML already. */
export const htmlPage = (title: string, body: string, styles: readonly string[] = ["reference.css"]): string =>
  `<!doctype html>\n<html lang="en"><head><meta charset="utf-8">${policy}` +
  `<meta name="viewport" content="width=device-width, initial-scale=1"><title>${escaped(title)}</title>` +
  `${styles.map((file) => `<link rel="stylesheet" href="${file}">`).join("")}</head><body><main>\n${body}\n</main></body></html>\n`;

export const markdown = (blocks: readonly Block[]): string => `${blocks.map(markdownBlock).join("\n\n")}\n`;

/** Blocks as a page in our own style, and as Markdown. */
export const page = (title: string, blocks: readonly Block[]): Page => ({
  html: htmlPage(title, blocks.map(htmlBlock).join("\n")),
  markdown: markdown(blocks),
});
