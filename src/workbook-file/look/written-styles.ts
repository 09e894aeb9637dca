import { cellLooks } from "../../sheets/cell-looks";
import { type OwnLook, SIDES } from "../../sheets/own-look";
import type { CellData, StyleName } from "../../sheets/sheet-data";
import { DECLARATION, MAIN } from "../namespaces";
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
  readonly xml: () => string;
}

/** What cells of a live sheet are written in. */
const USUAL: OwnLook = { font: "Arial", size: 11 };

/** Records in the order in which they were first asked for. */
class Records {
  readonly all: string[] = [];
  readonly #places = new Map<string, number>();

  constructor(...first: readonly string[]) {
    for (const one of first) this.place(one);
  }

  place(record: string): number {
    const known = this.#places.get(record);
    if (known !== undefined) return known;
    this.#places.set(record, this.all.length);
    return this.all.push(record) - 1;
  }

  xml(group: string): string {
    return this.all.length === 0 ? "" : `<${group} count="${this.all.length}">${this.all.join("")}</${group}>`;
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

/** Collects looks; the part it comes to has its groups in the order of CT_Stylesheet. */
export const writtenStyles = (): WrittenStyles => {
  const [fonts, fills, borders] = [new Records(fontXml({}, USUAL)), new Records(NO_FILL, GREY), new Records(borderXml({}))];
  const [formats, cells, rules] = [new Records(), new Records(), new Records()];
  const styles = new Map<StyleName, number>();
  const styleRecords = new Records();
  const formatId = (format: string | undefined): number => {
    if (format === undefined || format.toLowerCase() === "general" || format === "") return 0;
    return builtInId(format) ?? FIRST_OWN + formats.place(format);
  };
  const record = (look: OwnLook, format: string | undefined, behind: string): string => {
    const alignment = alignmentXml(look);
    const [font, fill, border] = [fonts.place(fontXml(look, USUAL)), fills.place(fillXml(look)), borders.place(borderXml(look))];
    const id = formatId(format);
    const applies = [id > 0 ? ' applyNumberFormat="1"' : "", font > 0 ? ' applyFont="1"' : "", fill > 0 ? ' applyFill="1"' : "",
      border > 0 ? ' applyBorder="1"' : "", alignment === "" ? "" : ' applyAlignment="1"'].join("");
    const open = `<xf numFmtId="${id}" fontId="${font}" fillId="${fill}" borderId="${border}"${behind}${applies}`;
    return alignment === "" ? `${open}/>` : `${open}>${alignment}</xf>`;
  };
  const styleId = (style: StyleName | undefined): number => {
    if (style === undefined) return 0;
    const known = styles.get(style) ?? styles.size + 1;
    if (!styles.has(style)) styleRecords.all.push(record(cellLooks[style], undefined, ""));
    styles.set(style, known);
    return known;
  };
  cells.place(record({}, undefined, ' xfId="0"'));
  const named = (): string =>
    [...styles].map(([style, id]) => `<cellStyle name="${STYLE_PREFIX}${style}" xfId="${id}"/>`).join("");
  const groups = (): string => [
    formats.all.length === 0 ? "" : `<numFmts count="${formats.all.length}">${formats.all.map((format, index) =>
      `<numFmt numFmtId="${FIRST_OWN + index}" formatCode="${attributeText(format)}"/>`).join("")}</numFmts>`,
    fonts.xml("fonts"), fills.xml("fills"), borders.xml("borders"),
    `<cellStyleXfs count="${styles.size + 1}"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>`,
    `${styleRecords.all.join("")}</cellStyleXfs>`,
    cells.xml("cellXfs"),
    `<cellStyles count="${styles.size + 1}"><cellStyle name="Normal" xfId="0" builtinId="0"/>${named()}</cellStyles>`,
    rules.xml("dxfs"),
  ].join("");
  return {
    cell: ({ style, look = {}, format }) =>
      cells.place(record({ ...(style === undefined ? {} : cellLooks[style]), ...look }, format, ` xfId="${styleId(style)}"`)),
    rule: (look, format) => ruleXml(look, format, formatId(format), rules),
    xml: () => `${DECLARATION}<styleSheet xmlns="${MAIN}">${groups()}</styleSheet>`,
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
