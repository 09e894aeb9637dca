import { cutPieces, type CutPiece } from "../../src/functions/cut-pieces";
import { RISERMARKS } from "../../src/functions/fit/risermarks";

/** The pieces of a call of MARKS or RISERMARKS, and what hangs on readings that are to be taken again. */

const HEADINGS = ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"];
const pieces = (kind: "tread" | "riser", ...passed: unknown[]): readonly CutPiece[] => {
  const found = cutPieces(kind, passed);
  if (typeof found === "string") throw new Error(found);
  return found;
};

test("a call that has no answer is its sentence", () => {
  expect(cutPieces("tread", [])).toContain("readings: is missing");
  expect(cutPieces("riser", [[["step", "top"], [1, 36]]])).toContain('heading "');
});

test("each step is a piece with its acts, their cells as texts, with or without headings", () => {
  const table = [HEADINGS.slice(0, 5), [1, 10, 36, 36, "37 3/8"], [2, 10, 37, 37, "38 3/8"]];
  const found = pieces("tread", table);
  expect(found.map(({ kind, step, unit }) => [kind, step, unit])).toEqual([["tread", "1", "in"], ["tread", "2", "in"]]);
  for (const { acts, outline, doubt } of found) {
    expect(acts.map(({ cells }) => cells.number)).toEqual(acts.map((_, place) => String(place + 1)));
    expect([acts[0]?.cells.act, typeof outline, doubt]).toEqual(["RIP", "object", undefined]);
  }
  expect(found[0]?.acts[0]?.cells.step).toBe("1");
  const names = Object.keys(found[0]?.acts[0]?.cells ?? {});
  expect(names.slice(0, 3)).toEqual(["step", "number", "act"]);
});

test("a step that cannot be read is one act without a figure, and no doubt", () => {
  const [bad, good] = pieces("tread", [HEADINGS.slice(0, 5), [9, 10, "x", 36, "37 3/8"], [10, 10, 36, 36, "37 3/8"]]);
  expect([bad?.step, bad?.acts.length, bad?.acts[0]?.cells.act, bad?.acts[0]?.cells.distance]).toEqual(["9", 1, "READ AGAIN", ""]);
  expect([bad?.outline, bad?.doubt, good?.step]).toEqual([undefined, undefined, "10"]);
});

// A flight whose fronts are 35 15/16 to 36, and one front of 37 in the fourth row, after one that is no reading at all.
const FLIGHT = [
  HEADINGS, [1, 10, 36, 35.9375, 37.125, 37.5625, -1.5], [2, 10, 36.0625, 35.9375, 37.125, 37.625, -1.5],
  [9, 10, "x", 36, 37, 37, 0], [3, 10, 36.0625, 36, 37.125, 37.625, -1.5], [4, 10, 36.0625, 37, 37.1875, 37.625, -1.5],
  [5, 10, 36.125, 36, 37.1875, 37.6875, -1.5],
];

test("where the flight names a reading it alone is doubtful, with what it likely is, and what two ways to a corner come to", () => {
  const piece = pieces("tread", FLIGHT)[4];
  expect(piece?.acts.map(({ cells }) => cells.act)).toEqual(["READ AGAIN"]);
  expect(piece?.doubt?.readings.filter(({ isDoubtful }) => isDoubtful).map(({ name, read, likely }) => [name, read, likely])).toEqual([
    ["front", "37", "36"],
  ]);
  // By hand: from the two diagonals the front left corner lies 36.0625 - 36.2717 = -0.2092, or 35.8178 - 37 = -1.1822: 0.973 apart, so a
  // front of 36.027, 1/32 and 0.004 less.
  expect(piece?.doubt?.across).toEqual({ from: "back", name: "front", given: "36 1/32", read: "37" });
  const acts = piece?.doubt?.acts ?? [];
  expect(acts.length).toBeGreaterThan(4);
  expect(acts.map(({ cells }) => [cells.step, cells.number])).toEqual(acts.map((_, place) => ["4", String(place + 1)]));
  expect(acts[0]?.cells.act).toBe("RIP");
  expect(acts.map(({ act }) => act?.kind)).toContain("mark");
});

test("steps with each other's readings are doubtful in every reading, and none has another length", () => {
  // Steps 2 and 3 exchanged: both close.
  const rows = [1, 3, 2, 4, 5, 6].map((step, place) => {
    const back = 36 + step / 2;
    return [place + 1, 10, back, back + 0.25, Math.hypot(back + 0.25, 10), Math.hypot(back, 10)];
  });
  const found = pieces("tread", [HEADINGS.slice(0, 6), ...rows]);
  expect(found.map(({ doubt }) => doubt)).toEqual(Array(6).fill(undefined));
  const notes = found.map(({ acts }) => acts.map(({ cells }) => cells.note).join());
  expect(notes.map((note) => note.includes("likely exchanged with step"))).toEqual([false, true, true, false, false, false]);
});

test("metric pieces are in millimetres", () => {
  const readings = [["step", "height", "top", "bottom", "left offset"], [2, 178, 914, 914, "square"]];
  const passed = Object.keys(RISERMARKS.parameters).map((name) => ({ readings, unit: "mm" })[name]);
  const [piece] = pieces("riser", ...passed);
  expect([piece?.unit, piece?.step, piece?.acts[0]?.cells.unit]).toEqual(["mm", "2", "mm"]);
});
