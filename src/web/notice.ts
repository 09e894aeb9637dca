import { element } from "../pane/element";
import { place } from "./place";

/** What can be done about a notice, by the words on its button. */
export type NoticeAnswers = Readonly<Record<string, () => Promise<void>>>;

/** Says something that stays on the page until it is answered; without answers it stays. */
export const notice = (text: string, answers: NoticeAnswers = {}): (() => void) => {
  const shown = element(document, "div", [element(document, "p", text)], "notice");
  shown.setAttribute("role", "alert");
  const buttons = Object.entries(answers).map(([words, act]) => {
    const button = element(document, "button", words);
    button.type = "button";
    button.addEventListener("click", () => {
      for (const each of buttons) each.disabled = true;
      void act().then(
        () => shown.remove(),
        () => {
          for (const each of buttons) each.disabled = false;
        },
      );
    });
    return button;
  });
  shown.append(...buttons);
  place("notices").append(shown);
  return () => shown.remove();
};
