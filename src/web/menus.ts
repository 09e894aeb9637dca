const inside = (menu: Element, target: EventTarget | null): boolean => target instanceof Node && menu.contains(target);

/** A button that shows what can be chosen under it, until something is chosen, or Escape or a press elsewhere ends it. */
const menu = (part: HTMLElement, button: HTMLButtonElement, items: HTMLElement): void => {
  const show = (isShown: boolean): void => {
    items.hidden = !isShown;
    button.setAttribute("aria-expanded", String(isShown));
  };
  button.addEventListener("click", () => show(items.hidden));
  items.addEventListener("click", () => show(false));
  part.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape" || items.hidden) return;
    show(false);
    button.focus();
  });
  part.addEventListener("focusout", ({ relatedTarget }) => {
    if (relatedTarget !== null && !inside(part, relatedTarget)) show(false);
  });
  // The sheet stops its presses before they come up.
  document.addEventListener("pointerdown", ({ target }) => {
    if (!inside(part, target)) show(false);
  }, { capture: true });
};

/** The menus of the page's header. */
export const menus = (): void => {
  for (const part of document.querySelectorAll<HTMLElement>(".menu")) {
    const [button, items] = [part.querySelector("button"), part.querySelector("div")];
    if (button !== null && items !== null) menu(part, button, items);
  }
};
