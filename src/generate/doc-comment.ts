// What TSDoc reads as a tag or a link, and what would end the comment; within `code` it stands as it is.
const PARTS = /(`[^`]*`)|([{}@<>])|\*\//g;

/** Text of a declaration as it stands in a comment of TSDoc. */
export const commentText = (text: string): string =>
  text.replace(PARTS, (all, code: string | undefined, sign: string | undefined) => code ?? (sign === undefined ? "*\\/" : `\\${all}`));

/** Lines as one comment; an empty line parts paragraphs. */
export const docComment = (lines: readonly string[]): string =>
  ["/**", ...lines.flatMap((line) => line.split("\n")).map((line) => ` * ${line}`.trimEnd()), " */"].join("\n");
