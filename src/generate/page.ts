import { type Figure, svg } from "../drawing/figure";

/** A page as a list of blocks, so that HTML and Markdown say the same. */
export type Block =
  | { readonly kind: "heading"; readonly level: 1 | 2 | 3 | 4; readonly text: string; readonly name?: string }
  | { readonly kind: "text"; readonly text: string }
  /** A way to another page, which bears one name as HTML and as Markdown. */
  | { readonly kind: "link"; readonly text: string; readonly page: string }
  | { readonly kind: "code"; readonly text: string }
  | { readonly kind: "figure"; readonly figure: Figure }
  | { readonly kind: "table"; readonly headings: readonly string[]; readonly rows: readonly (readonly string[])[] };

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const linkName = (name: string | undefined): string => (name === undefined ? "" : ` id="${escaped(name.replace(/ /g, "-"))}"`);

const htmlRow = (cells: readonly string[], tag: string): string =>
  `<tr>${cells.map((cell) => `<${tag}>${escaped(cell)}</${tag.split(" ")[0]}>`).join("")}</tr>`;

const htmlBlock = (block: Block): string => {
  switch (block.kind) {
    case "heading":
      return `<h${block.level}${linkName(block.name)}>${escaped(block.text)}</h${block.level}>`;
    case "text":
      return `<p>${escaped(block.text)}</p>`;
    case "link":
      return `<p><a href="${escaped(block.page)}.html">${escaped(block.text)}</a></p>`;
    case "figure":
      return `<figure>${svg(block.figure)}<figcaption>${escaped(block.figure.says)}</figcaption></figure>`;
    case "code":
      return `<pre>${escaped(block.text)}</pre>`;
    case "table":
      return (
        `<table><thead>${htmlRow(block.headings, 'th scope="col"')}</thead>` +
        `<tbody>${block.rows.map((row) => htmlRow(row, "td")).join("")}</tbody></table>`
      );
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

/** Blocks as a page in our own style, and as Markdown. */
export const page = (title: string, blocks: readonly Block[]): Page => ({
  html: htmlPage(title, blocks.map(htmlBlock).join("\n")),
  markdown: `${blocks.map(markdownBlock).join("\n\n")}\n`,
});
