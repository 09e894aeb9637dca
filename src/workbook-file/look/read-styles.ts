import { cellLooks, isStyleName } from "../../sheets/cell-looks";
import type { OwnLook } from "../../sheets/own-look";
import type { StyleName } from "../../sheets/sheet-data";
import { childOf, childrenOf, countOf, type XmlElement } from "../xml-tree";
import { colourOf, type Colours, THEME_ORDER } from "./colours";
import { builtInFormat } from "./number-formats";
import { readLook } from "./read-look";

/** How a cell looks by the number of its format record. */
export interface CellStyle {
  readonly style?: StyleName;
  readonly look?: OwnLook;
  readonly format?: string;
}

/** How a rule makes cells look. */
export interface RuleStyle {
  readonly look: OwnLook;
  readonly hasFormat: boolean;
}

export interface FileStyles {
  readonly cell: (index: number | undefined) => CellStyle;
  readonly rule: (index: number | undefined) => RuleStyle;
}

/** Our named looks are cell styles of the file under these names, so that they outlast an edit elsewhere. */
export const STYLE_PREFIX = "Treadsheet ";

/** The colours of a theme part, those a person's own system sets by what they were last (ECMA-376-1, 20.1.2.3.33). */
export const themeColours = (theme: XmlElement | undefined): readonly (string | undefined)[] => {
  const scheme = childOf(childOf(theme, "themeElements"), "clrScheme");
  return THEME_ORDER.map((name) => {
    const colour = childOf(scheme, name)?.children[0];
    const value = colour?.attributes["lastClr"] ?? colour?.attributes["val"] ?? "";
    return /^[0-9a-f]{6}$/i.test(value) ? `#${value.toLowerCase()}` : undefined;
  });
};

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** A look without what the workbook's own usual font says: a live sheet has a usual font of its own. */
const unusual = (look: OwnLook, usual: OwnLook, style: OwnLook = {}): OwnLook =>
  Object.fromEntries(Object.entries(look).filter(([name, value]) => {
    const part = name as keyof OwnLook;
    return style[part] !== undefined || (part !== "font" && part !== "size" && part !== "ink") || value !== usual[part];
  }));

/** What of a look is not said by its style; undefined where the style says something that the cell does not show. */
const besides = (look: OwnLook, style: OwnLook): OwnLook | undefined => {
  const names = Object.keys(style) as (keyof OwnLook)[];
  if (names.some((name) => look[name] === undefined)) return undefined;
  return Object.fromEntries(Object.entries(look).filter(([name, value]) => !isSame(value, style[name as keyof OwnLook])));
};

interface Records {
  readonly fonts: readonly XmlElement[];
  readonly fills: readonly XmlElement[];
  readonly borders: readonly XmlElement[];
  readonly formats: ReadonlyMap<number, string>;
  readonly styles: ReadonlyMap<number, StyleName>;
  readonly colours: Colours;
  readonly usual: OwnLook;
}

const records = (root: XmlElement | undefined, theme: readonly (string | undefined)[]): Records => {
  const of = (group: string, name: string): readonly XmlElement[] => childrenOf(childOf(root, group), name);
  const palette = childrenOf(childOf(childOf(root, "colors"), "indexedColors"), "rgbColor").map(
    (element) => colourOf(element, { theme: [] })?.slice(1) ?? "000000",
  );
  const colours: Colours = palette.length > 0 ? { theme, palette } : { theme };
  const fonts = of("fonts", "font");
  const formats = of("numFmts", "numFmt").flatMap(({ attributes: { numFmtId, formatCode } }) => {
    const id = countOf(numFmtId);
    return id === undefined || formatCode === undefined ? [] : [[id, formatCode] as const];
  });
  const styles = of("cellStyles", "cellStyle").flatMap(({ attributes: { name = "", xfId } }) => {
    const style = name.startsWith(STYLE_PREFIX) ? name.slice(STYLE_PREFIX.length) : "";
    const id = countOf(xfId);
    return id !== undefined && isStyleName(style) ? [[id, style] as const] : [];
  });
  const usual = readLook({ font: fonts[0] }, colours);
  const [fills, borders] = [of("fills", "fill"), of("borders", "border")];
  return { fonts, fills, borders, formats: new Map(formats), styles: new Map(styles), colours, usual };
};

const cellStyle = (xf: XmlElement, { fonts, fills, borders, formats, styles, colours, usual }: Records): CellStyle => {
  const at = (name: string): number => countOf(xf.attributes[name]) ?? 0;
  const alignment = xf.attributes["applyAlignment"] === "0" ? undefined : childOf(xf, "alignment");
  const parts = { font: fonts[at("fontId")], fill: fills[at("fillId")], border: borders[at("borderId")], alignment };
  const look = readLook(parts, colours);
  const id = at("numFmtId");
  const format = formats.get(id) ?? builtInFormat(id);
  const style = styles.get(at("xfId"));
  const own = style && besides(look, cellLooks[style]);
  const shown = own === undefined || style === undefined ? unusual(look, usual) : unusual(own, usual, cellLooks[style]);
  return {
    ...(own === undefined || style === undefined ? {} : { style }),
    ...(Object.keys(shown).length === 0 ? {} : { look: shown }),
    ...(format === undefined || format.toLowerCase() === "general" ? {} : { format }),
  };
};

/** How the cells and the rules of a workbook look, from its part of styles. */
export const fileStyles = (root: XmlElement | undefined, theme: readonly (string | undefined)[]): FileStyles => {
  const all = records(root, theme);
  const cells = childrenOf(childOf(root, "cellXfs"), "xf").map((xf) => cellStyle(xf, all));
  const rules = childrenOf(childOf(root, "dxfs"), "dxf").map((dxf): RuleStyle => ({
    look: readLook({ font: childOf(dxf, "font"), fill: childOf(dxf, "fill"), border: childOf(dxf, "border") }, all.colours, true),
    hasFormat: childOf(dxf, "numFmt") !== undefined,
  }));
  return { cell: (index = 0) => cells[index] ?? {}, rule: (index) => rules[index ?? -1] ?? { look: {}, hasFormat: false } };
};
