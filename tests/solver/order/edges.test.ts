import { exact } from "../../../src/solver/length/exact";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { type Blank, blankList } from "../../../src/solver/order/blank-list";
import { inSeries, KERF_TEXT, named } from "../../../src/solver/order/saving";
import type { Candidate } from "../../../src/solver/order/blank-stock";
import { isProblem } from "../../../src/solver/problem";

/** Sizes to order where something is just enough, or nothing; by hand: 105 in 14 are 7 1/2, run 10, nosing 1 1/4, 36 wide. */

const inch = (inches: number): Length => lengthOf(inches, "in");
const KNOWN: StairFacts = {
  totalRise: inch(105), risers: 14, run: inch(10), width: inch(36), treadThickness: inch(1), riserThickness: inch(0.75), nosing: inch(1.25),
  lap: inch(0.5),
};
const listed = (more: StairFacts = {}): unknown => {
  const stair = resolvedStair({ ...KNOWN, ...more });
  if (isProblem(stair)) return stair.problem;
  const found = blankList(stair, undefined, "in");
  return isProblem(found) ? found.problem : found;
};
const sizes = (more: StairFacts = {}): unknown => {
  const found = listed(more);
  return Array.isArray(found)
    ? (found as readonly Blank[]).map(({ item, length, width, quantity }) => [item, measure(length, "in"), measure(width, "in"), quantity])
    : found;
};
const noteOf = (item: Blank["item"], more: StairFacts): string | undefined => {
  const found = listed(more);
  return Array.isArray(found) ? (found as readonly Blank[]).find((blank) => blank.item === item)?.note : undefined;
};

test("treads, the nosing of the landing and risers between two skirts", () => {
  // 10 + 1 1/4 deep; the nosing piece covers 1 1/4 and the riser's 3/4; a riser is 7 1/2 - 1 + 1/2 high.
  expect(sizes()).toEqual([["tread", 36, 11.25, 13], ["landing nosing", 36, 2, 1], ["riser", 36, 7, 14]]);
});

test("an open end makes treads and risers longer, and returns of it", () => {
  const open = { openEnd: "left", overhang: inch(1.25), returnWidth: inch(1.25), runPast: inch(0.25) } as const;
  expect(sizes(open)).toEqual([
    ["tread", 37.25, 11.25, 13], ["return", 12.5, 1.25, 13], ["landing nosing", 37.25, 2, 1], ["riser", 36.25, 7, 14],
  ]);
  expect(sizes({ ...open, openEnd: "both" })).toEqual([
    ["tread", 38.5, 11.25, 13], ["return", 12.5, 1.25, 26], ["landing nosing", 38.5, 2, 1], ["riser", 36.5, 7, 14],
  ]);
  const proud = "the riser runs past the skirt by as much as the return overhangs: they end flush or the riser stands proud";
  expect([1.24, 1.25, 1.3].map((past) => noteOf("return", { ...open, runPast: inch(past) }))).toEqual([
    "along its outer edge, which runs past the riser face by the overhang", proud, proud,
  ]);
});

test("a tread flush with the floor above leaves no nosing piece, and so does a stair that wants none", () => {
  expect(sizes({ topTread: "flush" })).toEqual([["tread", 36, 11.25, 14], ["riser", 36, 7, 14]]);
  expect(sizes({ landingNosing: false })).toEqual([["tread", 36, 11.25, 13], ["riser", 36, 7, 14]]);
  expect(sizes({ landingTread: inch(3), topTread: "flush" })).toEqual([["tread", 36, 11.25, 14], ["riser", 36, 7, 14]]);
});

test("a landing tread says where it is less than the riser and its nosing, or no more", () => {
  const note = (depth: number): string | undefined => noteOf("landing tread", { landingTread: inch(depth) });
  expect([note(1.99), note(2), note(2.01)]).toEqual([
    expect.stringContaining("; less than the riser and its nosing together, so it ends short of the riser's back"),
    expect.stringContaining("; the least width, riser thickness and nosing; list a nosing blank to save the rip"),
    "nosing piece of the landing at the top of the flight",
  ]);
  // Its own length where it is given, else that of a tread; what is trimmed is added.
  const trims = { trimLength: inch(1), trimDepth: inch(0.5), landingTread: inch(3) };
  expect(sizes(trims)).toEqual([["tread", 37, 11.75, 13], ["landing tread", 37, 3.5, 1], ["riser", 37, 7, 14]]);
  expect(sizes({ ...trims, landingTreadLength: inch(40) })).toEqual([
    ["tread", 37, 11.75, 13], ["landing tread", 41, 3.5, 1], ["riser", 37, 7, 14],
  ]);
});

test("what is missing, or leaves nothing, is told", () => {
  const { totalRise: _, risers: __, ...noRise } = KNOWN;
  const of = (facts: StairFacts): unknown => {
    const stair = resolvedStair(facts);
    const found = isProblem(stair) ? stair : blankList(stair, undefined, "in");
    return isProblem(found) ? found.problem : "answered";
  };
  const without = (label: keyof StairFacts): StairFacts => Object.fromEntries(Object.entries(KNOWN).filter(([name]) => name !== label));
  expect([of(noRise), of(without("run")), of(without("width")), of(KNOWN)]).toEqual(["no-total-rise", "no-run", "no-width", "answered"]);
  expect([of({ ...KNOWN, treadThickness: inch(7.5) }), of({ ...KNOWN, treadThickness: inch(7.49), lap: inch(0) })]).toEqual([
    "tread-thicker-than-rise", "answered",
  ]);
  expect([of({ ...KNOWN, lap: inch(1) }), of({ ...KNOWN, lap: inch(1.01) })]).toEqual(["answered", "lap-over-tread"]);
});

test("boards are called by their label or their length, on hand or not, and named in series", () => {
  const board = (label: string | undefined, owned: boolean): Candidate => ({
    stock: { ...(label === undefined ? {} : { label }), length: inch(96), available: 1, owned }, width: inch(12), price: exact(9),
  });
  expect([named(board("oak 8", false), "in"), named(board("", true), "in"), named(board(undefined, false), "mm")]).toEqual([
    "oak 8", "the board of 96 in (on hand)", "the board of 2438.4 mm",
  ]);
  expect([inSeries([]), inSeries(["a"]), inSeries(["a", "b"]), inSeries(["a", "b", "c"])]).toEqual(["", "a", "a and b", "a, b and c"]);
  // 1/8 x 25.4.
  expect(KERF_TEXT).toEqual({ in: "1/8 in (3.175 mm)", mm: "3.175 mm (1/8 in)" });
});
