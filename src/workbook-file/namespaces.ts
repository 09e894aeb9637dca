/** Namespaces of the parts (ECMA-376-1, A; ECMA-376-2, D). */
export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";
/** What parts of a workbook lead to, and what only the platform's own additions do ([MS-OWEXML] 2.2). */
export const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const MICROSOFT = "http://schemas.microsoft.com/office/2011/relationships";
export const CUSTOM_XML = "http://schemas.openxmlformats.org/officeDocument/2006/customXml";
export const CONTENT_TYPES = "http://schemas.openxmlformats.org/package/2006/content-types";
export const RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
/** The first line of a part. */
export const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
