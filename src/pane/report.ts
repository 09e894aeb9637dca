import { element } from "./element";
import { messageOf } from "./message-of";

/** Where the pane says what came of what was asked, one thing at a time. */
export interface Report {
  readonly part: HTMLElement;
  readonly say: (text: string) => void;
  /** Takes away what was said: it is of no use any more. */
  readonly clear: () => void;
  /** Does something that may be refused, and says what came of it; nothing while something else is under way. */
  readonly act: (work: () => Promise<string>) => void;
}

/** A line at the foot of the pane that is read out, with room for what goes with it. */
export const report = (page: Document, ...beside: readonly HTMLElement[]): Report => {
  const line = element(page, "p", "");
  line.setAttribute("role", "status");
  const part = element(page, "div", [line, ...beside], "report");
  part.hidden = true;
  let isBusy = false;
  const say = (text: string): void => {
    part.hidden = false;
    line.textContent = text;
  };
  return {
    part,
    say,
    clear: () => {
      if (!isBusy) part.hidden = true;
    },
    act: (work) => {
      if (isBusy) return;
      isBusy = true;
      say("Working …");
      void work()
        .catch(messageOf)
        .then(say)
        .finally(() => {
          isBusy = false;
        });
    },
  };
};
