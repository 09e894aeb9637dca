import { words } from "../solver/words";
import { askedOf, RUN } from "./asked";
import type { Desk, Shown } from "./desk";
import { type Expected, expected, nearEnough, outlier } from "./expected";
import { key, part } from "./parts";
import { stepHead } from "./screen-head";
import { sketch } from "./sketch";
import {
  type Entry, entryText, entryValue, expectedWhole, lengthText, partsOf, partText, wholesAbout, wholeText, wholeWith,
} from "./tape-keys";
import { readAt, readingsAt, type Screen, stepName } from "./taking";

type Reading = Extract<Screen, { readonly shows: "reading" }>;

/** A reading with what is expected of it. */
interface Asking {
  readonly desk: Desk;
  readonly screen: Reading;
  readonly about: Expected;
  readonly entry: Entry;
}

/** The whole is set ahead where steps about this one say it; what is read again, or first of all, is read whole. */
const isSetAhead = ({ backTo }: Reading, { from }: Expected): boolean => from !== undefined && backTo === undefined;

/** Until it is touched the whole is the one set ahead. */
const shownEntry = (screen: Reading, about: Expected, unit: "in" | "mm"): Entry =>
  screen.entry.whole !== undefined || !isSetAhead(screen, about)
    ? screen.entry
    : { ...screen.entry, whole: expectedWhole(about.value, unit) };

const wholeKeys = ({ desk, entry, about }: Asking): HTMLElement => {
  const { unit } = desk.taking;
  const wholes = wholesAbout(entry.isChosen && entry.whole !== undefined ? entry.whole * (unit === "mm" ? 10 : 1) : about.value, unit);
  return part(
    "div",
    "row six",
    ...wholes.map((whole) =>
      key(wholeText(whole, unit), () => desk.touch({ key: "whole", whole }), {
        className: "whole", isLit: whole === entry.whole, name: unit === "mm" ? `${whole} tens` : `${whole} inches`,
      })),
    key("123", () => desk.touch({ key: "pad" }), { name: "123: other numbers" }),
  );
};

const partKeys = ({ desk, entry, about, screen }: Asking): HTMLElement => {
  const { unit } = desk.taking;
  const wholeFor = (mark: number): number | undefined =>
    screen.entry.isChosen || !isSetAhead(screen, about) ? undefined : wholeWith(mark, about.value, nearEnough(unit), unit);
  return part(
    "div",
    unit === "mm" ? "parts five" : "parts four",
    ...partsOf(unit).map((mark) => {
      const whole = wholeFor(mark);
      return key(partText(mark, unit), () => desk.touch({ key: "part", part: mark, ...(whole === undefined ? {} : { whole }) }), {
        className: "part", isLit: mark === entry.part, ...(mark === 0 && unit === "in" ? { name: "0, on the inch" } : {}),
      });
    }),
  );
};

type Half = readonly [half: Entry["half"], says: string];

const HALVES: Readonly<Record<string, readonly Half[]>> = {
  "in 16": [[-1, "− half a mark"], [0, "on the mark"], [1, "+ half a mark"]],
  "in 32": [[-1, "− 1/32"], [0, "on the mark"], [1, "+ 1/32"]],
  mm: [[0, "on the mark"], [1, "+ half"]],
};

const halfKeys = ({ desk, entry }: Asking): HTMLElement => {
  const { unit, tape } = desk.taking;
  const halves = HALVES[unit === "mm" ? "mm" : `in ${tape}`] ?? HALVES["in 16"]!;
  return part(
    "div",
    halves.length === 2 ? "row two" : "row three",
    ...halves.map(([half, says]) => key(says, () => desk.touch({ key: "half", half }), { className: "half", isLit: half === entry.half })),
  );
};

const nextSays = ({ desk, screen }: Asking): string => {
  const { at, backTo } = screen;
  const order = readingsAt(desk.state, at);
  const reading = backTo === undefined ? order[order.indexOf(at.reading) + 1] : undefined;
  return reading === undefined ? `Check ${stepName(backTo ?? at)}` : `Next: ${words(reading)}`;
};

const moving = (asking: Asking, isOff: boolean): HTMLElement => {
  const { desk, screen, entry } = asking;
  const isUnread = entryValue(entry, desk.taking.unit) === undefined;
  const says = nextSays(asking);
  return part(
    "div",
    "row moving",
    key("Back", () => desk.touch({ key: "back" }), { className: "tall", isDead: isFirst(desk, screen) }),
    key(isOff ? "It is right: next" : says, () => desk.touch({ key: "next", day: desk.today() }), {
      className: "tall big", isDead: isUnread, ...(isOff ? { name: `It is right: ${says}` } : {}),
    }),
  );
};

/** There is nothing before the first reading of a flight but Undo. */
const isFirst = ({ state }: Desk, { at, backTo }: Reading): boolean =>
  backTo === undefined && readingsAt(state, at)[0] === at.reading &&
  !state.steps.some(({ piece, step }) => piece === at.piece && step === at.step - 1);

const pad = ({ desk, screen }: Asking): HTMLElement => {
  const { unit } = desk.taking;
  const digit = (one: number): HTMLElement => key(String(one), () => desk.touch({ key: "digit", digit: one }), { className: "part" });
  const isEmpty = (screen.pad ?? "") === "";
  return part(
    "div",
    "keys",
    part("p", "asked", unit === "mm" ? "Whole millimetres" : "Whole inches"),
    part("div", "pad", ...[1, 2, 3, 4, 5, 6, 7, 8, 9].map(digit), key("Clear", () => desk.touch({ key: "pad" })), digit(0)),
    part(
      "div",
      "row moving",
      key("Back", () => desk.touch({ key: "back" }), { className: "tall" }),
      key("Use it", () => desk.touch({ key: "typed" }), { className: "tall big", isDead: isEmpty }),
    ),
  );
};

const beside = ({ desk, screen, about }: Asking): string => {
  const { unit } = desk.taking;
  const before = readAt(desk.state, screen.at)[screen.at.reading];
  if (screen.backTo !== undefined && before !== undefined) return `read before: ${lengthText(before, unit)}`;
  if (about.from === undefined) return unit;
  const neighbour = about.from === "the steps below" ? "expected" : about.from;
  return `${neighbour}: ${lengthText(about.value, unit)}`;
};

/** What is new at the first step; then that the run is taken as below, with a key to read it anew. */
const underValue = ({ desk, screen, about }: Asking): readonly Node[] => {
  const { at } = screen;
  const { unit } = desk.taking;
  if (!isSetAhead(screen, about))
    return [part("p", "quiet", unit === "mm" ? "Touch the tens, then the last digit." : "Touch the whole inch, then the fraction.")];
  const run = readAt(desk.state, at)[RUN];
  const order = readingsAt(desk.state, at);
  const isAsked = order.includes(RUN) || order[0] !== at.reading;
  return at.piece === "tread" && run !== undefined && !isAsked
    ? [key(`Run ${lengthText(run, unit)} as below. Changed?`, () => desk.touch({ key: "read", at: { ...at, reading: RUN } }), {
      className: "plain under",
    })]
    : [];
};

/** One reading: where the tape lies, what it reads, and the keys for it. */
export const readingPage = (desk: Desk, screen: Reading): Shown => {
  const { unit } = desk.taking;
  const { at } = screen;
  const about = expected(desk.state, desk.taking, at);
  const asking: Asking = { desk, screen, about, entry: shownEntry(screen, about, unit) };
  const asked = askedOf(at.piece, at.reading);
  const off = outlier(entryValue(asking.entry, unit), about, unit);
  const value = screen.pad === undefined ? entryText(asking.entry, unit) : screen.pad || "–";
  const frame = off === undefined ? [] : [part("p", "frame", `${off} `, part("strong", "", "Read it again while the tape is on it."))];
  return {
    parts: [
      stepHead(desk, at, at.reading),
      part("div", "sketch", sketch(at.piece, at.reading)),
      part("p", "asked", part("strong", "", words(at.reading).toUpperCase()), ` ${asked?.says ?? ""}`),
      part("p", "value", part("strong", "", value), part("span", "", beside(asking))),
      part("div", "note", ...(frame.length > 0 ? frame : underValue(asking))),
      screen.pad === undefined
        ? part("div", "keys", wholeKeys(asking), partKeys(asking), halfKeys(asking), moving(asking, off !== undefined))
        : pad(asking),
    ],
    says: `${words(at.reading)}: ${value}. ${off ?? ""}`,
  };
};
