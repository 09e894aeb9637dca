import { cellLooks } from "../../sheets/cell-looks";
import { type OwnLook, SIDES } from "../../sheets/own-look";
import type { CellData, StyleName } from "../../sheets/sheet-data";
import { DECLARATION, MAIN } from "../namespaces";
import { unclosed, withAttribute } from "../xml-splices";
import { attributeText } from "../xml-text";
import { fileColour } from "./colours";
import { builtInId, FIRST_OWN } from "./number-formats";
import { STYLE_PREFIX } from "./read-styles";

/** Collects the looks of cells and rules as records of the file's part of styles. */
export interface WrittenStyles {
  /** The number of the record for a cell's look. */
  readonly cell: (cell: Pick<CellData, "style" | "look" | "format">) => number;
  /** The number of the record for a rule's look; undefined where a rule can show nothing of it. */
  readonly rule: (look: OwnLook, format?: string) => number | undefined;
  /** The number of a record like one that is there, but for the parts in which a cell's look is another now. */
  readonly changed: (record: ChangedRecord) => number;
  readonly xml: () => string;
  /** What of each group is new, without the group itself. */
  readonly added: () => readonly AddedRecords[];
}

/** A record of cells as it stands in a part, and how a cell that had it looks now. */
export interface ChangedRecord {
  readonly xf: string;
  readonly look: OwnLook;
  /** The format, where it is another now. */
  readonly format?: string | undefined;
  readonly parts: readonly (keyof typeof LOOK_PARTS)[];
  readonly hasOtherFormat: boolean;
}

export interface AddedRecords {
  readonly group: (typeof STYLE_GROUPS)[number];
  readonly count: number;
  readonly xml: string;
}

/** The groups of the part in the order of CT_Stylesheet (ECMA-376-1, A.2, sml.xsd). */
export const STYLE_GROUPS =
  ["numFmts", "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs", "tableStyles", "colors", "extLst"] as const;

/** What a part of styles holds already: how many of each group, and what cells are written in where nothing says otherwise. */
export interface KnownStyles {
  readonly counts: Readonly<Partial<Record<(typeof STYLE_GROUPS)[number], number>>>;
  readonly firstFormat: number;
  readonly styles: ReadonlyMap<StyleName, number>;
  readonly usual: OwnLook;
}

/** What of a look stands in which record. */
export const LOOK_PARTS = {
  font: ["bold", "italic", "underline", "strike", "font", "size", "ink"],
  fill: ["fill"],
  border: ["borders"],
  alignment: ["across", "down", "wrap", "turned", "stacked"],
} as const satisfies Readonly<Record<string, readonly (keyof OwnLook)[]>>;

/** What cells of a live sheet are written in. */
const USUAL: OwnLook = { font: "Arial", size: 11 };

/** Records in the order in which they were first asked for. */
class Records {
  readonly all: string[] = [];
  readonly #places = new Map<string, number>();

  /** Those that are known stand before these. */
  constructor(readonly known = 0) {}

  place(record: string): number {
    const known = this.#places.get(record);
    if (known !== undefined) return known;
    const place = this.known + this.all.push(record) - 1;
    this.#places.set(record, place);
    return place;
  }
}

const colour = (name: string, given: string | undefined): string => {
  const rgb = given === undefined ? undefined : fileColour(given);
  return rgb === undefined ? "" : `<${name} rgb="${rgb}"/>`;
};

/** Children in the order of CT_Font (ECMA-376-1, A.2, sml.xsd): b, i, strike, u, sz, color, name. */
const fontXml = (look: OwnLook, usual: OwnLook): string => {
  const { font = usual.font, size = usual.size } = look;
  return [
    "<font>", look.bold ? "<b/>" : "", look.italic ? "<i/>" : "", look.strike ? "<strike/>" : "", look.underline ? "<u/>" : "",
    size === undefined ? "" : `<sz val="${size}"/>`, colour("color", look.ink),
    font === undefined ? "" : `<name val="${attributeText(font)}"/>`, "</font>",
  ].join("");
};

const NO_FILL = '<fill><patternFill patternType="none"/></fill>';
/** The second fill is this one whatever is asked for (from memory: Excel shows it so). */
const GREY = '<fill><patternFill patternType="gray125"/></fill>';

const fillXml = ({ fill }: OwnLook): string => {
  const front = colour("fgColor", fill);
  return front === "" ? NO_FILL : `<fill><patternFill patternType="solid">${front}<bgColor indexed="64"/></patternFill></fill>`;
};

const camel = (name: string): string => name.replaceAll(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** Sides in the order of CT_Border: left, right, top, bottom. */
const BORDER_ORDER = ["left", "right", "top", "bottom"] as const satisfies readonly (typeof SIDES)[number][];

const borderXml = ({ borders = {} }: OwnLook, isRule = false): string => {
  const sides = BORDER_ORDER.map((side) => {
    const edge = borders[side];
    return edge === undefined ? `<${side}/>` : `<${side} style="${camel(edge.line)}">${colour("color", edge.ink)}</${side}>`;
  });
  return `<border>${sides.join("")}${isRule ? "" : "<diagonal/>"}</border>`;
};

const QUARTER = 90;
const STACKED = 255;

const alignmentXml = ({ across, down, wrap, turned, stacked }: OwnLook): string => {
  const whole = turned === undefined || !Number.isInteger(turned) ? 0 : turned;
  const rotation = stacked ? STACKED : whole < 0 ? QUARTER - whole : whole;
  const given = [
    across === undefined ? "" : ` horizontal="${across}"`,
    down === undefined ? "" : ` vertical="${down === "middle" ? "center" : down}"`,
    rotation === 0 ? "" : ` textRotation="${rotation}"`,
    wrap ? ' wrapText="1"' : "",
  ].join("");
  return given === "" ? "" : `<alignment${given}/>`;
};

/** The records of a part by their groups. */
const recordsBehind = ({ counts, styles, usual }: KnownStyles) => {
  const of = (group: (typeof STYLE_GROUPS)[number]): Records => new Records(counts[group] ?? 0);
  const groups = {
    formats: new Records(), fonts: of("fonts"), fills: of("fills"), borders: of("borders"), styleXfs: of("cellStyleXfs"),
    cells: of("cellXfs"), rules: of("dxfs"),
  };
  return { ...groups, named: new Map(styles), usual };
};

type Groups = ReturnType<typeof recordsBehind>;

/** A part without any records but the ones each part begins with. */
const NOTHING: KnownStyles = { counts: {}, firstFormat: FIRST_OWN, styles: new Map(), usual: USUAL };

const begin = ({ fonts, fills, borders, styleXfs, cells }: Groups): void => {
  fonts.place(fontXml({}, USUAL));
  for (const fill of [NO_FILL, GREY]) fills.place(fill);
  borders.place(borderXml({}));
  styleXfs.place('<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>');
  cells.place('<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>');
};

const hasNothing = (look: OwnLook, part: keyof typeof LOOK_PARTS): boolean => LOOK_PARTS[part].every((name) => look[name] === undefined);

/** The numbers of the records that make up a look; 0 for a part of which it says nothing. */
const placed = (look: OwnLook, { fonts, fills, borders, usual }: Groups) => ({
  font: () => (hasNothing(look, "font") ? 0 : fonts.place(fontXml(look, usual))),
  fill: () => (hasNothing(look, "fill") ? 0 : fills.place(fillXml(look))),
  border: () => (hasNothing(look, "border") ? 0 : borders.place(borderXml(look))),
});

const APPLIES = { numFmtId: "applyNumberFormat", fontId: "applyFont", fillId: "applyFill", borderId: "applyBorder" } as const;

const ALIGNMENT = /<((?:[\w.-]+:)?)alignment\b[^>]*?(?:\/>|>\s*<\/\1alignment>)/;

/** A record with other numbers in some places, and another alignment. */
const recordChanged = (xf: string, ids: Readonly<Partial<Record<keyof typeof APPLIES, number>>>, alignment: string | undefined): string => {
  const [, start = "", prefix = ""] = /^(<((?:[\w.-]+:)?)xf\b[^>]*>)/.exec(xf) ?? [];
  const inside = start.endsWith("/>") ? "" : xf.slice(start.length, xf.lastIndexOf("</"));
  let tag = unclosed(start);
  for (const [name, id] of Object.entries(ids) as readonly (readonly [keyof typeof APPLIES, number])[])
    tag = withAttribute(withAttribute(tag, name, String(id)), APPLIES[name], "1");
  if (alignment !== undefined) tag = withAttribute(tag, "applyAlignment", alignment === "" ? "" : "1");
  const rest = alignment === undefined ? inside : alignment.replace(/^</, `<${prefix}`) + inside.replace(ALIGNMENT, "");
  return rest === "" ? `${tag}/>` : `${tag}>${rest}</${prefix}xf>`;
};

/**
 * Collects looks; the part it comes to has its groups in the order of CT_Stylesheet. With what a part holds already, it collects what has
 * to be added to that part.
 */
export const writtenStyles = (known?: KnownStyles): WrittenStyles => {
  const groups = recordsBehind(known ?? NOTHING);
  if (known === undefined) begin(groups);
  const { formats, styleXfs, cells, rules, named } = groups;
  const [firstFormat, firstNamed] = [known?.firstFormat ?? FIRST_OWN, named.size];
  const formatId = (format: string | undefined): number => {
    if (format === undefined || format.toLowerCase() === "general" || format === "") return 0;
    return builtInId(format) ?? firstFormat + formats.place(format);
  };
  const record = (look: OwnLook, format: string | undefined, behind: string): string => {
    const alignment = alignmentXml(look);
    const records = placed(look, groups);
    const [font, fill, border] = [records.font(), records.fill(), records.border()];
    const id = formatId(format);
    const applies = [id > 0 ? ' applyNumberFormat="1"' : "", font > 0 ? ' applyFont="1"' : "", fill > 0 ? ' applyFill="1"' : "",
      border > 0 ? ' applyBorder="1"' : "", alignment === "" ? "" : ' applyAlignment="1"'].join("");
    const open = `<xf numFmtId="${id}" fontId="${font}" fillId="${fill}" borderId="${border}"${behind}${applies}`;
    return alignment === "" ? `${open}/>` : `${open}>${alignment}</xf>`;
  };
  const styleId = (style: StyleName | undefined): number => {
    if (style === undefined) return 0;
    const id = named.get(style) ?? styleXfs.known + styleXfs.all.length;
    if (!named.has(style)) styleXfs.all.push(record(cellLooks[style], undefined, ""));
    named.set(style, id);
    return id;
  };
  const added = (): readonly AddedRecords[] => {
    const names = [...named].slice(firstNamed).map(([style, id]) => `<cellStyle name="${STYLE_PREFIX}${style}" xfId="${id}"/>`);
    if (known === undefined) names.unshift('<cellStyle name="Normal" xfId="0" builtinId="0"/>');
    const own = formats.all.map((format, index) =>
      `<numFmt numFmtId="${firstFormat + index}" formatCode="${attributeText(format)}"/>`);
    const all: Readonly<Partial<Record<(typeof STYLE_GROUPS)[number], readonly string[]>>> = {
      numFmts: own, fonts: groups.fonts.all, fills: groups.fills.all, borders: groups.borders.all, cellStyleXfs: styleXfs.all,
      cellXfs: cells.all, cellStyles: names, dxfs: rules.all,
    };
    return STYLE_GROUPS.flatMap((group) => {
      const records = all[group] ?? [];
      return records.length === 0 ? [] : [{ group, count: records.length, xml: records.join("") }];
    });
  };
  return {
    cell: ({ style, look = {}, format }) => {
      const whole = { ...(style === undefined ? {} : cellLooks[style]), ...look };
      const isPlain = style === undefined && Object.keys(look).length === 0 && formatId(format) === 0;
      return isPlain ? 0 : cells.place(record(whole, format, ` xfId="${styleId(style)}"`));
    },
    rule: (look, format) => ruleXml(look, format, formatId(format), rules),
    changed: ({ xf, look, format, parts, hasOtherFormat }) => {
      const ids = placed(look, groups);
      const at = (part: keyof typeof ids) => (parts.includes(part) ? { [`${part}Id`]: ids[part]() } : {});
      const numbers = { ...at("font"), ...at("fill"), ...at("border"), ...(hasOtherFormat ? { numFmtId: formatId(format) } : {}) };
      return cells.place(recordChanged(xf, numbers, parts.includes("alignment") ? alignmentXml(look) : undefined));
    },
    xml: () => `${DECLARATION}<styleSheet xmlns="${MAIN}">${
      added().map(({ group, count, xml }) => `<${group} count="${count}">${xml}</${group}>`).join("")}</styleSheet>`,
    added,
  };
};

/** Children in the order of CT_Dxf: font, numFmt, fill, alignment, border. A rule changes no typeface, no size and no place. */
const ruleXml = (whole: OwnLook, format: string | undefined, id: number, rules: Records): number | undefined => {
  const { font: _font, size: _size, ...look } = whole;
  const { fill, borders } = look;
  const font = fontXml(look, {});
  const behind = colour("bgColor", fill);
  const parts = [
    font === "<font></font>" ? "" : font,
    format === undefined ? "" : `<numFmt numFmtId="${id}" formatCode="${attributeText(format)}"/>`,
    behind === "" ? "" : `<fill><patternFill patternType="solid">${behind}</patternFill></fill>`,
    borders === undefined ? "" : borderXml({ borders }, true),
  ].join("");
  return parts === "" ? undefined : rules.place(`<dxf>${parts}</dxf>`);
};
