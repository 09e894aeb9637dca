import { strFromU8 } from "fflate";
import { fileFault } from "./file-fault";

/** What files begin with: a zip archive (PKWARE APPNOTE, 4.3.7), and a compound file ([MS-CFB] 2.2), which an .xls or a locked file is. */
const ZIP = [0x50, 0x4b];
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
/** Streams of a compound file: of a locked workbook ([MS-OFFCRYPTO] 2.3.4.4), and of an .xls ([MS-XLS] 2.1.7.20). */
const LOCKED_STREAM = "EncryptedPackage";
const OLD_STREAMS = ["Workbook", "Book"];
/** The directory of a compound file names its streams in UTF-16 ([MS-CFB] 2.6.1). */
const wide = (name: string): string => [...name].map((letter) => `${letter}\0`).join("");

const begins = (bytes: Uint8Array, mark: readonly number[]): boolean => mark.every((byte, index) => bytes[index] === byte);

/** Refuses at the door what is no package at all, and says what it is instead. */
export const checkKind = (bytes: Uint8Array): void => {
  if (bytes.length === 0) throw fileFault("nothing-in-it");
  if (begins(bytes, ZIP)) return;
  if (!begins(bytes, COMPOUND)) throw fileFault("no-workbook");
  const text = strFromU8(bytes, true);
  if (text.includes(wide(LOCKED_STREAM))) throw fileFault("password");
  if (OLD_STREAMS.some((name) => text.includes(wide(name)))) throw fileFault("old-workbook");
  throw fileFault("no-workbook");
};
