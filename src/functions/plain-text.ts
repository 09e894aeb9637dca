/** A sentence of a declaration for where it is shown as it stands: what is code on a page is between quotation marks there. */
export const plainText = (text: string): string => text.replace(/`([^`]+)`/g, '"$1"');
