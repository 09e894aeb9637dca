import { dayOf } from "../pane/day-of";
import { messageOf } from "../pane/message-of";
import { quoted, workbookData, type WorkbookData } from "../workbook/workbook-data";
import { workbookName } from "./free-name";

/** A workbook with the name it goes by. */
export interface NamedWorkbook {
  readonly name: string;
  readonly data: WorkbookData;
}

const BACKUP_VERSION = 1;
const BACKUP_NAME = "Treadsheet workbooks";
const ENDING = /\.(?:json|xl\w*|csv|tsv|txt)$/i;
/** What a saved file has behind the workbook's name, and what browsers add to a second one of that name. */
const DATE_BEHIND = /\s+\d{4}-\d{2}-\d{2}$/;
const COPY_BEHIND = /\s*\(\d+\)$/;

/** The name under which a workbook is saved, with the day; `ending` says as what. */
export const fileName = (name: string, moment: Date, ending = ".json"): string =>
  `${workbookName(name)} ${dayOf(moment)}${ending}`;

export const backupName = (moment: Date): string => fileName(BACKUP_NAME, moment);

/** Workbooks as one file. */
export const backupText = (workbooks: readonly { readonly name: string; readonly data: unknown }[]): string =>
  JSON.stringify({ version: BACKUP_VERSION, workbooks }, null, 1);

/** The name of the workbook in a file. */
export const nameOfFile = (file: string): string =>
  workbookName(file.replace(ENDING, "").replace(COPY_BEHIND, "").replace(DATE_BEHIND, ""));

const withName = (name: unknown, data: unknown, index: number): NamedWorkbook => {
  if (typeof name !== "string") throw new Error(`workbook ${index + 1}, name: must be text, got ${quoted(name)}`);
  try {
    return { name, data: workbookData(data) };
  } catch (error) {
    throw new Error(`workbook ${index + 1} "${workbookName(name)}": ${messageOf(error)}`);
  }
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    throw new Error("it begins as a file that was saved here and is cut short, or was changed; take the file as it was saved");
  }
};

/** The workbooks in a file that was saved here: one, or all of a backup. Refuses the file as a whole where one is not as it should be. */
export const workbooksIn = (text: string, file: string): readonly NamedWorkbook[] => {
  const raw = parsed(text);
  if (typeof raw !== "object" || raw === null || !("workbooks" in raw)) return [{ name: nameOfFile(file), data: workbookData(raw) }];
  const { workbooks, version } = raw as { readonly workbooks: unknown; readonly version?: unknown };
  if (version !== BACKUP_VERSION)
    throw new Error(`backup, version: this program reads version ${BACKUP_VERSION}, got ${quoted(version)}`);
  if (!Array.isArray(workbooks) || workbooks.length === 0) throw new Error("backup, workbooks: must be a list of one workbook or more");
  return workbooks.map((one: unknown, index) => {
    const { name, data } = (typeof one === "object" && one !== null ? one : {}) as { readonly name?: unknown; readonly data?: unknown };
    return withName(name, data, index);
  });
};
