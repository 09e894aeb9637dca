import type { Solve } from "../pane/answer";
import { element } from "../pane/element";
import { pane } from "../pane/pane";
import { question } from "../pane/question";
import { shownFunctions } from "../pane/shown-functions";
import { demo } from "../sheets/demo/demo";
import type { FunctionsJson } from "../workbook/function-metadata";
import { type SelectedCell, sheetPage } from "../workbook/page/sheet-page";
import type { StandIn } from "../workbook/stand-in";
import { DATA_VERSION, workbookData, type WorkbookData } from "../workbook/workbook-data";
import { ticketTape } from "../sheets/ticket-tape";
import { tickets } from "../sheets/tickets";
import { keeper } from "./keeper";
import { localHost } from "./local-host";
import { measuredIn } from "./measured-in";
import { type SheetStore, sheetStore } from "./sheet-store";
import { ticketPages } from "./ticket-pages";

const DEMO: WorkbookData = { version: DATA_VERSION, sheets: demo };
const FILE_NAME = "treadsheet-sheets.json";
/** Formulas whose results go to the saw. */
const FITS = /^=STAIR\.(TREADFIT|RISERFIT)\(/i;
/** Sheets are kept this long after the last change, in milliseconds. */
const KEEP_AFTER = 400;

const place = <Kind extends HTMLElement>(id: string): Kind => {
  const found = document.querySelector<Kind>(`#${id}`);
  if (found === null) throw new Error(`The page has no place for ${id}.`);
  return found;
};

const told = (error: unknown): string => (error instanceof Error ? error.message : String(error));

const { treadsheetBuilt: built } = globalThis as unknown as { readonly treadsheetBuilt: StandIn };

const start = async (): Promise<void> => {
  const shown = shownFunctions();
  const { caution, sawCaution } = shown;
  const status = place("status");
  const say = (text: string): void => void (status.textContent = text);
  const metadata = (await (await fetch("functions.json")).json()) as FunctionsJson;
  const book = sheetPage(place("sheet"), metadata, built);

  let store: SheetStore | undefined;
  let revision = 0;
  try {
    store = await sheetStore(indexedDB);
    const kept = await store.read();
    revision = kept?.revision ?? 0;
    book.load(kept === undefined ? DEMO : workbookData(kept.data));
    say(kept === undefined ? "The demo. What you change is kept in this browser." : "Your sheets, as you left them in this browser.");
  } catch (error) {
    book.load(DEMO);
    say(
      `What was kept in this browser could not be opened, and stays there: ${told(error)}. This is the demo; nothing you change ` +
        `here is kept.`,
    );
    store = undefined;
  }
  // From before anyone can type.
  const keepSheets = store && keeper(store, revision, book.data());

  const keep = async (): Promise<void> => {
    if (keepSheets === undefined) return;
    try {
      const outcome = await keepSheets(() => book.data());
      if (outcome === "kept") say("Kept in this browser.");
      if (outcome === "overtaken")
        say(
          "Another tab has changed these sheets. This one keeps nothing more in the browser: save it as a file, or reload to go " +
            "on with the other.",
        );
    } catch (error) {
      say(`Not kept in this browser: ${told(error)}. Save the sheets as a file.`);
    }
  };
  let waiting: ReturnType<typeof setTimeout> | undefined;
  book.onChange(() => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void keep(), KEEP_AFTER);
  });

  const putIn = async (data: WorkbookData): Promise<void> => {
    book.load(data);
    await book.settled();
    await keep();
  };

  place("save").addEventListener("click", () => {
    const link = element(document, "a");
    link.href = URL.createObjectURL(new Blob([JSON.stringify(book.data(), null, 1)], { type: "application/json" }));
    link.download = FILE_NAME;
    link.click();
    URL.revokeObjectURL(link.href);
    say(`Saved as ${FILE_NAME}.`);
  });
  const file = place<HTMLInputElement>("file");
  place("open").addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    file.value = "";
    if (chosen === undefined) return;
    void (async () => {
      try {
        const data = workbookData(JSON.parse(await chosen.text()));
        if (await question(document, `Open ${chosen.name}? The sheets shown now are replaced.`, "Open it", "Keep these sheets")) {
          await putIn(data);
          say(`Opened ${chosen.name}.`);
        }
      } catch (error) {
        say(`${chosen.name} cannot be opened: ${told(error)}. Choose a file that was saved here.`);
      }
    })();
  });
  place("demo").addEventListener("click", () => {
    void (async () => {
      if (
        await question(
          document,
          "Reset the demo? The sheets shown now are lost unless you save them as a file first.",
          "Reset demo",
          "Keep these sheets",
        )
      )
        await putIn(DEMO);
    })();
  });

  const solve: Solve = (id, args) => {
    const solver = built.functions.get(id);
    if (solver === undefined) throw built.error("#NAME?", `${id}: functions.js has no such function`);
    return solver(...args);
  };
  const tapeText = (inches: number, divisions: number): string => {
    const answer = solve("TAPE", [inches, divisions]);
    return String(Array.isArray(answer) ? (answer as unknown[][])[0]?.[0] : answer);
  };
  place("print").addEventListener("click", () => {
    const fits = book.data().sheets.flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { formula = "" }]) => {
        const [, kind] = FITS.exec(formula) ?? [];
        return kind === undefined
          ? []
          : [
              {
                name,
                address,
                pieces: kind.toUpperCase() === "TREADFIT" ? "treads" : "risers",
                measuring: measuredIn(book, name, formula, solve),
              },
            ];
      }),
    );
    const unclear = fits.find(({ measuring }) => measuring === undefined);
    if (unclear !== undefined) {
      say(
        `${unclear.name} ${unclear.address}: the unit or the tape of the fit cannot be read from its formula; write it there, as ` +
          `in "mm", or name a cell that holds it.`,
      );
      return;
    }
    const found = fits.flatMap(({ name, address, pieces, measuring }) =>
      measuring === undefined ? [] : tickets(`${name}: ${pieces}`, book.spill(name, address), ticketTape(measuring, tapeText)),
    );
    if (found.length === 0) {
      say("No sheet has a TREADFIT or RISERFIT to print a ticket of.");
      return;
    }
    place("tickets").replaceChildren(...ticketPages(document, found, [sawCaution, caution]));
    window.print();
  });

  const line = place("cell");
  const show = (cell: SelectedCell | undefined): void => {
    const text =
      cell === undefined ? "" : [`${cell.sheet} ${cell.address}`, cell.formula ?? "", cell.error ?? ""].filter(Boolean).join("   ");
    if (line.textContent !== text) line.textContent = text;
    line.className = cell?.error === undefined ? "" : "wrong";
  };
  book.onSelection(show);

  pane(document, place("pane"), shown, {
    place: "beside this sheet",
    lacks: [],
    solve,
    ...localHost(book),
  });
  await book.settled();
  document.documentElement.dataset["ready"] = "yes";
  Object.assign(globalThis, { treadsheetBook: book });
};

void start().catch((error: unknown) => {
  place("status").textContent = `The sheet did not start: ${told(error)}`;
});
