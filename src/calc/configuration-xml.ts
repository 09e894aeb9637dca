import { attributeText } from "../workbook-file/xml-text";

/** A node of the office's configuration with what it holds. */
export const node = (name: string, holds: readonly string[]): string =>
  `<node oor:name="${attributeText(name)}" oor:op="replace">${holds.join("")}</node>`;

/** A set or a group that is there already and gets more. */
export const within = (name: string, holds: readonly string[]): string =>
  `<node oor:name="${attributeText(name)}">${holds.join("")}</node>`;

/** A text in English: the office shows it in every language. */
export const text = (name: string, value: string): string =>
  `<prop oor:name="${name}"><value xml:lang="en">${attributeText(value)}</value></prop>`;

/** A value that is in no language. */
export const value = (name: string, held: string): string => `<prop oor:name="${name}"><value>${attributeText(held)}</value></prop>`;

const NAMESPACES = 'xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"';
const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>\n';

/** A file of the office's configuration: what is put into a part of it. */
export const configuration = (part: string, holds: readonly string[]): string =>
  `${DECLARATION}<oor:component-data ${NAMESPACES} oor:name="${part}" oor:package="org.openoffice.Office">\n${holds.join("\n")}\n` +
  "</oor:component-data>\n";

/** A part of the configuration that is ours: a group of texts, empty until somebody sets them. */
export const configurationSchema = (schemaPackage: string, name: string, group: string, texts: readonly string[]): string =>
  `${DECLARATION}<oor:component-schema ${NAMESPACES} oor:name="${name}" oor:package="${schemaPackage}" xml:lang="en">\n` +
  `<component><group oor:name="${group}">` +
  texts.map((one) => `<prop oor:name="${one}" oor:type="xs:string"><value></value></prop>`).join("") +
  "</group></component>\n</oor:component-schema>\n";
