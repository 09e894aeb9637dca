import type { Injector } from "@univerjs/core";
import { ISheetClipboardService } from "@univerjs/preset-sheets-core";
import { pastedRows } from "../pasted-rows";
import { pastedLengths } from "./pasted-lengths";

const ESCAPED: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", "\n": "<br>" };

const tableOf = (rows: readonly (readonly string[])[]): string => {
  const cellOf = (text: string): string => `<td>${text.replace(/[&<>\n]/g, (one) => ESCAPED[one] ?? one)}</td>`;
  return `<table>${rows.map((cells) => `<tr>${cells.map(cellOf).join("")}</tr>`).join("")}</table>`;
};

const HTML = "text/html";
const PLAIN = "text/plain";

/**
 * Text pasted cell by cell. The engine takes the line ends of Windows for a space in the last cell of each row, a line break within a cell
 * for the next row, empty cells at the beginning for nothing, and what stands between < and > for a mark of its own.
 */
export const pastedTable = (injector: Injector): void => {
  const clipboard = injector.get(ISheetClipboardService);
  const byKey = clipboard.legacyPaste.bind(clipboard);
  const byMenu = clipboard.paste.bind(clipboard);
  const withLengths = pastedLengths(injector);
  clipboard.legacyPaste = (html, text, files) => {
    withLengths();
    const rows = html || files?.length || !text ? undefined : pastedRows(text);
    return rows === undefined ? byKey(html, text, files) : byKey(tableOf(rows), text, files);
  };
  clipboard.paste = async (item, kind) => {
    withLengths();
    if (!item.types.includes(PLAIN) || item.types.length > 1) return byMenu(item, kind);
    const rows = pastedRows(await (await item.getType(PLAIN)).text());
    return byMenu(rows === undefined ? item : new ClipboardItem({ [HTML]: new Blob([tableOf(rows)], { type: HTML }) }), kind);
  };
};
