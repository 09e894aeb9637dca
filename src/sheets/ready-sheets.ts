import { demo } from "./demo/demo";
import { formulasOf, freeNames, namedIn, renamedSheets, sheetsReadBy } from "./renamed-sheets";
import type { SheetData } from "./sheet-data";

/** A ready sheet of the job, as it is offered. */
export interface ReadySheet {
  readonly name: string;
  readonly says: string;
  /** Names of the ready sheets that its formulas read. */
  readonly reads: readonly string[];
}

/** A cell by which a ready sheet is known again, whatever it is called: the functions in it that others read, or else a label. */
export interface ReadyMark {
  readonly address: string;
  readonly holds: readonly string[];
}

const OUR_CALL = /STAIR\.[A-Z]+\(/g;
const JOB = "Job";
/** What is known of the job, in its first two columns; the other sheets read nothing else of it. */
const KNOWN = /^[AB](?:[12]|[7-9]|1\d)$/;

/** Job without what it gathers from the other sheets, for a sheet that only needs the facts. */
const jobFacts = ({ merged: _merged, rules: _rules, ...job }: SheetData): SheetData => ({
  ...job,
  cells: Object.fromEntries(Object.entries(job.cells).filter(([address]) => KNOWN.test(address))),
});

/** The ready sheets, of Job its facts unless it is wanted itself. */
const readyFor = (wanted: string): readonly SheetData[] =>
  demo.map((sheet) => (sheet.name === JOB && wanted !== JOB ? jobFacts(sheet) : sheet));

const readBy = (sheet: SheetData): readonly string[] => {
  const names = sheetsReadBy(sheet);
  return demo.filter(({ name }) => name !== sheet.name && names.has(name)).map(({ name }) => name);
};

/** Of a sheet whose own line speaks to somebody else: Yard order is read by the yard. */
const SAID_TO_THE_SHOP: Readonly<Record<string, string>> = {
  "Yard order": "What to buy, as a page for the lumber yard: fill in the order, send it, and the yard writes its prices on it.",
};

/** The ready sheets in the order of the job. */
export const readySheets: readonly ReadySheet[] = demo.map((sheet) => ({
  name: sheet.name,
  says: SAID_TO_THE_SHOP[sheet.name] ?? String(sheet.cells["A2"]?.value ?? ""),
  reads: readBy(sheet),
}));

/** The cells of a ready sheet that the others read and that call a function of ours; where there is none, the names in its first column. */
export const readyMarks = (name: string): readonly ReadyMark[] => {
  const sheet = demo.find((one) => one.name === name);
  const addresses = new Set(
    demo
      .flatMap((other) => (other === sheet ? [] : formulasOf(other).flatMap(namedIn)))
      .flatMap((named) => (named.sheet === name ? (named.address ?? []) : [])),
  );
  const called = [...addresses].flatMap((address) => {
    const holds = sheet?.cells[address]?.formula?.match(OUR_CALL) ?? [];
    return holds.length === 0 ? [] : [{ address, holds: [...new Set(holds)] }];
  });
  if (called.length > 0) return called;
  return Object.entries(sheet?.cells ?? {}).flatMap(([address, { value, style }]) =>
    /^A[89]$/.test(address) && typeof value === "string" && style === undefined ? [{ address, holds: [value] }] : [],
  );
};

/** Every ready sheet that one rests on, nearest last, without those that stand in the workbook already and what only they rest on. */
const missingFor = (name: string, standing: ReadonlyMap<string, string>): ReadonlySet<string> => {
  const ready = readyFor(name);
  const found = new Set<string>();
  const follow = (one: string): void => {
    const sheet = ready.find((each) => each.name === one);
    for (const read of sheet === undefined ? [] : readBy(sheet)) {
      if (standing.has(read) || found.has(read) || read === name) continue;
      found.add(read);
      follow(read);
    }
  };
  follow(name);
  return found;
};

/** The sheets, of those a ready sheet rests on, to look for in the workbook. */
export const restsOn = (name: string): readonly string[] => [...missingFor(name, new Map())];

/**
 * A ready sheet for a workbook, with the ready sheets it rests on where they are missing there; it comes first, then they in the order of
 * the job. No name of the workbook is used again, and formulas read the sheets that stand there or come with it.
 *
 * @param standing the sheet of the workbook that stands for a ready one, by the ready one's name
 */
export const sheetsToAdd = (name: string, taken: readonly string[], standing: ReadonlyMap<string, string>): readonly SheetData[] => {
  const missing = missingFor(name, standing);
  const added = readyFor(name).filter((sheet) => sheet.name === name || missing.has(sheet.name));
  const names = new Map([...standing, ...freeNames(added.map((sheet) => sheet.name), taken)]);
  const wanted = names.get(name);
  return [...renamedSheets(added, names)].sort((one, other) => Number(other.name === wanted) - Number(one.name === wanted));
};
