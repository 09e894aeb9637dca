import { call, readCall } from "../../functions/call";
import { catalogue } from "../../functions/catalogue";
import { isFailed } from "../../functions/cells";
import { NAMESPACE } from "../../functions/formula";
import { isProblem } from "../../solver/problem";
import { draftSvg } from "./draft-svg";
import { DRAWINGS } from "./drawings";

/** A drawing of a table, as SVG text. */
export interface Drawing {
  readonly name: string;
  readonly title: string;
  readonly svg: string;
}

/** The functions whose tables have drawings. */
export const DRAWN: readonly string[] = Object.keys(DRAWINGS);

export const isDrawn = (id: string): boolean => DRAWN.includes(id);

/** What has drawings, in words. */
export const drawnSays = (): string => `Drawings are made of ${DRAWN.map((id) => `${NAMESPACE}.${id}`).join(", ")} and of a stair table.`;

/** The drawings of a call with cells as a host passes them, or the sentence of why there are none. */
export const drawnCall = (id: string, passed: readonly unknown[]): readonly Drawing[] | string => {
  const declaration = catalogue.find((one) => one.id === id);
  const draw = DRAWINGS[id];
  if (declaration === undefined || draw === undefined) return drawnSays();
  const read = readCall(declaration, passed);
  if (isFailed(read)) return read.says;
  const drawn = draw(read.given, read.unit ?? "in");
  if (typeof drawn === "string") return drawn;
  if (!isProblem(drawn)) return drawn.map(({ name, draft }) => ({ name, title: draft.title, svg: draftSvg(draft) }));
  // What the solver will not answer the call itself says in a sentence.
  const answer = call(declaration, passed);
  return isFailed(answer) ? answer.says : drawnSays();
};

/** A call of one of our functions, by its id and the cells it was given. */
export interface HeardCall {
  readonly id: string;
  readonly cells: readonly unknown[];
}

/** Drawings of several calls under names of their own. */
const withOwnNames = (drawings: readonly Drawing[]): readonly Drawing[] =>
  drawings.map((one, place) => {
    const before = drawings.slice(0, place).filter(({ name }) => name === one.name).length;
    return before === 0 ? one : { ...one, name: `${one.name}, ${before + 1}` };
  });

/** Functions that a formula chooses between: whichever of them it calls, all are drawn. */
const ALIKE: readonly string[] = ["CUTS", "SHEETCUTS", "TALLYCUTS"];

/**
 * The drawings of what a formula calls: of its last function that has some, and those like it, as inner calls come before the ones they
 * are for, and of that each call; undefined where it calls none. The sentence of a call in error stands only where no other call can be
 * drawn.
 */
export const drawnCalls = (heard: readonly HeardCall[]): readonly Drawing[] | string | undefined => {
  const last = heard[heard.length - 1];
  if (last === undefined) return undefined;
  const isMeant = (id: string): boolean => id === last.id || (ALIKE.includes(id) && ALIKE.includes(last.id));
  const calls = new Map(heard.filter(({ id }) => isMeant(id)).map((one) => [JSON.stringify([one.id, one.cells]), one]));
  const found = [...calls.values()].map(({ id, cells }) => drawnCall(id, cells));
  const drawings = found.flatMap((one) => (typeof one === "string" ? [] : one));
  return drawings.length > 0 ? withOwnNames(drawings) : found.find((one) => typeof one === "string");
};

const OURS = new RegExp(`^${NAMESPACE}[.]`, "i");

/** Whether a name in a formula is that of a function of ours. */
export const isOurs = (name: string): boolean => OURS.test(name);
