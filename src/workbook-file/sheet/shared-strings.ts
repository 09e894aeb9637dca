import { childrenOf, type XmlElement } from "../xml-tree";
import { plainText } from "../xml-text";

/** The text of a string item, whose parts may each look their own way; how a word is read aloud (rPh) is no part of it. */
export const stringText = (item: XmlElement | undefined): string =>
  plainText(
    (item?.children ?? [])
      .map((child) => (child.name === "t" ? child.text : child.name === "r" ? childrenOf(child, "t").map(({ text }) => text).join("") : ""))
      .join(""),
  );

export interface SharedText {
  readonly text: string;
  readonly hasLooks: boolean;
}

export const sharedTexts = (root: XmlElement | undefined): readonly SharedText[] =>
  childrenOf(root, "si").map((item) => ({ text: stringText(item), hasLooks: childrenOf(item, "r").length > 1 }));
