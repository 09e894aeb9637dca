import { lettersApart, nearestOrAll, nearestSaid, nearestWord } from "../../src/solver/nearest-word";

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

// By hand: qwzjkv has no letter of headroom or run; cm and mm differ in half of their letters; wood and hood are a slip of one.
test("a word that is far from all has no nearest", () => {
  expect(nearestWord("qwzjkv", ["headroom", "run", "riser height"])).toBeUndefined();
  expect(nearestWord("cm", ["mm", "in"])).toBeUndefined();
  expect(nearestWord("wood", ["hood"])).toBe("hood");
});

// By hand: overhead is 6 letters of overhead on cost away and stands whole in it, the shorter of two; 12 has no letter to be known by.
test("a word that stands whole in another may be meant for it", () => {
  expect(nearestWord("overhead", ["overhead on labour", "overhead on cost"])).toBe("overhead on cost");
  expect(nearestWord("12345", ["99123459999"])).toBeUndefined();
});

test("what a sentence ends with: the nearest, else the names there are, the long ones shortened", () => {
  expect(nearestSaid("coast", ["item", "cost"])).toBe('; nearest is "cost"');
  expect(nearestSaid("qwzjkv", ["item", "cost"])).toBe("");
  expect(nearestOrAll("qwzjkv", ["item", "cost"])).toBe('; there are "item", "cost"');
  expect(nearestOrAll("qwzjkv", ["item"])).toBe('; there is only "item"');
  expect(nearestOrAll("qwzjkv", [])).toBe("");
  expect(nearestOrAll("qwzjkv", "abcdefghij".split(""))).toBe('; there are "a", "b", "c", "d", "e", "f", "g", "h" and 2 more');
  expect(nearestOrAll("qwzjkv", ["b".repeat(100)])).toBe(`; there is only "${"b".repeat(80)}…"`);
});
