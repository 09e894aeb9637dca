import { lettersApart, nearestWord } from "../../src/solver/nearest-word";

// Letters to change, by hand: hight to height 1, to depth 4.
test("the nearest word is the one with the fewest letters to change", () => {
  expect(nearestWord("Tread-hight", ["tread depth", "tread height", "headroom"])).toBe("tread height");
});

// By hand: of 2018 the last figure alone is another, in 2021 the last two are.
test("figures that changed places are two letters", () => {
  expect(nearestWord("irc-2012", ["irc-2021", "irc-2018"])).toBe("irc-2018");
});

test("of words equally near it is the first, and of none nothing", () => {
  expect(nearestWord("bat", ["cat", "hat"])).toBe("cat");
  expect(nearestWord("bat", [])).toBeUndefined();
});

// By hand: the British spelling and the plural are no letters; hight lacks one.
test("letters apart are counted in one spelling, singular", () => {
  expect(lettersApart("Mitred returns", "mitered return")).toBe(0);
  expect(lettersApart("hight", "height")).toBe(1);
});
