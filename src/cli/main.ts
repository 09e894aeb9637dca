import path from "node:path";
import { version } from "../../package.json";
import { openWorkbook } from "../workbook/node/open-workbook";
import { builtFunctions } from "./built-functions";
import { standStill } from "./clock";
import { asked, type Asked, HELP } from "./command-line";
import { draw } from "./draw";
import { evaluated, isInError, rowsText } from "./evaluated";
import { EXIT } from "./exit-codes";
import { functionsJson, functionsText } from "./listed-functions";
import { exitOfMending, mend } from "./mend";
import { exitOf, recalc } from "./recalc";
import { isRefusal } from "./refusal";
import { mendingText, reportText } from "./report";

/** The built functions lie in the folder above the command's. */
const BUILT = path.join(__dirname, "..");

const print = (text: string): void => void process.stdout.write(`${text}\n`);
const json = (value: unknown): string => JSON.stringify(value, null, 1);
/** On a terminal, what is being done; in a pipe nothing stands between the lines of a report. */
const progress = (step: string): void => void (process.stderr.isTTY && process.stderr.write(`${step} …\n`));

const done = async (work: Asked): Promise<number> => {
  if (work.command === "help" || work.command === "version") {
    print(work.command === "help" ? HELP : version);
    return EXIT.done;
  }
  const built = builtFunctions(BUILT);
  if (work.command === "functions") {
    print(work.isJson ? json(functionsJson(built.metadata, work.name)) : functionsText(built.metadata, work.name));
    return EXIT.done;
  }
  if (work.command === "mend") {
    const found = mend(work, built.metadata, progress);
    print(work.isJson ? json(found) : mendingText(found));
    return exitOfMending(work, found);
  }
  if (work.command === "recalc" && work.at !== undefined) standStill(work.at);
  if (work.command === "draw") {
    for (const line of await draw(work, built, progress)) print(line);
    return EXIT.done;
  }
  const book = openWorkbook(built);
  if (work.command === "eval") {
    const found = await evaluated(work.formula, book);
    print(work.isJson ? json(found) : rowsText(found));
    if (!work.isJson && found.says !== undefined) process.stderr.write(`${found.says}\n`);
    return isInError(found) ? EXIT.differs : EXIT.done;
  }
  const found = await recalc(work, book, progress);
  print(work.isJson ? json(found) : reportText(found));
  return exitOf(work, found);
};

const main = async (): Promise<number> => {
  try {
    return await done(asked(process.argv.slice(2)));
  } catch (error) {
    process.stderr.write(`${isRefusal(error) ? error.message : error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
    return isRefusal(error) ? error.code : EXIT.refused;
  }
};

// The engine leaves timers behind: what was asked is done, and what was printed is out.
void main().then((code) => process.stdout.write("", () => process.exit(code)));
