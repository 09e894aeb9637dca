import type { Desk } from "./desk";
import { capital, key, part } from "./parts";
import { flightOf, readAt, readingsAt, type StepAt, stepName } from "./taking";

const dots = (desk: Desk, at: StepAt, reading: string | undefined): HTMLElement => {
  const read = readAt(desk.state, at);
  const order = readingsAt(desk.state, at);
  const marks = order.map((one) => part("span", one === reading ? "dot now" : read[one] === undefined ? "dot" : "dot done"));
  const row = part("span", "dots", ...marks);
  const place = reading === undefined ? -1 : order.indexOf(reading);
  row.setAttribute("role", "img");
  row.setAttribute("aria-label", place < 0 ? `${order.length} readings` : `Reading ${place + 1} of ${order.length}`);
  return row;
};

/** Which step of how many, how far it is read, and Undo, out of the thumb's way on purpose. */
export const stepHead = (desk: Desk, at: StepAt, reading?: string): HTMLElement => {
  const { first = at.step, last = at.step } = flightOf(desk.state, at.piece) ?? {};
  const title = `${capital(stepName(at))} of ${Math.max(last, first)}`;
  return part(
    "header",
    "",
    key(title, () => desk.touch({ key: "list" }), { className: "plain where", name: `${title}: list of all readings` }),
    dots(desk, at, reading),
    key("Undo", desk.undo, { className: "plain" }),
  );
};

export const titleHead = (desk: Desk | undefined, title: string): HTMLElement =>
  part("header", "", part("h1", "", title), ...(desk === undefined ? [] : [key("Undo", desk.undo, { className: "plain" })]));
