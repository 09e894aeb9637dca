import { SaxesParser } from "saxes";
import { fileFault } from "./file-fault";

/** An element with all that is in it. Names are without their prefix: writers choose prefixes as they like. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** Its own text, joined. */
  readonly text: string;
  /** Where it begins and ends in the text that was read, and where its start tag ends. */
  readonly from: number;
  readonly opened: number;
  readonly to: number;
}

/** A sheet of a million cells with their values. */
export const MOST_ELEMENTS = 3_000_000;
/** More than so many elements take up, in as many readings as a workbook needs. */
const MOST_CHARACTERS = 256 * 1024 * 1024;

/** What reading may take, counted over all parts of a workbook, so that no file keeps a person waiting for ever. */
export interface Work {
  elements: number;
  characters: number;
}

/** Counts work that is none of reading elements; stops a workbook that would take for ever. */
export const spend = (work: Work, elements: number, characters = 0): void => {
  work.elements += elements;
  work.characters += characters;
  if (work.elements > MOST_ELEMENTS || work.characters > MOST_CHARACTERS) throw fileFault("too-large");
};

export const noWork = (): Work => ({ elements: 0, characters: 0 });

/** The deepest parts that are read nest some ten deep. */
const MOST_DEPTH = 64;

interface Growing {
  name: string;
  attributes: Record<string, string>;
  children: Growing[];
  text: string;
  from: number;
  opened: number;
  to: number;
}

const local = (name: string): string => name.slice(name.indexOf(":") + 1);

/** Attributes by their names without prefix, but for an r:id and its like, which stay apart from the plain ones. */
const named = (attributes: Readonly<Record<string, string>>): Record<string, string> => {
  const found: Record<string, string> = Object.create(null) as Record<string, string>;
  for (const [name, value] of Object.entries(attributes)) if (!name.startsWith("xmlns")) found[name] = value;
  return found;
};

const builder = (text: string, part: string, work: Work) => {
  const root: Growing = { name: "", attributes: {}, children: [], text: "", from: 0, opened: 0, to: text.length };
  const open = [root];
  const parser = new SaxesParser({ position: true });
  const top = (): Growing => open[open.length - 1] ?? root;
  parser.on("error", () => {
    throw fileFault("broken", part);
  });
  parser.on("doctype", () => {
    throw fileFault("entities", part);
  });
  parser.on("opentag", ({ name, attributes }) => {
    spend(work, 1);
    if (open.length > MOST_DEPTH) throw fileFault("broken", part);
    // No "<" stands in the value of an attribute, so the last one began this tag.
    const from = text.lastIndexOf("<", parser.position - 1);
    const given = named(attributes as Record<string, string>);
    const element = { name: local(name), attributes: given, children: [], text: "", from, opened: parser.position, to: 0 };
    top().children.push(element);
    open.push(element);
  });
  const add = (more: string): void => {
    top().text += more;
  };
  parser.on("text", add);
  parser.on("cdata", add);
  parser.on("closetag", () => {
    const closed = open.pop();
    if (closed !== undefined) closed.to = parser.position;
  });
  return { parser, root };
};

/** The root of a part as a tree. There is no document type in a part of a package (ECMA-376-2, 10.1.2), so no entities either. */
export const xmlTree = (text: string, part: string, work: Work): XmlElement => {
  spend(work, 0, text.length);
  // The parser asks its handler about an open document type at the end alone, after it has read all of it.
  if (text.includes("<!DOCTYPE")) throw fileFault("entities", part);
  const { parser, root } = builder(text, part, work);
  parser.write(text).close();
  const [first] = root.children;
  if (first === undefined) throw fileFault("broken", part);
  return first;
};

export const childrenOf = (element: XmlElement | undefined, name: string): readonly XmlElement[] =>
  element?.children.filter((child) => child.name === name) ?? [];

export const childOf = (element: XmlElement | undefined, name: string): XmlElement | undefined =>
  element?.children.find((child) => child.name === name);

/** An attribute of the relationships' namespace, whatever its prefix: r:id. */
export const relationOf = ({ attributes }: XmlElement): string | undefined =>
  Object.entries(attributes).find(([name]) => name.endsWith(":id"))?.[1];

/** ST_Boolean: 1, true or on say yes. */
export const isSet = (value: string | undefined): boolean => value === "1" || value === "true" || value === "on";

/** A number as XML Schema writes it; undefined for anything else. */
export const numberOf = (value: string | undefined): number | undefined => {
  const number = value === undefined || value.trim() === "" ? Number.NaN : Number(value);
  return Number.isFinite(number) ? number : undefined;
};

/** A whole number from 0 up. */
export const countOf = (value: string | undefined): number | undefined => {
  const number = numberOf(value);
  return number !== undefined && Number.isSafeInteger(number) && number >= 0 ? number : undefined;
};
