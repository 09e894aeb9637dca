import {
  bevelText, checkText, depthText, freeEndText, fromTo, hookText, joined, markText, mitreText, swingText, tapeText, type Ticket, tiltText,
} from "../../src/functions/act-phrases";
import { actRows, type Made } from "../../src/functions/act-words";
import { shimNote } from "../../src/functions/shim-note";
import type { Act, Mark, Side } from "../../src/solver/fit/acts";
import { type Length, lengthOf } from "../../src/solver/length/length";
import type { ShimPlan } from "../../src/solver/survey/shim-plan";

/** The words of a ticket, phrase by phrase. A tape is read to 1/32 in and half a millimetre, a rule to 1/64 in. */

const at = (end: Side, place: Mark["place"]): Mark => ({ end, place });
const marked = (end: Side, place: Mark["place"]): Act => ({
  kind: "mark", mark: at(end, place), hook: { end: "left", along: "nose", isSquared: false }, distance: 1, isBurnt: false,
});
const ACTS: readonly Act[] = [
  { kind: "gauge", distance: 1 }, marked("left", "nose"), marked("right", "nose"), marked("right", "back"),
  { kind: "mark the depth", end: "left", isOpen: false, distance: 1 }, { kind: "mark the depth", end: "right", isOpen: false, distance: 1 },
];
const TICKET: Ticket = { acts: ACTS, unit: "in" };

test("marks go by the numbers of the acts that make them, each end and place its own", () => {
  expect([at("left", "nose"), at("right", "nose"), at("right", "back")].map((mark) => markText(TICKET, mark))).toEqual([
    "mark 2", "mark 3", "mark 4",
  ]);
  expect(fromTo(TICKET, at("right", "back"), at("left", "nose"))).toBe("from mark 4 to mark 2");
  expect(depthText(TICKET, ["left", "right"], "left")).toBe("mark 5");
  expect([depthText(TICKET, ["right"], "right"), depthText(TICKET, ["right"], "left")]).toEqual(["mark 6", "the left back corner"]);
});

test("parts that say nothing are left out", () => expect([joined("a", undefined, "", "b"), joined()]).toEqual(["a; b", ""]));

describe("a cut that goes from square", () => {
  const swing = (end: Side, angle: number, over: number) => swingText(end, { angle, over, far: "back", near: "nose" }, "in");

  // At 45 degrees over 2 in the one corner lies 2 in inside a square line through the other.
  test("goes to its own end where the nearer edge is the longer, else to the other, and says which corner lies inside", () => {
    expect(swing("left", 45, 2)).toEqual({ swing: "45.0°, near end of the cut to the left", offset: "back in by 2" });
    expect(swing("left", -45, 2)).toEqual({ swing: "45.0°, near end of the cut to the right", offset: "nose in by 2" });
    expect(swing("right", 45, 2)).toEqual({ swing: "45.0°, near end of the cut to the right", offset: "back in by 2" });
    expect(swing("right", -45, 2)).toEqual({ swing: "45.0°, near end of the cut to the left", offset: "nose in by 2" });
  });

  test("is square where a rule shows nothing of it", () => {
    // By hand: 10 tan 0.04 is 0.00698, under half of 1/64, 0.0078; 10 tan 0.05 is 0.0087.
    expect([swing("left", 0.04, 10), swing("left", -0.04, 10), swing("left", 0, 10)]).toEqual(Array(3).fill({ swing: "square" }));
    expect(swing("left", 0.05, 10)).toEqual({ swing: "0.1°, near end of the cut to the left", offset: "back in by 1/64" });
  });

  test("is a mitre as the saw's scale has it, from square, and as it is counted from the edge", () =>
    expect(mitreText(44, "nose", "left", { corner: "heel", by: 1.25 }, "in")).toEqual({
      swing: "46.0° on the saw's scale, near end of the cut to the left (44.0° from the nose)", offset: "heel in by 1 1/4",
    }));

  test("at the free end of a return goes to the end whose edge is longer", () => {
    expect(freeEndText("left", 2, 0, "in")).toEqual({ swing: "square" });
    expect(freeEndText("left", 2, 0.25, "in")).toEqual({ swing: "2.0°, near end of the cut to the right", offset: "outer edge in by 1/4" });
    expect(freeEndText("right", 2, 0.25, "in").swing).toBe("2.0°, near end of the cut to the left");
    expect(freeEndText("left", -2, -0.25, "in")).toEqual({
      swing: "2.0°, near end of the cut to the left", offset: "inner edge in by 1/4",
    });
  });
});

test("a blade leans away from the piece where the face is longer, over it where the other side is; under a twentieth is upright", () => {
  expect(tiltText("left", 1.72, "tread")).toBe(
    "1.7°, top of the blade to the left, away from the piece: face longer; square on the end: light shows at the underside",
  );
  expect(tiltText("left", -1.72, "riser")).toBe(
    "1.7°, top of the blade to the right, over the piece: back longer; square on the end: light shows at the face",
  );
  expect(tiltText("right", 1, "riser")).toContain("to the right, away from the piece: face longer; ");
  expect(tiltText("right", 1, "riser")).toContain("light shows at the back");
  expect([0, 0.04, -0.04].map((tilt) => tiltText("left", tilt, "tread"))).toEqual(Array(3).fill("upright"));
  expect(tiltText("left", 0.06, "tread")).toMatch(/^0[.]1°/);
  expect(bevelText(-2)).toBe("2.0°, off the back of the top edge, not off the face");
});

test("a tape is hooked on a corner, on a squared end or on the gauged line's, or burnt by as much as is easily taken off", () => {
  const hook = (along: "nose" | "gauged line", isSquared: boolean, isBurnt: boolean, unit: "in" | "mm" = "in") =>
    hookText({ end: "left", along, isSquared }, isBurnt, unit);
  expect([hook("nose", false, false), hook("nose", true, false), hook("gauged line", false, false)]).toEqual([
    "hook the left nose corner, along the nose", "hook the squared left end, along the nose", "hook the left end, on the gauged line",
  ]);
  expect([hook("nose", false, true), hook("nose", false, true, "mm")]).toEqual([
    "burn an inch at the left nose corner, along the nose", "burn 100 at the left nose corner, along the nose",
  ]);
  // The figure on the tape has what was burnt in it.
  expect([tapeText(36.5, false, "corner", "in"), tapeText(36.5, true, "corner", "in"), tapeText(900, true, "end", "mm")]).toEqual([
    "36 1/2", "37 1/2, the 1 at the corner", "1000, the 100 at the end",
  ]);
});

test("a check goes from mark to mark, or from a corner, and nothing is burnt for it", () => {
  expect(checkText(TICKET, at("left", "nose"), at("right", "back"), false)).toBe("from mark 2 to mark 4");
  expect(checkText(TICKET, { end: "left", corner: "nose" }, at("right", "back"), false)).toBe("hook the left nose corner, to mark 4");
  expect(checkText(TICKET, { end: "left", corner: "gauged line" }, at("right", "back"), true)).toBe(
    "from mark 4 to the left end, nothing burnt",
  );
});

describe("rows of a step", () => {
  type Row = Readonly<Record<string, unknown>> & { readonly made: Made };
  const rows = (...acts: readonly Act[]) => actRows({ step: 3, acts }, "in") as readonly Row[];

  test("are numbered in the order of the acts, and a step without an answer has one, with its reason", () => {
    expect(rows(...ACTS).map(({ step, number }) => [step, number])).toEqual(ACTS.map((_, place) => [3, place + 1]));
    expect(actRows({ step: 3, acts: ACTS, bad: "why" }, "in")).toEqual([{ step: 3, act: "READ AGAIN", bad: "why", made: {} }]);
    expect(rows(ACTS[0]!)[0]?.made).toEqual({ act: ACTS[0] });
  });

  test("of a bevel say whether it runs from end to end", () => {
    const bevel: Act = { kind: "bevel", degrees: 2, relief: 0.25 };
    expect(rows(bevel)[0]).toMatchObject({ act: "BEVEL TOP", offset: "back in by 1/4", note: "from end to end" });
    expect(rows({ kind: "end the bevel", end: "left", distance: 1.5 }, bevel)[1]?.["note"]).toContain("up to the bevel mark");
    expect(rows({ kind: "end the bevel", end: "left", distance: 1.5 })[0]).toMatchObject({
      hookOn: "hook the left end, along the top of the back", tape: "1 1/2", note: "the bevel stops here: leave the last 1 1/2 unbevelled",
    });
  });

  test("of a notch, a depth and a return say where each is measured from", () => {
    const notch = (way: "along" | "up") => rows({ kind: "mark the notch", end: "left", way, distance: 1 })[0]?.["hookOn"];
    expect([notch("along"), notch("up")]).toEqual(["hook the left end, along the bottom", "hook the bottom, up the left end"]);
    expect([true, false].map((isOpen) => rows({ kind: "mark the depth", end: "left", isOpen, distance: 1 })[0]?.["hookOn"])).toEqual([
      "from the left heel, along the sawn line", "hook the left nose corner, along the left end",
    ]);
    const ended = (innerLonger: number) =>
      rows({ kind: "end the return", end: "left", distance: 12, angle: 2, innerLonger })[0]?.["note"];
    expect([ended(0), ended(0.5), ended(-0.5)]).toEqual([
      "face up, outer edge toward you; long point to square end", "face up, outer edge toward you; inner edge longer at this end",
      "face up, outer edge toward you; outer edge longer at this end",
    ]);
    expect(rows({ kind: "mitre the return", end: "left", fromNose: 45, toePastHeel: 1.25, width: 1.25 })[0]).toMatchObject({
      act: "MITRE LEFT RETURN", swing: "45.0° on the saw's scale, near end of the cut to the right (45.0° from the outer edge)",
      note: expect.stringContaining("ripped 1 1/4 wide; face up, outer edge toward you: the mitre is its right end, outer edge longer"),
    });
    const [mitre] = rows({ kind: "mitre", end: "left", fromNose: 45, toePastHeel: 1.25 });
    expect(mitre?.["swing"]).toContain("to the left (45.0° from the nose)");
  });

  test("of a sawn end say the marks it is sawn on, or to strike them first", () => {
    const saw = (on?: readonly [Mark, Mark]) => rows(...ACTS, {
      kind: "saw end", end: "right", piece: "tread", swing: { angle: 0, over: 10, far: "back", near: "nose" }, tilt: 0,
      ...(on === undefined ? {} : { on }),
    })[ACTS.length]?.["note"];
    const laid = "face up, nose toward you, back edge at the saw's fence";
    expect([saw(), saw([at("right", "nose"), at("right", "back")])]).toEqual([
      `${laid}; strike it first; leave the line`, `${laid}; from mark 3 to mark 4; leave the line`,
    ]);
  });
});

describe("what a packing of sub-treads comes to", () => {
  const inch = (inches: number): Length => lengthOf(inches, "in");
  const note = (plan: Partial<ShimPlan>, spread?: number, maxRise?: number): string =>
    shimNote(
      { total: inch(1), spread: inch(0.25), isReached: true, hasRiseOver: false, waysOut: undefined, ...plan } as ShimPlan,
      spread === undefined ? undefined : inch(spread), maxRise === undefined ? undefined : inch(maxRise), "in",
    );

  test("is within what was asked for, or the least there is, and nothing to pack is said", () => {
    expect([note({}, 0.375), note({}), note({ total: inch(0) }), note({ total: inch(0) }, 0.375)]).toEqual([
      'within 3/8"', "the least spread there is", "the least spread there is; nothing to pack", 'within 3/8"; nothing to pack',
    ]);
  });

  test("does not reach it, with each way out", () => {
    const missed = (waysOut: object): string => note({ isReached: false, waysOut }, 0.125);
    const begins = 'packing does not reach 1/8"; the least is 1/4". ';
    expect(missed({})).toBe(`${begins}No single change reaches it; try most, lowerMore and upperMore together, or change the framing`);
    expect(missed({ most: inch(1) })).toBe(`${begins}To reach it, pack up to 1" (most)`);
    expect(missed({ lowerMore: inch(1), upperMore: inch(2) })).toBe(
      `${begins}To reach it, raise the lower floor by 1" (lowerMore) or raise the upper floor by 2" (upperMore)`,
    );
    expect(missed({ both: { lowerMore: inch(1), upperMore: inch(2) } })).toBe(
      `${begins}To reach it, raise the lower floor by 1" (lowerMore) and raise the upper floor by 2" (upperMore)`,
    );
    expect(note({ isReached: false }, 0.125)).toBe('packing does not reach 1/8"; the least is 1/4"');
  });

  test("leaves a rise over the greatest, with the spread where one was asked for", () => {
    const over = { hasRiseOver: true, isReached: false };
    expect([note(over, undefined, 7.75), note(over, 0.25, 7.75), note(over, 0.125, 7.75)]).toEqual([
      'no packing keeps every rise to 7 3/4"',
      'no packing keeps every rise to 7 3/4" and the spread within 1/4"',
      'no packing keeps every rise to 7 3/4" and the spread within 1/8"; the least spread is 1/4"',
    ]);
    expect(note({ ...over, waysOut: { most: inch(1) } }, undefined, 7.75)).toBe(
      'no packing keeps every rise to 7 3/4". To reach it, pack up to 1" (most)',
    );
    // Under the greatest nothing is said of it.
    expect(note({}, 0.375, 7.75)).toBe('within 3/8"');
  });
});
