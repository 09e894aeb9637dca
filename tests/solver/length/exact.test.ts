import fc from "fast-check";
import { ceilingOfQuotient, exact, Exact, roundedTo, wholeUp } from "../../../src/solver/length/exact";
import { lengthIn, lengthOf, measure } from "../../../src/solver/length/length";
import { received, sent } from "../../../src/solver/length/sent";
import { fraction } from "../../../src/solver/length/tape-text";

test("a number counts as a spreadsheet shows it, with 15 digits (Excel specifications and limits); a text has all of its own", () => {
  expect(exact(1.1 + 1.1 + 1.1).toString()).toBe("3.3");
  expect([exact(999_999_999_999_999), exact(-999_999_999_999_999)].map(String)).toEqual(["999999999999999", "-999999999999999"]);
  expect(exact(1_234_567_890_123_456).toFixed()).toBe("1234567890123460");
  expect(exact("0.12345678901234567890").toString()).toBe("0.1234567890123456789");
  expect(exact(new Exact("0.1234567890123456789")).toString()).toBe("0.1234567890123456789");
});

test("what is bought whole is rounded up, but not by the dust of a division", () => {
  // A third of 3 three times over, and a tenth added ten times.
  expect([new Exact(1).div(3).times(9), new Exact(3), new Exact("3.00000000000001"), new Exact("3.000001"), new Exact("2.2")].map((one) =>
    wholeUp(one).toNumber())).toEqual([3, 3, 3, 4, 3]);
});

test("how many of one cover another: whole numbers times it reach, one fewer does not", () => {
  expect([10, 10.01, 0].map((whole) => ceilingOfQuotient(exact(whole), exact(5)))).toEqual([2, 3, 0]);
  fc.assert(fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 1, max: 1e4 }), (whole, each) => {
    const count = ceilingOfQuotient(exact(whole), exact(each));
    expect([count * each >= whole, (count - 1) * each < whole]).toEqual([true, true]);
  }));
});

test("steps are the nearest, ties away from zero", () => {
  expect([1.25, 1.24, -1.25, -1.24, 0].map((value) => roundedTo(exact(value), exact(0.5)).toNumber())).toEqual([1.5, 1, -1.5, -1, 0]);
});

test("a fraction is reduced by twos", () =>
  expect([fraction(8, 16), fraction(6, 16), fraction(15, 16), fraction(32, 64)]).toEqual(["1/2", "3/8", "15/16", "1/2"]));

test("an inch is 25.4 mm by definition, both ways", () => {
  expect([measure(lengthOf(1, "in"), "mm"), measure(lengthOf("25.4", "mm"), "in"), measure(lengthOf(7, "mm"), "mm")]).toEqual([25.4, 1, 7]);
  expect(lengthIn(lengthOf(2, "in"), "in").toString()).toBe("2");
});

test("what goes to another thread comes back as it was, exact numbers wherever they stand", () => {
  const piece = { length: exact(36), label: "tread", quantity: 2, price: undefined, owned: false };
  const job = { kerf: exact("0.1234567890123456789"), pieces: [piece], keep: null };
  const plain = sent(job);
  // Only plain data passes.
  expect(JSON.parse(JSON.stringify(plain))).toEqual(JSON.parse(JSON.stringify(structuredClone(plain))));
  expect(JSON.stringify(plain)).toContain("0.1234567890123456789");
  const back = received(structuredClone(plain)) as typeof job;
  expect(back).toEqual(job);
  expect([back.kerf.plus(1).toString(), back.pieces[0]?.length.eq(36)]).toEqual(["1.1234567890123456789", true]);
});
