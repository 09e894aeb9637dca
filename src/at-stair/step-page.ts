import { words } from "../solver/words";
import type { Desk, Shown } from "./desk";
import { capital, key, part } from "./parts";
import { type Doubt, type Said, saidOfStep } from "./said-of-step";
import { stepHead } from "./screen-head";
import { sketch } from "./sketch";
import { lengthText } from "./tape-keys";
import { type At, flightOf, isSameStep, readAt, readingsAt, type StepAt, stepName, unreadAt } from "./taking";

/** A reading in words, with its step where it is another than the one shown. */
const named = (at: At, here: StepAt): string => `${isSameStep(at, here) ? "" : `${stepName(at)} `}${words(at.reading)}`;

const doubtPart = ({ at, read, likely, why }: Doubt, here: StepAt): HTMLElement =>
  part("p", "frame", "Likely: ", part("strong", "", `${named(at, here)} ${likely}`), `, not ${read}. ${capital(why)}.`);

const isDoubted = (said: Said, at: At): boolean =>
  said.struck.some((one) => isSameStep(one, at) && one.reading === at.reading);

const readings = (desk: Desk, at: StepAt, said: Said): HTMLElement => {
  const read = readAt(desk.state, at);
  const order = [...new Set([...Object.keys(read).filter((reading) => reading === "run"), ...readingsAt(desk.state, at)])];
  return part("div", "readings", ...order.map((reading) => {
    const value = read[reading];
    const place = { ...at, reading };
    const text = value === undefined ? "not read" : lengthText(value, desk.taking.unit);
    const made = key("", () => desk.touch({ key: "read", at: place }), {
      className: isDoubted(said, place) ? "line struck" : "line",
    });
    made.append(part("span", "", words(reading)), " ", part("strong", "", text));
    return made;
  }));
};

/** Where the way leads from a step: the next one, what was left out, or all that was read. */
const onwardSays = (desk: Desk, at: StepAt): string => {
  const { last = at.step } = flightOf(desk.state, at.piece) ?? {};
  if (at.step < last) return `Next: ${stepName({ ...at, step: at.step + 1 })}`;
  return unreadAt(desk.state, at.piece) === undefined ? "All are read" : "What is not read yet";
};

const keys = (desk: Desk, at: StepAt, { again, toKeep, doubts }: Said): HTMLElement => {
  const isUnread = again !== undefined && readAt(desk.state, again)[again.reading] === undefined;
  const isElsewhere = doubts.length > 0 && !toKeep.some((step) => isSameStep(step, at));
  const keepSays = isElsewhere ? `Keep ${toKeep.map(stepName).join(", ")} as read` : "Keep as read";
  const big = again === undefined
    ? key(onwardSays(desk, at), () => desk.touch({ key: "onward", at }), { className: "tall big" })
    : key(isUnread ? `Read ${words(again.reading)}` : `Read ${named(again, at)} again`, () => desk.touch({ key: "read", at: again }), {
      className: "tall big",
    });
  return part(
    "div",
    "keys",
    ...(toKeep.length === 0 ? [] : [part("div", "row", key(`${keepSays}: doubtful`, () => desk.touch({ key: "keep", steps: toKeep })))]),
    part("div", "row moving", key("List", () => desk.touch({ key: "list" }), { className: "tall", name: "List: all readings" }), big),
  );
};

/** What is said of a step before one leaves it. */
export const stepPage = (desk: Desk, at: StepAt): Shown => {
  const said = saidOfStep(desk.state, desk.taking, at);
  const lit = said.again !== undefined && isSameStep(said.again, at) ? said.again.reading : undefined;
  return {
    parts: [
      stepHead(desk, at),
      part("div", "sketch", sketch(at.piece, lit)),
      part("div", "said", part("h1", "", said.heading), ...said.lines.map((line) => part("p", "", line))),
      ...said.doubts.map((doubt) => doubtPart(doubt, at)),
      part("p", "quiet", "Touch a reading to take it again."),
      readings(desk, at, said),
      keys(desk, at, said),
    ],
    says: [`${said.heading}.`, ...said.lines, ...said.doubts.map((doubt) => doubtPart(doubt, at).textContent ?? "")].join(" "),
  };
};
