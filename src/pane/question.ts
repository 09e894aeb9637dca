import { element } from "./element";

/** Asks before something is lost; answers whether to go on. */
export const question = (page: Document, text: string, yes: string, no: string): Promise<boolean> =>
  new Promise((resolve) => {
    const dialog = element(page, "dialog");
    const asked = element(page, "p", text);
    asked.id = "question";
    dialog.setAttribute("aria-labelledby", asked.id);
    const [agree, refuse] = [element(page, "button", yes), element(page, "button", no)];
    for (const button of [agree, refuse]) button.type = "button";
    agree.addEventListener("click", () => dialog.close("yes"));
    refuse.addEventListener("click", () => dialog.close());
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(dialog.returnValue === "yes");
    });
    dialog.append(asked, element(page, "div", [refuse, agree], "answers"));
    page.body.append(dialog);
    dialog.showModal();
  });
