import { dayOfText } from "../solver/books/day";
import { askedOf } from "./asked";
import { TAPES } from "./asked-before";
import type { Taking } from "./taking";
import type { Touch } from "./touched";

/** A stair with every touch made for it. */
export interface KeptTaking extends Taking {
  readonly id: string;
  readonly touches: readonly Touch[];
}

type Bag = Readonly<Record<string, unknown>>;
type Check = (value: unknown) => boolean;

const isBag = (value: unknown): value is Bag => typeof value === "object" && value !== null && !Array.isArray(value);

/** Steps of a text of readings have four digits: however many are put on, a stair that can be handed on is kept. */
const MOST_STEP = 9999;
/** 20,000 in, the longest length there is, in tens of millimetres. */
const MOST_WHOLE = 50_800;
const MOST_PART = 15;
const MOST_DIGIT = 9;

const counts = (least: number, most: number): Check => (value) =>
  typeof value === "number" && Number.isInteger(value) && value >= least && value <= most;
const isLength: Check = (value) => typeof value === "number" && Number.isFinite(value) && value > 0;
const isPiece: Check = (value) => value === "tread" || value === "riser";
const isStep = counts(0, MOST_STEP);
const isWhole = counts(0, MOST_WHOLE);

const isAt: Check = (at) => isBag(at) && isPiece(at["piece"]) && isStep(at["step"]);
const isReading: Check = (at) =>
  isBag(at) && isAt(at) && typeof at["reading"] === "string" &&
  askedOf(at["piece"] === "tread" ? "tread" : "riser", at["reading"]) !== undefined;
const isFlight: Check = (flight) =>
  isBag(flight) && isPiece(flight["piece"]) && isStep(flight["first"]) && isStep(flight["last"]) && isLength(flight["across"]) &&
  isLength(flight["width"]);

/** What goes with each key. */
const TOUCHES: Readonly<Record<Touch["key"], (touch: Bag) => boolean>> = {
  flight: ({ flight }) => isFlight(flight),
  whole: ({ whole }) => isWhole(whole),
  part: ({ part, whole }) => counts(0, MOST_PART)(part) && (whole === undefined || isWhole(whole)),
  half: ({ half }) => counts(-1, 1)(half),
  pad: () => true,
  digit: ({ digit }) => counts(0, MOST_DIGIT)(digit),
  typed: () => true,
  next: ({ day }) => typeof day === "string" && dayOfText(day) !== undefined,
  back: () => true,
  read: ({ at }) => isReading(at),
  keep: ({ steps }) => Array.isArray(steps) && steps.every(isAt),
  onward: ({ at }) => isAt(at),
  step: ({ at }) => isAt(at),
  list: () => true,
  more: ({ piece }) => isPiece(piece),
  ask: ({ piece }) => isPiece(piece),
};

const isTouch: Check = (touch) =>
  isBag(touch) && Object.entries(TOUCHES).some(([key, isSound]) => key === touch["key"] && isSound(touch));

/** Whether something out of the browser's store is a stair that this page can show: it may have been cut short, or changed by hand. */
export const isSoundTaking = (value: unknown): value is KeptTaking => {
  if (!isBag(value)) return false;
  const { id, job, unit, tape, touches } = value;
  return (
    typeof id === "string" && typeof job === "string" && (unit === "in" || unit === "mm") &&
    TAPES[unit].some(([divisions]) => divisions === tape) && Array.isArray(touches) && touches.every(isTouch)
  );
};
