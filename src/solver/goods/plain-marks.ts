/** Fraction signs of Unicode's Latin-1 and Number Forms blocks. */
const FRACTION_SIGNS = /[\u00bc-\u00be\u2150-\u215e\u2189]/g;

const ASCII = /^[\x00-\x7f]*$/;

/** Marks that keyboards and documents write in several ways. */
const oneSign = (text: string): string =>
  text
    .normalize("NFC")
    .replace(FRACTION_SIGNS, (sign) => ` ${sign.normalize("NFKC")} `)
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u2018-\u201b\u2032]/g, "'")
    .replace(/[\u201c-\u201f\u2033]/g, '"')
    .replace(/\u00d7/g, "x")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .toLowerCase()
    .normalize("NFC");

/**
 * A name that a user chose, of goods, a grade or a unit, with one way of writing each mark, small letters, and spaces where they tell
 * numbers apart: `4½ × 10` is `4 1/2x10`. Every mark and every spelling counts, unlike in `wordKey`, which is for our own words. Only a
 * fraction sign alone is taken apart: NFKC over the whole text would make 41/2 of 4½.
 */
export const plainMarks = (text: string): string =>
  (ASCII.test(text) ? text.toLowerCase() : oneSign(text))
    .trim()
    // Not by looking behind: browsers of older Macs do not read a file with that in it.
    .replace(/(\p{Nd}?)\s+(?=(\p{Nd})?)/gu, (_, before: string, after?: string) =>
      before !== "" && after !== undefined ? `${before} ` : before);
