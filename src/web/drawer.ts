import { place } from "./place";

export interface Drawer {
  readonly open: () => void;
  readonly close: () => void;
}

/** On a small screen the pane is a drawer over the sheet: Help opens and closes it. */
export const drawer = (): Drawer => {
  const [button, pane] = [place("help"), place("pane")];
  const show = (isShown: boolean): void => {
    pane.classList.toggle("shown", isShown);
    button.setAttribute("aria-expanded", String(isShown));
    button.textContent = isShown ? "Close" : "Help";
  };
  button.addEventListener("click", () => show(!pane.classList.contains("shown")));
  pane.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape" || !pane.classList.contains("shown")) return;
    show(false);
    button.focus();
  });
  return { open: () => show(true), close: () => show(false) };
};
