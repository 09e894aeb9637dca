import { MAIN } from "./namespaces";

/** What marks a formula as a dynamic array ([MS-XLSX] 2.2.4.17 and 2.6.206, dynamicArrayProperties). */
const DYNAMIC_ARRAY = "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}";
const NAMESPACE = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";

export const METADATA_PART = "xl/metadata.xml";

/** The part of metadata: one record, which every dynamic array names by cm="1". */
export const metadataXml = (): string =>
  `<metadata xmlns="${MAIN}" xmlns:xda="${NAMESPACE}"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" ` +
  'copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" ' +
  'coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst>' +
  `<ext uri="${DYNAMIC_ARRAY}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>` +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
