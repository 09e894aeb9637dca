import { parseArgs } from "node:util";
import { EXIT_SAYS } from "./exit-codes";
import { refusal } from "./refusal";

/** A workbook, and what is to be written of it. */
export interface WritingAsked {
  readonly file: string;
  /** Where the workbook goes; undefined where nothing is to be written but a report. */
  readonly out: string | undefined;
  readonly isInPlace: boolean;
  readonly isCheck: boolean;
  readonly isJson: boolean;
}

/** What `recalc` is asked. */
export interface RecalcAsked extends WritingAsked {
  readonly command: "recalc";
  readonly isValues: boolean;
  readonly sheet: string | undefined;
  /** The moment that TODAY and NOW answer. */
  readonly at: Date | undefined;
  /** Seconds. */
  readonly limit: number;
  /** Whether cutting plans are searched for longer than in a cell. */
  readonly isLong: boolean;
}

/** What `mend` is asked. */
export interface MendAsked extends WritingAsked {
  readonly command: "mend";
  /** Whether it is for a spreadsheet that knows no spills. */
  readonly isWithoutSpills: boolean;
}

/** What `draw` is asked. */
export interface DrawAsked {
  readonly command: "draw";
  readonly file: string;
  readonly sheet: string;
  readonly address: string;
  /** Where the drawings go; undefined for one that is printed. */
  readonly out: string | undefined;
}

export type Asked =
  | DrawAsked
  | RecalcAsked
  | MendAsked
  | { readonly command: "eval"; readonly formula: string; readonly isJson: boolean }
  | { readonly command: "functions"; readonly name: string | undefined; readonly isJson: boolean }
  | { readonly command: "version" }
  | { readonly command: "help" };

const DEFAULT_LIMIT = 60;

export const HELP = [
  "treadsheet recalc bid.xlsx           works out every formula and says which cells have another value now",
  "    --out FILE                       writes the workbook there; what did not change stays byte for byte",
  "    --in-place                       writes it over the file, and the file as it was beside it",
  "    --values                         with --out: writes what the formulas come to, without formulas, for anyone",
  "    --check                          writes nothing; 1 where cells differ",
  "    --sheet NAME                     lists the cells of this sheet alone",
  "    --at 2026-11-29                  the day that TODAY and NOW answer; without it such formulas keep their value",
  "    --long                           searches for cheaper cutting plans as long as --limit leaves time",
  `    --limit SECONDS                  stops where it takes longer (${DEFAULT_LIMIT})`,
  "    --json                           the report as JSON",
  "treadsheet mend bid.xlsx             writes broken formulas so that Excel binds them; values stay until they are recalculated",
  "    --out, --in-place, --check, --json   as with recalc",
  "    --without-spills                 for LibreOffice before 24.8 and older Excel: arrays of a set size, ranges of cells for A1#",
  "treadsheet draw bid.xlsx 'Layout!AA7'  the drawings of the table in a cell, to scale, as SVG; one is printed",
  "    --out stair.svg                  writes it there; of several each beside it with its name, as stair elevation.svg",
  'treadsheet eval "=STAIR.RISERS(109.5)"   what a formula comes to, a row a line, columns by tabs; --json',
  "treadsheet functions [name]          the functions, or all of one; --json",
  "treadsheet --version",
  "",
  "treadsheet is npx treadsheet where the package is installed, and node dist/tools/treadsheet.cjs in the project.",
  "bid.xlsx is any workbook. In ours Layout!AA7 holds the layout; npm run build writes some of ours to dist/workbooks.",
  "",
  "It ends with:",
  ...EXIT_SAYS.map(([code, says]) => `    ${code}  ${says}`),
].join("\n");

const OPTIONS = {
  "out": { type: "string" }, "in-place": { type: "boolean" }, "values": { type: "boolean" }, "check": { type: "boolean" },
  "sheet": { type: "string" }, "at": { type: "string" }, "limit": { type: "string" }, "long": { type: "boolean" },
  "json": { type: "boolean" }, "without-spills": { type: "boolean" }, "help": { type: "boolean" }, "version": { type: "boolean" },
} as const;

type Options = Partial<Record<keyof typeof OPTIONS, string | boolean>>;

/** Which options a command takes. */
const TAKES: Readonly<Record<string, readonly string[]>> = {
  recalc: ["out", "in-place", "values", "check", "sheet", "at", "limit", "long", "json"],
  draw: ["out"], mend: ["out", "in-place", "check", "without-spills", "json"], eval: ["json"], functions: ["json"],
};

const text = (value: string | boolean | undefined): string | undefined => (typeof value === "string" ? value : undefined);

const DAY = /^\d{4}-\d{2}-\d{2}$/;

const momentOf = (given: string | undefined): Date | undefined => {
  if (given === undefined) return undefined;
  // A day alone is the day here, at noon, whatever the time zone.
  const moment = new Date(DAY.test(given) ? `${given}T12:00:00` : given);
  if (Number.isNaN(moment.getTime())) throw refusal(`--at: read "${given}", which is no day; write 2026-11-29 or 2026-11-29T14:30`);
  return moment;
};

const limitOf = (given: string | undefined): number => {
  if (given === undefined) return DEFAULT_LIMIT;
  const seconds = Number(given);
  if (!(seconds > 0)) throw refusal(`--limit: read "${given}", which is no number of seconds over 0; write ${DEFAULT_LIMIT}`);
  return seconds;
};

const writingAsked = (command: string, file: string | undefined, options: Options): WritingAsked => {
  if (file === undefined) throw refusal(`${command}: name the workbook, as in treadsheet ${command} bid.xlsx`);
  const [out, isInPlace, isCheck] = [text(options.out), options["in-place"] === true, options.check === true];
  const writes = [out !== undefined && "--out", isInPlace && "--in-place"].filter((one) => one !== false);
  if (writes.length > 1) throw refusal("--out and --in-place: give one of them");
  if (isCheck && writes.length > 0) throw refusal(`--check writes nothing: leave out ${writes.join()}`);
  return { file, out, isInPlace, isCheck, isJson: options.json === true };
};

const recalcAsked = (file: string | undefined, options: Options): RecalcAsked => {
  const asked = {
    command: "recalc", ...writingAsked("recalc", file, options), isValues: options.values === true, sheet: text(options.sheet),
    at: momentOf(text(options.at)), limit: limitOf(text(options.limit)), isLong: options.long === true,
  } as const;
  if (asked.isValues && asked.out === undefined)
    throw refusal("--values: say where it goes, as in --out values.xlsx; your workbook keeps its formulas");
  return asked;
};

const parsed = (args: readonly string[]): { readonly values: Options; readonly positionals: readonly string[] } => {
  try {
    return parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
  } catch (error) {
    throw refusal(`${error instanceof Error ? error.message : String(error)} See treadsheet --help.`);
  }
};

const CELL = /^(?:'((?:[^']|'')+)'|([^'!]+))!([$]?[A-Za-z]{1,3}[$]?[1-9]\d{0,6})$/;

// Other shells than that of Windows take ! for their own outside single quotes; that of Windows hands the quotes on.
const QUOTED_WHOLE = /^'([^']+![^']+)'$/;

const drawAsked = (file: string | undefined, cell: string | undefined, options: Options): DrawAsked => {
  if (file === undefined) throw refusal("draw: name the workbook and a cell, as in treadsheet draw bid.xlsx 'Layout!AA7'");
  if (cell === undefined) throw refusal(`draw: name the cell, too, as in treadsheet draw ${file} 'Layout!AA7'`);
  const [, quoted, plain, address] = CELL.exec(cell.replace(QUOTED_WHOLE, "$1")) ?? [];
  if (address === undefined) {
    throw refusal(`draw: read "${cell}", which is no cell of a sheet; write 'Layout!AA7' or 'My sheet!AA7', with the quotes`);
  }
  return {
    command: "draw", file, sheet: quoted?.replaceAll("''", "'") ?? plain ?? "", address: address.replaceAll("$", "").toUpperCase(),
    out: text(options.out),
  };
};

/** What the command was asked to do, or a refusal that says how it is written. */
export const asked = (args: readonly string[]): Asked => {
  const { values, positionals } = parsed(args);
  if (values.version === true) return { command: "version" };
  const [command, given, ...more] = positionals;
  if (values.help === true || command === undefined || command === "help") return { command: "help" };
  const takes = TAKES[command];
  if (takes === undefined)
    throw refusal(`There is no command "${command}"; there are recalc, mend, draw, eval and functions. See treadsheet --help.`);
  const other = Object.keys(values).find((name) => !takes.includes(name));
  if (other !== undefined) throw refusal(`${command} takes no --${other}. See treadsheet --help.`);
  if (command === "draw" && more.length < 2) return drawAsked(given, more[0], values);
  if (more.length > 0) throw refusal(`${command}: read "${more.join(" ")}" besides; give one thing, in quotes where it has spaces`);
  const isJson = values.json === true;
  if (command === "recalc") return recalcAsked(given, values);
  if (command === "mend")
    return { command, ...writingAsked(command, given, values), isWithoutSpills: values["without-spills"] === true };
  if (command === "functions") return { command, name: given, isJson };
  if (given === undefined) throw refusal('eval: give a formula in quotes, as in treadsheet eval "=STAIR.RISERS(109.5)"');
  return { command: "eval", formula: given.startsWith("=") ? given : `=${given}`, isJson };
};
