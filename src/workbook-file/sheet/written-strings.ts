import { DECLARATION, MAIN } from "../namespaces";
import { escapedText } from "../xml-text";

/** Characters of a text in a cell ("Excel specifications and limits"); whatever is longer is whole in the extras. */
const MOST_CHARACTERS = 32_767;

/** Collects the texts of cells, each kept once for all cells. */
export interface WrittenStrings {
  readonly place: (text: string) => number;
  readonly xml: () => string;
  /** The items that are new, without what is around them, and how many cells show one of them. */
  readonly added: () => { readonly items: readonly string[]; readonly count: number };
}

/** Spaces at the ends of a text and its line ends stay (XML 1.0, 2.10). */
export const textXml = (text: string): string => {
  const isSpaced = /^\s|\s$|\n|\s\s/.test(text);
  return `<t${isSpaced ? ' xml:space="preserve"' : ""}>${escapedText(text)}</t>`;
};

/** Collects texts; with so many that a part holds already, those behind them. */
export const writtenStrings = (known = 0): WrittenStrings => {
  const places = new Map<string, number>();
  let count = 0;
  const items = (): readonly string[] => [...places.keys()].map((text) => `<si>${textXml(text)}</si>`);
  return {
    place: (whole) => {
      const text = whole.slice(0, MOST_CHARACTERS);
      count += 1;
      const place = places.get(text) ?? known + places.size;
      places.set(text, place);
      return place;
    },
    xml: () => `${DECLARATION}<sst xmlns="${MAIN}" count="${count}" uniqueCount="${places.size}">${items().join("")}</sst>`,
    added: () => ({ items: items(), count }),
  };
};
