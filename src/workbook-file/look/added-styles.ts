import { isStyleName } from "../../sheets/cell-looks";
import type { StyleName } from "../../sheets/sheet-data";
import { grown, inOrderOf, prefixed, prefixOf, type Splice } from "../xml-splices";
import { childOf, childrenOf, countOf, type XmlElement } from "../xml-tree";
import type { Colours } from "./colours";
import { FIRST_OWN } from "./number-formats";
import { readLook } from "./read-look";
import { STYLE_PREFIX } from "./read-styles";
import { type AddedRecords, type KnownStyles, STYLE_GROUPS } from "./written-styles";

/** What a part of styles holds, for adding to it. */
export const knownStyles = (root: XmlElement, colours: Colours): KnownStyles => {
  const counts = Object.fromEntries(STYLE_GROUPS.map((group) => [group, childOf(root, group)?.children.length ?? 0]));
  const formats = childrenOf(childOf(root, "numFmts"), "numFmt").map(({ attributes }) => countOf(attributes["numFmtId"]) ?? 0);
  const styles = childrenOf(childOf(root, "cellStyles"), "cellStyle").flatMap(({ attributes: { name = "", xfId } }) => {
    const style = name.startsWith(STYLE_PREFIX) ? name.slice(STYLE_PREFIX.length) : "";
    const id = countOf(xfId);
    return id !== undefined && isStyleName(style) ? [[style, id] as const] : [];
  });
  const { font, size } = readLook({ font: childOf(childOf(root, "fonts"), "font") }, colours);
  return {
    counts,
    firstFormat: formats.reduce((most, id) => Math.max(most, id + 1), FIRST_OWN),
    styles: new Map<StyleName, number>(styles),
    usual: { ...(font === undefined ? {} : { font }), ...(size === undefined ? {} : { size }) },
  };
};

/** A part of styles with more records behind those it has, and groups for them where it has none. */
export const addedSplices = (text: string, root: XmlElement, added: readonly AddedRecords[]): readonly Splice[] => {
  const prefix = prefixOf(text, root);
  return added.flatMap(({ group, count, xml }): readonly Splice[] => {
    const there = childOf(root, group);
    const records = prefixed(xml, prefix);
    if (there === undefined)
      return inOrderOf(text, root, STYLE_GROUPS, group, `<${prefix}${group} count="${count}">${records}</${prefix}${group}>`);
    return grown(text, there, { count: String(there.children.length + count) }, records);
  });
};
