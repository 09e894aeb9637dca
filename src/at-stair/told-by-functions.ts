import { call } from "../functions/call";
import { type Answer, isFailed } from "../functions/cells";
import type { Declaration } from "../functions/declare";
import { MISREAD } from "../functions/fit/misread";
import { NEXTSTEP } from "../functions/fit/nextstep";
import { RISERFIT } from "../functions/fit/riserfit";
import { TREADFIT } from "../functions/fit/treadfit";
import { argumentsOf } from "../functions/formula";
import type { PieceKind } from "../solver/fit/acts";
import { words } from "../solver/words";
import { ASKED } from "./asked";
import { isWhole, readAt, type State, stepsOf, type Taking } from "./taking";

/** A row of a function's answer, by its headings. */
export type Row = Readonly<Record<string, Answer>>;

/** What a function of the sheet answers to the readings so far: its rows, or the sentence of an error. */
export type Told = readonly Row[] | string;

type Cells = (string | number)[][];

/** The readings of whole steps as the sheet has them. */
const table = (state: State, piece: PieceKind): Cells | undefined => {
  const steps = stepsOf(state, piece).filter((step) => isWhole(state, step));
  if (steps.length === 0) return undefined;
  const headings = ASKED[piece].map(({ reading }) => reading);
  return [
    ["step", ...headings.map(words)],
    ...steps.map((at) => [at.step, ...headings.map((reading) => readAt(state, at)[reading] ?? "")]),
  ];
};

type GivenByName = Readonly<Record<string, string | number | Cells | undefined>>;

const asked = (declaration: Declaration, given: GivenByName): Told => {
  const answer = call(declaration, argumentsOf(declaration, given));
  if (!Array.isArray(answer)) return isFailed(answer) ? answer.says : String(answer);
  const [headings = [], ...rows] = answer;
  return rows.map((row) => Object.fromEntries(headings.map((heading, place) => [String(heading), row[place] ?? ""])));
};

/** Every touch shows a screen anew, and what the functions say to the same readings is the same. */
const KEPT_ANSWERS = 8;
const answers = new Map<string, Told>();

const told = (declaration: Declaration, given: GivenByName): Told => {
  const call_ = JSON.stringify([declaration.id, given]);
  const known = answers.get(call_);
  if (known !== undefined) return known;
  const answer = asked(declaration, given);
  answers.set(call_, answer);
  const [oldest] = answers.keys();
  if (answers.size > KEPT_ANSWERS && oldest !== undefined) answers.delete(oldest);
  return answer;
};

/** The fit of every whole step: TREADFIT or RISERFIT. */
export const fitTold = (state: State, { unit, tape }: Taking, piece: PieceKind): Told => {
  const readings = table(state, piece);
  return readings === undefined ? [] : told((piece === "tread" ? TREADFIT : RISERFIT) as Declaration, { readings, tape, unit });
};

const ofFlight = (declaration: unknown, state: State, { unit, tape }: Taking, withRisers: boolean): Told => {
  const treads = table(state, "tread");
  return treads === undefined
    ? []
    : told(declaration as Declaration, { treads, ...(withRisers ? { risers: table(state, "riser") } : {}), tape, unit });
};

/** Which readings are doubtful: MISREAD, of the treads, and of the risers with them. */
export const misreadTold = (state: State, taking: Taking, piece: PieceKind): Told => ofFlight(MISREAD, state, taking, piece === "riser");

/** What the next tread will read: NEXTSTEP. */
export const nextTold = (state: State, taking: Taking): Told => ofFlight(NEXTSTEP, state, taking, false);
