import { cellPlace } from "../sheets/cell-address";
import { readyMarks, restsOn, sheetsToAdd } from "../sheets/ready-sheets";
import { sheetsReadBy } from "../sheets/renamed-sheets";
import type { Block, CellHost, SheetsHost } from "./host";

/**
 * The sheets of a workbook that stand for ready ones, known by the functions in the cells that other ready sheets read; the last one of
 * several.
 */
const standing = async (wanted: readonly string[], names: readonly string[], cells: CellHost): Promise<ReadonlyMap<string, string>> => {
  const asked = wanted.flatMap((ready) => {
    const marks = readyMarks(ready);
    return marks.length === 0 ? [] : names.map((name) => ({ ready, name, marks }));
  });
  const blocks = asked.flatMap(({ name, marks }) =>
    marks.map(({ address }): Block => ({ sheet: name, ...cellPlace(address), rows: 1, columns: 1 })),
  );
  const held = blocks.length === 0 ? [] : await cells.read(blocks);
  const found = new Map<string, string>();
  let first = 0;
  for (const { ready, name, marks } of asked) {
    const isReady = marks.every(({ holds }, mark) => {
      const cell = held[first + mark]?.[0]?.[0];
      const text = (cell?.formula ?? String(cell?.value ?? "")).toUpperCase();
      return holds.every((part) => text.includes(part.toUpperCase()));
    });
    first += marks.length;
    if (isReady) found.set(ready, name);
  }
  return found;
};

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}`;

/** Adds a ready sheet with whatever it rests on, and says which sheets it reads. Nothing that is there is touched. */
export const readySheetAdded = async (name: string, cells: CellHost, sheets: SheetsHost): Promise<string> => {
  const names = await sheets.names();
  const stands = await standing(restsOn(name), names, cells);
  const added = sheetsToAdd(name, names, stands);
  await sheets.add(added);
  const [first, ...others] = added.map((sheet) => sheet.name);
  const says = [others.length === 0 ? `Added ${first ?? name}.` : `Added ${first ?? name}, and ${list(others)}, which it reads.`];
  const used = [...stands.values()].filter((one) => added.some((sheet) => sheetsReadBy(sheet).has(one)));
  if (used.length > 0) says.push(`${others.length === 0 ? "It reads" : "They read"} ${list(used)} of this workbook.`);
  says.push("Its numbers are an invented example: type yours over the yellow cells.");
  return says.join(" ");
};
