import { element } from "./element";
import { licences } from "./licences";
import type { ShownCatalogue } from "./shown-functions";

/** Pages that stand beside the pane. */
const PAGES = [
  ["reference.html", "Every function, with examples"],
  ["codes.html", "Every limit of the building codes"],
  ["install.html", "Putting Treadsheet into Excel, updating and removing it"],
  ["changelog.html", "Which formulas give another number than before"],
  ["third-party-notices.txt", "Third-party licences, in full"],
] as const;

const link = (page: Document, address: string, words: string): HTMLElement => {
  const made = element(page, "a", words);
  made.href = address;
  made.target = "_blank";
  made.rel = "noopener";
  return made;
};

/** Version, cautions, where the arithmetic comes from, and the licences. */
export const aboutPart = (
  page: Document,
  { version, licence, cautions, codes, functions }: ShownCatalogue,
  place: string,
  examples?: string,
): readonly HTMLElement[] => [
  element(page, "h2", "About"),
  element(page, "p", `Treadsheet ${version}, ${place}. ${functions.length} worksheet functions. It sends nothing anywhere.`),
  ...(examples === undefined ? [] : [element(page, "p", examples, "examples-say")]),
  element(
    page,
    "ul",
    PAGES.map(([address, words]) => element(page, "li", [link(page, address, words)])),
  ),
  element(page, "h3", "Cautions"),
  element(
    page,
    "ul",
    cautions.map((text) => element(page, "li", text)),
  ),
  element(page, "h3", "Sources"),
  element(
    page,
    "p",
    "Under Functions, each function names the source of its method, and each example the source of its result. CHECK gives the " +
      "clause with every verdict. Building codes, and how many of their limits were checked against the text of that edition:",
  ),
  element(
    page,
    "ul",
    codes.map(({ code, title, edition, limits, confirmed }) =>
      element(page, "li", [element(page, "code", code), ` ${title}, ${edition}: ${confirmed} of ${limits}`]),
    ),
  ),
  element(page, "h3", "Licences"),
  element(page, "p", `Treadsheet is under the ${licence} licence. Third-party licences:`),
  element(
    page,
    "ul",
    licences.map((one) => element(page, "li", `${one.name} ${one.version}: ${one.licence}; ${one.serves}`)),
  ),
];
