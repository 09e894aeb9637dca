import { readingsText } from "../readings/readings-text";
import type { PieceKind } from "../solver/fit/acts";
import { words } from "../solver/words";
import { ASKED } from "./asked";
import type { Desk, Shown } from "./desk";
import { key, part } from "./parts";
import { readingSetOf } from "./reading-set-of";
import { saveText } from "./save-text";
import { titleHead } from "./screen-head";
import { lengthText } from "./tape-keys";
import { flightOf, readAt, stepName, stepsOf, unreadAt } from "./taking";

const NAMES: Readonly<Record<PieceKind, string>> = { tread: "Treads", riser: "Risers" };
const SHORT: Readonly<Record<string, string>> = { diagonal: "diag.", secondDiagonal: "2nd diag." };

const table = (desk: Desk, piece: PieceKind): readonly Node[] => {
  const steps = stepsOf(desk.state, piece);
  if (steps.length === 0) return [];
  const order = ASKED[piece].map(({ reading }) => reading);
  const heading = (text: string, full = text): HTMLElement => {
    const cell = part("th", "", text);
    cell.scope = "col";
    if (full !== text) cell.setAttribute("aria-label", full);
    return cell;
  };
  const rows = steps.map(({ step, isKept }) => {
    const read = readAt(desk.state, { piece, step });
    const open = key(String(step), () => desk.touch({ key: "step", at: { piece, step } }), {
      className: "plain", name: `Open step ${step}${isKept ? ", kept as read, doubtful" : ""}`,
    });
    const cells = order.map((reading) => part("td", "", read[reading] === undefined ? "–" : lengthText(read[reading], desk.taking.unit)));
    return part("tr", isKept ? "kept" : "", part("td", "", open), ...cells);
  });
  const head = part("tr", "", heading("step"), ...order.map((reading) => heading(SHORT[reading] ?? words(reading), words(reading))));
  const caption = part("caption", "", `${NAMES[piece]}, ${desk.taking.unit}`);
  const made = part("table", "", caption, part("thead", "", head), part("tbody", "", ...rows));
  return [made, ...(steps.some(({ isKept }) => isKept) ? [part("p", "quiet", "Underlined: kept as read, doubtful.")] : [])];
};

const flightKeys = (desk: Desk, piece: PieceKind): readonly Node[] => {
  const flight = flightOf(desk.state, piece);
  const name = NAMES[piece].toLowerCase();
  if (flight === undefined) return [key(`Read ${name} too`, () => desk.touch({ key: "ask", piece }))];
  const at = unreadAt(desk.state, piece);
  return at === undefined
    ? [key(`One more: ${stepName({ piece, step: flight.last + 1 })}`, () => desk.touch({ key: "more", piece }))]
    : [key(`Go on: ${stepName(at)}, ${words(at.reading)}`, () => desk.touch({ key: "onward", at: { piece, step: at.step - 1 } }), {
      className: "tall big",
    })];
};

const copy = (desk: Desk, text: string, shown: HTMLTextAreaElement): void => {
  navigator.clipboard.writeText(text).then(
    () => desk.say("Copied. Paste it into a message, or into Take in readings."),
    () => {
      shown.hidden = false;
      shown.select();
      desk.say("This browser does not let the page copy: copy the text below by hand.");
    },
  );
};

const leaving = (desk: Desk): readonly Node[] => {
  const text = readingsText(readingSetOf(desk.state, desk.taking));
  const shown = part("textarea", "");
  shown.value = text;
  shown.readOnly = true;
  shown.hidden = true;
  shown.setAttribute("aria-label", "The readings as text");
  const removing = key("Delete these readings", () => {
    removing.replaceWith(part("div", "row two",
      key("Delete: sure", desk.remove), key("Keep them", () => desk.touch({ key: "list" }))));
  });
  return [
    key("Save readings", () => {
      saveText(`${desk.taking.job || "Stair"} readings.txt`, text);
      desk.say("Saved as a file of this telephone.");
    }, { className: "tall" }),
    key("Copy readings", () => copy(desk, text, shown), { className: "tall" }),
    shown,
    key("Other stairs", desk.leave),
    removing,
  ];
};

/** All that was read, each step to be opened again, and how it leaves the telephone. */
export const listPage = (desk: Desk): Shown => {
  // What is under way goes before what was not begun.
  const pieces = (["tread", "riser"] as const).map((piece) => ({ piece, isBegun: flightOf(desk.state, piece) !== undefined }));
  const inOrder = [...pieces.filter(({ isBegun }) => isBegun), ...pieces.filter(({ isBegun }) => !isBegun)];
  const isAnything = desk.state.steps.length > 0;
  return {
    parts: [
      titleHead(desk, desk.taking.job || "Readings"),
      part("div", "list", ...(isAnything ? [...table(desk, "tread"), ...table(desk, "riser")] : [part("p", "", "Nothing is read yet.")])),
      part("div", "stack", ...inOrder.flatMap(({ piece }) => flightKeys(desk, piece)), ...(isAnything ? leaving(desk) : [])),
    ],
    says: "All readings",
  };
};
