import type { Draft } from "./draft";
import { laidDraft, type LaidDraft, type LaidLine } from "./laid-draft";
import { type PlacedText, type Spot, TEXT_SIZE, textOutline, textWidth } from "./paper";
import { HIGHEST, SCALES, WIDEST } from "./scales";
import type { Settled } from "./text-places";

const MARGIN = 4;
const LINE = 4.2;
const TITLE_GAP = 7;
/** Words under a drawing run on as far as it is wide, and at least so far. */
const LEAST_WORDS = 150;

const WEIGHTS: Readonly<Record<LaidLine["style"], string>> = {
  thick: 'stroke-width="0.45"',
  thin: 'stroke-width="0.2"',
  dashed: 'stroke-width="0.2" stroke-dasharray="2 1.2"',
  centre: 'stroke-width="0.2" stroke-dasharray="6 1.2 1.2 1.2"',
  piece: 'stroke-width="0.15"',
  cut: 'stroke-width="0.8"',
  hatch: 'stroke-width="0.12"',
};

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const THOUSANDTHS = 1000;
const rounded = (value: number): string => String(Math.round(value * THOUSANDTHS) / THOUSANDTHS);

const spotsOf = ({ lines, dimensions, notes }: LaidDraft): Spot[] => {
  const settled = [...dimensions.map(({ text }) => text), ...notes];
  return [
    ...lines.flatMap(({ spots }) => spots),
    ...dimensions.flatMap(({ length, others }) => [...length, ...others.flat()]),
    ...settled.flatMap(({ text, leader }) => [...textOutline(text), ...(leader ?? [])]),
  ];
};

const wrapped = (text: string, width: number): string[] => {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines[lines.length - 1];
    if (last !== undefined && textWidth(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
};

/** A drawing on its paper with the words under it. */
interface Sheet {
  readonly laid: LaidDraft;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly words: readonly PlacedText[];
}

const sheetOf = (draft: Draft, scale: number): Sheet => {
  const laid = laidDraft(draft, scale);
  const spots = spotsOf(laid);
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const wide = Math.max(right - left, LEAST_WORDS);
  const unit = draft.unit === "in" ? "Inches" : "Millimetres";
  const sentences = [`${draft.title}. Scale 1 : ${scale} where it is printed at full size. ${unit}.`, ...draft.notes];
  const words = sentences.flatMap((sentence) => wrapped(sentence, wide))
    .map((text, place): PlacedText => ({ at: [left, bottom + TITLE_GAP + place * LINE], text, anchor: "start", turned: 0 }));
  const under = words[words.length - 1]?.at[1] ?? bottom;
  return { laid, left: left - MARGIN, top: top - MARGIN, width: wide + 2 * MARGIN, height: under - top + 2 * MARGIN, words };
};

const isOnSheet = ({ width, height }: Sheet): boolean => width <= WIDEST && height <= HIGHEST;

/** The largest scale at which a draft goes on the sheet; the smallest there is where none does. */
const fitting = (draft: Draft): { readonly sheet: Sheet; readonly scale: number } => {
  if (draft.scale !== undefined) return { sheet: sheetOf(draft, draft.scale), scale: draft.scale };
  const points = draft.marks.flatMap((mark) => (mark.kind === "line" || mark.kind === "hatch" ? mark.points : []));
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const inch = draft.unit === "in" ? 25.4 : 1;
  const least = Math.max(((Math.max(...xs) - Math.min(...xs)) * inch) / WIDEST, ((Math.max(...ys) - Math.min(...ys)) * inch) / HIGHEST);
  const scales = SCALES[draft.unit].filter((scale) => scale >= least);
  let last: { readonly sheet: Sheet; readonly scale: number } | undefined;
  for (const scale of scales.length === 0 ? [Math.ceil(least)] : scales) {
    last = { sheet: sheetOf(draft, scale), scale };
    if (isOnSheet(last.sheet)) break;
  }
  return last ?? { sheet: sheetOf(draft, Math.ceil(least)), scale: Math.ceil(least) };
};

const PEN = 'stroke-width="0.15"';
const segment = (kind: string, [[x1, y1], [x2, y2]]: readonly [Spot, Spot], pen = PEN): string =>
  `<line class="${kind}" ${pen} x1="${rounded(x1)}" y1="${rounded(y1)}" x2="${rounded(x2)}" y2="${rounded(y2)}"/>`;

const textMark = ({ at: [x, y], text, anchor, turned }: PlacedText): string => {
  const turn = Math.abs(turned) < 0.01 ? "" : ` transform="rotate(${rounded(turned)} ${rounded(x)} ${rounded(y)})"`;
  return `<text x="${rounded(x)}" y="${rounded(y)}" text-anchor="${anchor}"${turn} stroke="none" fill="#000">${escaped(text)}</text>`;
};

const settledMark = ({ text, leader }: Settled): string => `${leader === undefined ? "" : segment("leader", leader)}${textMark(text)}`;

const lineMark = ({ spots, style }: LaidLine): string =>
  `<polyline class="${style}" ${WEIGHTS[style]} points="${spots.map(([x, y]) => `${rounded(x)},${rounded(y)}`).join(" ")}"/>`;

/** A drafting drawing as SVG text: black lines on no ground, sized in millimetres of paper. */
export const draftSvg = (draft: Draft): string => {
  const { sheet: { laid, left, top, width, height, words }, scale } = fitting(draft);
  const dimensions = laid.dimensions.map(({ length, others, text, isRunning }) => {
    const lines = [segment("length", length, isRunning ? 'stroke="none"' : PEN), ...others.map((one) => segment("mark", one))];
    return `<g class="dimension">${lines.join("")}${settledMark(text)}</g>`;
  });
  const dots = laid.dots.map(([x, y]) => `<circle class="dot" stroke-width="0.2" cx="${rounded(x)}" cy="${rounded(y)}" r="0.6"/>`);
  return (
    `<svg class="draft" xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escaped(draft.says)}" data-scale="${scale}" ` +
    `data-unit="${draft.unit}" width="${rounded(width)}mm" height="${rounded(height)}mm" viewBox="${rounded(left)} ${rounded(top)} ` +
    `${rounded(width)} ${rounded(height)}" fill="none" stroke="#000" font-family="sans-serif" font-size="${TEXT_SIZE}">` +
    `<title>${escaped(draft.title)}</title>${laid.lines.map(lineMark).join("")}${dots.join("")}${dimensions.join("")}` +
    `${laid.notes.map((one) => `<g class="note">${settledMark(one)}</g>`).join("")}` +
    `<g class="words">${words.map(textMark).join("")}</g></svg>`
  );
};
