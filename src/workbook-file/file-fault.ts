/** What keeps a file from being opened, as the person who chose it reads it. */
export const FAULTS = {
  "nothing-in-it": "This file is empty. Choose a workbook whose name ends in .xlsx.",
  "no-workbook": "This is not an Excel workbook. Choose a file whose name ends in .xlsx.",
  "old-workbook": "This is a workbook of the older kind (.xls). Open it in your spreadsheet and save it as an Excel workbook (.xlsx).",
  "binary-workbook": "This is a binary workbook (.xlsb). Open it in your spreadsheet and save it as an Excel workbook (.xlsx).",
  "open-document": "This is an OpenDocument spreadsheet (.ods). Open it in your spreadsheet and save it as an Excel workbook (.xlsx).",
  password: "This workbook is protected by a password. Open it in your spreadsheet, remove the password and save it again.",
  "cut-short": "This workbook is incomplete: its end is missing. Copy or download it again.",
  broken: "This workbook is damaged and cannot be read. Open it in your spreadsheet and save it again, or take an earlier copy.",
  "false-paths": "This workbook has a part that points outside of it. It may be meant to do harm, so it is not opened.",
  "false-sizes": "This workbook does not unpack to the sizes it states. It may be meant to do harm, so it is not opened.",
  entities: "This workbook has entities of its own inside, which a workbook never has. It may be meant to do harm, so it is not opened.",
  "other-encoding": "This workbook can be read but not written into as it is. Open it in your spreadsheet and save it again first.",
  "too-large": "This workbook is too large to open here. Save the sheets you need as a workbook of their own and open that.",
} as const;

export type FaultName = keyof typeof FAULTS;

const NAME = "FileFault";

/** An error whose message is the sentence shown. */
export const fileFaultOf = (sentence: string): Error => Object.assign(new Error(sentence), { name: NAME });

export const fileFault = (name: FaultName, part?: string): Error =>
  fileFaultOf(FAULTS[name] + (part === undefined ? "" : ` (Part: ${part}.)`));

export const isFileFault = (error: unknown): error is Error => error instanceof Error && error.name === NAME;
