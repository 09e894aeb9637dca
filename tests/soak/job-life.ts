import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { mergedReadings } from "../../src/readings/merged-readings";
import type { ReadingSet } from "../../src/readings/reading-set";
import { demo } from "../../src/sheets/demo/demo";
import { type AskedJob } from "../../src/sheets/job/own-job";
import { startedJob } from "../../src/sheets/job/started-job";
import type { SheetData } from "../../src/sheets/sheet-data";
import { stairsIn } from "../../src/web/fit-readings";
import { memoryRecords } from "../../src/web/memory-records";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { workbookFile } from "../../src/workbook-file/write-workbook-file";
import type { CellPut, Workbook } from "../../src/workbook/workbook";
import { workbookData, type PlainValue } from "../../src/workbook/workbook-data";
import { shelfOf } from "../web/shelf";
import { jobActs, type JobAct } from "./job-acts";
import { tabOf } from "./tab";

const ASKED: AskedJob = { job: "Soak stair", unit: "in", code: "irc-2021", totalRise: 106.125, run: 10, width: 36.75, openEnd: "right" };
const COMMAND = path.resolve(__dirname, "../../dist/tools/treadsheet.cjs");
/** Acts between two comparisons of the whole workbook. */
const HUNDRED = 100;

/** Cells that are typed into, by key `sheet!address`. */
type Typed = ReadonlyMap<string, PlainValue>;

interface Input {
  readonly sheet: string;
  readonly address: string;
  /** What stands there in the demo. */
  readonly value: PlainValue | undefined;
}

const inputsOf = (sheets: readonly SheetData[]): readonly Input[] =>
  sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { style, value }]) =>
      (style === "input" || style === "inputText" ? [{ sheet: name, address, value }] : [])));

const keyOf = (sheet: string, address: string): string => `${sheet}!${address}`;
const placeOf = (key: string): readonly [sheet: string, address: string] => {
  const at = key.lastIndexOf("!");
  return [key.slice(0, at), key.slice(at + 1)];
};

/** The workbook as the model says it: a new one with everything typed at once, which nobody has worked on. */
const afresh = async (book: Workbook, sheets: readonly SheetData[], typed: Typed): Promise<void> => {
  const bySheet = new Map<string, Map<string, PlainValue>>();
  for (const [key, value] of typed) {
    const [sheet, address] = placeOf(key);
    const cells = bySheet.get(sheet) ?? new Map<string, PlainValue>();
    bySheet.set(sheet, cells.set(address, value));
  }
  book.load(workbookData({
    version: 1,
    sheets: sheets.map((sheet) => {
      const cells = { ...sheet.cells };
      const own = bySheet.get(sheet.name);
      for (const { address } of inputsOf([sheet])) {
        const { value: _, ...look } = cells[address]!;
        cells[address] = look;
      }
      for (const [address, value] of own ?? []) cells[address] = { ...cells[address], value };
      return { ...sheet, cells };
    }),
  }));
  await book.settled();
  book.recalculate();
  await book.settled();
};

/** Every value of a workbook, of formulas with all that spilled. */
const shownIn = (book: Workbook): ReadonlyMap<string, string> => {
  const shown = new Map<string, string>();
  for (const { name, cells } of book.data().sheets) {
    for (const [address, { formula }] of Object.entries(cells)) {
      const value = formula === undefined ? book.value(name, address) : book.spill(name, address);
      if (value !== null && value !== "") shown.set(keyOf(name, address), JSON.stringify(value));
    }
  }
  return shown;
};

const difference = (one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): string | undefined => {
  for (const key of new Set([...one.keys(), ...other.keys()])) {
    const [lived, anew] = [one, other].map((shown) => String(shown.get(key)));
    if (lived !== anew) return `${key}: lived ${String(lived).slice(0, 300)}, afresh ${String(anew).slice(0, 300)}`;
  }
  return undefined;
};

export interface JobLife {
  readonly acts: number;
  readonly seed: number;
  /** A folder for the files that are saved. */
  readonly folder: string;
  /** A workbook without a page, new with each call. */
  readonly opened: () => Workbook;
  readonly tell: (line: string) => void;
}

/** What came of a life: a sentence where something was lost or is different, and the workbook's last file. */
export interface Lived {
  readonly fault: string | undefined;
  readonly file: string;
  readonly counts: Readonly<Record<string, number>>;
}

/**
 * A workbook begun as *Start my job* begins it and worked on by a random person: cells typed and cleared, readings taken in, undo, the page
 * reloaded and killed, the workbook saved as a file and opened from it, the file worked out by the command. After each hundred acts every
 * cell is what it is in a new workbook into which a plain list of what was typed is put at once.
 */
export const jobLife = async ({ acts, seed, folder, opened, tell }: JobLife): Promise<Lived> => {
  const records = memoryRecords();
  const begun = startedJob(ASKED, [], false).sheets;
  const started = inputsOf(begun);
  const demoValues = new Map(inputsOf(demo).map(({ sheet, address, value }) => [keyOf(sheet, address), value]));
  const inputs = started.map((one) => ({ ...one, value: demoValues.get(keyOf(one.sheet, one.address)) }));
  const [book, other] = [opened(), opened()];
  const file = path.join(folder, `job-${seed}.xlsx`);
  let typed: Typed = new Map(started.flatMap(({ sheet, address, value }) => (value === undefined ? [] : [[keyOf(sheet, address), value]])));
  let before: Typed[] = [];
  const counts: Record<string, number> = {};
  let tab = tabOf(book, records, await shelfOf(records).add("Soak", workbookData({ version: 1, sheets: begun })));
  await tab.shown;

  const note = (cells: Readonly<Record<string, CellPut>>, sheet: string): void => {
    before = [...before, typed];
    const next = new Map(typed);
    for (const [address, { value }] of Object.entries(cells)) {
      if (value === undefined) continue;
      if (value === null || value === "") next.delete(keyOf(sheet, address));
      else next.set(keyOf(sheet, address), value);
    }
    typed = next;
  };
  const put = (sheet: string, cells: Readonly<Record<string, CellPut>>): void => {
    book.put(sheet, cells);
    note(cells, sheet);
  };
  const saved = async (): Promise<Uint8Array> => {
    await book.settled();
    const bytes = workbookFile(book.data().sheets, { calculated: book });
    writeFileSync(file, bytes);
    return bytes;
  };
  const shown = async (id: string): Promise<void> => {
    tab.kill();
    before = [];
    tab = tabOf(book, records, id);
    await tab.shown;
  };
  let id = tab.id;
  const done: Readonly<Record<JobAct["kind"], (act: JobAct) => Promise<string | undefined> | string | undefined>> = {
    type: (act) => {
      const { sheet, address, value } = inputs[(act.which ?? 0) % inputs.length]!;
      const isNear = typeof value === "number" && typeof act.said === "number";
      const said = act.said === "as in the demo" ? value : isNear ? value * (1 + act.said / 64) : act.said;
      if (said !== undefined) put(sheet, { [address]: { value: said } });
      return undefined;
    },
    clear: (act) => {
      const { sheet, address } = inputs[(act.which ?? 0) % inputs.length]!;
      put(sheet, { [address]: { value: null } });
      return undefined;
    },
    undo: () => {
      book.undo();
      typed = before.at(-1) ?? typed;
      before = before.slice(0, -1);
      return undefined;
    },
    readings: async (act) => {
      await book.settled();
      const [stair] = stairsIn(book);
      if (stair === undefined) return "there is no stair to take readings into";
      const set: ReadingSet = {
        job: ASKED.job, unit: "in", tape: 16, taken: "2026-03-04",
        treads: (act.read ?? []).map(([step, back, front]) =>
          ({ step, read: { run: 10, back: 36 + back / 16, front: 36 + front / 16 }, kept: false })),
        risers: (act.read ?? []).map(([step, top, bottom]) =>
          ({ step, read: { height: 7.5, top: 36 + top / 16, bottom: 36 + bottom / 16 }, kept: false })),
      };
      const merged = mergedReadings(stair.readings, set);
      if ("says" in merged) return undefined;
      const puts = stair.puts(merged);
      if (Object.keys(puts).length > 0) put(stair.sheet, puts);
      return undefined;
    },
    pause: async () => {
      await tab.keep();
      return undefined;
    },
    reload: async () => {
      await tab.keep();
      await shown(id);
      return undefined;
    },
    kill: async (act) => {
      if (act.inTheMiddle === true) void tab.keep();
      await Promise.resolve();
      await shown(id);
      return undefined;
    },
    file: async () => {
      const { sheets } = readWorkbookFile(await saved());
      id = await shelfOf(records).add("Soak", workbookData({ version: 1, sheets }));
      await shown(id);
      return undefined;
    },
    command: async () => {
      await saved();
      const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, "recalc", file, "--check"], { encoding: "utf8" });
      return status === 0 ? undefined : `the command makes something else of the file: ${stdout.slice(0, 600)}${stderr.slice(0, 600)}`;
    },
  };

  /** A yellow cell that does not hold what was typed. */
  const otherwise = (): string | undefined => {
    const found = inputs.find(({ sheet, address }) =>
      (book.stored(sheet, address)?.value ?? "") !== (typed.get(keyOf(sheet, address)) ?? ""));
    if (found === undefined) return undefined;
    const { sheet, address } = found;
    const [held, said] = [JSON.stringify(book.stored(sheet, address)), String(typed.get(keyOf(sheet, address)))];
    return `${sheet}!${address} holds ${held}, typed was ${said}`;
  };
  const isAsTyped = async (): Promise<string | undefined> => {
    await book.settled();
    await afresh(other, begun, typed);
    return difference(shownIn(book), shownIn(other));
  };
  const lived = (fault: string | undefined): Lived => {
    book.dispose();
    other.dispose();
    return { fault, file, counts };
  };
  for (const [index, act] of fc.sample(jobActs, { seed, numRuns: acts }).entries()) {
    counts[act.kind] = (counts[act.kind] ?? 0) + 1;
    const fault = await done[act.kind](act);
    // What comes with an edit is noted before anything else runs.
    await Promise.resolve();
    const found = fault ?? otherwise() ?? ((index + 1) % HUNDRED === 0 || index + 1 === acts ? await isAsTyped() : undefined);
    if (found !== undefined) return lived(`act ${index + 1}, seed ${seed}, ${JSON.stringify(act)}:\n  ${found}`);
    if ((index + 1) % HUNDRED === 0) tell(`${index + 1} acts: ${shownIn(book).size} cells as in a new workbook`);
  }
  await saved();
  return lived(undefined);
};
