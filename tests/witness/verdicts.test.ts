import { VERDICTS } from "../../src/solver/code/check";
import { catalogue } from "../../src/functions/catalogue";
import { CHOICE_VERDICTS } from "../../src/solver/layout/choices";
import { answerOf, casesOf, isMet } from "./worked-case";

/** Words of judgement, by function; those of CHECK and CHOICES are the solver's own lists. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  CHECK: VERDICTS,
  CHOICES: CHOICE_VERDICTS,
  UNIFORMITY: ["pass", "fail", "assumed: would pass", "assumed: would fail", "not given"],
  MISREAD: [
    "named",
    "either",
    "nothing stands out",
    "a whole inch too long",
    "a whole inch too short",
    "a whole centimetre too long",
    "a whole centimetre too short",
    "too long for the two skirts",
    "too short for the two skirts",
    "diagonal and second diagonal exchanged",
    "back and front exchanged",
    "readings of steps 2 and 3 exchanged",
    "the diagonals disagree, and no one reading stands out: read this step again",
    "the other way than the rest of the flight",
    "lean and riser disagree: read one again",
    "flare and tread disagree: read one again",
  ],
  VARIANCE: ["favourable", "unfavourable", "none"],
};

const EVERY = Object.entries(WORDS).flatMap(([id, all]) => all.map((word) => [id, word] as const));

test.each(EVERY)("%s: the verdict %s, were it another, would fail a case", (id, word) => {
  const declaration = catalogue.find((one) => one.id === id);
  if (declaration === undefined) throw new Error(`no ${id}`);
  const others = (WORDS[id] ?? []).filter((other) => other !== word);
  const unnoticed = others.filter((other) => !casesOf(declaration).some((worked) => {
    const rows = answerOf(declaration, worked.given);
    return !isMet(worked, rows.map((row) => row.map((cell) => (cell === word ? other : cell))));
  }));
  expect(unnoticed).toEqual([]);
});
