import { Exact } from "../../../src/solver/length/exact";
import { type PieceOfOption, piecesOfOption } from "../../../src/solver/yield/pieces-of-option";

const piece = (label: string | number, quantity: number, option: string, length = 40): PieceOfOption => ({
  label, quantity, option, length: new Exact(length), grade: "",
});

const PIECES = [
  piece("riser", 14, ""), piece("Skirt", 2, ""), piece(3, 1, ""), piece("riser", 15, "15 risers"), piece("rail", 1, "15 Risers"),
  piece("skirt", 0, "no skirts"), piece("3", 1, "step", 50),
];

const short = (option: string): readonly string[] => piecesOfOption(PIECES, option).map(({ label, quantity }) => `${quantity} ${label}`);

// By hand, from the list above.
test.each([
  ["", ["14 riser", "2 Skirt", "1 3"]],
  ["15 risers", ["2 Skirt", "1 3", "15 riser", "1 rail"]],
  ["no skirts", ["14 riser", "1 3"]],
  ["step", ["14 riser", "2 Skirt", "1 3"]],
  ["white oak", ["14 riser", "2 Skirt", "1 3"]],
])("the pieces of %s are its own, and of all others those as drawn", (option, wanted) => expect(short(option)).toEqual(wanted));

test("a number and its text are one label", () => {
  expect(piecesOfOption(PIECES, "step").filter(({ label }) => String(label) === "3").map(({ length }) => length.toNumber())).toEqual([50]);
});
