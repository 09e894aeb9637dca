import { element } from "./element";

/** A part of the pane behind its own tab; what is large is made when it is shown for the first time. */
export interface Tab {
  readonly name: string;
  readonly content: readonly HTMLElement[] | (() => readonly HTMLElement[]);
  /** Called when it is shown by its tab. */
  readonly shown?: () => void;
}

const STEPS: Readonly<Record<string, (place: number, count: number) => number>> = {
  ArrowRight: (place, count) => (place + 1) % count,
  ArrowLeft: (place, count) => (place + count - 1) % count,
  Home: () => 0,
  End: (_place, count) => count - 1,
};

export interface Tabs {
  readonly parts: readonly HTMLElement[];
  /** Shows the part of a name. */
  readonly show: (name: string) => void;
}

/** Parts of which one is shown, by the tabs pattern of the ARIA Authoring Practices: arrows, Home and End go from tab to tab. */
export const tabs = (page: Document, label: string, given: readonly Tab[]): Tabs => {
  const buttons = given.map(({ name }) => {
    const button = element(page, "button", name);
    button.type = "button";
    button.id = `tab-${name.toLowerCase()}`;
    button.setAttribute("role", "tab");
    button.setAttribute("aria-controls", `part-${name.toLowerCase()}`);
    return button;
  });
  const parts = given.map(({ name, content }, place) => {
    const part = element(page, "section", typeof content === "function" ? [] : content, name.toLowerCase());
    part.id = `part-${name.toLowerCase()}`;
    part.setAttribute("role", "tabpanel");
    part.setAttribute("aria-labelledby", buttons[place]?.id ?? "");
    return part;
  });
  const isMade = given.map(({ content }) => typeof content !== "function");
  const show = (shown: number): void => {
    const content = given[shown]?.content;
    if (typeof content === "function" && isMade[shown] === false) parts[shown]?.append(...content());
    isMade[shown] = true;
    for (const [place, button] of buttons.entries()) {
      button.setAttribute("aria-selected", String(place === shown));
      button.tabIndex = place === shown ? 0 : -1;
    }
    for (const [place, part] of parts.entries()) part.hidden = place !== shown;
    given[shown]?.shown?.();
  };
  for (const [place, button] of buttons.entries()) {
    button.addEventListener("click", () => show(place));
    button.addEventListener("keydown", (event) => {
      const next = STEPS[event.key]?.(place, buttons.length);
      if (next === undefined) return;
      event.preventDefault();
      show(next);
      buttons[next]?.focus();
    });
  }
  const list = element(page, "div", buttons, "tabs");
  list.setAttribute("role", "tablist");
  list.setAttribute("aria-label", label);
  show(0);
  return { parts: [list, ...parts], show: (name) => show(given.findIndex((one) => one.name === name)) };
};
