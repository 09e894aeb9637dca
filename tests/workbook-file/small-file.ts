import { packed } from "./as-excel-saves";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";

/** The parts of a workbook whose sheets have these rows, as XML; with what stands behind its sheets in the workbook part. */
export const smallParts = (sheets: Readonly<Record<string, string>>, behind = ""): Readonly<Record<string, string>> => {
  const names = Object.keys(sheets);
  const listed = names.map((name, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`).join("");
  const relations = names.map((_, at) =>
    `<Relationship Id="rId${at + 1}" Type="${OFFICE}/worksheet" Target="worksheets/sheet${at + 1}.xml"/>`).join("");
  return {
    "[Content_Types].xml": `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ` +
      `ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      '<Default Extension="xml" ContentType="application/xml"/></Types>',
    "_rels/.rels": `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" ` +
      'Target="xl/workbook.xml"/></Relationships>',
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${listed}</sheets>${behind}</workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${PACKAGE}/relationships">${relations}</Relationships>`,
    ...Object.fromEntries(names.map((name, at) => [
      `xl/worksheets/sheet${at + 1}.xml`, `<worksheet xmlns="${MAIN}"><sheetData>${sheets[name] ?? ""}</sheetData></worksheet>`,
    ])),
  };
};

export const smallFile = (sheets: Readonly<Record<string, string>>, behind = ""): Uint8Array => packed(smallParts(sheets, behind));
