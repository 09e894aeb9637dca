import { ACROSS, BORDER_LINES, type Border, lookFault, type OwnLook, SIDES } from "../../sheets/own-look";
import { childOf, isSet, numberOf, type XmlElement } from "../xml-tree";
import { colourOf, type Colours } from "./colours";

type Part = Partial<Record<keyof OwnLook, unknown>>;

/** Whether a mark such as b or strike is there and not switched off (ECMA-376-1, 18.8.2). */
const isOn = (element: XmlElement | undefined): boolean => element !== undefined && isSet(element.attributes["val"] ?? "1");

const fontPart = (font: XmlElement | undefined, colours: Colours): Part => {
  const underline = childOf(font, "u");
  return {
    bold: isOn(childOf(font, "b")) || undefined,
    italic: isOn(childOf(font, "i")) || undefined,
    strike: isOn(childOf(font, "strike")) || undefined,
    underline: (underline !== undefined && underline.attributes["val"] !== "none") || undefined,
    font: childOf(font, "name")?.attributes["val"],
    size: numberOf(childOf(font, "sz")?.attributes["val"]),
    ink: colourOf(childOf(font, "color"), colours),
  };
};

/** A solid fill shows the colour in front (18.8.32); that of a rule is said by the one behind (from memory: so Excel writes it). */
const fillPart = (fill: XmlElement | undefined, colours: Colours, isRule: boolean): Part => {
  const pattern = childOf(fill, "patternFill");
  const kind = pattern?.attributes["patternType"] ?? (isRule ? "solid" : "none");
  if (kind !== "solid") return {};
  const [front, behind] = [childOf(pattern, "fgColor"), childOf(pattern, "bgColor")].map((element) => colourOf(element, colours));
  return { fill: isRule ? (behind ?? front) : front };
};

const kebab = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const INK = "#000000";

const bordersPart = (border: XmlElement | undefined, colours: Colours): Part => {
  const found: Partial<Record<(typeof SIDES)[number], Border>> = {};
  for (const side of SIDES) {
    const edge = childOf(border, side);
    const line = BORDER_LINES.find((one) => one === kebab(edge?.attributes["style"] ?? ""));
    if (line !== undefined) found[side] = { line, ink: colourOf(childOf(edge, "color"), colours) ?? INK };
  }
  return Object.keys(found).length === 0 ? {} : { borders: found };
};

/** How text is turned: up to 90 as it is, over that downwards, and 255 for letters under each other (18.8.1, textRotation). */
const QUARTER = 90;
const STACKED = 255;
const DOWN_NAMES: Readonly<Record<string, string>> = { top: "top", center: "middle" };

const alignmentPart = (alignment: XmlElement | undefined): Part => {
  if (alignment === undefined) return {};
  const { horizontal, vertical = "", wrapText, textRotation } = alignment.attributes;
  const turned = numberOf(textRotation) ?? 0;
  const degrees = turned > QUARTER ? QUARTER - turned : turned;
  return {
    across: ACROSS.find((one) => one === horizontal),
    down: DOWN_NAMES[vertical] ?? (vertical === "bottom" ? "bottom" : undefined),
    wrap: isSet(wrapText) || undefined,
    ...(turned === STACKED ? { stacked: true } : { turned: degrees === 0 ? undefined : degrees }),
  };
};

const isSound = ([name, value]: readonly [string, unknown]): boolean => value !== undefined && lookFault(name, value) === undefined;

const sound = (part: Part): OwnLook => Object.fromEntries(Object.entries(part).filter(isSound)) as OwnLook;

export interface LookParts {
  readonly font?: XmlElement | undefined;
  readonly fill?: XmlElement | undefined;
  readonly border?: XmlElement | undefined;
  readonly alignment?: XmlElement | undefined;
}

/** What font, fill, border and alignment of a file come to in a live sheet. */
export const readLook = ({ font, fill, border, alignment }: LookParts, colours: Colours, isRule = false): OwnLook =>
  sound({ ...fontPart(font, colours), ...fillPart(fill, colours, isRule), ...bordersPart(border, colours), ...alignmentPart(alignment) });
