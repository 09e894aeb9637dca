import { DECLARATION, MAIN } from "../namespaces";
import { escapedText } from "../xml-text";

/** Collects the texts of cells, each kept once for all cells. */
export interface WrittenStrings {
  readonly place: (text: string) => number;
  readonly xml: () => string;
}

/** Spaces at the ends of a text and its line ends stay (XML 1.0, 2.10). */
export const textXml = (text: string): string => {
  const isSpaced = /^\s|\s$|\n|\s\s/.test(text);
  return `<t${isSpaced ? ' xml:space="preserve"' : ""}>${escapedText(text)}</t>`;
};

export const writtenStrings = (): WrittenStrings => {
  const places = new Map<string, number>();
  let count = 0;
  return {
    place: (text) => {
      count += 1;
      const place = places.get(text) ?? places.size;
      places.set(text, place);
      return place;
    },
    xml: () => {
      const items = [...places.keys()].map((text) => `<si>${textXml(text)}</si>`);
      return `${DECLARATION}<sst xmlns="${MAIN}" count="${count}" uniqueCount="${places.size}">${items.join("")}</sst>`;
    },
  };
};
