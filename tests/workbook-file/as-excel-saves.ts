import { strToU8, zipSync } from "fflate";

/**
 * A workbook as Excel saves it, typed by hand from what the documents say, each named beside its part. Two sheets: "Bid" with everything a
 * person of the trade may have in a sheet, and "Rates". Nothing in it is of a real job.
 */
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006";
const CONTENT = "application/vnd.openxmlformats-officedocument";
const SHEETS = `${CONTENT}.spreadsheetml`;

/** XML is typed here in lines and saved without them. */
const xml = (texts: TemplateStringsArray, ...given: readonly string[]): string =>
  texts.map((text, index) => text.replaceAll(/>\s*\n\s*</g, "><").replaceAll(/\s*\n\s*/g, " ") + (given[index] ?? "")).join("");

const relations = (...all: readonly (readonly [type: string, target: string])[]): string =>
  `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${all.map(([type, target], index) =>
    `<Relationship Id="rId${index + 1}" Type="${type.includes("://") ? type : `${OFFICE}/${type}`}"
    Target="${target}"/>`).join("")}</Relationships>`;

/** ECMA-376-2, 7.2.3: types by ending, and of single parts. */
const contentTypes = (): string => HEAD + xml`<Types xmlns="${PACKAGE}/content-types">
  <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
  <Default Extension="xml" ContentType="application/xml"/><Default Extension="vml" ContentType="${CONTENT}.vmlDrawing"/>${[
  ["xl/workbook.xml", `${SHEETS}.sheet.main+xml`], ["xl/worksheets/sheet1.xml", `${SHEETS}.worksheet+xml`],
  ["xl/worksheets/sheet2.xml", `${SHEETS}.worksheet+xml`], ["xl/theme/theme1.xml", `${CONTENT}.theme+xml`],
  ["xl/styles.xml", `${SHEETS}.styles+xml`], ["xl/sharedStrings.xml", `${SHEETS}.sharedStrings+xml`],
  ["xl/metadata.xml", `${SHEETS}.sheetMetadata+xml`], ["xl/calcChain.xml", `${SHEETS}.calcChain+xml`],
  ["xl/drawings/drawing1.xml", `${CONTENT}.drawing+xml`], ["xl/charts/chart1.xml", `${CONTENT}.drawingml.chart+xml`],
  ["xl/comments1.xml", `${SHEETS}.comments+xml`], ["xl/tables/table1.xml", `${SHEETS}.table+xml`],
  ["docProps/app.xml", `${CONTENT}.extended-properties+xml`],
].map(([part, type]) => `<Override PartName="/${part}" ContentType="${type}"/>`).join("")}</Types>`;

/** ECMA-376-1, 18.2: names of the workbook (18.2.5), one of them a sheet's own, and the sheets. */
const WORKBOOK = HEAD + xml`<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"
    xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="x15"
    xmlns:x15="http://schemas.microsoft.com/office/spreadsheetml/2010/11/main">
  <fileVersion appName="xl" lastEdited="7" lowestEdited="7" rupBuild="22228"/><workbookPr defaultThemeVersion="166925"/><bookViews>
  <workbookView xWindow="0" yWindow="0" windowWidth="28800" windowHeight="12000"/></bookViews><sheets>
  <sheet name="Bid" sheetId="1" r:id="rId1"/><sheet name="Rates" sheetId="3" r:id="rId2"/></sheets><definedNames>
  <definedName name="_xlnm.Print_Area" localSheetId="0">Bid!$A$1:$H$30</definedName>
  <definedName name="Markup" comment="share of the cost">Rates!$B$2</definedName>
  <definedName name="Species">Rates!$A$5:$A$7</definedName></definedNames><calcPr calcId="191029"/></workbook>`;

/**
 * Cells. Dynamic arrays with cm="1" and bound functions as `_xldudf_`: seen in a workbook that the platform saved (OfficeDev/office-js,
 * issue 6611); a function typed without the add-in: the same issue, by its bare name and in error; `[2]!`: issue 2568 there. Shared
 * formulas: 18.3.1.40; inline strings 18.3.1.53; errors with vm, a rich value ([MS-XLSX] 2.6.205).
 */
const ROWS = xml`<row r="1" spans="1:8" ht="21" x14ac:dyDescent="0.35"><c r="A1" s="1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is>
  <t xml:space="preserve"> loose </t></is></c></row>
<row r="2" spans="1:8"><c r="A2" t="s"><v>1</v></c><c r="B2" s="2"><v>109.5</v></c><c r="C2" s="3"><v>46143</v></c><c r="D2" t="b">
  <v>1</v></c><c r="E2" t="e"><v>#N/A</v></c></row>
<row r="3" spans="1:8"><c r="A3" t="s"><v>2</v></c><c r="B3" cm="1"><f t="array" ref="B3">_xldudf_STAIR_RISERS(B2)</f><v>15</v></c>
  <c r="C3" t="e" cm="1"><f t="array" aca="1" ref="C3" ca="1">STAIR.RISERS(B2)</f><v>#NAME?</v></c><c r="D3">
  <f>[2]!_xldudf_STAIR_RISERS(B2)</f><v>15</v></c></row>
<row r="4" spans="1:8" hidden="1"><c r="A4"><v>4</v></c></row>
<row r="5" spans="1:8"><c r="A5" cm="1"><f t="array" ref="A5:B7">_xlfn._xlws.SORT(Rates!A5:B7)</f><v>0</v></c><c r="B5"><v>4.5</v></c>
  <c r="C5"><f t="shared" ref="C5:C7" si="0">B5*Markup</f><v>5.4</v></c><c r="D5"><f>SUM(_xlfn.ANCHORARRAY(A5))</f><v>12.25</v></c>
  </row>
<row r="6" spans="1:8"><c r="A6" t="str"><v>maple</v></c><c r="B6"><v>3.75</v></c><c r="C6"><f t="shared" si="0"/><v>4.5</v></c>
  <c r="D6" t="str"><f>_xlfn.LET(_xlpm.x,B5,_xlpm.x&amp;" each")</f><v>4.5 each</v></c></row>
<row r="7" spans="1:8"><c r="A7" t="str"><v>oak</v></c><c r="B7"><v>4</v></c><c r="C7"><f t="shared" si="0"/><v>4.8</v></c><c r="D7">
  <f>SUM(Lines[Price])</f><v>9</v></c></row>
<row r="10" spans="1:8"><c r="A10" t="s"><v>3</v></c><c r="B10" t="s"><v>4</v></c></row>
<row r="11" spans="1:8"><c r="A11" t="s"><v>5</v></c><c r="B11"><v>4</v></c><c r="F11"><f>[1]Prices!$A$1</f><v>3.2</v></c></row>
<row r="12" spans="1:8"><c r="A12" t="s"><v>6</v></c><c r="B12"><v>5</v></c><c r="F12" t="e" vm="1" cm="1">
  <f t="array" ref="F12">_xlfn.SEQUENCE(3)</f><v>#VALUE!</v></c></row>
<row r="13" spans="1:8"><c r="F13" t="s"><v>7</v></c></row>`;

/**
 * 18.3.1.99, the children in the order of CT_Worksheet; the second list in the extension for one that is on another sheet ([MS-XLSX]
 * 2.6.42).
 */
const SHEET = HEAD + xml`<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}"
    xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="x14ac"
    xmlns:x14ac="http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac">
  <sheetPr><tabColor theme="4" tint="0.4"/></sheetPr><dimension ref="A1:F13"/><sheetViews>
  <sheetView tabSelected="1" workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>
  <selection pane="bottomLeft" activeCell="B2" sqref="B2"/></sheetView></sheetViews>
  <sheetFormatPr defaultRowHeight="14.5" x14ac:dyDescent="0.35"/><cols><col min="1" max="1" width="12.5703125" customWidth="1"/>
  <col min="4" max="5" width="9.140625" hidden="1" customWidth="1"/></cols><sheetData>${ROWS}</sheetData><mergeCells count="1">
  <mergeCell ref="E1:H1"/></mergeCells><conditionalFormatting sqref="B11:B12">
  <cfRule type="cellIs" dxfId="0" priority="2" operator="greaterThan"><formula>4</formula></cfRule></conditionalFormatting>
  <conditionalFormatting sqref="A11:A12 C11"><cfRule type="expression" dxfId="0" priority="1"><formula>A11="total"</formula></cfRule>
  </conditionalFormatting><conditionalFormatting sqref="B2:B3"><cfRule type="dataBar" priority="3"><dataBar><cfvo type="min"/>
  <cfvo type="max"/><color rgb="FF638EC6"/></dataBar></cfRule></conditionalFormatting><dataValidations count="2">
  <dataValidation type="list" allowBlank="1" showInputMessage="1" showErrorMessage="1" sqref="G2:G3"><formula1>"in,mm"</formula1>
  </dataValidation><dataValidation type="list" allowBlank="1" sqref="H2"><formula1>Species</formula1></dataValidation>
  </dataValidations><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><drawing r:id="rId1"/>
  <legacyDrawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId4"/></tableParts><extLst>
  <ext xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}">
  <x14:dataValidations xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main" count="1">
  <x14:dataValidation type="list" allowBlank="1"><x14:formula1><xm:f>Rates!$A$5:$A$7</xm:f></x14:formula1><xm:sqref>H3</xm:sqref>
  </x14:dataValidation></x14:dataValidations></ext></extLst></worksheet>`;

const RATES = HEAD + xml`<worksheet xmlns="${MAIN}"><dimension ref="A1:B7"/><sheetData><row r="2"><c r="A2" t="s"><v>8</v></c>
  <c r="B2"><v>1.2</v></c></row><row r="5"><c r="A5" t="s"><v>9</v></c><c r="B5"><v>4</v></c></row><row r="6"><c r="A6" t="s">
  <v>10</v></c><c r="B6"><v>4.5</v></c></row><row r="7"><c r="A7" t="s"><v>11</v></c><c r="B7"><v>3.75</v></c></row></sheetData>
  </worksheet>`;

/** 18.4.9, with a text in two looks (18.4.4), spaces that stay, a carriage return (22.9.2.19) and how a word is read (18.4.6). */
const STRINGS = `${HEAD}<sst xmlns="${MAIN}" count="12" uniqueCount="12">${[
  '<r><rPr><b/><sz val="11"/></rPr><t>Bid </t></r><r><t xml:space="preserve">for nobody</t></r>', "<t>total rise</t>", "<t>risers</t>",
  "<t>Part</t>", "<t>Price</t>", '<t xml:space="preserve"> oak </t>', "<t>line_x000D_\nend _x005F_x0041_</t>", "<t>in the way</t>",
  '<t>Markup</t><rPh sb="0" eb="1"><t>no part of it</t></rPh>', "<t>oak</t>", "<t>ash</t>", "<t>maple</t>",
].map((item) => `<si>${item}</si>`).join("")}</sst>`;

/**
 * 18.8: the usual font, one in a colour of the theme made darker (18.8.19), a fill of the old palette (18.8.27), a built-in date
 * (18.8.30).
 */
const STYLES = HEAD + xml`<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="164" formatCode="#\\ ??/16"/></numFmts>
  <fonts count="2"><font><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font><font><b/>
  <sz val="14"/><color theme="4" tint="-0.5"/><name val="Calibri"/></font></fonts><fills count="3"><fill>
  <patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid">
  <fgColor indexed="43"/><bgColor indexed="64"/></patternFill></fill></fills><borders count="1"><border><left/><right/><top/><bottom/>
  <diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>
  <cellXfs count="4"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>
  <xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/>
  <xf numFmtId="164" fontId="0" fillId="2" borderId="0" xfId="0" applyNumberFormat="1" applyFill="1"/>
  <xf numFmtId="14" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs><cellStyles count="1">
  <cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="1"><dxf><font><color rgb="FF9C0006"/></font><fill>
  <patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill></dxf></dxfs></styleSheet>`;

/** 20.1.6.2, the colours alone. */
const COLOURS = [
  ["dk1", "windowText", "000000"], ["lt1", "window", "FFFFFF"], ["dk2", "", "44546A"], ["lt2", "", "E7E6E6"], ["accent1", "", "4472C4"],
  ["accent2", "", "ED7D31"], ["accent3", "", "A5A5A5"], ["accent4", "", "FFC000"], ["accent5", "", "5B9BD5"], ["accent6", "", "70AD47"],
  ["hlink", "", "0563C1"], ["folHlink", "", "954F72"],
].map(([name, system, rgb]) => `<a:${name}>${system === "" ? `<a:srgbClr val="${rgb}"/>` : `<a:sysClr val="${system}"
    lastClr="${rgb}"/>`}</a:${name}>`).join("");
const THEME = HEAD + xml`<a:theme xmlns:a="${DRAWING}/main" name="Plain"><a:themeElements>
  <a:clrScheme name="Plain">${COLOURS}</a:clrScheme></a:themeElements></a:theme>`;

/** [MS-XLSX] 2.6.206, and 18.9 for the parts around it. */
const METADATA = HEAD + xml`<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">
  <metadataTypes count="1">
  <metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1"
    rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>
  </metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">
  <xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk>
  <rc t="1" v="0"/></bk></cellMetadata></metadata>`;

/** 21.2 and 20.5: a column chart of two prices. */
const CHART = HEAD + xml`<c:chartSpace xmlns:c="${DRAWING}/chart" xmlns:a="${DRAWING}/main"><c:chart><c:plotArea><c:layout/>
  <c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:ser><c:idx val="0"/><c:order val="0"/><c:val><c:numRef>
  <c:f>Bid!$B$11:$B$12</c:f></c:numRef></c:val></c:ser><c:axId val="1"/><c:axId val="2"/></c:barChart></c:plotArea></c:chart>
  </c:chartSpace>`;
const ANCHOR = HEAD + xml`<xdr:wsDr xmlns:xdr="${DRAWING}/spreadsheetDrawing" xmlns:a="${DRAWING}/main"><xdr:twoCellAnchor><xdr:from>
  <xdr:col>9</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>1</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>15</xdr:col>
  <xdr:colOff>0</xdr:colOff><xdr:row>12</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:graphicFrame macro=""><a:graphic>
  <a:graphicData uri="${DRAWING}/chart"><c:chart xmlns:c="${DRAWING}/chart" xmlns:r="${OFFICE}" r:id="rId1"/></a:graphicData>
  </a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>`;
/** 18.7.3, and the drawing in the old form that goes with it. */
const COMMENTS = HEAD + xml`<comments xmlns="${MAIN}"><authors><author>Nobody</author></authors><commentList>
  <comment ref="B2" authorId="0"><text><r><t>measured at the wall</t></r></text></comment></commentList></comments>`;
const VML = xml`<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office"
    xmlns:x="urn:schemas-microsoft-com:office:excel">
  <v:shape id="_x0000_s1025" type="#_x0000_t202"><x:ClientData ObjectType="Note"><x:Row>1</x:Row><x:Column>1</x:Column></x:ClientData>
  </v:shape></xml>`;
/** 18.5.1.2. */
const TABLE = HEAD + xml`<table xmlns="${MAIN}" id="1" name="Lines" displayName="Lines" ref="A10:B12" totalsRowShown="0">
  <autoFilter ref="A10:B12"/><tableColumns count="2"><tableColumn id="1" name="Part"/><tableColumn id="2" name="Price"/>
  </tableColumns><tableStyleInfo name="TableStyleMedium2" showRowStripes="1"/></table>`;
/** 18.6.1. */
const CHAIN = HEAD + xml`<calcChain
    xmlns="${MAIN}">${["B3", "C3", "D3", "A5", "C5", "D5", "C6", "D6", "C7", "D7", "F11", "F12"].map((cell) => `<c r="${cell}"
    i="1"/>`).join("")}</calcChain>`;
const APP = HEAD + xml`<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties">
  <Application>Microsoft Excel</Application></Properties>`;

/** The parts of the workbook by their names, in the order in which Excel packs them. */
export const EXCEL_PARTS: Readonly<Record<string, string>> = {
  "[Content_Types].xml": contentTypes(),
  "_rels/.rels": relations(["officeDocument", "xl/workbook.xml"], ["extended-properties", "docProps/app.xml"]),
  "xl/workbook.xml": WORKBOOK,
  "xl/_rels/workbook.xml.rels": relations(
    ["worksheet", "worksheets/sheet1.xml"], ["worksheet", "worksheets/sheet2.xml"], ["theme", "theme/theme1.xml"], ["styles", "styles.xml"],
    ["sharedStrings", "sharedStrings.xml"], ["sheetMetadata", "metadata.xml"], ["calcChain", "calcChain.xml"],
    ["externalLink", "externalLinks/externalLink1.xml"],
  ),
  "xl/worksheets/sheet1.xml": SHEET,
  "xl/worksheets/_rels/sheet1.xml.rels": relations(
    ["drawing", "../drawings/drawing1.xml"], ["vmlDrawing", "../drawings/vmlDrawing1.vml"], ["comments", "../comments1.xml"],
    ["table", "../tables/table1.xml"],
  ),
  "xl/worksheets/sheet2.xml": RATES,
  "xl/theme/theme1.xml": THEME,
  "xl/styles.xml": STYLES,
  "xl/sharedStrings.xml": STRINGS,
  "xl/metadata.xml": METADATA,
  "xl/calcChain.xml": CHAIN,
  "xl/drawings/drawing1.xml": ANCHOR,
  "xl/drawings/_rels/drawing1.xml.rels": relations(["chart", "../charts/chart1.xml"]),
  "xl/charts/chart1.xml": CHART,
  "xl/drawings/vmlDrawing1.vml": VML,
  "xl/comments1.xml": COMMENTS,
  "xl/tables/table1.xml": TABLE,
  "xl/externalLinks/externalLink1.xml": HEAD + xml`<externalLink xmlns="${MAIN}"/>`,
  "docProps/app.xml": APP,
};

/** Parts as a file, packed by a library of its own. */
export const packed = (parts: Readonly<Record<string, string>>): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));

export const excelFile = (): Uint8Array => packed(EXCEL_PARTS);
