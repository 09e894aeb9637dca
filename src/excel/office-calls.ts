/** A member of the platform's interface with the version of ExcelApi that brings it; none for what is there wherever the platform is. */
export interface OfficeCall {
  readonly member: string;
  readonly since?: string;
}

/** Files of this folder that call the platform. */
export type OfficePart =
  | "start" | "explain-command" | "run" | "guards" | "cells" | "selection" | "spills"
  | "sheets" | "sheet-looks" | "sheet-settings" | "sheet-rules" | "shown-tape" | "inserted-tape" | "areas" | "mending" | "error-cells"
  | "undo-group" | "pictures";

/** A look that goes by a formula. */
const A_RULE = [
  "Excel.Range.conditionalFormats",
  "Excel.ConditionalFormatCollection.add",
  "Excel.ConditionalFormat.custom",
  "Excel.ConditionalFormat.stopIfTrue",
  "Excel.CustomConditionalFormat.rule",
  "Excel.CustomConditionalFormat.format",
] as const;

export const EXCEL_API = "ExcelApi";

const everywhere = (...members: readonly string[]): readonly OfficeCall[] => members.map((member) => ({ member }));
const since = (version: string, ...members: readonly string[]): readonly OfficeCall[] =>
  members.map((member) => ({ member, since: version }));

const SYNC = everywhere("Excel.RequestContext.workbook", "OfficeExtension.ClientRequestContext.sync");

/** Every member of the platform's interface that is called, by file, with the requirement set its documentation names. */
export const officeCalls: Readonly<Record<OfficePart, readonly OfficeCall[]>> = {
  start: everywhere(
    "Office.onReady",
    "Office.onReady.callback.info.host",
    "Office.HostType",
    "Office.HostType.Excel",
    "Office.context",
    "Office.Context.requirements",
    "Office.RequirementSetSupport.isSetSupported",
    "Office.Context.officeTheme",
    "Office.OfficeTheme.isDarkTheme",
    "Office.Context.platform",
    "Office.PlatformType",
    "Office.PlatformType.PC",
    "Office.PlatformType.OfficeOnline",
    "Office.addin",
    "Office.Addin.onVisibilityModeChanged",
    "Office.VisibilityMode",
    "Office.VisibilityMode.taskpane",
    "Office.VisibilityModeChangedMessage.visibilityMode",
  ),
  "explain-command": everywhere(
    "Office.actions", "Office.Actions.associate", "Office.addin", "Office.Addin.showAsTaskpane", "Office.AddinCommands.Event.completed",
  ),
  run: everywhere("Excel.run"),
  guards: [
    ...SYNC,
    ...everywhere("Excel.run", "Excel.Workbook.load", "Excel.WorksheetProtection.load"),
    ...since("1.1", "Excel.Workbook.worksheets", "Excel.WorksheetCollection.getItem"),
    ...since("1.2", "Excel.Worksheet.protection", "Excel.WorksheetProtection.protected"),
    ...since("1.8", "Excel.Workbook.readOnly"),
  ],
  cells: [
    ...SYNC,
    ...everywhere("Excel.Range.load", "Excel.RangeFormat.load"),
    ...since(
      "1.1",
      "Excel.Workbook.worksheets",
      "Excel.WorksheetCollection.getItem",
      "Excel.Range.formulas",
      "Excel.Range.values",
      "Excel.Range.valueTypes",
      "Excel.Range.numberFormat",
      "Excel.Range.format",
      "Excel.RangeFormat.wrapText",
    ),
    ...since("1.2", "Excel.RangeFormat.columnWidth", "Excel.RangeFormat.rowHeight"),
    ...since("1.7", "Excel.Worksheet.getRangeByIndexes"),
  ],
  selection: [
    ...SYNC,
    ...everywhere(
      "Excel.run", "Excel.Range.load", "Excel.Worksheet.load", "OfficeExtension.EventHandlers.add",
      "OfficeExtension.EventHandlerResult.context", "OfficeExtension.EventHandlerResult.remove",
    ),
    ...since(
      "1.1",
      "Excel.Workbook.worksheets",
      "Excel.Range.rowIndex",
      "Excel.Range.columnIndex",
      "Excel.Range.worksheet",
      "Excel.Worksheet.name",
    ),
    ...since("1.2", "Excel.Workbook.onSelectionChanged"),
    ...since("1.7", "Excel.Workbook.getActiveCell"),
    ...since("1.8", "Excel.WorksheetCollection.onCalculated"),
  ],
  spills: [
    ...everywhere("OfficeExtension.ClientRequestContext.sync", "OfficeExtension.ClientObject.isNullObject", "Excel.Range.load"),
    ...since("1.1", "Excel.Range.rowIndex", "Excel.Range.columnIndex", "Excel.Range.rowCount", "Excel.Range.columnCount"),
    ...since("1.12", "Excel.Range.hasSpill", "Excel.Range.getSpillParentOrNullObject", "Excel.Range.getSpillingToRangeOrNullObject"),
  ],
  sheets: [
    ...SYNC,
    ...everywhere("Excel.WorksheetCollection.load", "Excel.WorksheetCollection.items", "Excel.Range.load"),
    ...since(
      "1.1",
      "Excel.Workbook.worksheets",
      "Excel.WorksheetCollection.add",
      "Excel.WorksheetCollection.getItem",
      "Excel.Worksheet.name",
      "Excel.Worksheet.activate",
      "Excel.Worksheet.delete",
      "Excel.Range.formulas",
      "Excel.Range.numberFormat",
    ),
    ...since("1.7", "Excel.Worksheet.getRangeByIndexes"),
  ],
  "sheet-looks": [
    ...since(
      "1.1",
      "Excel.Worksheet.getRange",
      "Excel.Range.format",
      "Excel.RangeFormat.font",
      "Excel.RangeFormat.fill",
      "Excel.RangeFormat.borders",
      "Excel.RangeFormat.wrapText",
      "Excel.RangeFormat.horizontalAlignment",
      "Excel.RangeFormat.verticalAlignment",
      "Excel.RangeFont.bold",
      "Excel.RangeFont.italic",
      "Excel.RangeFont.underline",
      "Excel.RangeFont.name",
      "Excel.RangeFont.size",
      "Excel.RangeFont.color",
      "Excel.RangeFill.color",
      "Excel.RangeBorderCollection.getItem",
      "Excel.RangeBorder.style",
      "Excel.RangeBorder.weight",
      "Excel.RangeBorder.color",
    ),
    ...since("1.7", "Excel.RangeFormat.textOrientation"),
  ],
  "sheet-settings": [
    ...since("1.1", "Excel.Worksheet.getRange", "Excel.Worksheet.visibility", "Excel.Range.format"),
    ...since(
      "1.2",
      "Excel.RangeFormat.columnWidth",
      "Excel.RangeFormat.rowHeight",
      "Excel.Range.rowHidden",
      "Excel.Range.columnHidden",
      "Excel.Range.merge",
    ),
    ...since(
      "1.7",
      "Excel.Worksheet.getRangeByIndexes",
      "Excel.Worksheet.tabColor",
      "Excel.Worksheet.freezePanes",
      "Excel.WorksheetFreezePanes.freezeAt",
      "Excel.WorksheetFreezePanes.freezeRows",
      "Excel.WorksheetFreezePanes.freezeColumns",
    ),
    ...since("1.8", "Excel.Worksheet.showGridlines"),
  ],
  "sheet-rules": [
    ...since("1.1", "Excel.Worksheet.getRange"),
    ...since(
      "1.6",
      ...A_RULE,
      "Excel.ConditionalFormatRule.formula",
      "Excel.ConditionalRangeFormat.fill",
      "Excel.ConditionalRangeFormat.font",
      "Excel.ConditionalRangeFill.color",
      "Excel.ConditionalRangeFont.bold",
      "Excel.ConditionalRangeFont.italic",
      "Excel.ConditionalRangeFont.underline",
      "Excel.ConditionalRangeFont.strikethrough",
      "Excel.ConditionalRangeFont.color",
    ),
    ...since("1.8", "Excel.Range.dataValidation", "Excel.DataValidation.rule"),
  ],
  "shown-tape": [
    ...since("1.1", "Excel.Worksheet.getRange"),
    ...since(
      "1.6",
      ...A_RULE,
      "Excel.ConditionalFormatRule.formulaR1C1",
      "Excel.ConditionalRangeFormat.numberFormat",
    ),
  ],
  "inserted-tape": [
    ...SYNC,
    ...everywhere(
      "Excel.ConditionalFormat.load",
      "Excel.ConditionalFormatCollection.load",
      "Excel.ConditionalFormatCollection.items",
    ),
    ...since("1.1", "Excel.Workbook.worksheets", "Excel.WorksheetCollection.getItem"),
    ...since(
      "1.6",
      "Excel.Range.conditionalFormats",
      "Excel.ConditionalFormat.id",
      "Excel.ConditionalFormat.type",
      "Excel.ConditionalFormat.delete",
    ),
  ],
  areas: since("1.9", "Excel.Worksheet.getRanges", "Excel.RangeAreas.conditionalFormats"),
  mending: [
    ...SYNC,
    ...everywhere(
      "Excel.WorksheetCollection.load",
      "Excel.WorksheetCollection.items",
      "Excel.Range.load",
      "OfficeExtension.ClientObject.isNullObject",
    ),
    ...since(
      "1.1",
      "Excel.Workbook.worksheets",
      "Excel.Workbook.application",
      "Excel.Application.calculate",
      "Excel.Worksheet.name",
      "Excel.Range.rowIndex",
      "Excel.Range.columnIndex",
      "Excel.Range.rowCount",
      "Excel.Range.columnCount",
    ),
    ...since("1.2", "Excel.Worksheet.protection", "Excel.WorksheetProtection.protected"),
    ...since("1.4", "Excel.Worksheet.getUsedRangeOrNullObject"),
  ],
  "error-cells": [
    ...everywhere(
      "OfficeExtension.ClientRequestContext.sync", "OfficeExtension.ClientObject.isNullObject", "Excel.RangeAreas.load",
      "Excel.RangeCollection.load", "Excel.RangeCollection.items",
    ),
    ...since("1.1", "Excel.Range.rowIndex", "Excel.Range.columnIndex", "Excel.Range.rowCount", "Excel.Range.columnCount"),
    ...since("1.9", "Excel.Range.getSpecialCellsOrNullObject", "Excel.RangeAreas.areas"),
  ],
  "undo-group": since("1.20", "Excel.RunOptions.mergeUndoGroup"),
  pictures: [
    ...SYNC,
    ...everywhere("Excel.Range.load", "Excel.ShapeCollection.load", "Excel.ShapeCollection.items"),
    ...since("1.1", "Excel.Workbook.worksheets", "Excel.WorksheetCollection.getItem"),
    ...since(
      "1.9",
      "Excel.Worksheet.shapes",
      "Excel.ShapeCollection.addImage",
      "Excel.Shape.name",
      "Excel.Shape.altTextDescription",
      "Excel.Shape.left",
      "Excel.Shape.top",
      "Excel.Shape.width",
      "Excel.Shape.height",
      "Excel.Shape.lockAspectRatio",
      "Excel.Shape.delete",
    ),
    ...since("1.10", "Excel.Range.left", "Excel.Range.top", "Excel.Shape.placement"),
  ],
};

const inOrder = (one: string, other: string): number => one.localeCompare(other, "en", { numeric: true });

/** The version of ExcelApi that a part needs: the newest that one of its calls came with; undefined where every version will do. */
export const versionNeeded = (...parts: readonly OfficePart[]): string | undefined =>
  parts.flatMap((part) => officeCalls[part].flatMap((call) => call.since ?? [])).sort(inOrder).pop();
