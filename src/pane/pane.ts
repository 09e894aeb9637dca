import { element } from "./element";
import { functionGroups } from "./function-groups";
import type { ShownCatalogue } from "./shown-functions";

export interface PaneFacts extends ShownCatalogue {
  readonly place: string;
}

/** Puts the pane's content into a place on the page: title, caution, and every function under its step of the job. */
export const pane = (page: Document, into: HTMLElement, { version, caution, place, functions }: PaneFacts): void => {
  into.replaceChildren(
    element(page, "h1", "Treadsheet"),
    element(page, "p", `Version ${version} · ${place}`, "quiet"),
    element(page, "p", caution, "caution"),
    ...functionGroups(page, functions, { open: "first" }).parts,
  );
};
