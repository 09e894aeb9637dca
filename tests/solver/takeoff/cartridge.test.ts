import { isProblem } from "../../../src/solver/problem";
import { cartridge } from "../../../src/solver/takeoff/cartridge";

/** 25.4 mm to the inch, cubed: 645.16 x 25.4 = 16,387.064. */
const CUBIC_MILLIMETRES_PER_CUBIC_INCH = 16387.064;

const cubicInches = (text: string): number => {
  const volume = cartridge(text);
  if (isProblem(volume)) throw new Error(`${text} was read as no volume: ${volume.problem}`);
  return volume.toNumber() / CUBIC_MILLIMETRES_PER_CUBIC_INCH;
};

const problemOf = (text: string): string | undefined => {
  const volume = cartridge(text);
  return isProblem(volume) ? volume.problem : undefined;
};

// Sealant supplier technical note on joint yield. It prints 18.3 and 36.6 beside
// 10.1 and 20 ounces, which are the volumes of the metric fills 300 ml and 600 ml; 10.1 fl oz is 18.23.
test.each([
  ["27 fl oz", 48.7],
  ["30 fl oz", 54.1],
  ["300 ml", 18.3],
  ["600 ml", 36.6],
])("%s is %d cubic inches", (text, printed) => {
  expect(cubicInches(text).toFixed(1)).toBe(printed.toFixed(1));
});

test("a fluid ounce is 1/128 of the gallon of 231 cubic inches", () => {
  // by hand: 231 / 128 = 1.8046875, x 16,387.064 = 29,573.5295625 cubic millimetres
  expect(String(cartridge("1"))).toBe("29573.5295625");
  // by hand: 10.1 x 29,573.5295625 = 298,692.64858125
  expect(String(cartridge("10.1"))).toBe("298692.64858125");
});

test("a millilitre is 1,000 cubic millimetres", () => {
  expect(String(cartridge("290 ml"))).toBe("290000");
});

test.each(["10 oz", "10oz", "10 OZ.", "10 fl oz", "10 fl. oz.", "10 floz", "10 US fl oz", "10 fluid ounces", " 10.0 ", "10 ounces"])(
  "%s is ten fluid ounces",
  (text) => {
    expect(String(cartridge(text))).toBe("295735.295625");
  },
);

test("a number with float dust counts as the spreadsheet shows it", () => {
  // 10.1 reached by adding tenths
  expect(String(cartridge("10.100000000000001"))).toBe(String(cartridge("10.1")));
});

test.each([
  ["one tube", "not-a-volume"],
  ["-10.1", "not-a-volume"],
  ["10.1 in", "not-a-volume"],
  ["1/2", "not-a-volume"],
  ["10,1 fl oz", "volume-comma"],
  ["0 ml", "no-volume"],
  ["0", "no-volume"],
  ["290", "volume-in-millilitres"],
])("%s is refused: %s", (text, code) => {
  expect(problemOf(text)).toBe(code);
});

test("a pail is taken when its unit is written, and a gallon without one", () => {
  expect(problemOf("290 fl oz")).toBeUndefined();
  expect(problemOf("128")).toBeUndefined();
});
