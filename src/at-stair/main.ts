import { type Asked, askedAnew } from "./asked-before";
import type { Desk, Shown } from "./desk";
import { allKept, close, keep, kept, type KeptTaking, keptOpen, keyOf, passingStore, remove } from "./kept-takings";
import { listPage } from "./list-page";
import { part } from "./parts";
import { readingPage } from "./reading-page";
import { startPage } from "./start-page";
import { stepPage } from "./step-page";
import { BEFORE_ALL } from "./taking";
import { afterTouches, type Touch } from "./touched";

const DIGITS = 2;
const today = (): string => {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((number) => String(number).padStart(DIGITS, "0")).join("-");
};

const KEEPS_NOTHING = "This browser keeps nothing: save or copy the readings before you close the page.";

const browserStore = (): Storage | undefined => {
  try {
    return localStorage;
  } catch {
    // Its owner forbade it.
    return undefined;
  }
};

const lasting = browserStore();
const store = lasting ?? passingStore();
const screen = part("main", "");
const spoken = part("p", "unseen");
spoken.setAttribute("role", "status");
const told = part("p", "told");
told.setAttribute("role", "alert");
told.hidden = true;
document.body.append(screen, spoken, told);

let taking: KeptTaking | undefined = keptOpen(store);
let asked: Asked | undefined;

const say = (text: string): void => {
  told.hidden = text === "";
  told.textContent = text;
};

const nameOf = (key: HTMLElement): string => key.getAttribute("aria-label") ?? key.textContent ?? "";

/** The key that a keyboard was on is found again by its name: the screen is made anew with each touch. */
const keyNamed = (name: string | undefined): HTMLElement | undefined =>
  [...screen.querySelectorAll("button")].find((key) => nameOf(key) === name);

const show = ({ parts, says }: Shown): void => {
  const { activeElement } = document;
  const on = activeElement instanceof HTMLButtonElement ? nameOf(activeElement) : undefined;
  screen.replaceChildren(...parts);
  spoken.textContent = says;
  keyNamed(on)?.focus({ preventScroll: true });
};

const change = (to: KeptTaking): void => {
  taking = to;
  try {
    keep(store, to);
    say(lasting === undefined && to.touches.length === 1 ? KEEPS_NOTHING : "");
  } catch {
    say(KEEPS_NOTHING);
  }
  draw();
};

const touch = (made: Touch): void => {
  if (taking !== undefined) change({ ...taking, touches: [...taking.touches, made] });
};

const undo = (): void => {
  if (taking !== undefined) change({ ...taking, touches: taking.touches.slice(0, -1) });
};

const leave = (): void => {
  close(store);
  [taking, asked] = [undefined, undefined];
  say("");
  draw();
};

const deskOf = (of: KeptTaking): Desk => ({
  taking: of,
  state: afterTouches(of.touches, of.unit),
  today, touch, undo, leave, say,
  remove: () => {
    remove(store, of.id);
    leave();
  },
});

const drawStart = (desk: Desk | undefined): void => {
  const state = desk?.state ?? BEFORE_ALL;
  const piece = state.screen.shows === "flight" ? state.screen.piece : "tread";
  const isBegun = (desk?.taking.touches.length ?? 0) > 0;
  if (asked === undefined || (isBegun && asked.piece !== piece)) asked = askedAnew(piece, desk?.taking);
  show(startPage({
    asked,
    isBegun,
    kept: allKept(store).filter(({ touches }) => touches.length > 0),
    change: (to, isShown) => {
      asked = to;
      say("");
      if (isShown) draw();
    },
    begin: ({ job, unit, tape }, flight) => {
      asked = undefined;
      const begun: KeptTaking = taking ?? { id: Date.now().toString(36), touches: [], job, unit, tape };
      const named = isBegun ? begun : { ...begun, job: job.trim(), unit, tape };
      change({ ...named, touches: [...begun.touches, { key: "flight", flight }] });
    },
    open: (id) => {
      const found = kept(store, id);
      if (found !== undefined) change(found);
    },
    undo: isBegun ? undo : undefined,
    say,
  }));
};

const draw = (): void => {
  const desk = taking === undefined ? undefined : deskOf(taking);
  if (desk === undefined || desk.state.screen.shows === "flight") return drawStart(desk);
  asked = undefined;
  const { screen: on } = desk.state;
  show(on.shows === "reading" ? readingPage(desk, on) : on.shows === "step" ? stepPage(desk, on.at) : listPage(desk));
};

// Another tab that reads the same stair goes on from here, and this one from there.
addEventListener("storage", ({ key: changed }) => {
  if (taking === undefined || changed !== keyOf(taking.id)) return;
  taking = kept(store, taking.id);
  draw();
});

draw();
document.documentElement.dataset["ready"] = "yes";
