import type { PieceKind } from "../solver/fit/acts";
import { askedOf, type Spot } from "./asked";

const NAMESPACE = "http://www.w3.org/2000/svg";
const [WIDTH, HEIGHT] = [390, 166];

type Point = readonly [x: number, y: number];

/** The opening a little out of square, as no carpenter's is; low, so that its words are read where a browser takes of the height. */
const CORNERS: Readonly<Record<Spot, Point>> = {
  "far left": [66, 36], "far right": [326, 36], "near left": [56, 118], "near right": [338, 118],
  // The run and the rise are taped beside the middle, where the diagonals do not cross.
  far: [150, 36], near: [150, 118],
};

/** What is at the far and the near line, and how one looks at them. */
const WORDS: Readonly<Record<PieceKind, { readonly far: string; readonly near: string; readonly from: string }>> = {
  tread: { far: "riser face", near: "front edge", from: "from above" },
  riser: { far: "top", near: "bottom", from: "from the front" },
};

const drawn = (tag: string, attributes: Readonly<Record<string, string | number>>, text = ""): SVGElement => {
  const made = document.createElementNS(NAMESPACE, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  made.textContent = text;
  return made;
};

const line = ([x1, y1]: Point, [x2, y2]: Point, looks: Readonly<Record<string, string | number>>): SVGElement =>
  drawn("line", { x1, y1, x2, y2, stroke: "#000", ...looks });

const words = (text: string, x: number, y: number, anchor: string, isBold = false): SVGElement =>
  drawn("text", { x, y, "text-anchor": anchor, "font-size": 15, ...(isBold ? { "font-weight": 700 } : {}) }, text);

const SKIRT_BEYOND = 0.18;
const beyond = ([x, y]: Point, [fromX, fromY]: Point): Point => [x + (x - fromX) * SKIRT_BEYOND, y + (y - fromY) * SKIRT_BEYOND];

const PLAIN = { "stroke-width": 2 };
const TO_READ = { "stroke-width": 1, "stroke-dasharray": "6 4" };
const TAPE = { "stroke-width": 7 };
const [BAR, HEAD_LONG, HEAD_WIDE] = [13, 17, 9];

/** The tape: a bar across where its hook is, an arrow where it is read. */
const tape = (hook: Point, read: Point): SVGElement[] => {
  const long = Math.hypot(read[0] - hook[0], read[1] - hook[1]);
  const [x, y] = [(read[0] - hook[0]) / long, (read[1] - hook[1]) / long];
  const at = (from: Point, along: number, across: number): Point => [from[0] + x * along - y * across, from[1] + y * along + x * across];
  const head = [read, at(read, -HEAD_LONG, HEAD_WIDE), at(read, -HEAD_LONG, -HEAD_WIDE)].map((point) => point.join(",")).join(" ");
  return [
    line(hook, at(read, -HEAD_LONG, 0), TAPE),
    line(at(hook, 0, BAR), at(hook, 0, -BAR), TAPE),
    drawn("polygon", { points: head }),
  ];
};

const LINES: readonly (readonly [Spot, Spot])[] = [
  ["far left", "far right"], ["near left", "near right"], ["far left", "near right"], ["far right", "near left"],
];

const spoken = (piece: PieceKind, lit: string | undefined): string => {
  const asked = lit === undefined ? undefined : askedOf(piece, lit);
  const opening = `The opening ${WORDS[piece].from}`;
  return asked === undefined ? `${opening}.` : `${opening}, the tape ${asked.says}`;
};

/** The opening as one stands before it, with the tape of one reading lit. */
export const sketch = (piece: PieceKind, lit?: string): SVGElement => {
  const made = drawn("svg", { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: "img", "aria-label": spoken(piece, lit) });
  const { far, near } = WORDS[piece];
  const [farLeft, farRight, nearLeft, nearRight] = [CORNERS["far left"], CORNERS["far right"], CORNERS["near left"], CORNERS["near right"]];
  const asked = lit === undefined ? undefined : askedOf(piece, lit);
  made.append(
    line(beyond(farLeft, nearLeft), beyond(nearLeft, farLeft), PLAIN),
    line(beyond(farRight, nearRight), beyond(nearRight, farRight), PLAIN),
    line(farLeft, farRight, PLAIN),
    line(nearLeft, nearRight, PLAIN),
    ...LINES.slice(2).map(([from, to]) => line(CORNERS[from], CORNERS[to], TO_READ)),
    words(far, WIDTH / 2, 22, "middle"),
    words(near, WIDTH / 2, 139, "middle"),
    words("LEFT", 6, 82, "start"),
    words("RIGHT", WIDTH - 5, 82, "end"),
    words("▼ you stand here ▼", WIDTH / 2, 160, "middle", true),
    ...(asked === undefined ? [] : tape(CORNERS[asked.tape[0]], CORNERS[asked.tape[1]])),
  );
  return made;
};
