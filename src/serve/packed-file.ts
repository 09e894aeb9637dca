import { readFile } from "node:fs/promises";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

const gzipped = promisify(gzip);

/** Text this short is not worth packing: it goes in one packet anyway. */
const LEAST_SIZE = 1400;

const PACKED = /^(text\/|application\/(json|xml)|image\/svg)/;

export const isWorthPacking = (type: string, size: number): boolean => size > LEAST_SIZE && PACKED.test(type);

export const takesGzip = (acceptEncoding: string | undefined): boolean =>
  (acceptEncoding ?? "").split(",").some((one) => /^\s*(gzip|\*)\s*(;\s*q=(?!0(\.0*)?\s*$)[\d.]+\s*)?$/i.test(one));

/** A file packed with gzip, once for each version of it; a version goes by its validator. */
export const packedFiles = (): ((file: string, version: string) => Promise<Buffer>) => {
  const kept = new Map<string, { readonly version: string; readonly packed: Promise<Buffer> }>();
  return (file, version) => {
    const known = kept.get(file);
    if (known?.version === version) return known.packed;
    const packed = readFile(file).then((text) => gzipped(text));
    kept.set(file, { version, packed });
    // A file that could not be read is read again when it is next asked for.
    packed.catch(() => kept.delete(file));
    return packed;
  };
};
