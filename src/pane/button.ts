import { element } from "./element";

/** A button by its name, and what it does. */
export const button = (page: Document, name: string, act: () => void): HTMLButtonElement => {
  const made = element(page, "button", name);
  made.type = "button";
  made.addEventListener("click", act);
  return made;
};
