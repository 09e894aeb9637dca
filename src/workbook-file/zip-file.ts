import { deflateSync, strToU8 } from "fflate";
import { checksum } from "./checksum";
import type { ZipEntry } from "./zip-entries";
import { DEFLATED, END, END_LENGTH, ENTRY, ENTRY_LENGTH, LOCAL, LOCAL_LENGTH, STORED } from "./zip-records";

/** Version 2.0 unpacks what is deflated (4.4.3.2). */
const VERSION = 20;
/** Names are UTF-8 (4.4.4, bit 11). */
const UTF8 = 0x0800;
/** 1 January 1980, the first day there is (4.4.6): files made of the same sheets are the same. */
const DAY = 0x21;

/** Bytes packed as an entry of this name. */
export const packedEntry = (name: string, bytes: Uint8Array): ZipEntry =>
  ({ name, method: DEFLATED, size: bytes.length, checksum: checksum(bytes), packed: deflateSync(bytes) });

/** Bytes as an entry that is not packed: quick to write, and to read again at once. */
export const storedEntry = (name: string, bytes: Uint8Array): ZipEntry =>
  ({ name, method: STORED, size: bytes.length, checksum: checksum(bytes), packed: bytes });

type Fields = readonly (readonly [width: 2 | 4, value: number])[];

const record = (length: number, fields: Fields, name: Uint8Array): Uint8Array => {
  const bytes = new Uint8Array(length + name.length);
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [width, value] of fields) {
    if (width === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += width;
  }
  bytes.set(name, length);
  return bytes;
};

const shared = ({ method, size, packed, checksum: sum }: ZipEntry, name: Uint8Array): Fields =>
  [[2, UTF8], [2, method], [2, 0], [2, DAY], [4, sum], [4, packed.length], [4, size], [2, name.length], [2, 0]];

const joined = (pieces: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
};

/** Entries as a zip file, each packed as it is given. */
export const zipFile = (entries: readonly ZipEntry[]): Uint8Array => {
  const [pieces, records]: [Uint8Array[], Uint8Array[]] = [[], []];
  let place = 0;
  for (const entry of entries) {
    const name = strToU8(entry.name);
    const head = record(LOCAL_LENGTH, [[4, LOCAL], [2, VERSION], ...shared(entry, name)], name);
    const rest: Fields = [[2, 0], [2, 0], [2, 0], [4, 0], [4, place]];
    records.push(record(ENTRY_LENGTH, [[4, ENTRY], [2, VERSION], [2, VERSION], ...shared(entry, name), ...rest], name));
    pieces.push(head, entry.packed);
    place += head.length + entry.packed.length;
  }
  const size = records.reduce((sum, { length }) => sum + length, 0);
  const end: Fields = [[4, END], [2, 0], [2, 0], [2, entries.length], [2, entries.length], [4, size], [4, place], [2, 0]];
  return joined([...pieces, ...records, record(END_LENGTH, end, new Uint8Array())]);
};
