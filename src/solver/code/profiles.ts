import { type Problem, problem } from "../problem";
import { irc2021 } from "./irc-2021";
import { labelKey } from "./label-key";
import { nearestLabel } from "./nearest-label";
import type { CodeProfile } from "./profile";

/** Every code that can be checked against, in the order users see. */
export const PROFILES: readonly CodeProfile[] = [irc2021];

/** The code of that id, matched as labels are; `known` lists the ids there are. */
export const codeProfile = (code: string): CodeProfile | Problem<"unknown-code"> => {
  const ids = PROFILES.map(({ id }) => id);
  return (
    PROFILES.find(({ id }) => labelKey(id) === labelKey(code)) ??
    problem("unknown-code", { code, nearest: nearestLabel(code, ids), known: ids.join(", ") })
  );
};
