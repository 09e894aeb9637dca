import { element } from "../pane/element";
import { functionGroups } from "../pane/function-groups";
import { shownFunctions } from "../pane/shown-functions";
import { oneStair } from "../sheets/one-stair";
import { bundle } from "./bundle";
import { jobPage } from "./job-page";

const into = document.querySelector<HTMLElement>("#page");
if (into !== null) {
  const { version, caution, functions } = shownFunctions();
  const { parts, examples, differences } = functionGroups(document, functions, { open: "all", solve: bundle });
  const count = `${examples} examples, ${differences === 0 ? "all as stated" : `${differences} ${differences === 1 ? "differs" : "differ"} from what is stated`}.`;
  into.replaceChildren(
    element(document, "p", "Invented data: this stair, this shop and these prices do not exist.", "invented"),
    element(document, "h1", "Treadsheet"),
    element(document, "p", `Version ${version} · ${functions.length} worksheet functions · worked out on this page by functions.js, as a spreadsheet would`, "quiet"),
    element(document, "p", caution, "caution"),
    jobPage(document, oneStair, bundle),
    element(document, "section", [
      element(document, "h2", "Functions"),
      element(document, "p", count, differences === 0 ? "count" : "count differs"),
      ...parts,
    ], "functions"),
  );
}
