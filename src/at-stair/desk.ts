import type { KeptTaking } from "./kept-takings";
import type { State } from "./taking";
import type { Touch } from "./touched";

/** What a screen shows, and what it does when it is touched. */
export interface Desk {
  readonly taking: KeptTaking;
  readonly state: State;
  readonly today: () => string;
  readonly touch: (touch: Touch) => void;
  readonly undo: () => void;
  /** To the start, where the stairs kept here are listed. */
  readonly leave: () => void;
  readonly remove: () => void;
  /** Says a thing that is not part of the screen, until the next touch. */
  readonly say: (text: string) => void;
}

/** What a screen is made of: its parts from the top down, and what a screen reader is told when it comes up. */
export interface Shown {
  readonly parts: readonly Node[];
  readonly says: string;
}
