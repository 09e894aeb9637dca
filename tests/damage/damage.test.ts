import { warmed } from "../workbook-file/damaged-files";
import { asking } from "./addresses";
import { keptOutcome, readingsOutcome } from "./readings";
import { savedOutcome, tableOutcome } from "./tables";

const EACH = 300;

/** How many came to what; a fault names its seed. */
const outcomes = async (of: (chance: () => number) => string | Promise<string>): Promise<readonly string[]> => {
  const found = new Set<string>();
  for (let seed = 1; seed <= EACH; seed += 1) {
    try {
      found.add(await of(warmed(seed)));
    } catch (error) {
      throw new Error(`seed ${seed}`, { cause: error });
    }
  }
  return [...found];
};

test.each([
  ["tables as text", tableOutcome, ["read", "refused"]],
  ["files that were saved here", savedOutcome, ["read", "refused"]],
  ["texts of readings", readingsOutcome, ["read", "refused"]],
  ["stairs kept in the browser", keptOutcome, ["shown", "none"]],
] as const)(`${EACH} damaged %s are read, or refused with a sentence`, async (_, of, reached) => {
  expect(await outcomes(of)).toEqual(expect.arrayContaining([...reached]));
});

test(`${EACH} odd requests show nothing that lies outside of the folder, and the server goes on`, async () => {
  const { outcome, close } = await asking();
  try {
    expect(await outcomes(outcome)).toEqual(expect.arrayContaining(["200", "400", "403", "404"]));
  } finally {
    await close();
  }
});
