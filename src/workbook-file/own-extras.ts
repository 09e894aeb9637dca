import type { CellData, SheetData } from "../sheets/sheet-data";
import { CUSTOM_XML } from "./namespaces";
import type { PackageParts, Relation } from "./package-parts";
import { escapedText, plainText } from "./xml-text";

/** A part of a sheet as the file alone says it, and as it is; null where it is not there. */
type Told<Part> = readonly [read: Part | null, was: Part | null];

type Settings = Omit<SheetData, "name" | "cells">;

interface SheetExtras {
  readonly cells: Readonly<Record<string, Told<CellData>>>;
  readonly settings: Readonly<Record<string, Told<unknown>>>;
}

/**
 * What the sheets have that the file format has no place for. Each difference stands beside what the file itself said of that place, and
 * counts only while it still says so: what was changed elsewhere since then stays changed.
 */
export interface OwnExtras {
  readonly version: typeof EXTRAS_VERSION;
  readonly sheets: Readonly<Record<string, SheetExtras>>;
  /** Sheets of the file that are none of the workbook's. */
  readonly helpers: readonly string[];
}

export const EXTRAS_VERSION = 1;
const ROOT = "treadsheet";
const NAMESPACE = "urn:treadsheet:workbook";

type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === "object" && value !== null && !Array.isArray(value);

/** A value written so that two of the same parts are the same, in whatever order their parts are. */
const inOrder = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(inOrder);
  if (!isBag(value)) return value;
  return Object.fromEntries(Object.keys(value).sort().map((key) => [key, inOrder(value[key])]));
};

const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(inOrder(one)) === JSON.stringify(inOrder(other));

const told = (read: Bag, was: Bag): Readonly<Record<string, Told<unknown>>> => {
  const names = new Set([...Object.keys(read), ...Object.keys(was)]);
  return Object.fromEntries([...names].flatMap((name) => {
    const [one, other] = [read[name] ?? null, was[name] ?? null];
    return isSame(one, other) ? [] : [[name, [one, other] as const]];
  }));
};

const settingsOf = ({ name: _name, cells: _cells, ...settings }: SheetData): Settings => settings;

/** The extras of sheets, from what reading their file without extras comes to. */
export const extrasOf = (read: readonly SheetData[], was: readonly SheetData[], helpers: readonly string[]): OwnExtras => ({
  version: EXTRAS_VERSION,
  sheets: Object.fromEntries(was.flatMap((sheet) => {
    const found = read.find(({ name }) => name === sheet.name);
    if (found === undefined) return [];
    const cells = told(found.cells, sheet.cells) as SheetExtras["cells"];
    const settings = told({ ...settingsOf(found) }, { ...settingsOf(sheet) });
    return Object.keys(cells).length + Object.keys(settings).length === 0 ? [] : [[sheet.name, { cells, settings }]];
  })),
  helpers,
});

/** Our part of extras among those of others (ECMA-376-1, 22.5: an id of its own). */
const EXTRAS_ID = "{6E2B1C57-0E1D-4B62-9C2B-7A1F0D3C8E44}";

export const EXTRAS_PROPERTIES_XML =
  `<ds:datastoreItem xmlns:ds="${CUSTOM_XML}" ds:itemID="${EXTRAS_ID}"><ds:schemaRefs/></ds:datastoreItem>`;

/** Extras as a part of the package. */
export const extrasPart = (extras: OwnExtras): string =>
  `<${ROOT} xmlns="${NAMESPACE}" version="${EXTRAS_VERSION}">${escapedText(JSON.stringify(extras))}</${ROOT}>`;

const isTold = (value: unknown): value is Told<unknown> => Array.isArray(value) && value.length === 2;

const isSheetExtras = (value: unknown): value is SheetExtras =>
  isBag(value) && isBag(value["cells"]) && isBag(value["settings"]) &&
  [...Object.values(value["cells"]), ...Object.values(value["settings"])].every(isTold);

const isExtras = (value: unknown): value is OwnExtras =>
  isBag(value) && value["version"] === EXTRAS_VERSION && isBag(value["sheets"]) && Object.values(value["sheets"]).every(isSheetExtras) &&
  Array.isArray(value["helpers"]) && value["helpers"].every((name) => typeof name === "string");

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** The part of extras that a file of our own carries; undefined in any other. */
export const ownPart = (parts: PackageParts, relations: readonly Relation[]): string | undefined =>
  relations.find(({ type, target }) =>
    type === "customXml" && parts.has(target) && parts.text(target).includes(NAMESPACE) && parts.tree(target).name === ROOT)?.target;

/** The extras that a file of our own carries; undefined in any other. */
export const ownExtras = (parts: PackageParts, relations: readonly Relation[]): OwnExtras | undefined => {
  const part = ownPart(parts, relations);
  const extras = part === undefined ? undefined : parsed(plainText(parts.tree(part).text));
  return isExtras(extras) ? extras : undefined;
};

const restored = (read: Bag, extras: Readonly<Record<string, Told<unknown>>>): Bag => {
  const found: Record<string, unknown> = { ...read };
  for (const [name, [one, was]] of Object.entries(extras)) {
    if (!isSame(found[name] ?? null, one)) continue;
    if (was === null) delete found[name];
    else found[name] = was;
  }
  return found;
};

/** Sheets as they were written, where the file still says what it said then. A sheet that would not be sound stays as the file has it. */
export const withExtras = (
  sheets: readonly SheetData[], extras: OwnExtras | undefined, isSound: (sheet: SheetData) => boolean,
): readonly SheetData[] => {
  if (extras === undefined) return sheets;
  const shown = sheets.filter(({ name, isHidden }) => !(isHidden && extras.helpers.includes(name)));
  return (shown.length === 0 ? sheets : shown).map((sheet) => {
    const own = Object.hasOwn(extras.sheets, sheet.name) ? extras.sheets[sheet.name] : undefined;
    if (own === undefined) return sheet;
    const settings = restored({ ...settingsOf(sheet) }, own.settings);
    const whole = { ...settings, name: sheet.name, cells: restored(sheet.cells, own.cells) } as SheetData;
    return isSound(whole) ? whole : sheet;
  });
};
