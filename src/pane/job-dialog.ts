import type { AskedJob } from "../sheets/job/own-job";
import type { Solve } from "./answer";
import { element } from "./element";
import { jobForm, type JobPlace } from "./job-form";
import { messageOf } from "./message-of";

const ABOUT = "Fourteen linked sheets, from the tape to the books, with your job's name and no number but those you type here.";

/** Begins the job where it was asked for, and answers what came of it. */
export type JobBegun = (asked: AskedJob, where: JobPlace) => Promise<string>;

/** Asks what a job of one's own needs and begins it; what is refused stands in the dialog, with all that was typed. */
export const jobDialog = (
  page: Document, places: readonly JobPlace[], solve: Solve, begin: JobBegun, say: (text: string) => void,
): void => {
  const dialog = element(page, "dialog", [], "start-job");
  const title = element(page, "h2", "Start my job");
  title.id = "start-job";
  dialog.setAttribute("aria-labelledby", title.id);
  const fault = element(page, "p", "", "fault");
  fault.setAttribute("role", "alert");
  let isBusy = false;
  const form = jobForm(page, places, solve, (asked, where) => {
    if (isBusy) return;
    isBusy = true;
    begin(asked, where)
      .then(
        (says) => {
          dialog.close();
          say(says);
        },
        (error: unknown) => void (fault.textContent = messageOf(error)),
      )
      .finally(() => void (isBusy = false));
  });
  const leave = element(page, "button", "Cancel");
  leave.type = "button";
  leave.addEventListener("click", () => dialog.close());
  form.querySelector(".answers")?.prepend(leave);
  dialog.append(title, element(page, "p", ABOUT, "quiet"), form, fault);
  dialog.addEventListener("close", () => dialog.remove());
  page.body.append(dialog);
  dialog.showModal();
};
