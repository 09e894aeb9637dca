const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };

/** A text as it stands in HTML. */
export const escaped = (text: string): string => text.replace(/[&<>]/g, (one) => escapes[one] ?? one);

/** A page of its own that asks nobody for anything; the sections are HTML. */
export const htmlPage = (title: string, style: string, sections: readonly string[]): string =>
  `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>${escaped(title)}</title><style>${style}</style></head>` +
  `<body>\n${sections.join("\n")}\n</body></html>\n`;
