import fc from "fast-check";
import { cellAddress, cellPlace } from "../../src/sheets/cell-address";

// Hand: A is column 0, Z is 25, AA is 26, XFD is 16383, the last one of Excel (Excel specifications and limits).
test.each([
  ["A1", 0, 0],
  ["Z9", 8, 25],
  ["AA10", 9, 26],
  ["AZ1", 0, 51],
  ["XFD1048576", 1_048_575, 16_383],
])("%s is row %i and column %i, counted from 0", (address, row, column) => {
  expect(cellPlace(address)).toEqual({ row, column });
  expect(cellAddress({ row, column })).toBe(address);
});

test("every place has an address that leads back to it", () => {
  fc.assert(
    fc.property(fc.nat(1_048_575), fc.nat(16_383), (row, column) => {
      expect(cellPlace(cellAddress({ row, column }))).toEqual({ row, column });
    }),
  );
});

test("dollar signs and small letters do not matter", () => {
  expect(cellPlace("$b$7")).toEqual({ row: 6, column: 1 });
});

test.each(["", "7B", "A0", "A1:B2", "ABCD1"])("%j is no cell, and the message says what is", (address) => {
  expect(() => cellPlace(address)).toThrow(`address: must be one cell such as B7, got "${address}"`);
});
