import { readySheets } from "../sheets/ready-sheets";
import { element } from "./element";

/** The ready sheets of the job, each with what it is for and a button to add it; without one where the host adds none. */
export const sheetsPart = (page: Document, add: ((name: string) => void) | undefined): readonly HTMLElement[] => {
  const items = readySheets.map(({ name, says, reads }) => {
    const item = element(page, "li", [element(page, "h3", name), element(page, "p", says)]);
    if (reads.length > 0) item.append(element(page, "p", `Reads ${reads.join(", ")}; what is missing of them comes with it.`, "quiet"));
    if (add !== undefined) {
      const button = element(page, "button", `Add ${name}`);
      button.type = "button";
      button.addEventListener("click", () => add(name));
      item.append(button);
    }
    return item;
  });
  return [
    element(page, "h2", "Ready sheets"),
    element(
      page,
      "p",
      "One sheet for each step of the job, added after your own. Nothing that is there is touched. Numbers, people and prices in " +
        "them are invented.",
      "quiet",
    ),
    element(page, "ol", items, "ready"),
  ];
};
