/** Ways an entry may be packed (PKWARE APPNOTE 6.3.10, 4.4.5). */
export const STORED = 0;
export const DEFLATED = 8;

/** Signatures and lengths of the records (APPNOTE, 4.3.7, 4.3.12, 4.3.14 to 4.3.16). */
export const LOCAL = 0x04034b50;
export const LOCAL_LENGTH = 30;
export const ENTRY = 0x02014b50;
export const ENTRY_LENGTH = 46;
export const END = 0x06054b50;
export const END_LENGTH = 22;
export const LONG_END = 0x06064b50;
export const LONG_END_LENGTH = 56;
export const LONG_END_PLACE = 0x07064b50;
export const LONG_END_PLACE_LENGTH = 20;
