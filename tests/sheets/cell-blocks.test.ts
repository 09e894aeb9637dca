import fc from "fast-check";
import { cellPlace } from "../../src/sheets/cell-address";
import { blockAddress, cellBlocks } from "../../src/sheets/cell-blocks";

const blocks = (...addresses: readonly string[]): readonly string[] => cellBlocks(addresses.map(cellPlace)).map(blockAddress);

test("cells side by side and under one another are one block, and what does not fill it stands by itself", () => {
  expect(blocks("A1", "B1", "A2", "B2")).toEqual(["A1:B2"]);
  expect(blocks("B2", "A1", "A2", "B1", "A3")).toEqual(["A1:B2", "A3"]);
  expect(blocks("A1", "C1", "A2", "C2")).toEqual(["A1:A2", "C1:C2"]);
  expect(blocks("A1", "A3")).toEqual(["A1", "A3"]);
  expect(blocks()).toEqual([]);
});

test("whatever cells there are, each is in one block and nothing else is", () => {
  const cell = fc.record({ row: fc.nat(7), column: fc.nat(7) });
  fc.assert(
    fc.property(fc.uniqueArray(cell, { selector: ({ row, column }) => `${row} ${column}` }), (cells) => {
      const covered = cellBlocks(cells).flatMap(({ row, column, rows, columns }) =>
        Array.from({ length: rows * columns }, (_, at) => `${row + Math.floor(at / columns)} ${column + (at % columns)}`),
      );
      expect(covered.sort()).toEqual(cells.map(({ row, column }) => `${row} ${column}`).sort());
    }),
  );
});
