import { type DynamicMark, dynamicMark, metadataXml } from "./dynamic-arrays";
import { EditedPackage } from "./edited-package";
import { MAIN, OFFICE } from "./namespaces";
import type { Relation } from "./package-parts";
import type { KeptFile } from "./read-workbook-file";
import { CONTENT } from "./written-package";

/** Namespaces of a file in the strict form of the standard (ECMA-376-1, A, against ECMA-376-4). */
const STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";
const STRICT_OFFICE = "http://purl.oclc.org/ooxml/officeDocument/relationships";

/** An opened workbook that is changed part by part, with the parts that its workbook part leads to. */
export class EditedBook {
  readonly edited: EditedPackage;
  readonly #relations: readonly Relation[];
  #dynamic: DynamicMark | undefined;

  constructor(readonly file: KeptFile) {
    this.edited = new EditedPackage(file.parts);
    this.#relations = file.parts.relations(file.book);
  }

  /** The one part of a kind that the workbook leads to. */
  part(type: string): string | undefined {
    return this.#relations.find((one) => one.type === type && !one.isOutside && this.file.parts.has(one.target))?.target;
  }

  /** XML and types of relations in the form of the standard that the file is written in. */
  form(xml: string): string {
    const isStrict = this.file.parts.text(this.file.book).includes(STRICT_MAIN);
    return isStrict ? xml.replaceAll(MAIN, STRICT_MAIN).replaceAll(OFFICE, STRICT_OFFICE) : xml;
  }

  /** Adds a part to which the workbook leads; answers the number of the relation. */
  add(name: string, content: string, type: string, xml: string): string {
    this.edited.add(name, content, this.form(xml));
    return this.edited.lead(this.file.book, this.form(`${OFFICE}/${type}`), `/${name}`);
  }

  /** The number by which a cell is marked as a dynamic array from now on. */
  dynamic(): number {
    const part = this.part("sheetMetadata");
    this.#dynamic ??= part === undefined ? { mark: 1, splices: [] } : dynamicMark(this.file.parts.text(part), this.file.parts.tree(part));
    return this.#dynamic.mark;
  }

  bytes(): Uint8Array {
    const metadata = this.part("sheetMetadata");
    if (this.#dynamic !== undefined && metadata === undefined)
      this.add(this.edited.freeName("xl/metadata", ".xml"), CONTENT.metadata, "sheetMetadata", metadataXml());
    else if (this.#dynamic !== undefined && metadata !== undefined) this.edited.splice(metadata, this.#dynamic.splices);
    return this.edited.bytes();
  }
}
