/**
 * Whether a spreadsheet would take a text, typed into a cell, for something else: a number, a date, a formula, true or false, or an error.
 * Such a text is put in with the apostrophe that says "text", unless its cell takes everything for text.
 */
export const isReadOtherwise = (text: string): boolean =>
  /\d/.test(text) || /^\s*[=+\-@'#]/.test(text) || /^\s*(true|false)\s*$/i.test(text);
