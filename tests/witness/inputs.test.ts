import type { Declaration } from "../../src/functions/declare";
import { type Input, inputsOf, labelsOf } from "./inputs";
import { RICH_STAIRS } from "./rich-stairs";
import type { Rows } from "./case-kind";
import { answerOf, casesOf, everyDeclaration, isMet } from "./worked-case";

/** Words of a column that do what an empty cell does, and names that only a refusal says, so that nothing can tell them apart. */
const AS_EMPTY: Readonly<Record<string, string>> = {
  "lumber, label": "an order has a row a grade; only a refusal names the piece",
  "lumber, item": "the same",
  "lumber, step": "the same",
  "readings, diagonal, not taken": "a diagonal nobody took; the word is for who wants no empty cell",
  "readings, second diagonal, not taken": "the same",
  "changed costs, cost, included": "the word is for the note of BID, which has none of an empty cell beside it",
  "bought, price, included":
    "EXTEND writes it; an invoice says what was paid, so a row without a price or a cost is refused with or without it",
};

/** An error of the whole call: it says what is wrong, but not what the thing given is for. */
const isRefused = (rows: Rows): boolean => rows.length === 1 && rows[0]?.length === 1 && /^#(VALUE!|N\/A) /.test(String(rows[0][0]));

const isNoticedBy = (declaration: Declaration, input: Input): boolean =>
  casesOf(declaration).some((worked) =>
    !("fails" in worked) && input.others(worked.given).some((given) => {
      const rows = answerOf(declaration, given);
      return !isRefused(rows) && !isMet(worked, rows);
    }),
  );

/** A table is read the same way for every function that takes it, and functions with the very same arguments read those alike. */
const isNoticed = (declaration: Declaration, input: Input): boolean =>
  isNoticedBy(declaration, input) ||
  everyDeclaration.some(
    (other) =>
      other !== declaration &&
      [...inputsOf(other), ...labelsOf(other)].some((same) => same.of === input.of && same.name === input.name && isNoticedBy(other, same)),
  );

/** Whether a function's answer turns on a label at all, whatever it is. */
const isRead = (declaration: Declaration, label: Input): boolean =>
  RICH_STAIRS.some((stair) => {
    const given = {
      stair, stock: [["label", "length", "width", "thickness", "price"], ["oak 60", 60, 14, 1.25, 52]], code: "irc-2021",
      past: 8, bend: "kerfs", flights: [["risers", "turn"], [5, "half left"], [5, "half left"], [4, ""]], number: 1,
    };
    const rows = answerOf(declaration, given);
    return !isRefused(rows) && label.others(given).some((other) => {
      const others = answerOf(declaration, other);
      return !isRefused(others) && JSON.stringify(others) !== JSON.stringify(rows);
    });
  });

describe.each(everyDeclaration.map((declaration) => [declaration.id, declaration] as const))("%s", (id, declaration) => {
  // A thing given that is passed over in silence would answer as if it were not given, or were another.
  test("each thing given, were it otherwise, would fail a case", () => {
    const unnoticed = inputsOf(declaration)
      .filter(({ name }) => AS_EMPTY[name] === undefined)
      .filter((input) => !isNoticed(declaration, input));
    expect(unnoticed.map(({ name }) => name)).toEqual([]);
  });

  if (id !== "CHECK") {
    test("each label of the stair that its answer turns on, were it otherwise, would fail a case", () => {
      const unnoticed = labelsOf(declaration)
        .filter((label) => isRead(declaration, label))
        .filter((label) => !isNoticed(declaration, label));
      expect(unnoticed.map(({ name }) => name)).toEqual([]);
    });
  }
});
