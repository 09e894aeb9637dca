import { readFileSync, statSync } from "node:fs";

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
// PNG specification (W3C), 5.2 and 11.2.2: the signature, then the IHDR chunk: length, type, width, height.
const typeAt = 12;
const widthAt = 16;
const heightAt = 20;

/** Width and height of a PNG file in pixels, or nothing where there is no such file. */
export const pngSize = (file: string): { readonly width: number; readonly height: number } | undefined => {
  if (!statSync(file, { throwIfNoEntry: false })?.isFile()) return undefined;
  const bytes = readFileSync(file);
  const isPng = bytes.subarray(0, signature.length).equals(signature) && bytes.toString("latin1", typeAt, widthAt) === "IHDR";
  return isPng ? { width: bytes.readUInt32BE(widthAt), height: bytes.readUInt32BE(heightAt) } : undefined;
};
