import { DRAWING, OFFICE } from "./namespaces";
import { attributeText, escapedText } from "./xml-text";

/**
 * How the add-in came to whoever opens the workbook: sideloaded, from a shared folder, given out by an organisation, or from the store
 * (platform, "Automatically open a task pane with a document").
 */
export type AddInSource = "Registry" | "FileSystem" | "EXCatalog" | "OMEX";

/** The add-in whose functions a workbook calls. */
export interface AddIn {
  /** Id and version of its manifest. */
  readonly id: string;
  readonly version: string;
  readonly source: AddInSource;
  /** The folder or the store it is from. */
  readonly store: string;
}

const EXTENSION = "http://schemas.microsoft.com/office/webextensions/webextension/2010/11";
const TASK_PANES = "http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11";
/**
 * Functions of an add-in that a workbook calls, by the names its formulas have in it (as in a workbook that the platform saved,
 * OfficeDev/office-js, issue 6611; tests/workbook-file/demo-file.test.ts holds the two beside each other).
 */
const FUNCTION_LIST = "{7C84B067-C214-45C3-A712-C9D94CD141B2}";

export const EXTENSION_PART = "xl/webextensions/webextension1.xml";
export const PANES_PART = "xl/webextensions/taskpanes.xml";

/** What ties the workbook to the add-in ([MS-OWEXML] 2.3), with the functions it calls. */
export const extensionXml = ({ id, version, source, store }: AddIn, added: readonly string[]): string =>
  `<we:webextension xmlns:we="${EXTENSION}" id="{${attributeText(id.toUpperCase())}}">` +
  `<we:reference id="${attributeText(id)}" version="${attributeText(version)}" store="${attributeText(store)}" storeType="${source}"/>` +
  `<we:alternateReferences/><we:properties/><we:bindings/><we:snapshot xmlns:r="${OFFICE}"/>` +
  `<we:extLst><a:ext xmlns:a="${DRAWING}" uri="${FUNCTION_LIST}"><we:customFunctionIdList>` +
  added.map((name) => `<we:customFunctionIds>${escapedText(name)}</we:customFunctionIds>`).join("") +
  "</we:customFunctionIdList></a:ext></we:extLst></we:webextension>";

/** The pane of the add-in, which opens when a person opens it. */
export const panesXml = (): string =>
  `<wetp:taskpanes xmlns:wetp="${TASK_PANES}"><wetp:taskpane dockstate="right" visibility="0" width="350" row="1">` +
  `<wetp:webextensionref xmlns:r="${OFFICE}" r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`;
