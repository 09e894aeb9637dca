import type { XmlElement } from "./xml-tree";

/** A stretch of a text with what stands there instead. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** A text with its splices in it and not a letter of the rest changed. */
export const spliced = (text: string, splices: readonly Splice[]): string => {
  // Where two begin at one place what is put in comes before what is replaced.
  const inOrder = [...splices].sort((one, other) => one.from - other.from || one.to - other.to);
  const pieces: string[] = [];
  let at = 0;
  for (const { from, to, text: put } of inOrder) {
    pieces.push(text.slice(at, from), put);
    at = to;
  }
  return pieces.join("") + text.slice(at);
};

/** Prefixes are short words. */
const LONGEST_PREFIX = 200;

/** The prefix that an element has in its text, with its colon. */
export const prefixOf = (text: string, { from }: XmlElement): string =>
  /^<([\w.-]+:)?/.exec(text.slice(from, from + LONGEST_PREFIX))?.[1] ?? "";

/** Elements written without a prefix, with one; nothing but elements begins with < in what is written here. */
export const prefixed = (xml: string, prefix: string): string => (prefix === "" ? xml : xml.replaceAll(/<(\/?)(?=\w)/g, `<$1${prefix}`));

/** Elements as they stand in a text, without their prefixes. */
export const unprefixed = (xml: string): string => xml.replaceAll(/<(\/?)[\w.-]+:/g, "<$1");

/** Whether an element is one tag alone. */
export const isClosed = ({ opened, to }: XmlElement): boolean => opened === to;

/** A start tag without its end. */
export const unclosed = (tag: string): string => tag.slice(0, tag.endsWith("/>") ? -2 : -1).trimEnd();

/** The start tag of an element as it stands in its text. */
export const startOf = (text: string, { from, opened }: XmlElement): string => text.slice(from, opened);

/** A tag without an attribute. */
export const without = (tag: string, name: string): string => tag.replace(new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), "");

/** A start tag without its end, with an attribute at its end; an empty value takes it away. */
export const withAttribute = (tag: string, name: string, value: string): string =>
  without(tag, name) + (value === "" ? "" : ` ${name}="${value}"`);

const endOf = (text: string, element: XmlElement): number => text.lastIndexOf("</", element.to - 1);

/** New elements among those that are there, before the first that comes behind them; an element without any is opened for them. */
export const insertions = <New extends { readonly at: number; readonly xml: string }>(
  text: string, parent: XmlElement, there: readonly { readonly at: number; readonly element: XmlElement }[], added: readonly New[],
): readonly Splice[] => {
  const inOrder = [...added].sort((one, other) => one.at - other.at);
  if (isClosed(parent) && inOrder.length > 0) {
    const open = unclosed(startOf(text, parent));
    const name = /^<([\w:.-]+)/.exec(open)?.[1] ?? "";
    return [{ from: parent.from, to: parent.to, text: `${open}>${inOrder.map(({ xml }) => xml).join("")}</${name}>` }];
  }
  return inOrder.map(({ at, xml }) => {
    const place = there.find((one) => one.at > at)?.element.from ?? endOf(text, parent);
    return { from: place, to: place, text: xml };
  });
};

/** New elements behind all that are there. */
export const appended = (text: string, parent: XmlElement, xml: string): readonly Splice[] =>
  xml === "" ? [] : insertions(text, parent, [], [{ at: 0, xml }]);

/** A new element where the order of names says; in a parent that has other elements behind that place, before those. */
export const inOrderOf = (text: string, parent: XmlElement, order: readonly string[], name: string, xml: string): readonly Splice[] => {
  const behind = new Set(order.slice(order.indexOf(name) + 1));
  const there = parent.children.map((element) => ({ at: behind.has(element.name) ? 2 : 0, element }));
  return insertions(text, parent, there, [{ at: 1, xml }]);
};

/** An element with more in it and, of these attributes, those that it has with another value. */
export const grown = (
  text: string, element: XmlElement, attributes: Readonly<Record<string, string>>, xml: string,
): readonly Splice[] => {
  const start = unclosed(startOf(text, element));
  const tag = Object.entries(attributes).filter(([name]) => element.attributes[name] !== undefined)
    .reduce((so, [name, value]) => withAttribute(so, name, value), start);
  if (!isClosed(element)) return [{ from: element.from, to: element.opened, text: `${tag}>` }, ...appended(text, element, xml)];
  const name = /^<([\w:.-]+)/.exec(tag)?.[1] ?? "";
  return [{ from: element.from, to: element.to, text: `${tag}>${xml}</${name}>` }];
};
