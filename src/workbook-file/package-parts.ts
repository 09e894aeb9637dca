import { strFromU8 } from "fflate";
import { fileFault } from "./file-fault";
import { checkKind } from "./file-kind";
import { unpacked } from "./unpacked";
import { childrenOf, type Work, type XmlElement, xmlTree } from "./xml-tree";
import { type ZipEntry, zipEntries } from "./zip-entries";

/** What a part leads to. */
export interface Relation {
  readonly id: string;
  /** The last word of its type, which the transitional and the strict form have in common: worksheet, styles. */
  readonly type: string;
  /** The name of a part, or an address outside of the file. */
  readonly target: string;
  readonly isOutside: boolean;
}

/** A workbook file whose directory was read, its parts unpacked as they are asked for. */
export interface PackageParts {
  readonly entries: readonly ZipEntry[];
  readonly has: (part: string) => boolean;
  /** The name a part has in the file, which is the one asked for but for capitals (ECMA-376-2, 6.3.5). */
  readonly entry: (part: string) => ZipEntry | undefined;
  readonly text: (part: string) => string;
  readonly tree: (part: string) => XmlElement;
  readonly relations: (part: string) => readonly Relation[];
}

const UTF16 = /^(?:\xff\xfe|\xfe\xff)/;
const BYTE = 256;

/** Parts are UTF-8 or UTF-16 (ECMA-376-2, 10.1.2), by the mark that they begin with. */
const decoded = (bytes: Uint8Array): string => {
  const mark = strFromU8(bytes.subarray(0, 2), true);
  if (!UTF16.test(mark)) return strFromU8(bytes);
  const [low, high] = mark.startsWith("\xff") ? [0, 1] : [1, 0];
  const letters: string[] = [];
  for (let at = 2; at + 1 < bytes.length; at += 2)
    letters.push(String.fromCharCode((bytes[at + low] ?? 0) + BYTE * (bytes[at + high] ?? 0)));
  return letters.join("");
};

/** A target as the name of a part: from the folder of the part that names it, or from the top. */
const targetFrom = (source: string, target: string): string => {
  const steps = target.startsWith("/") ? [] : source.split("/").slice(0, -1);
  for (const step of target.split(/[/\\]/)) {
    if (step === "..") {
      if (steps.pop() === undefined) throw fileFault("false-paths");
    } else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
};

const relationsPart = (part: string): string => {
  const at = part.lastIndexOf("/") + 1;
  return `${part.slice(0, at)}_rels/${part.slice(at)}.rels`;
};

const decodedTarget = (target: string): string => {
  try {
    return decodeURIComponent(target);
  } catch {
    return target;
  }
};

const relation = (source: string, { attributes: given }: XmlElement): Relation => {
  const { Id: id = "", Type: type = "", Target: target = "", TargetMode: mode } = given;
  const isOutside = mode === "External";
  const leadsTo = isOutside ? target : targetFrom(source, decodedTarget(target));
  return { id, type: type.slice(type.lastIndexOf("/") + 1), target: leadsTo, isOutside };
};

const notAWorkbook = (parts: ReadonlyMap<string, ZipEntry>): Error => {
  if (parts.has("encryptedpackage")) return fileFault("password");
  const kind = parts.get("mimetype");
  const isOpenDocument = kind !== undefined && strFromU8(unpacked(kind)).startsWith("application/vnd.oasis.opendocument.spreadsheet");
  return fileFault(isOpenDocument ? "open-document" : "no-workbook");
};

/** Opens a file as a package, or says in a sentence why it is none. */
export const packageParts = (bytes: Uint8Array, work: Work): PackageParts => {
  checkKind(bytes);
  const entries = zipEntries(bytes);
  const parts = new Map(entries.filter(({ name }) => !name.endsWith("/")).map((entry) => [entry.name.toLowerCase(), entry]));
  if (parts.size < entries.filter(({ name }) => !name.endsWith("/")).length) throw fileFault("broken");
  if (!parts.has("[content_types].xml")) throw notAWorkbook(parts);
  const texts = new Map<string, string>();
  const entry = (part: string) => parts.get(part.toLowerCase());
  const text = (part: string): string => {
    const known = texts.get(part);
    if (known !== undefined) return known;
    const found = entry(part);
    if (found === undefined) throw fileFault("broken", part);
    const read = decoded(unpacked(found));
    texts.set(part, read);
    return read;
  };
  const tree = (part: string): XmlElement => xmlTree(text(part), part, work);
  const relations = (part: string): readonly Relation[] => {
    const of = part === "" ? "_rels/.rels" : relationsPart(part);
    if (entry(of) === undefined) return [];
    return childrenOf(tree(of), "Relationship").map((element) => relation(part, element));
  };
  return { entries, has: (part) => entry(part) !== undefined, entry, text, tree, relations };
};
