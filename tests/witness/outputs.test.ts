import { changedAt, type Output, outputsOf } from "./outputs";
import type { Rows, WorkedCase } from "./case-kind";
import { answerOf, casesOf, everyDeclaration, isMet } from "./worked-case";

/**
 * By a tenth of a percent: less than any tool of the trade shows, more than ten digits hide. Nothing is made of 0, so a 0 is no witness.
 */
const A_LITTLE = 1.001;

const altered = (cell: unknown): unknown =>
  typeof cell === "number" ? cell * A_LITTLE : typeof cell === "boolean" ? !cell : cell === "" ? cell : `${String(cell)} `;

/** Only of a figure that is 0 whatever is given, a 0 is a witness. */
const ALWAYS_0: readonly string[] = ["OFFCUTS price"];

/** Outputs that are the same by what they mean, so that nobody could see one stand for the other. That they are the same is tested. */
const SAME: Readonly<Record<string, string>> = {
  'LAYOUT "run", "tread depth"': "the codes call the run tread depth",
  'RAIL "height over the nosings", "height over the upper floor at the landing nosing"':
    "the landing nosing is the edge of the upper floor",
};

const isSame = (id: string, one: Output, other: Output): boolean =>
  Object.keys(SAME).some(
    (key) =>
      key.startsWith(`${id} `) &&
      [one, other].every(({ name }) =>
        key
          .slice(id.length + 1)
          .split(", ")
          .includes(name),
      ),
  );

interface Answered {
  readonly worked: WorkedCase;
  readonly rows: Rows;
}

const answered = (declaration: (typeof everyDeclaration)[number]): readonly Answered[] =>
  casesOf(declaration).map((worked) => ({ worked, rows: answerOf(declaration, worked.given) }));

describe.each(everyDeclaration.map((declaration) => [declaration.id, declaration] as const))("%s", (_, declaration) => {
  test("each case comes out of the source as it says", () => {
    const missed = answered(declaration).filter(({ worked, rows }) => !isMet(worked, rows));
    expect(missed.map(({ worked: { given, from }, rows }) => JSON.stringify([from, given, rows]))).toEqual([]);
  });

  // The wrong answer is planted, one output at a time: no case has to say what it is a witness of, and none can be believed wrongly.
  test("each output, were it a little off, would fail a case", () => {
    const unnoticed = outputsOf(declaration).filter((output) => {
      const change = ALWAYS_0.includes(`${declaration.id} ${output.name}`) ? (cell: unknown) => (cell === 0 ? 1 : cell) : altered;
      return !answered(declaration).some(({ worked, rows }) => !isMet(worked, changedAt(rows, output.places(worked, rows), change)));
    });
    expect(unnoticed.map(({ name }) => name)).toEqual([]);
  });

  test("two outputs of one kind, were they taken for one another, would fail a case", () => {
    const outputs = outputsOf(declaration);
    const standTogether = (one: Output, other: Output): boolean =>
      answered(declaration).some(({ worked, rows }) => one.places(worked, rows).length > 0 && other.places(worked, rows).length > 0);
    const swapped = (worked: WorkedCase, rows: Rows, one: Output, other: Output): Rows => {
      const [places, others] = [one.places(worked, rows), other.places(worked, rows)];
      const from = (at: readonly (readonly [number, number])[]) => {
        let next = 0;
        return () => {
          const [down = 0, right = 0] = at[next++ % at.length] ?? [];
          return rows[down]?.[right];
        };
      };
      return places.length === 0 || others.length === 0 ? rows : changedAt(changedAt(rows, places, from(others)), others, from(places));
    };
    const unnoticed = outputs.flatMap((one, place) =>
      outputs.slice(place + 1)
        .filter((other) => other.kind === one.kind && other.kind !== "label" && one.name.startsWith('"') === other.name.startsWith('"'))
        .filter((other) => !isSame(declaration.id, one, other) && standTogether(one, other))
        .filter((other) => !answered(declaration).some(({ worked, rows }) => !isMet(worked, swapped(worked, rows, one, other))))
        .map((other) => `${one.name} for ${other.name}`),
    );
    expect(unnoticed).toEqual([]);
    for (const { worked, rows } of answered(declaration)) {
      for (const one of outputs)
        for (const other of outputs) if (isSame(declaration.id, one, other)) expect(swapped(worked, rows, one, other)).toEqual(rows);
    }
  });
});
