import { readReadings } from "../../src/readings/read-readings";
import { readingsText } from "../../src/readings/readings-text";
import { isUnread } from "../../src/readings/text-lines";
import { afterTouches, type Touch } from "../../src/at-stair/touched";
import { readingSetOf } from "../../src/at-stair/reading-set-of";
import { allKept, keep, kept, keptOpen, keyOf, type KeptTaking, passingStore } from "../../src/at-stair/kept-takings";
import { SPREADSHEET_DIGITS } from "../../src/solver/length/exact";
import { begin, onward, reads } from "../at-stair/touches";
import { type Chance, oneOf } from "../workbook-file/damaged-files";
import { spoiltText, spoiltValue } from "./spoilt-text";

const LONGEST_SENTENCE = 600;

const TOUCHES: readonly Touch[] = [
  begin(), ...reads(10, 36, 36.0625, 37.375, 37.4375), onward(1), ...reads(36.125, 36.25, 37.5, 37.625),
  { key: "keep", steps: [{ piece: "tread", step: 2 }] }, { key: "list" },
];
const TAKING: KeptTaking = { id: "k1", job: "Mill Lane 4", unit: "in", tape: 16, touches: TOUCHES };

const TEXTS = [
  readingsText(readingSetOf(afterTouches(TOUCHES, "in"), TAKING)),
  [
    "See below.", "Treadsheet readings 1", "job\tHill House", "unit\tmm", "tape\t1", "taken\t2026-03-04", "", "treads",
    "step\trun\tback\tfront\tdiagonal\tsecond diagonal\tkept", "1\t250\t915\t916\t949\t950.5\tno", "2\t-\t915\t914\t949\t949\tyes", "",
    "risers",
    "step\theight\ttop\tbottom\tdiagonal\tsecond diagonal\tkept", "1\t190\t915\t915\t934.5\t934.5\tno", "", "end", "",
  ].join("\n"),
];

/** What a text of readings came to: what was read says the same when it is written and read again, else one sentence says why not. */
export const readingsOutcome = (chance: Chance): string => {
  const set = readReadings(spoiltText(oneOf(chance, TEXTS), chance));
  if (isUnread(set)) {
    if (set.says.length > LONGEST_SENTENCE) throw new Error(`a sentence of ${set.says.length} characters: ${set.says}`);
    return "refused";
  }
  const lengths = [...set.treads, ...set.risers].flatMap(({ read }) => Object.values(read));
  if (!lengths.every((length) => Number.isFinite(length) && length > 0)) throw new Error(`read as a length: ${lengths.join(", ")}`);
  const again = readReadings(readingsText(set));
  if (isUnread(again)) throw new Error(`what was read is not read again: ${again.says}`);
  // A sheet's numbers have fifteen digits, and so has what is written.
  const [first, second] = [set, again].map((one) =>
    JSON.stringify(one, (_, value: unknown) => (typeof value === "number" ? value.toPrecision(SPREADSHEET_DIGITS) : value)));
  if (first !== second) throw new Error(`what was read is another thing when it is read again: ${first} ${second}`);
  return "read";
};

/** What a stair kept in the browser came to, once someone or something had changed it: a stair that can be shown, or none. */
export const keptOutcome = (chance: Chance): string => {
  const store = passingStore();
  keep(store, TAKING);
  keep(store, { ...TAKING, id: "k2" });
  const whole: unknown = { version: 1, ...TAKING };
  const text = chance() < 0.3 ? spoiltText(JSON.stringify(whole), chance) : JSON.stringify(spoiltValue(whole, chance));
  store.setItem(keyOf("k2"), text);
  if (allKept(store).every(({ id }) => id !== "k1")) throw new Error("the other stair is not found");
  for (const taking of [...allKept(store), keptOpen(store), kept(store, "k2")]) {
    if (taking === undefined) continue;
    const set = readingSetOf(afterTouches(taking.touches, taking.unit), taking);
    const lengths = [...set.treads, ...set.risers].flatMap(({ read }) => Object.values(read));
    if (!lengths.every((length) => Number.isFinite(length) && length > 0)) throw new Error(`kept as a length: ${lengths.join(", ")}`);
    if (set.treads.length + set.risers.length > 0 && set.taken !== "" && isUnread(readReadings(readingsText(set)))) {
      const again = readReadings(readingsText(set));
      throw new Error(`what is shown cannot be handed on: ${isUnread(again) ? again.says : ""}`);
    }
  }
  return kept(store, "k2") === undefined ? "none" : "shown";
};
