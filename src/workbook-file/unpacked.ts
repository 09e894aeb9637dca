import { Inflate } from "fflate";
import { checksum } from "./checksum";
import { fileFault } from "./file-fault";
import type { ZipEntry } from "./zip-entries";
import { DEFLATED, STORED } from "./zip-records";

/** Bytes handed over at a time: what comes out of them at most is some 16 MB, whatever they claim to come to. */
const STEP = 16 * 1024;

/** What fflate throws has a code ("FlateErrorCode"). */
const isFlateError = (error: unknown): boolean => error instanceof Error && "code" in error && typeof error.code === "number";

const inflated = ({ name, packed, size }: ZipEntry): Uint8Array => {
  const whole = new Uint8Array(size);
  let length = 0;
  const inflate = new Inflate((chunk) => {
    if (length + chunk.length > size) throw fileFault("false-sizes");
    whole.set(chunk, length);
    length += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length; at += STEP) inflate.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
  } catch (error) {
    throw isFlateError(error) ? fileFault("broken", name) : error;
  }
  if (length !== size) throw fileFault("false-sizes");
  return whole;
};

/** The bytes of an entry, checked against the size and the checksum that the directory states. */
export const unpacked = (entry: ZipEntry): Uint8Array => {
  if (entry.method !== STORED && entry.method !== DEFLATED) throw fileFault("broken", entry.name);
  if (entry.method === STORED && entry.packed.length !== entry.size) throw fileFault("broken", entry.name);
  const bytes = entry.method === STORED ? entry.packed : inflated(entry);
  if (checksum(bytes) !== entry.checksum) throw fileFault("broken", entry.name);
  return bytes;
};
