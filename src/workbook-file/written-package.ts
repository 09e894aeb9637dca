import { strToU8 } from "fflate";
import { CONTENT_TYPES, DECLARATION, RELATIONSHIPS } from "./namespaces";
import { attributeText } from "./xml-text";
import { packedEntry, storedEntry, zipFile } from "./zip-file";

const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** What a part is, by its content type. */
export const CONTENT = {
  workbook: `${SPREADSHEET}.sheet.main+xml`,
  worksheet: `${SPREADSHEET}.worksheet+xml`,
  styles: `${SPREADSHEET}.styles+xml`,
  strings: `${SPREADSHEET}.sharedStrings+xml`,
  metadata: `${SPREADSHEET}.sheetMetadata+xml`,
  properties: "application/vnd.openxmlformats-officedocument.customXmlProperties+xml",
  panes: "application/vnd.ms-office.webextensiontaskpanes+xml",
  extension: "application/vnd.ms-office.webextension+xml",
  plain: "application/xml",
} as const;

export interface WrittenPart {
  readonly name: string;
  readonly content: (typeof CONTENT)[keyof typeof CONTENT];
  readonly xml: string;
  /** Parts this one leads to: full type and target, which are rId1, rId2 and so on. */
  readonly leadsTo?: readonly (readonly [type: string, target: string])[];
}

const relationsXml = (leadsTo: readonly (readonly [type: string, target: string])[]): string =>
  `${DECLARATION}<Relationships xmlns="${RELATIONSHIPS}">${leadsTo.map(([type, target], index) =>
    `<Relationship Id="rId${index + 1}" Type="${type}" Target="${attributeText(target)}"/>`).join("")}</Relationships>`;

export const relationsPart = (name: string): string => name.replace(/([^/]*)$/, "_rels/$1.rels");

const typesXml = (parts: readonly WrittenPart[]): string => {
  const own = parts.filter(({ content }) => content !== CONTENT.plain);
  return [
    `${DECLARATION}<Types xmlns="${CONTENT_TYPES}">`,
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    `<Default Extension="xml" ContentType="${CONTENT.plain}"/>`,
    ...own.map(({ name, content }) => `<Override PartName="/${attributeText(name)}" ContentType="${content}"/>`),
    "</Types>",
  ].join("");
};

/** Parts as a package (ECMA-376-2): the list of their types first, then what the package leads to, then each with what it leads to. */
export const writtenPackage = (
  parts: readonly WrittenPart[], leadsTo: readonly (readonly [type: string, target: string])[], isPacked = true,
): Uint8Array =>
  zipFile([
    ["[Content_Types].xml", typesXml(parts)] as const,
    ["_rels/.rels", relationsXml(leadsTo)] as const,
    ...parts.flatMap(({ name, xml, leadsTo: further = [] }) => [
      [name, xml.startsWith("<?xml") ? xml : DECLARATION + xml] as const,
      ...(further.length === 0 ? [] : [[relationsPart(name), relationsXml(further)] as const]),
    ]),
  ].map(([name, xml]) => (isPacked ? packedEntry : storedEntry)(name, strToU8(xml))));
