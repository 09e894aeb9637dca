import { shownFunctions } from "../pane/shown-functions";
import { pane } from "../pane/pane";

const inExcel = "in Excel";
const outsideExcel = "outside Excel: the list below is complete, but there is no sheet to write in";

const show = (place: string): void => {
  const into = document.querySelector<HTMLElement>("#pane");
  if (into !== null) pane(document, into, shownFunctions(), { place, lacks: [] });
};

show(outsideExcel);
// The platform's script may be out of reach; the pane then stays as it is.
if (typeof Office !== "undefined") {
  void Office.onReady(({ host }) => {
    if (host === Office.HostType.Excel) show(inExcel);
  });
}
