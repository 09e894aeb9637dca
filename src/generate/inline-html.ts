/** A token of up to so many characters fits on a telephone, and stays whole where a browser would part it. */
const LONGEST_WHOLE = 24;
/** A browser may part a token at these. */
const PARTED = /.[-/|(){}]./;
/** A longer one parts where a person would: in a formula between its arguments, in an address or a path between its names. */
const PARTS = /(?<=[,;({/])(?!\/)/;

export const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const part = (text: string): string =>
  PARTED.test(text) && text.length <= LONGEST_WHOLE ? `<span class="whole">${escaped(text)}</span>` : escaped(text);

const token = (text: string): string => (text.length <= LONGEST_WHOLE ? [text] : text.split(PARTS)).map(part).join("<wbr>");

/** Text as HTML whose lines part at spaces, and inside a long formula or address, but never inside a word. */
export const plainHtml = (text: string): string =>
  text.split(/(\s+)/).map((each, place) => (place % 2 === 1 ? each : token(each))).join("");

/** A sentence as HTML, what stands between backticks as code. */
export const inlineHtml = (text: string): string =>
  text.split(/`([^`]+)`/).map((each, place) => (place % 2 === 1 ? `<code>${plainHtml(each)}</code>` : plainHtml(each))).join("");
