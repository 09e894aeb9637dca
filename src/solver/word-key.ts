/**
 * Words of the trade that are written in several ways, in every way, the first for all: American and British spellings, the British words
 * for run and stringer, and the short form of quantity. Common practice and any dictionary of both, no source.
 */
const SPELLINGS: readonly (readonly string[])[] = [
  ["labor", "labour"], ["molding", "moulding"], ["color", "colour"], ["gray", "grey"], ["center", "centre"], ["meter", "metre"],
  ["millimeter", "millimetre"], ["centimeter", "centimetre"], ["liter", "litre"], ["milliliter", "millilitre"], ["fiber", "fibre"],
  ["miter", "mitre"], ["mitered", "mitred"], ["mitering", "mitring"], ["beveled", "bevelled"], ["leveled", "levelled"],
  ["gage", "gauge"], ["story", "storey"], ["favorable", "favourable"], ["unfavorable", "unfavourable"],
  ["equalize", "equalise"], ["equalized", "equalised"], ["run", "going"], ["stringer", "string"], ["quantity", "qty"],
];

/** Nouns of our headings, labels, choices and items that are written in the plural too. */
const NOUNS: readonly string[] = [
  "adhesive",
  "allowance",
  "amendment",
  "angle",
  "baluster",
  "bead",
  "bevel",
  "blank",
  "board",
  "bracket",
  "cartridge",
  "charge",
  "choice",
  "code",
  "cost",
  "cove",
  "cut",
  "day",
  "defect",
  "depth",
  "diagonal",
  "edge",
  "end",
  "exception",
  "fact",
  "fail",
  "fastener",
  "feather",
  "finish",
  "flight",
  "floor",
  "gap",
  "grade",
  "grip",
  "guard",
  "handrail",
  "heading",
  "height",
  "hour",
  "inch",
  "item",
  "label",
  "landing",
  "lean",
  "length",
  "limit",
  "lot",
  "mark",
  "material",
  "nail",
  "newel",
  "nosing",
  "notch",
  "note",
  "occupant",
  "offcut",
  "offset",
  "opening",
  "order",
  "overhang",
  "panel",
  "pass",
  "piece",
  "pitch",
  "plan",
  "point",
  "post",
  "premise",
  "price",
  "rail",
  "rate",
  "reading",
  "result",
  "return",
  "rise",
  "riser",
  "row",
  "screw",
  "set",
  "sheet",
  "side",
  "size",
  "skirt",
  "slope",
  "spindle",
  "stair",
  "step",
  "stick",
  "stock",
  "strip",
  "table",
  "tape",
  "thickness",
  "threshold",
  "tilt",
  "toe",
  "total",
  "tread",
  "turn",
  "unit",
  "value",
  "variance",
  "wall",
  "width",
  "winder",
  "work",
];

const plural = (noun: string): string => {
  if (/(s|x|ch|sh)$/.test(noun)) return `${noun}es`;
  return /[^aeo]y$/.test(noun) ? `${noun.slice(0, -1)}ies` : `${noun}s`;
};

const ONE_SPELLING: ReadonlyMap<string, string> = new Map(
  [...SPELLINGS, ...NOUNS.map((noun) => [noun])].flatMap((ways) =>
    ways.flatMap((way) => [way, plural(way)].map((written) => [written, ways[0] ?? way] as const)),
  ),
);

const PARTS = /\p{L}+|[\p{N}+]+/gu;

/** Headings that people put over a quantity. Only over a column: `count` is no label and no goods. Common practice, no source. */
const OVER_A_QUANTITY: readonly string[] = [
  "pc",
  "pcs",
  "piece",
  "no",
  "nos",
  "number",
  "no of",
  "no off",
  "number of",
  "number off",
  "count",
  "how many",
];

/** Slips of the short form, too far from the long one to be matched by letters. */
const SLIPS_OF_QTY: readonly string[] = ["qnt", "qnty", "qtty", "qtny", "qyt", "quant", "quanty"];

/**
 * What the ways to write one label, heading, choice or item of ours share: letters, digits and + alone, without regard to case, the words
 * above in one spelling and the singular. For closed lists of our own words; two names of a user's goods may share it and be two goods.
 */
export const wordKey = (text: string): string =>
  (text.normalize("NFC").toLowerCase().match(PARTS) ?? []).map((word) => ONE_SPELLING.get(word) ?? word).join("");

const keys = (texts: readonly string[]): ReadonlySet<string> => new Set(texts.map(wordKey));
const QUANTITIES = keys(OVER_A_QUANTITY);
const SLIPS = keys(SLIPS_OF_QTY);

/** Whether a heading is a plain word for the quantity. */
export const isOverQuantity = (heading: string): boolean => QUANTITIES.has(wordKey(heading));

/** Whether a heading is a slip of the short form of quantity. */
export const isSlipOfQuantity = (heading: string): boolean => SLIPS.has(wordKey(heading));
