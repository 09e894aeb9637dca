import { CAUTION, SAW_CAUTION } from "../functions/caution";
import type { PieceKind } from "../solver/fit/acts";
import { type Asked, flightAsked, forPiece, inUnit, TAPES } from "./asked-before";
import type { Shown } from "./desk";
import type { KeptTaking } from "./kept-takings";
import { key, part } from "./parts";
import { titleHead } from "./screen-head";
import { type Flight, type State, stepsOf } from "./taking";
import { afterTouches } from "./touched";

export interface Start {
  readonly asked: Asked;
  /** A stair that is read already: its job, unit and tape stay. */
  readonly isBegun: boolean;
  readonly kept: readonly KeptTaking[];
  readonly change: (asked: Asked, isShown: boolean) => void;
  readonly begin: (asked: Asked, flight: Flight) => void;
  readonly open: (id: string) => void;
  readonly undo: (() => void) | undefined;
  readonly say: (text: string) => void;
}

type Choice<Value> = readonly (readonly [value: Value, says: string])[];

const choice = <Value>(name: string, of: Choice<Value>, now: Value, choose: (value: Value) => void): HTMLElement => {
  const made = part("div", "choice", part("span", "", name), ...of.map(([value, says]) =>
    key(says, () => choose(value), { isLit: value === now, name: `${name}: ${says}` })));
  made.setAttribute("role", "group");
  made.setAttribute("aria-label", name);
  return made;
};

const field = (name: string, value: string, typed: (text: string) => void, isNumber: boolean): HTMLElement => {
  const input = part("input", "");
  input.value = value;
  input.autocomplete = "off";
  if (isNumber) input.inputMode = "text";
  input.addEventListener("input", () => typed(input.value));
  return part("label", "field", part("span", "", name), input);
};

const fields = ({ asked, isBegun, change }: Start): readonly Node[] => {
  // What is typed is not shown anew under the hands of who types it.
  let now = asked;
  const typed = (name: "job" | "first" | "count" | "across" | "width") => (text: string): void => {
    now = { ...now, [name]: text };
    change(now, false);
  };
  return [
    ...(isBegun ? [] : [
      field("Job", asked.job, typed("job"), false),
      choice("Unit", [["in", "inches"], ["mm", "mm"]] as const, asked.unit, (unit) => change(inUnit(now, unit), true)),
      choice("Tape to", TAPES[asked.unit], asked.tape, (tape) => change({ ...now, tape }, true)),
      choice("Read", [["tread", "treads"], ["riser", "risers"]] as const, asked.piece, (piece) => change(forPiece(now, piece), true)),
    ]),
    part("div", "pair", field("First step", asked.first, typed("first"), true), field("How many", asked.count, typed("count"), true)),
    part("p", "quiet", "About what it will read; the keys stand round it."),
    part("div", "pair",
      field(asked.piece === "tread" ? "Run" : "Rise", asked.across, typed("across"), true),
      field("Width", asked.width, typed("width"), true)),
  ];
};

const counted = (state: State, piece: PieceKind): readonly string[] => {
  const { length } = stepsOf(state, piece);
  return length === 0 ? [] : [`${length} ${piece}${length === 1 ? "" : "s"}`];
};

/** A stair in a line: its name, what is read of it, and the day. */
const keptSays = (job: string, state: State): string =>
  [job || "No name", ...counted(state, "tread"), ...counted(state, "riser"), state.day].filter((one) => one !== "").join(", ");

const keptPart = ({ kept, isBegun, open }: Start): readonly Node[] =>
  isBegun || kept.length === 0
    ? []
    : [part("h2", "", "Read before"), part("div", "stack", ...kept.map(({ id, job, unit, touches }) =>
      key(keptSays(job, afterTouches(touches, unit)), () => open(id))))];

/** What is asked before the first reading, and the stairs read before. */
export const startPage = (start: Start): Shown => {
  let now = start.asked;
  const change = (asked: Asked, isShown: boolean): void => {
    now = asked;
    start.change(asked, isShown);
  };
  const begin = (): void => {
    const flight = flightAsked(now);
    if ("piece" in flight) start.begin(now, flight);
    else start.say(flight.join(" "));
  };
  const title = start.isBegun ? `Read ${start.asked.piece}s` : "Readings at the stair";
  const head = start.undo === undefined
    ? titleHead(undefined, title)
    : part("header", "", part("h1", "", title), key("Undo", start.undo, { className: "plain" }));
  return {
    parts: [
      head,
      part("div", "start",
        ...(start.isBegun ? [] : [part("p", "caution", `${CAUTION} ${SAW_CAUTION}`)]),
        ...fields({ ...start, change }),
        ...(start.asked.piece === "riser" ? [part("p", "quiet", "Riser 4 is the one under tread 4.")] : []),
        part("p", "quiet",
          "Left and right are as you face the stair going up. Leans, flares and angles are not asked here: type them into the sheet."),
        ...keptPart(start),
        part("p", "quiet offline", "Kept on this telephone: opens without a signal too.")),
      part("div", "keys", part("div", "row", key("Start", begin, { className: "tall big" }))),
    ],
    says: title,
  };
};
