import { strFromU8 } from "fflate";
import { fileFault } from "./file-fault";
import {
  END, END_LENGTH, ENTRY, ENTRY_LENGTH, LOCAL, LOCAL_LENGTH, LONG_END, LONG_END_LENGTH, LONG_END_PLACE, LONG_END_PLACE_LENGTH,
} from "./zip-records";

/** A part of a zip file as it lies in there. */
export interface ZipEntry {
  readonly name: string;
  readonly method: number;
  /** As the directory states it; who unpacks the entry checks it. */
  readonly size: number;
  readonly checksum: number;
  readonly packed: Uint8Array;
}

/** Stands where the true figure is in the long record (4.4.1.4). */
const IN_LONG_RECORD = 0xffffffff;
const LONG_SIZES = 0x0001;
const ENCRYPTED = 1;
/** A comment of an archive is as long as its length can be written (4.4.12). */
const LONGEST_COMMENT = 0xffff;

/** A workbook of ten thousand parts would have thousands of sheets. */
const MOST_ENTRIES = 10_000;
/** What all parts may unpack to: some ten times the largest workbook that the live sheet is promised for. */
export const MOST_UNPACKED = 256 * 1024 * 1024;
/** What deflate packs at best: 258 bytes into 2 bits (RFC 1951, 3.2.5), and a block's own head. */
const TIGHTEST = 1032;
const LEAST_BLOCK = 64;

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const long = (view: DataView, at: number): number => {
  const value = view.getBigUint64(at, true);
  if (value > BigInt(Number.MAX_SAFE_INTEGER)) throw fileFault("broken");
  return Number(value);
};

const endPlace = (view: DataView): number => {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1)
    if (view.getUint32(at, true) === END && at + END_LENGTH + view.getUint16(at + 20, true) <= view.byteLength) return at;
  throw fileFault("cut-short");
};

interface Directory {
  readonly count: number;
  readonly from: number;
  readonly to: number;
}

const directory = (view: DataView): Directory => {
  const end = endPlace(view);
  const place = end - LONG_END_PLACE_LENGTH;
  let [count, size, from] = [view.getUint16(end + 10, true), view.getUint32(end + 12, true), view.getUint32(end + 16, true)];
  if (place >= 0 && view.getUint32(place, true) === LONG_END_PLACE) {
    const at = long(view, place + 8);
    if (at + LONG_END_LENGTH > place || view.getUint32(at, true) !== LONG_END) throw fileFault("broken");
    [count, size, from] = [long(view, at + 32), long(view, at + 40), long(view, at + 48)];
  }
  if (count > MOST_ENTRIES) throw fileFault("too-large");
  if (from + size > end) throw fileFault("cut-short");
  return { count, from, to: from + size };
};

/** Size, packed size and place of an entry, the long ones from its extra field (4.5.3). */
const figures = (view: DataView, at: number, extra: number, extraEnd: number): readonly [number, number, number] => {
  const short = [view.getUint32(at + 24, true), view.getUint32(at + 20, true), view.getUint32(at + 42, true)];
  if (!short.includes(IN_LONG_RECORD)) return [short[0] ?? 0, short[1] ?? 0, short[2] ?? 0];
  let field = extra;
  while (field + 4 <= extraEnd && view.getUint16(field, true) !== LONG_SIZES) field += 4 + view.getUint16(field + 2, true);
  field += 4;
  const [size = 0, packed = 0, place = 0] = short.map((value) => {
    if (value !== IN_LONG_RECORD) return value;
    if (field + 8 > extraEnd) throw fileFault("broken");
    field += 8;
    return long(view, field - 8);
  });
  return [size, packed, place];
};

const isOutside = (name: string): boolean =>
  name.startsWith("/") || /^[a-z]:/i.test(name) || name.includes("\0") || name.split("/").some((step) => step === ".." || step === ".");

const nameOf = (bytes: Uint8Array): string => {
  const name = strFromU8(bytes).replaceAll("\\", "/");
  if (isOutside(name)) throw fileFault("false-paths");
  return name;
};

interface Placed {
  readonly entry: ZipEntry;
  readonly from: number;
  readonly to: number;
}

const placed = (bytes: Uint8Array, view: DataView, at: number, within: Directory): Placed & { readonly next: number } => {
  if (at + ENTRY_LENGTH > within.to || view.getUint32(at, true) !== ENTRY) throw fileFault("broken");
  const nameEnd = at + ENTRY_LENGTH + view.getUint16(at + 28, true);
  const extraEnd = nameEnd + view.getUint16(at + 30, true);
  const next = extraEnd + view.getUint16(at + 32, true);
  if (next > within.to) throw fileFault("broken");
  if (view.getUint16(at + 8, true) & ENCRYPTED) throw fileFault("password");
  const [size, packedSize, from] = figures(view, at, nameEnd, extraEnd);
  if (from + LOCAL_LENGTH > within.from || view.getUint32(from, true) !== LOCAL) throw fileFault("broken");
  const data = from + LOCAL_LENGTH + view.getUint16(from + 26, true) + view.getUint16(from + 28, true);
  if (data + packedSize > within.from) throw fileFault("broken");
  if (size > packedSize * TIGHTEST + LEAST_BLOCK) throw fileFault("false-sizes");
  const name = nameOf(bytes.subarray(at + ENTRY_LENGTH, nameEnd));
  const method = view.getUint16(at + 10, true);
  const packed = bytes.subarray(data, data + packedSize);
  return { entry: { name, method, size, checksum: view.getUint32(at + 16, true), packed }, from, to: data + packedSize, next };
};

/** The parts of a zip file by its directory, in its order, none of them unpacked. */
export const zipEntries = (bytes: Uint8Array): readonly ZipEntry[] => {
  const view = viewOf(bytes);
  const within = directory(view);
  const found: Placed[] = [];
  let [at, unpacked] = [within.from, 0];
  for (let index = 0; index < within.count; index += 1) {
    const one = placed(bytes, view, at, within);
    found.push(one);
    at = one.next;
    unpacked += one.entry.size;
    if (unpacked > MOST_UNPACKED) throw fileFault("too-large");
  }
  // Entries that share their bytes unpack to far more than the file could hold.
  const inPlace = [...found].sort((one, other) => one.from - other.from);
  if (inPlace.some(({ from }, index) => index > 0 && from < (inPlace[index - 1]?.to ?? 0))) throw fileFault("false-sizes");
  return found.map(({ entry }) => entry);
};
