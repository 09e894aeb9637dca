import type { PieceAct } from "../../functions/cut-pieces";
import { textWidth } from "./letter-widths";
import type { PlanFrame } from "./plan-frame";
import { baseline, type Box, type Drawn, NUMBER_RADIUS, numbered, text } from "./pen";

/** Between a number's circle and its figure, and between two labels of one line. */
const GAP = 0.8;
const APART = 2.4;

export interface Label {
  readonly number: string;
  readonly figure: string;
}

/** The figure of an act as short as it stands in the plan: strong and shy are signs there, and the inch burnt is said behind it. */
export const labelOf = ({ cells }: PieceAct): Label => {
  const [reading = "", burnt = ""] = cells.tape.split(", the ");
  const [mark] = burnt.split(" ");
  const short = reading.replace(" strong", "+").replace(" shy", "−");
  return { number: cells.number, figure: mark === "" || mark === undefined ? short : `${short} from ${mark}` };
};

const oneWidth = ({ figure }: Label, size: number): number => 2 * NUMBER_RADIUS + GAP + textWidth(figure, size, true);

const labelsWidth = (labels: readonly Label[], size: number): number =>
  labels.reduce((sum, label) => sum + oneWidth(label, size), 0) + APART * (labels.length - 1);

/** Labels of one line in a row about a middle, and the room they take. */
export interface PlacedLabels {
  readonly drawn: readonly Drawn[];
  readonly box: Box;
}

export const placedLabels = (labels: readonly Label[], x: number, y: number, size: number): PlacedLabels => {
  const width = labelsWidth(labels, size);
  let at = x - width / 2;
  const drawn = labels.flatMap((label) => {
    const from = at;
    at += oneWidth(label, size) + APART;
    const figure = from + 2 * NUMBER_RADIUS + GAP;
    return [
      ...numbered([from + NUMBER_RADIUS, y], label.number),
      text([figure, baseline(y, size)], label.figure, { size, isBold: true, part: `tape ${label.number}` }),
    ];
  });
  return { drawn, box: { left: x - width / 2, right: x + width / 2, top: y - NUMBER_RADIUS, bottom: y + NUMBER_RADIUS } };
};

/** Beside the plan, between the pictures of the ends, in millimetres. */
const BESIDE = { left: 51.5, right: 158.5, gap: 1.6 } as const;

/** One label beside the blank, where none finds room on its line; `more` is what stands between. */
export const labelBeside = (
  { blank }: PlanFrame, label: Label, y: number, sizes: readonly number[], side: "left" | "right", more = 0,
): PlacedLabels | undefined =>
  sizes
    .map((size) => {
      const half = oneWidth(label, size) / 2 + BESIDE.gap + more;
      return placedLabels([label], side === "left" ? blank.left - half : blank.right + half, y, size);
    })
    .find(({ box }) => box.left >= BESIDE.left && box.right <= BESIDE.right);
