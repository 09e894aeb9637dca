import { MAIN } from "./namespaces";
import { grown, inOrderOf, prefixOf, type Splice } from "./xml-splices";
import { childOf, childrenOf, countOf, isSet, type XmlElement } from "./xml-tree";

/** What marks a formula as a dynamic array ([MS-XLSX] 2.2.4.17 and 2.6.206, dynamicArrayProperties). */
const DYNAMIC_ARRAY = "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}";
const NAMESPACE = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";

export const METADATA_PART = "xl/metadata.xml";

const KIND = "XLDAPR";
const TYPE = `<metadataType name="${KIND}" minSupportedVersion="120000" ` +
  'copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" ' +
  'coerce="1" cellMeta="1"/>';
const BLOCK = `<bk><extLst><ext uri="${DYNAMIC_ARRAY}"><xda:dynamicArrayProperties xmlns:xda="${NAMESPACE}" fDynamic="1" fCollapsed="0"/>` +
  "</ext></extLst></bk>";
const FUTURE = `<futureMetadata name="${KIND}" count="1">${BLOCK}</futureMetadata>`;
const cellBlock = (type: number, value: number): string => `<bk><rc t="${type}" v="${value}"/></bk>`;

/** The part of metadata: one record, which every dynamic array names by cm="1". */
export const metadataXml = (): string =>
  `<metadata xmlns="${MAIN}"><metadataTypes count="1">${TYPE}</metadataTypes>${FUTURE}` +
  `<cellMetadata count="1">${cellBlock(1, 0)}</cellMetadata></metadata>`;

/** The children of the part in the order of CT_Metadata (ECMA-376-1, A.2, sml.xsd). */
const ORDER = ["metadataTypes", "metadataStrings", "mdxMetadata", "futureMetadata", "cellMetadata", "valueMetadata", "extLst"];

const isDynamic = (block: XmlElement): boolean =>
  childrenOf(childOf(block, "extLst"), "ext").some(({ children }) =>
    children.some(({ name, attributes }) => name === "dynamicArrayProperties" && isSet(attributes["fDynamic"])));

/** The number by which a cell is marked as a dynamic array, and what has to be added to a part of metadata for it. */
export interface DynamicMark {
  readonly mark: number;
  readonly splices: readonly Splice[];
}

/** The mark of a dynamic array in a part of metadata that a file has, which may hold other things. */
export const dynamicMark = (text: string, root: XmlElement): DynamicMark => {
  const prefix = prefixOf(text, root);
  const own = (xml: string): string => (prefix === "" ? xml : xml.replaceAll(/<(\/?)(?!xda:)(?=\w)/g, `<$1${prefix}`));
  const under = (name: string, xml: string, count: number): readonly Splice[] => {
    const there = childOf(root, name);
    return there === undefined
      ? inOrderOf(text, root, ORDER, name, own(`<${name} count="${count}">${xml}</${name}>`))
      : grown(text, there, { count: String(there.children.length + count) }, own(xml));
  };
  const types = childrenOf(childOf(root, "metadataTypes"), "metadataType");
  const type = types.findIndex(({ attributes }) => attributes["name"] === KIND) + 1;
  const blocks = childrenOf(childrenOf(root, "futureMetadata").find(({ attributes }) => attributes["name"] === KIND), "bk");
  const value = blocks.findIndex(isDynamic);
  const cells = childrenOf(childOf(root, "cellMetadata"), "bk");
  const found = cells.findIndex((block) => childrenOf(block, "rc").some(({ attributes: { t, v } }) =>
    type > 0 && value >= 0 && countOf(t) === type && countOf(v) === value));
  if (found >= 0) return { mark: found + 1, splices: [] };
  const [newType, newValue] = [type > 0 ? type : types.length + 1, value >= 0 ? value : blocks.length];
  const future = childrenOf(root, "futureMetadata").find(({ attributes }) => attributes["name"] === KIND);
  return {
    mark: cells.length + 1,
    splices: [
      ...(type > 0 ? [] : under("metadataTypes", TYPE, 1)),
      ...(value >= 0 ? [] : future === undefined
        ? inOrderOf(text, root, ORDER, "futureMetadata", own(FUTURE))
        : grown(text, future, { count: String(blocks.length + 1) }, own(BLOCK))),
      ...under("cellMetadata", cellBlock(newType, newValue), 1),
    ],
  };
};
