import { element } from "./element";

export interface MendActs {
  readonly mend: () => void;
  /** Ends a mending that is under way, after the piece it is at. */
  readonly stop: () => void;
  readonly recalculate: () => void;
}

/** Buttons that enter formulas again and recalculate, with what came of it. */
export const mendPart = (
  page: Document,
  asked: MendActs | undefined,
  says: HTMLElement,
): readonly HTMLElement[] => {
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
    element(
      page,
      "p",
      "Formulas that show #NAME?, or _xldudf_STAIR_ in place of STAIR., were opened or entered before Treadsheet loaded. This " +
        "enters them again, each in its own cell. Nothing else changes.",
    ),
    button("Mend cells that show #NAME?", asked.mend),
    button("Stop mending", asked.stop),
    element(page, "h3", "Recalculate"),
    element(page, "p", "A workbook opens with the results it was saved with. This recalculates every formula with this version."),
    button("Recalculate all", asked.recalculate),
    says,
  ];
};
