import { below, type Chance, oneOf } from "../workbook-file/damaged-files";

const ODD = [
  "", "-1", "0", "1e308", "1/0", "NaN", "Infinity", "-", "–", "?", "'", '"', '""', "=1+1", "=cmd|' /C x'!A0", "@SUM(1)", "+1",
  "__proto__", "constructor", "é", "\u0000", "\u0007", "\u202e", "\ud800", "😀", "\t", ";", ",", "\r", "\n", "\r\n", "\u2028", "\ufeff",
  "9".repeat(400), "x".repeat(40_000), "(".repeat(3000), "36 1/0", "1//2", "1/2/3", "36\u00a01/2", "３６", "1.250,00", "1,250.00", "12,5",
  "2026-02-30", "31/12/2026",  "€ 5", "(5)", "50%", "TRUE", "#N/A", "<b>", "&amp;", "${1}", "../../x", "end", "treads",
];

const cutTo = (text: string, from: number, length: number, instead: string): string =>
  text.slice(0, from) + instead + text.slice(from + length);

/** Every way in which a text is spoilt, by its name. */
export const SPOILS: Readonly<Record<string, (text: string, chance: Chance) => string>> = {
  "cut off": (text, chance) => text.slice(0, below(chance, text.length + 1)),
  "without its beginning": (text, chance) => text.slice(below(chance, text.length + 1)),
  "a letter turned": (text, chance) => {
    const at = below(chance, text.length + 1);
    return cutTo(text, at, 1, String.fromCharCode((text.charCodeAt(at) || 0) ^ (1 << below(chance, 8))));
  },
  "something odd put in": (text, chance) => cutTo(text, below(chance, text.length + 1), 0, oneOf(chance, ODD)),
  "a word made odd": (text, chance) => {
    const found = [...text.matchAll(/[^\s,;|{}[\]:"]+/g)];
    const one = found.length === 0 ? undefined : oneOf(chance, found);
    return one === undefined ? oneOf(chance, ODD) : cutTo(text, one.index, one[0].length, oneOf(chance, ODD));
  },
  "a piece gone": (text, chance) => cutTo(text, below(chance, text.length + 1), below(chance, 60), ""),
  "a piece twice": (text, chance) => {
    const [from, length] = [below(chance, text.length + 1), below(chance, 60)];
    return cutTo(text, from, 0, text.slice(from, from + length));
  },
  "two lines swapped": (text, chance) => {
    const lines = text.split("\n");
    const [one, other] = [below(chance, lines.length), below(chance, lines.length)];
    return lines.map((line, at) => (at === one ? lines[other] : at === other ? lines[one] : line)).join("\n");
  },
  "a line twice": (text, chance) => {
    const lines = text.split("\n");
    const at = below(chance, lines.length);
    return [...lines.slice(0, at), lines[at] ?? "", ...lines.slice(at)].join("\n");
  },
  "other line ends": (text, chance) => text.replaceAll("\n", oneOf(chance, ["\r\n", "\r", "\u2028", "\n\n", " "])),
  "tabs made spaces": (text, chance) => text.replaceAll("\t", oneOf(chance, [" ", "    ", ",", ";", "\u00a0"])),
  "noise": (_, chance) => Array.from({ length: below(chance, 400) }, () => String.fromCharCode(below(chance, 65_536))).join(""),
  "said again and again": (text, chance) => text.repeat(1 + below(chance, 30)),
};

/** A text spoilt in one way or up to three, as chance decides. */
export const spoiltText = (whole: string, chance: Chance): string => {
  let text = whole;
  for (let times = 1 + below(chance, 3); times > 0; times -= 1) text = oneOf(chance, Object.values(SPOILS))(text, chance);
  return text;
};

const ODD_VALUES: readonly unknown[] = [
  null, true, false, 0, -1, 0.5, 1e308, 1e21, "", "A1", "XFE1", "A1048577", "in", "mm", "tread", "=1", "=".padEnd(9000, "1+"),
  "x".repeat(40_000),  "__proto__", [], {}, [[]], [null], { value: 1 }, { key: "next" }, "flight", "reading", Array(300).fill({}),
];

/** Each time another, for it is spoilt in its turn. */
const oddValue = (chance: Chance): unknown => JSON.parse(JSON.stringify(oneOf(chance, ODD_VALUES)));

const isHolder = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

/** Every place of a value that holds others: whose it is, and under which key. */
const placesIn = (value: unknown): readonly (readonly [Record<string, unknown>, string])[] =>
  isHolder(value) ? Object.keys(value).flatMap((key) => [[value, key] as const, ...placesIn(value[key])]) : [];

/** A value of JSON with something else at up to three of its places. */
export const spoiltValue = (whole: unknown, chance: Chance): unknown => {
  const copy: unknown = JSON.parse(JSON.stringify(whole));
  for (let times = 1 + below(chance, 3); times > 0; times -= 1) {
    const places = placesIn(copy);
    if (places.length === 0) return oddValue(chance);
    const [holder, key] = oneOf(chance, places);
    const how = below(chance, 4);
    if (how === 0 && !Array.isArray(holder)) delete holder[key];
    else if (how === 1) holder[key] = [holder[key], holder[key]];
    else if (how === 2 && !Array.isArray(holder)) holder[`${key}x`] = holder[key];
    else holder[key] = oddValue(chance);
  }
  return copy;
};
