import { strToU8 } from "fflate";
import { fileFault } from "./file-fault";
import { DECLARATION, RELATIONSHIPS } from "./namespaces";
import type { PackageParts } from "./package-parts";
import { unpacked } from "./unpacked";
import { relationsPart } from "./written-package";
import { appended, prefixOf, type Splice, spliced } from "./xml-splices";
import { childrenOf, type XmlElement } from "./xml-tree";
import { attributeText } from "./xml-text";
import { packedEntry, zipFile } from "./zip-file";

/** What a part in UTF-8 may begin with, and is not told apart by once it is read. */
const MARK: readonly number[] = [0xef, 0xbb, 0xbf];

const marked = (mark: readonly number[], text: string): Uint8Array => {
  const bytes = strToU8(text);
  const all = new Uint8Array(mark.length + bytes.length);
  all.set(mark);
  all.set(bytes, mark.length);
  return all;
};

/** A part of an opened file with another text, in the encoding it has. */
const partBytes = (parts: PackageParts, part: string, text: string): Uint8Array => {
  const entry = parts.entry(part);
  const before = entry && unpacked(entry);
  const mark = before !== undefined && MARK.every((byte, at) => before[at] === byte) ? MARK : [];
  const bytes = marked(mark, parts.text(part));
  // What was read must be what is there, or writing it again would change more than was meant.
  if (before === undefined || before.length !== bytes.length || before.some((byte, at) => byte !== bytes[at]))
    throw fileFault("other-encoding", part);
  return marked(mark, text);
};

interface NewPart {
  readonly name: string;
  readonly content: string;
  readonly xml: string;
}

interface NewRelation {
  readonly type: string;
  readonly target: string;
  readonly id: string;
}

const TYPES_PART = "[Content_Types].xml";
const ID = /^rId(\d+)$/;

/**
 * An opened file that is changed part by part. Parts of which nothing is said here stay byte for byte as they were packed; the list of
 * content types and what parts lead to follow what is added and taken away.
 */
export class EditedPackage {
  readonly #texts = new Map<string, string>();
  readonly #added: NewPart[] = [];
  readonly #removed = new Set<string>();
  readonly #relations = new Map<string, NewRelation[]>();
  readonly #gone = new Map<string, Set<string>>();

  constructor(readonly parts: PackageParts) {}

  /** Puts splices into a part. */
  splice(part: string, splices: readonly Splice[]): void {
    if (splices.length > 0) this.replace(part, spliced(this.parts.text(part), splices));
  }

  /** Gives a part another text, once: where one part stands for two things of a workbook, a second one would undo the first. */
  replace(part: string, text: string): void {
    if (text === this.parts.text(part)) return;
    const name = this.parts.entry(part)?.name ?? part;
    if (this.#texts.has(name)) throw fileFault("broken", part);
    this.#texts.set(name, text);
  }

  /** A name for a new part that none has yet: xl/worksheets/sheet4.xml. */
  freeName(before: string, behind: string): string {
    for (let count = 1; ; count += 1) {
      const name = `${before}${count}${behind}`;
      if (!this.parts.has(name) && !this.#added.some((one) => one.name.toLowerCase() === name.toLowerCase())) return name;
    }
  }

  add(name: string, content: string, xml: string): void {
    this.#added.push({ name, content, xml: xml.startsWith("<?xml") ? xml : DECLARATION + xml });
  }

  /** Leads from a part, or from the package where it is "", to another; answers the number of the relation. */
  lead(from: string, type: string, target: string): string {
    const there = [...this.parts.relations(from), ...(this.#relations.get(from) ?? [])];
    const most = there.reduce((highest, { id }) => Math.max(highest, Number(ID.exec(id)?.[1] ?? 0)), 0);
    const id = `rId${most + 1}`;
    this.#relations.set(from, [...(this.#relations.get(from) ?? []), { type, target, id }]);
    return id;
  }

  /** Takes away a part that one other leads to. */
  remove(from: string, part: string): void {
    this.#removed.add(this.parts.entry(part)?.name ?? part);
    const gone = this.#gone.get(from) ?? new Set();
    for (const { id, target, isOutside } of this.parts.relations(from)) if (!isOutside && target === part) gone.add(id);
    this.#gone.set(from, gone);
  }

  #relationTexts(): void {
    for (const from of new Set([...this.#relations.keys(), ...this.#gone.keys()])) {
      const [more, gone] = [this.#relations.get(from) ?? [], this.#gone.get(from) ?? new Set()];
      const part = from === "" ? "_rels/.rels" : relationsPart(from);
      const written = (prefix: string): string => more.map(({ id, type, target }) =>
        `<${prefix}Relationship Id="${id}" Type="${type}" Target="${attributeText(target)}"/>`).join("");
      if (!this.parts.has(part)) {
        this.#added.push({
          name: part, content: "", xml: `${DECLARATION}<Relationships xmlns="${RELATIONSHIPS}">${written("")}</Relationships>`,
        });
        continue;
      }
      const [text, root] = [this.parts.text(part), this.parts.tree(part)];
      const out = childrenOf(root, "Relationship").filter(({ attributes }) => gone.has(attributes["Id"] ?? ""));
      this.splice(part, [
        ...out.map(({ from: at, to }) => ({ from: at, to, text: "" })), ...appended(text, root, written(prefixOf(text, root))),
      ]);
    }
  }

  #typesText(): void {
    if (this.#added.length + this.#removed.size === 0) return;
    const [text, root] = [this.parts.text(TYPES_PART), this.parts.tree(TYPES_PART)];
    const prefix = prefixOf(text, root);
    const gone = childrenOf(root, "Override").filter(({ attributes }) =>
      [...this.#removed].some((name) => `/${name}`.toLowerCase() === (attributes["PartName"] ?? "").toLowerCase()));
    const isDefault = ({ name, content }: NewPart): boolean => content === "" || hasDefault(root, name, content);
    const added = this.#added.filter((part) => !isDefault(part)).map(({ name, content }) =>
      `<${prefix}Override PartName="/${attributeText(name)}" ContentType="${content}"/>`);
    this.splice(TYPES_PART, [
      ...gone.map(({ from, to }) => ({ from, to, text: "" })), ...appended(text, root, added.join("")),
    ]);
  }

  bytes(): Uint8Array {
    this.#relationTexts();
    this.#typesText();
    const entries = this.parts.entries.filter(({ name }) => !this.#removed.has(name)).map((entry) => {
      const text = this.#texts.get(entry.name);
      return text === undefined ? entry : packedEntry(entry.name, partBytes(this.parts, entry.name, text));
    });
    return zipFile([...entries, ...this.#added.map(({ name, xml }) => packedEntry(name, strToU8(xml)))]);
  }
}

/** Whether parts with this ending have a content type without saying so. */
const hasDefault = (root: XmlElement, name: string, content: string): boolean => {
  const ending = name.slice(name.lastIndexOf(".") + 1).toLowerCase();
  return childrenOf(root, "Default").some(({ attributes }) =>
    (attributes["Extension"] ?? "").toLowerCase() === ending && attributes["ContentType"] === content);
};
