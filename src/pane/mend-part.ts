import { element } from "./element";

/** Buttons that bind formulas again and work everything out once more, with what came of it. */
export const mendPart = (page: Document, asked: { readonly mend: () => void; readonly recalculate: () => void } | undefined, says: HTMLElement): readonly HTMLElement[] => {
  const heading = element(page, "h2", "Mend");
  if (asked === undefined) return [heading, element(page, "p", "There is no workbook here to mend.", "quiet")];
  const button = (text: string, go: () => void): HTMLButtonElement => {
    const made = element(page, "button", text);
    made.type = "button";
    made.addEventListener("click", go);
    return made;
  };
  return [
    heading,
    element(page, "p", "A formula of ours that was typed or opened before the functions were there shows #NAME? and stays so. Mending writes each such formula to its own cell, which binds it. Nothing else is touched."),
    button("Mend cells that show #NAME?", asked.mend),
    element(page, "h3", "Recalculate"),
    element(page, "p", "A workbook opened again shows the results it was saved with. This works every formula out once more with the functions of this version."),
    button("Recalculate all", asked.recalculate),
    says,
  ];
};
