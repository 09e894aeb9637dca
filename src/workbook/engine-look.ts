import {
  BooleanNumber, type IBorderData, type IBorderStyleData, type IStyleData, type ITextDecoration, type Nullable, WrapStrategy,
} from "@univerjs/core";
import { cellLooks, type StyleName } from "../sheets/cell-looks";
import { ACROSS, type Border, BORDER_LINES, DOWN, lookFault, type OwnLook, SIDES } from "../sheets/own-look";
import type { CellData } from "./workbook-data";

/** Sides of a cell as the engine names them. */
const ENGINE_SIDES = { top: "t", right: "r", bottom: "b", left: "l" } as const;

export const lookStyle = (look: OwnLook): IStyleData => ({
  ...(look.bold ? { bl: BooleanNumber.TRUE } : {}),
  ...(look.italic ? { it: BooleanNumber.TRUE } : {}),
  ...(look.underline ? { ul: { s: BooleanNumber.TRUE } } : {}),
  ...(look.strike ? { st: { s: BooleanNumber.TRUE } } : {}),
  ...(look.font === undefined ? {} : { ff: look.font }),
  ...(look.size === undefined ? {} : { fs: look.size }),
  ...(look.ink === undefined ? {} : { cl: { rgb: look.ink } }),
  ...(look.fill === undefined ? {} : { bg: { rgb: look.fill } }),
  ...(look.wrap ? { tb: WrapStrategy.WRAP } : look.clip ? { tb: WrapStrategy.CLIP } : {}),
  // The engine counts both from 1, in the order of our words.
  ...(look.across === undefined ? {} : { ht: ACROSS.indexOf(look.across) + 1 }),
  ...(look.down === undefined ? {} : { vt: DOWN.indexOf(look.down) + 1 }),
  ...(look.stacked ? { tr: { a: 0, v: BooleanNumber.TRUE } } : look.turned === undefined ? {} : { tr: { a: look.turned } }),
  ...(look.borders === undefined ? {} : { bd: bordersOf(look.borders) }),
});

const bordersOf = (borders: NonNullable<OwnLook["borders"]>): IBorderData =>
  Object.fromEntries(
    SIDES.flatMap((side) => {
      const border = borders[side];
      return border === undefined ? [] : [[ENGINE_SIDES[side], { s: BORDER_LINES.indexOf(border.line) + 1, cl: { rgb: border.ink } }]];
    }),
  );

export const hasLook = ({ style, look, format }: CellData): boolean => style !== undefined || look !== undefined || format !== undefined;

/** The engine's style of a cell. */
export const styleOf = ({ style, look, format }: CellData): IStyleData => ({
  ...(style === undefined ? {} : lookStyle(cellLooks[style])),
  ...(look === undefined ? {} : lookStyle(look)),
  ...(format === undefined ? {} : { n: { pattern: format } }),
});

const isOn = (decoration: Nullable<ITextDecoration>): boolean => decoration?.s === BooleanNumber.TRUE;

const borderOf = (border: Nullable<IBorderStyleData>): Border | undefined => {
  const line = border ? BORDER_LINES[border.s - 1] : undefined;
  return line === undefined ? undefined : { line, ink: border?.cl?.rgb ?? "#000000" };
};

const bordersIn = (borders: Nullable<IBorderData>): OwnLook["borders"] => {
  const found = SIDES.flatMap((side) => {
    const border = borderOf(borders?.[ENGINE_SIDES[side]]);
    return border === undefined ? [] : [[side, border] as const];
  });
  return found.length === 0 ? undefined : Object.fromEntries(found);
};

/** Everything a cell's style says of its look, in our words; what it leaves open, or cannot be stored, is left out. */
export const wholeLook = (style: IStyleData): OwnLook => {
  const { tb: wrapping, tr: rotation } = style;
  const given: Record<string, unknown> = {
    bold: style.bl === BooleanNumber.TRUE || undefined,
    italic: style.it === BooleanNumber.TRUE || undefined,
    underline: isOn(style.ul) || undefined,
    strike: isOn(style.st) || undefined,
    wrap: wrapping === WrapStrategy.WRAP || undefined,
    clip: wrapping === WrapStrategy.CLIP || undefined,
    font: style.ff ?? undefined,
    size: style.fs,
    ink: style.cl?.rgb?.toLowerCase(),
    fill: style.bg?.rgb?.toLowerCase(),
    across: ACROSS[(style.ht ?? 0) - 1],
    down: DOWN[(style.vt ?? 0) - 1],
    turned: rotation?.a === 0 ? undefined : rotation?.a,
    stacked: rotation?.v === BooleanNumber.TRUE || undefined,
    borders: bordersIn(style.bd),
  };
  return Object.fromEntries(Object.entries(given).filter(([name, value]) => value !== undefined && lookFault(name, value) === undefined));
};

const partsOf = (look: OwnLook): readonly (readonly [string, string])[] =>
  Object.entries(look).map(([part, value]) => [part, JSON.stringify(value)] as const);

type StoredLook = Pick<CellData, "style" | "look">;

/** The styles with their parts, those with the most parts first. */
const NAMED = (Object.keys(cellLooks) as StyleName[])
  .map((name) => ({ name, named: partsOf(cellLooks[name]) }))
  .sort((one, other) => other.named.length - one.named.length);

/** The style of which a look has every part, the one with the most of them; what a person has added stands beside it. */
const styleName = (look: OwnLook): StyleName | undefined => {
  const parts = new Map(partsOf(look));
  // Borders of one's own stand in the place of the style's.
  const isWithin = ([part, value]: readonly [string, string]): boolean =>
    parts.get(part) === value || (part === "borders" && parts.has(part));
  return NAMED.find(({ named }) => named.every(isWithin))?.name;
};

const readLook = (engineStyle: IStyleData): StoredLook => {
  const whole = wholeLook(engineStyle);
  const style = styleName(whole);
  if (style === undefined) return Object.keys(whole).length === 0 ? {} : { look: whole };
  const named = new Map(partsOf(cellLooks[style]));
  const look: OwnLook = Object.fromEntries(Object.entries(whole).filter(([part, value]) => named.get(part) !== JSON.stringify(value)));
  return { style, ...(Object.keys(look).length === 0 ? {} : { look }) };
};

/** Looks that were read, by what the engine says of them: thousands of cells share a few dozen. */
const read = new Map<string, StoredLook>();
/** So many and no more, since each shade of a colour that somebody tries is another. */
const MOST_READ = 2000;

/** A cell's look as it is stored: by the name of a style, and what a person has changed beside it. */
export const storedLook = (engineStyle: Nullable<IStyleData>): StoredLook => {
  if (!engineStyle) return {};
  const key = JSON.stringify({ ...engineStyle, n: undefined });
  const known = read.get(key);
  if (known !== undefined) return known;
  if (read.size >= MOST_READ) read.clear();
  const look = readLook(engineStyle);
  read.set(key, look);
  return look;
};
