import type { CellHost, SheetsHost } from "./host";

/** Where the sheet Job has its facts, a label and beside it what is typed. */
const FACTS = { row: 0, column: 0, rows: 20, columns: 2 } as const;
const NUMBER = /(?: \d+)?$/;

/** The Job that a sheet goes with: the one there is, or of several the one of its number. */
const jobSheet = (sheet: string, names: readonly string[]): string | undefined => {
  const jobs = names.filter((name) => /^Job(?: \d+)?$/.test(name));
  return jobs.length < 2 ? jobs[0] : jobs.find((name) => NUMBER.exec(name)?.[0] === NUMBER.exec(sheet)?.[0]);
};

/** What the job is called that a sheet is of; undefined where no sheet says it. */
export const jobOfSheet = async (sheet: string, cells: CellHost, sheets: SheetsHost): Promise<string | undefined> => {
  const job = jobSheet(sheet, await sheets.names());
  if (job === undefined) return undefined;
  const [facts = []] = await cells.read([{ sheet: job, ...FACTS }]);
  const value = facts.find(([label]) => label?.value === "job")?.[1]?.value;
  return typeof value === "string" && value.trim() !== "" ? value.trim() : undefined;
};
