import { packedEntry, zipFile } from "../workbook-file/zip-file";
import { addInFunctions } from "./add-in-functions";
import { configurationSchema } from "./configuration-xml";
import { COMPONENT, INTERFACE, type ListedFunction, methodName, MODULE } from "./listed-functions";
import { menu, MENU_SERVICE } from "./menu";
import { ROWS_COMPONENT, ROWS_INTERFACE, rowsFunctions } from "./rows-functions";
import { type Method, typeLibrary } from "./type-library";

const DECLARATION = '<?xml version="1.0" encoding="UTF-8"?>\n';
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** What the office is to do with a file, by its media type. */
const REGISTERED = [
  ["treadsheet.rdb", "application/vnd.sun.star.uno-typelibrary;type=RDB"],
  ["treadsheet.components", "application/vnd.sun.star.uno-components"],
  ["Settings.xcs", "application/vnd.sun.star.configuration-schema"],
  ["CalcAddIns.xcu", "application/vnd.sun.star.configuration-data"],
  ["Addons.xcu", "application/vnd.sun.star.configuration-data"],
] as const;

const manifest = (): string =>
  `${DECLARATION}<manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">\n` +
  REGISTERED.map(([file, type]) => `<manifest:file-entry manifest:media-type="${type}" manifest:full-path="${file}"/>\n`).join("") +
  "</manifest:manifest>\n";

const components = (): string => {
  const component = (file: string, implementation: string, service: string): string =>
    `<component loader="com.sun.star.loader.Python" uri="${file}"><implementation name="${implementation}">` +
    `<service name="${service}"/></implementation></component>\n`;
  return `${DECLARATION}<components xmlns="http://openoffice.org/2010/uno-components">\n` +
    component("functions.py", COMPONENT, "com.sun.star.sheet.AddIn") +
    component("rows.py", ROWS_COMPONENT, "com.sun.star.sheet.AddIn") +
    component("menu.py", MENU_SERVICE, MENU_SERVICE) +
    "</components>\n";
};

const description = (version: string): string =>
  `${DECLARATION}<description xmlns="http://openoffice.org/extensions/description/2006">` +
  `<identifier value="treadsheet.calc"/><version value="${version}"/>` +
  '<display-name><name lang="en">Treadsheet</name></display-name></description>\n';

/** A function as a method: any argument may be a cell, a range or left out, a table is rows of cells. */
const method = (listed: ListedFunction): Method => ({
  name: methodName(listed),
  returns: listed.result.dimensionality === "matrix" ? "[][]any" : "any",
  parameters: listed.parameters.map(({ unoType = "any" }, index) => ({ name: `a${index}`, type: unoType })),
});

export interface Extension {
  readonly functions: readonly ListedFunction[];
  readonly version: string;
  /** What the build and the source hold and the extension only carries, by name. */
  readonly carried: Readonly<Record<string, Uint8Array>>;
}

/** The extension's files by name. */
export const extensionFiles = ({ functions, version, carried }: Extension): Readonly<Record<string, Uint8Array>> => ({
  "META-INF/manifest.xml": utf8(manifest()),
  "description.xml": utf8(description(version)),
  "treadsheet.rdb": typeLibrary(MODULE, [
    { name: INTERFACE, methods: functions.map(method) }, { name: ROWS_INTERFACE, methods: rowsFunctions.map(method) },
  ]),
  "treadsheet.components": utf8(components()),
  "Settings.xcs": utf8(configurationSchema("treadsheet", "Settings", "Engine", ["Node"])),
  "CalcAddIns.xcu": utf8(addInFunctions({ [COMPONENT]: functions, [ROWS_COMPONENT]: rowsFunctions })),
  "Addons.xcu": utf8(menu()),
  ...carried,
});

/** The extension as LibreOffice installs it, an .oxt file. */
export const extension = (given: Extension): Uint8Array =>
  zipFile(Object.entries(extensionFiles(given)).map(([name, bytes]) => packedEntry(name, bytes)));
