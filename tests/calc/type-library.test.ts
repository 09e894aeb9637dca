import { typeLibrary } from "../../src/calc/type-library";

const characters = (text: string): number[] => [...text].map((one) => one.charCodeAt(0));
const number = (value: number): number[] => [value & 0xff, (value >> 8) & 0xff, 0, 0];
/** Len-String of the format: how many characters, then those. */
const text = (written: string): number[] => [...number(written.length), ...characters(written)];

// By hand from the specification in unoidl/README.md of LibreOffice. Header 8 bytes, root offset and count to 16, the module's name "m" NUL
// at 16, "XA" NUL at 18, the interface at 21.
test("a library of one interface with one method, byte by byte", () => {
  const bases = [...number(1), ...text("com.sun.star.uno.XInterface")];
  const method = [...text("f"), ...text("any"), ...number(1), 0, ...text("a0"), ...text("any"), ...number(0)];
  const written = [5, ...bases, ...number(0), ...number(0), ...number(1), ...method];
  const module = 21 + written.length;
  const root = module + 1 + 4 + 8;
  const given = { name: "f", returns: "any", parameters: [{ name: "a0", type: "any" }] };
  expect([...typeLibrary("m", [{ name: "XA", methods: [given] }])]).toEqual([
    ...characters("UNOIDL"), 0xff, 0, ...number(root), ...number(1),
    ...characters("m\0"), ...characters("XA\0"),
    ...written,
    0, ...number(1), ...number(18), ...number(21),
    ...number(16), ...number(module),
  ]);
});

test("interfaces stand in the order of their names, whatever order they are given in", () => {
  const [a, b] = [{ name: "XA", methods: [] }, { name: "XB", methods: [] }];
  expect(typeLibrary("m", [b, a])).toEqual(typeLibrary("m", [a, b]));
});
