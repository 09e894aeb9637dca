/** CRC-32 of ISO 3309, its bits in reverse, as zip files have it (PKWARE APPNOTE 6.3.10, 4.4.7). */
const POLYNOMIAL = 0xedb88320;
const BITS = 8;
const BYTES = 256;

const TABLE = Uint32Array.from({ length: BYTES }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < BITS; bit += 1) value = value & 1 ? (value >>> 1) ^ POLYNOMIAL : value >>> 1;
  return value;
});

export const checksum = (bytes: Uint8Array): number => {
  let value = -1;
  for (const byte of bytes) value = (value >>> BITS) ^ (TABLE[(value ^ byte) & (BYTES - 1)] ?? 0);
  return (value ^ -1) >>> 0;
};
