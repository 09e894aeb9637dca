import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { SheetData } from "../../src/sheets/sheet-data";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
import { excelFile } from "./as-excel-saves";

/** Numbers from 0 to 1 that a seed decides (a linear congruence modulo 2^32: Numerical Recipes in C, 2nd edition, 7.1). */
export type Chance = () => number;
export const chanceOf = (seed: number): Chance => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
};

export const below = (chance: Chance, count: number): number => Math.min(count - 1, Math.floor(chance() * count));
export const oneOf = <Item>(chance: Chance, items: readonly Item[]): Item => items[below(chance, items.length)] as Item;

const OWN: readonly SheetData[] = [
  {
    name: "Bid", frozenRows: 1, columnWidths: { A: 88.5 }, merged: ["D1:E2"], lists: [{ cells: "A2:A9", options: ["in", "x".repeat(300)] }],
    rules: [{ cells: "B1:B9", when: "=B1>4", look: { bold: true } }],
    cells: {
      A1: { value: "Bid", style: "title" }, A2: { value: 7.5625, format: "# ??/16", look: { ink: "red" } }, A3: { value: true },
      B1: { formula: "=STAIR.RISERS(A2)" }, B2: { formula: "=SORT(A2:A9)" }, B3: { formula: "=LET(x,A2,x*2)" },
    },
  },
  { name: "Rates", cells: { A1: { value: "_x000D_" } }, isHidden: true },
];

const WHOLE: readonly Uint8Array[] = [
  excelFile(), workbookFile(OWN, { calculated: { value: () => 1, spill: (_, at) => (at === "B2" ? [[1], [2]] : [[1]]) } }),
];

type Parts = Record<string, Uint8Array>;

const partsOf = (bytes: Uint8Array): Parts => unzipSync(bytes);
const packed = (parts: Parts): Uint8Array => zipSync(parts, { level: 1 });
const names = (parts: Parts): readonly string[] => Object.keys(parts);

const withText = (chance: Chance, bytes: Uint8Array, change: (text: string) => string): Uint8Array => {
  const parts = partsOf(bytes);
  const name = oneOf(chance, names(parts));
  parts[name] = strToU8(change(strFromU8(parts[name] ?? new Uint8Array())));
  return packed(parts);
};

const within = (bytes: Uint8Array, change: (copy: Uint8Array) => void): Uint8Array => {
  const copy = bytes.slice();
  change(copy);
  return copy;
};

/** The places at which the records of a zip file's directory begin. */
const records = (bytes: Uint8Array): readonly number[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  // Whole ones, of 46 bytes (PKWARE APPNOTE 6.3.10, 4.3.12).
  return Array.from({ length: Math.max(bytes.length - 46, 0) }, (_, at) => at).filter((at) => view.getUint32(at, true) === 0x02014b50);
};

const ODD_VALUES = [
  "-1", "0", "4294967296", "1e308", "NaN", "", "A0", "XFE1", "A1048577", "ZZZZ99", "A1:", ":", "A1:XFD1048576", "../../../x",
  "9".repeat(400), "é", "__proto__", "constructor", "1:1", "true",
];
const ODD_FORMULAS = [
  "(".repeat(3000), "=", "#", "@", "'", '"', "[", "[1]", "[[[[", "A1#".repeat(900), "_xlfn.SINGLE(".repeat(600), "_xlfn.ANCHORARRAY(",
  "LET(", "Lines[", "Lines[[#All],[Part]:[Price]", "Markup".repeat(50), "{".repeat(99), "1+".repeat(4000), "Jan:Dec!A1", "\ud800",
  "[0]!Markup", "A:A:A:A", "!", "$$$A$$1",
];
const BOMB =
  '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c SYSTEM "file:///etc/hostname">]>';
const TARGETS = ["../../../../etc/hostname", "/../x", "file:///etc/hostname", "%2e%2e/%2e%2e/x", "..\\..\\x", "C:\\x", "/xl/workbook.xml", "", "%"];

/** Every way in which a file is spoilt, by its name. */
export const DAMAGES: Readonly<Record<string, (bytes: Uint8Array, chance: Chance) => Uint8Array>> = {
  "cut off": (bytes, chance) => bytes.slice(0, below(chance, bytes.length)),
  "without its beginning": (bytes, chance) => bytes.slice(below(chance, bytes.length)),
  "bits turned": (bytes, chance) => within(bytes, (copy) => {
    for (let count = 1 + below(chance, 8); count > 0; count -= 1) {
      const at = below(chance, copy.length);
      copy[at] = (copy[at] ?? 0) ^ (1 << below(chance, 8));
    }
  }),
  "a stretch of noise": (bytes, chance) => within(bytes, (copy) => {
    const from = below(chance, copy.length);
    for (let at = from; at < Math.min(copy.length, from + 200); at += 1) copy[at] = below(chance, 256);
  }),
  "false figures in the directory": (bytes, chance) => within(bytes, (copy) => {
    const view = new DataView(copy.buffer);
    if (records(copy).length === 0) return;
    const field = oneOf(chance, [8, 10, 16, 20, 24, 28, 30, 32, 42]);
    const value = oneOf(chance, [0, 1, 0xffff, 0xffffff, 0x7fffffff, 0xffffffff, 0xfffffffe]);
    view.setUint16(oneOf(chance, records(copy)) + field, value & 0xffff, true);
    if (![8, 10, 28, 30, 32].includes(field)) view.setUint32(oneOf(chance, records(copy)) + field, value, true);
  }),
  "parts swapped": (bytes, chance) => {
    const parts = partsOf(bytes);
    const [one, other] = [oneOf(chance, names(parts)), oneOf(chance, names(parts))];
    return packed({ ...parts, [one]: parts[other] ?? new Uint8Array(), [other]: parts[one] ?? new Uint8Array() });
  },
  "a part missing": (bytes, chance) => {
    const parts = partsOf(bytes);
    const gone = oneOf(chance, names(parts));
    return packed(Object.fromEntries(Object.entries(parts).filter(([name]) => name !== gone)));
  },
  "a part cut off": (bytes, chance) => withText(chance, bytes, (text) => text.slice(0, below(chance, text.length + 1))),
  "letters turned in a part": (bytes, chance) => withText(chance, bytes, (text) => {
    const at = below(chance, text.length);
    return text.slice(0, at) + oneOf(chance, ["<", ">", "&", '"', "0", " ", "\u0001", "/", "é"]) + text.slice(at + 1);
  }),
  "a piece of a part twice or gone": (bytes, chance) => withText(chance, bytes, (text) => {
    const [from, length] = [below(chance, text.length), below(chance, 400)];
    const piece = text.slice(from, from + length);
    return text.slice(0, from) + (chance() < 0.5 ? piece + piece : "") + text.slice(from + length);
  }),
  "odd values": (bytes, chance) => withText(chance, bytes, (text) => {
    const places = [...text.matchAll(/="([^"]*)"/g)];
    const place = places.length === 0 ? undefined : oneOf(chance, places);
    if (place === undefined) return text;
    return `${text.slice(0, place.index)}="${oneOf(chance, ODD_VALUES)}"${text.slice(place.index + place[0].length)}`;
  }),
  "odd texts": (bytes, chance) => withText(chance, bytes, (text) => {
    const places = [...text.matchAll(/>([^<]+)</g)];
    const place = places.length === 0 ? undefined : oneOf(chance, places);
    const odd = oneOf(chance, [...ODD_VALUES, ...ODD_FORMULAS]).replaceAll("<", "&lt;");
    if (place === undefined) return text;
    return `${text.slice(0, place.index)}>${odd}<${text.slice(place.index + place[0].length)}`;
  }),
  "odd formulas": (bytes, chance) => withText(chance, bytes, (text) =>
    text.replaceAll(/(<(?:\w+:)?(?:f|formula|definedName)(?: [^>]*)?>)[^<]*</g, (_, open: string) =>
      `${open}${oneOf(chance, ODD_FORMULAS)}<`)),
  "nested deep": (bytes, chance) => withText(chance, bytes, (text) => {
    const at = text.lastIndexOf("</");
    const depth = oneOf(chance, [50, 70, 5000, 200_000]);
    return at < 0 ? text : `${text.slice(0, at)}${"<q>".repeat(depth)}${"</q>".repeat(depth)}${text.slice(at)}`;
  }),
  "entities": (bytes, chance) => withText(chance, bytes, (text) => {
    const at = text.startsWith("<?xml") ? text.indexOf("?>") + 2 : 0;
    return text.slice(0, at) + BOMB + text.slice(at).replace(/>([^<]+)</, ">&b;&c;<");
  }),
  "paths that lead outside": (bytes, chance) => {
    const parts = partsOf(bytes);
    const outside = oneOf(chance, ["../x.xml", "/x.xml", "xl/../../x.xml", "C:/x", "a\\..\\..\\b"]);
    if (chance() < 0.3) return packed({ ...parts, [outside]: strToU8("x") });
    const name = oneOf(chance, names(parts).filter((one) => one.endsWith(".rels")));
    const text = strFromU8(parts[name] ?? new Uint8Array());
    const target = oneOf(chance, TARGETS);
    const changed = text.replaceAll(/Target="[^"]*"/g, (old) => (chance() < 0.5 ? `Target="${target}"` : old));
    return packed({ ...parts, [name]: strToU8(changed) });
  },
  "one part many times": (bytes, chance) => withText(chance, bytes, (text) =>
    text.replaceAll(/<(sheet|row|c|xf|si|definedName|cfRule|col|mergeCell)\b[^>]*(?:\/>|>.*?<\/\1>)/g, (whole) =>
      whole.repeat(1 + below(chance, 40)))),
  "something else behind the mark": (_, chance) =>
    Uint8Array.from({ length: 3000 }, (__, at) => [0x50, 0x4b, 3, 4][at] ?? below(chance, 256)),
  "a bomb": (bytes, chance) => withText(chance, bytes, (text) => text.slice(0, 200) + " ".repeat(1_000_000) + text.slice(200)),
};

/** A seed's own numbers; the first of them are let go, for neighbouring seeds begin alike. */
export const warmed = (seed: number): Chance => {
  const chance = chanceOf(seed);
  for (let warm = 0; warm < 8; warm += 1) chance();
  return chance;
};

/** A file spoilt in one way or two, as a seed decides. */
export const damagedFile = (seed: number): { readonly how: string; readonly bytes: Uint8Array } => {
  const chance = warmed(seed);
  const whole = oneOf(chance, WHOLE);
  const how = oneOf(chance, Object.keys(DAMAGES));
  let bytes = DAMAGES[how]?.(whole, chance) ?? whole;
  const more = chance() < 0.2 ? oneOf(chance, ["cut off", "bits turned", "false figures in the directory"]) : "";
  if (more !== "" && bytes.length > 100) bytes = DAMAGES[more]?.(bytes, chance) ?? bytes;
  return { how: more === "" ? how : `${how}, ${more}`, bytes };
};
