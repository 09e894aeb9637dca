/** A text in a style sheet. */
const quoted = (text: string): string => `"${text.replace(/["\\\n]/g, (one) => `\\${one.charCodeAt(0).toString(16)} `)}"`;

/** Rules for the foot of every page: whose job it is, of which day, and which page of how many; where the browser prints such. */
export const pageMarks = (title: string): string => {
  const mark = "font: 9pt system-ui, sans-serif;";
  return (
    `@page { @bottom-left { content: ${quoted(title)}; ${mark} } ` +
    `@bottom-right { content: "page " counter(page) " of " counter(pages); ${mark} } }`
  );
};
