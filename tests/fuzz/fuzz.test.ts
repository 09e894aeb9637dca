import fc from "fast-check";
import { associated, type WorksheetFunction } from "../host/stand-in";
import { faultOf, type Outcome, outcome, written } from "./faults";
import { type Arguments, everyDeclaration, randomCalls } from "./random-calls";
import { isSameMeaning, twinsOf } from "./twins";

const functions = associated();

/** One seed for ever: what is found here is found again. `npm run fuzz` takes others. */
const SEED = 20261128;
const CALLS_A_FUNCTION = 60;

const solverOf = (id: string): WorksheetFunction => {
  const solve = functions.get(id);
  if (solve === undefined) throw new Error(`functions.js does not associate ${id}`);
  return solve;
};

describe("whatever stands in the cells", () => {
  test.each(everyDeclaration.map((declaration) => [declaration.id, declaration] as const))(
    "%s gives a value, a full rectangle, or a sentence that begins with the name of what is wrong, however the call is said",
    (id, declaration) => {
      fc.assert(
        fc.property(randomCalls(declaration), (given) => {
          const first = outcome(solverOf(id), given);
          expect(faultOf(declaration, given, first)).toBeUndefined();
          const others = twinsOf(declaration, given).filter((twin) => !isSameMeaning(first, outcome(solverOf(id), twin.given), twin));
          expect(others).toEqual([]);
        }),
        { seed: SEED, numRuns: CALLS_A_FUNCTION },
      );
    },
  );

  test("the same call gives the same answer a second time, after all the others and in another order", () => {
    const calls = everyDeclaration.flatMap((declaration) =>
      fc
        .sample(randomCalls(declaration), { seed: SEED + 1, numRuns: CALLS_A_FUNCTION / 4 })
        .map((given): readonly [string, Arguments] => [declaration.id, given]),
    );
    const answers = (order: readonly (readonly [string, Arguments])[]): readonly Outcome[] =>
      order.map(([id, given]) => outcome(solverOf(id), given));
    const forward = answers(calls).map(written);
    const backward = answers([...calls].reverse()).map(written).reverse();
    const differs = calls.findIndex((_, index) => forward[index] !== backward[index]);
    expect([calls[differs], forward[differs]]).toEqual([calls[differs], backward[differs]]);
  });
});
