import { cutCard } from "../../../src/drawing/cards/cut-card";
import { type CutPiece, cutPieces } from "../../../src/functions/cut-pieces";
import { FACTS, metricOf, mirrored, only, type Opening, randomPieces, riserOf, taperedOf, treadOf } from "./jobs";
import { transcribed } from "./transcribed";
import { type Card, path, readCard, type Spot, struckTexts, touches } from "./read-card";

const cardOf = (piece: CutPiece): Card => readCard(cutCard(piece, FACTS));
const OPENING: Opening = { depth: 10, back: 36.5, left: 0.25, right: 0.375, leftLean: -1.5, rightLean: 2 };
/** Every pair of directions, so that no sign is right by chance. */
const SKEWED: readonly Opening[] = [1, -1].flatMap((left) => [1, -1].flatMap((right) => [1, -1].map((lean) => ({
  depth: 10, back: 36, left: 0.25 * left, right: 0.375 * right, leftLean: 1.5 * lean, rightLean: -2 * lean,
}))));

const scaleOf = ({ texts }: Card): number =>
  Number(texts.map(({ text }) => /^(?:plan|face) 1:(\d+) /.exec(text)?.[1]).find((scale) => scale !== undefined));

/** The texts of one act on the card, its verb first. */
const actsOn = ({ texts }: Card): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, string[]>();
  for (const { part, text } of texts) {
    const [, number] = /^act (\d+) /.exec(part) ?? [];
    if (number !== undefined) found.set(number, [...(found.get(number) ?? []), text]);
  }
  return found;
};

const wordsOf = (card: Card, verb: string): string =>
  [...actsOn(card).values()].find(([first]) => first === verb)?.join(" | ") ?? "";

const SIDES = ["left", "right"] as const;

/** An end of the piece in the plan: its near and its far corner, the outermost of both edges. */
const endInPlan = (card: Card, side: "left" | "right"): { readonly near: Spot; readonly far: Spot } => {
  const { points } = path(card, "piece");
  const [low, high] = [Math.max(...points.map(([, y]) => y)), Math.min(...points.map(([, y]) => y))];
  const outermost = (edge: number): Spot => {
    const on = points.filter(([, y]) => Math.abs(y - edge) < 0.01).sort(([one], [other]) => one - other);
    return (side === "left" ? on[0] : on.at(-1)) ?? [0, 0];
  };
  return { near: outermost(low), far: outermost(high) };
};

describe("ends as they are drawn and as they are said", () => {
  const pieces = SKEWED.flatMap((opening) => [
    ["tread", treadOf(opening, "none")] as const,
    ["riser", riserOf(opening, "none", 0)] as const,
  ]);

  test.each(pieces)("a %s's swing, seen from above and in the plan, goes the way the words say", (_, piece) => {
    const card = cardOf(piece);
    for (const side of SIDES) {
      const words = wordsOf(card, `SAW ${side.toUpperCase()} END`);
      const [, way = ""] = /near end of the cut to the (LEFT|RIGHT)/.exec(words) ?? [];
      const expected = way === "LEFT" ? -1 : 1;
      expect(way).not.toBe("");
      const [, high, low] = path(card, `${side} swing`).points as readonly [Spot, Spot, Spot];
      expect(Math.sign(low[0] - high[0])).toBe(expected);
      const { near, far } = endInPlan(card, side);
      expect(Math.sign(near[0] - far[0])).toBe(expected);
      const [from, to] = path(card, `${side} swing arrow`).points as readonly [Spot, Spot];
      expect(Math.sign(to[0] - from[0])).toBe(expected);
    }
  });

  test.each(pieces)("a %s's tilt leans the way the words say, and leaves the side longer that they say", (kind, piece) => {
    const card = cardOf(piece);
    for (const side of SIDES) {
      const words = wordsOf(card, `SAW ${side.toUpperCase()} END`);
      const [, way = "", , longer = ""] = /top of the blade to the (LEFT|RIGHT),(.*?): (face|underside|back) longer/.exec(words) ?? [];
      const [, face, other] = path(card, `${side} tilt`).points as readonly [Spot, Spot, Spot];
      expect(Math.sign(face[0] - other[0])).toBe(way === "LEFT" ? -1 : 1);
      const outward = side === "left" ? -1 : 1;
      expect((face[0] - other[0]) * outward > 0 ? "face" : kind === "tread" ? "underside" : "back").toBe(longer);
      const [from, to] = path(card, `${side} tilt arrow`).points as readonly [Spot, Spot];
      expect(Math.sign(to[0] - from[0])).toBe(way === "LEFT" ? -1 : 1);
    }
  });

  test("a square, upright end is drawn square and upright, and says so", () => {
    const card = cardOf(treadOf({ depth: 10, back: 36, left: 0, right: 0, leftLean: 0, rightLean: 0 }, "none"));
    for (const side of SIDES) {
      for (const part of ["swing", "tilt"]) {
        const [, high, low] = path(card, `${side} ${part}`).points as readonly [Spot, Spot, Spot];
        expect(high[0]).toBe(low[0]);
      }
      expect(card.texts.find(({ part }) => part === `${side} swing figure`)?.text).toBe("square");
      expect(card.texts.find(({ part }) => part === `${side} tilt figure`)?.text).toBe("upright");
    }
  });

  test("any other angle is drawn at 13 degrees, and the legend says so", () => {
    const card = cardOf(treadOf(OPENING, "none"));
    const [, high, low] = path(card, "left swing").points as readonly [Spot, Spot, Spot];
    // tan 13 degrees, from a table: 0.2309.
    expect(Math.abs(high[0] - low[0]) / (low[1] - high[1])).toBeCloseTo(0.2309, 3);
    expect(card.texts.some(({ text }) => text.includes("skirt end: any angle drawn at 13°"))).toBe(true);
    // Square and upright ends and open ones are drawn as they are.
    for (const piece of [treadOf({ ...OPENING, left: 0, right: 0, leftLean: 0, rightLean: 0 }, "none"), treadOf(OPENING, "both")])
      expect(cardOf(piece).texts.some(({ text }) => text.includes("13°"))).toBe(false);
  });
});

const INCH = 25.4;

describe("lengths as they are drawn", () => {
  const pieces: readonly (readonly [string, CutPiece])[] = [
    ["two skirts", treadOf(OPENING, "none")],
    ["right end open", treadOf(OPENING, "right")],
    ["left end open", treadOf(OPENING, "left")],
    ["both open", treadOf({ ...OPENING, leftLean: 0 }, "both")],
    ["tapered", taperedOf(10, 10.75, 36, 37, "none")],
    ["riser run past", riserOf({ ...OPENING, depth: 7.5 }, "right", 4)],
  ];

  test.each(pieces)("%s: each tape from its hook to its tick, times the scale, is the distance of its act", (_, piece) => {
    const card = cardOf(piece);
    const scale = scaleOf(card);
    let measured = 0;
    for (const { act, cells } of piece.acts) {
      if (act?.kind !== "mark") continue;
      const hook = card.paths.find(({ part }) => /^tape .* hook$/.test(part) && part.split(" ").includes(cells.number));
      const { points: [from, to] } = path(card, `tick ${cells.number}`);
      if (hook?.points[0] === undefined || from === undefined || to === undefined) throw new Error(`act ${cells.number} is not drawn`);
      const drawn = (Math.abs((from[0] + to[0]) / 2 - hook.points[0][0]) * scale) / INCH;
      const exact = Number(cells.distance);
      expect(Math.abs(drawn - exact) / exact).toBeLessThan(0.005);
      measured += 1;
    }
    expect(measured).toBeGreaterThanOrEqual(2);
  });

  test.each(pieces)("%s: the piece is as deep, times the scale, as it is ripped", (_, piece) => {
    const card = cardOf(piece);
    const { points } = path(card, "piece");
    const deep = Math.max(...points.map(([, y]) => y)) - Math.min(...points.map(([, y]) => y));
    const exact = Number(piece.acts[0]?.cells.distance);
    expect(Math.abs((deep * scaleOf(card)) / INCH - exact) / exact).toBeLessThan(0.005);
  });

  test.each(pieces)("%s: a figure in the plan is the figure of its act", (_, piece) => {
    const card = cardOf(piece);
    const labels = card.texts.filter(({ part }) => /^tape \d+$/.test(part));
    expect(labels.length).toBeGreaterThanOrEqual(2);
    for (const { part, text } of labels) {
      const { cells } = piece.acts.find((act) => `tape ${act.cells.number}` === part) ?? {};
      const [reading = ""] = cells?.tape.split(", ") ?? [];
      const burnt = / from (\d+)$/.exec(text)?.[1];
      expect(text.replace(/ from \d+$/, "").replace("+", " strong").replace("−", " shy")).toBe(reading);
      expect(burnt ?? "").toBe(/the (\d+) at/.exec(cells?.tape ?? "")?.[1] ?? "");
    }
  });

  test("a notch is drawn as far along and up as it is marked", () => {
    // By hand: 3/4 of skirt and 1/4 past it along, 1/4 of lap up.
    const card = cardOf(riserOf({ depth: 7, back: 24, left: 0, right: 0, leftLean: 0, rightLean: 0 }, "right", 0));
    const { points } = path(card, "piece");
    const [left, right] = [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))];
    const low = Math.max(...points.map(([, y]) => y));
    const bottom = points.filter(([, y]) => y === low).map(([x]) => x);
    expect(((right - Math.max(...bottom)) * scaleOf(card)) / INCH).toBeCloseTo(1, 2);
    const step = points.find(([x, y]) => x === right && y < low && y > low - 3);
    expect(((low - (step?.[1] ?? 0)) * scaleOf(card)) / INCH).toBeCloseTo(0.25, 2);
    expect(((right - left) * scaleOf(card)) / INCH).toBeCloseTo(24.25, 1);
  });
});

describe("what is said on a card", () => {
  test.each([
    ["tread", treadOf(OPENING, "right")],
    ["tread open at both ends", treadOf({ ...OPENING, leftLean: 0 }, "both")],
    ["riser", riserOf({ ...OPENING, depth: 7.5 }, "right", 4)],
  ])("every figure and every direction of the rows of a %s stands on its card, under the number of its act", (_, piece) => {
    const acts = actsOn(cardOf(piece));
    expect([...acts.keys()]).toEqual(piece.acts.map(({ cells }) => cells.number));
    for (const { cells } of piece.acts) {
      // Where two acts share a row, their words stand behind the second.
      const next = String(Number(cells.number) + 1);
      const said = [...(acts.get(cells.number) ?? []), ...(acts.get(next) ?? [])].join(" ").toLowerCase();
      const [verb] = acts.get(cells.number) ?? [];
      expect(verb).toBe(cells.act);
      const wanted = [
        ...cells.tape.split(/,? /), ...(cells.swing.match(/^[\d.]+°|near end of the cut to the (?:left|right)|^square/g) ?? []),
        ...cells.offset.split(" "), ...(cells.tilt.match(/^[\d.]+°|top of the blade to the (?:left|right)|\w+ longer|^upright/g) ?? []),
        ...cells.hookOn.split(" "),
      ];
      for (const word of wanted) expect(said).toContain(word.toLowerCase());
    }
  });

  test("how the piece lies is said in the plan, in the words the acts leave out", () => {
    const { texts } = cardOf(treadOf(OPENING, "none"));
    for (const words of ["FACE UP", "NOSE TOWARD YOU", "BACK EDGE AT THE SAW'S FENCE", "Test cut in scrap."]) {
      expect(texts.filter(({ text }) => text === words)).toHaveLength(1);
    }
    expect(texts.some(({ text }) => text.includes("leave the line"))).toBe(true);
    const wrong = "CHECK off by more than 1/32: mark again; if the marks hold, an end already sawn is wrong";
    expect(texts.some(({ text }) => text === wrong)).toBe(true);
  });

  test("an inch burnt is in the large figure, and the net one stands beside it", () => {
    const card = cardOf(treadOf(OPENING, "right"));
    const words = wordsOf(card, "MARK RIGHT TOE");
    const [, whole = "", net = ""] = /\| (\d+)\b.*\(net (\d+)\b/.exec(words) ?? [];
    expect(Number(whole)).toBe(Number(net) + 1);
  });
});

describe("a doubtful step", () => {
  const HEADINGS = ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"];
  // By hand: sides of 10 and 36 have diagonals of 37.36; one that is a quarter longer belongs to no such opening.
  const alone = only(cutPieces("tread", [[HEADINGS, [6, 10, 36, 36, 37.375, 37.625, -1.5]], null, "right"]));
  // A flight whose fronts are 35 15/16 to 36, and one front of 37.
  const named = (cutPieces("tread", [[
    HEADINGS, [1, 10, 36, 35.9375, 37.125, 37.5625, -1.5], [2, 10, 36.0625, 35.9375, 37.125, 37.625, -1.5],
    [3, 10, 36.0625, 36, 37.125, 37.625, -1.5], [4, 10, 36.0625, 37, 37.1875, 37.625, -1.5],
    [5, 10, 36.125, 36, 37.1875, 37.6875, -1.5],
  ], null, "right"]) as readonly CutPiece[])[3] as CutPiece;
  const riser = only(cutPieces("riser", [
    [["step", "height", "top", "bottom", "diagonal", "second diagonal"], [4, 7.5, 36, 36, 36.75, 37.125]], "right",
  ]));
  // Ends 10 degrees off that 36 and 36 leave no room for.
  const angled = only(cutPieces("tread", [
    [["step", "left run", "right run", "back", "front", "left angle", "right angle"], [8, 10, 10.5, 36, 36, 10, 10]], null, "both",
  ]));
  const cases: readonly (readonly [string, CutPiece])[] = [["alone", alone], ["named", named], ["riser", riser], ["angled", angled]];

  test.each(cases)("%s: has no act to tick, no direction and no tape, and says that nothing is sawn from it", (_, piece) => {
    const { texts, paths } = cardOf(piece);
    const said = texts.map(({ text }) => text);
    expect(said).toContain("READ AGAIN BEFORE YOU CUT");
    expect(said).toContain("NOTHING IS SAWN FROM THIS CARD");
    const [first, last] = ["NOTHING IS SAWN FROM THIS CARD", "READ AGAIN BEFORE YOU CUT"].map((words) =>
      texts.find(({ text }) => text === words));
    expect(first?.bottom).toBeLessThan(last?.top ?? -Infinity);
    expect(said.join(" ")).toContain("disagree");
    expect(said.join(" ")).not.toMatch(/near end|top of the blade|longer|strike it first/);
    expect(texts.some(({ part }) => part.startsWith("act ") || part.startsWith("tape "))).toBe(false);
    expect(paths.some(({ part }) => part === "piece" || part.includes("swing") || part.includes("arrow"))).toBe(false);
    // The opening is drawn square whatever its readings: its sides are upright on paper.
    for (const side of ["left", "right"]) {
      const { points: [high, low] } = path({ texts, paths, circles: [] }, `opening ${side}`);
      expect(high?.[0]).toBe(low?.[0]);
    }
  });

  test.each(cases)("%s: what is not to be done has a line through it, and nothing else has", (_, piece) => {
    const card = cardOf(piece);
    const marked = card.texts.filter(({ part }) => part.startsWith("struck"));
    expect(marked.length).toBeGreaterThan(4);
    expect(struckTexts(card)).toEqual(marked);
    // All acts but the checks: the rip too.
    const struckActs = marked.flatMap(({ part, text }) => (part === "struck reading" ? [] : [text]));
    const acts = piece.doubt?.acts.filter(({ act }) => act?.kind !== "check") ?? [];
    expect(struckActs).toEqual(acts.map(({ cells }) => cells.act));
    expect(struckActs).toContain("RIP");
  });

  test.each(cases)("%s: no figure of an act is to be read, with a line through it or without", (_, piece) => {
    const { texts } = cardOf(piece);
    const read = new Set(piece.doubt?.readings.flatMap((one) => [one.read, one.likely]));
    const figures = texts.filter(({ part, text }) => /^(struck |held |)\d/.test(part) && /\d/.test(text));
    expect(figures).toEqual([]);
    for (const { cells } of piece.doubt?.acts ?? []) {
      const [tape = ""] = cells.tape.split(", ");
      if (tape === "" || read.has(tape)) continue;
      expect(texts.map(({ text }) => text)).not.toContain(tape);
    }
    expect(texts.filter(({ part, text }) => text.includes("°") && part !== "reading" && part !== "struck reading")).toEqual([]);
  });

  test.each([...cases, ["unreadable", only(cutPieces("tread", [[["step", "run", "back"], [9, 10, "x"]]]))] as const])(
    "%s: no text touches another, a line or the margin, and none is smaller than 2.5 mm", (_, piece) => {
      const card = cardOf(piece);
      expect(touches(card)).toEqual([]);
      expect(card.texts.filter(({ size }) => size < 2.5)).toEqual([]);
    },
  );

  const struckReadings = (piece: CutPiece): readonly string[] =>
    struckTexts(cardOf(piece)).filter(({ part }) => part === "struck reading").map(({ text }) => text);
  const linesOf = (piece: CutPiece): string => cardOf(piece).texts.map(({ text }) => text).join(" | ");

  test("where the flight names one reading, that one is struck, with what it likely is, and a box for the new one", () => {
    // Once in the sketch and once beside its box.
    expect(struckReadings(named)).toEqual(["37", "37"]);
    expect(linesOf(named)).toContain(
      "front: | length along the front edge of the sub-tread; read | 37 | expect about 36; tape it | new",
    );
    // By hand: from the two diagonals the front left corner lies 36.0625 - leg(37.625) = 36.0625 - 36.2717 = -0.2092, or
    // leg(37.1875) - 37 = 35.8178 - 37 = -1.1822; 0.973 apart: a front of 36.027, 1/32 and 0.004 less, closes.
    expect(linesOf(named).replaceAll(" | ", " ")).toContain(
      "the diagonals disagree: with the back they give a front of 36 1/32, read as 37; the steps around it say front; " +
      "read again what is struck",
    );
    const taped = cutCard(named, FACTS).match(/<polyline[^>]*taped [^>]*>/g) ?? [];
    const dashed = taped.filter((tag) => tag.includes("stroke-dasharray")).map((tag) => /taped ([a-z ]+)/.exec(tag)?.[1]);
    expect(dashed).toEqual(["front"]);
  });

  test("where none is named, all that the diagonals go through is struck, the run is not, and each has a box", () => {
    expect([...struckReadings(alone)].sort()).toEqual(["36", "36", "36", "36", "37 3/8", "37 3/8", "37 5/8", "37 5/8"].sort());
    expect(cardOf(alone).texts.filter(({ text }) => text === "new")).toHaveLength(4);
    expect(linesOf(alone)).toContain("diagonal: | back left to front right; read");
    expect(cardOf(alone).texts.filter(({ part }) => part === "reading").map(({ text }) => text)).toEqual(["10"]);
    // By hand: leg(37.375) + leg(37.625) - 36 = 36.0124 + 36.2718 - 36 = 36.284, 9/32 and 0.003.
    expect(linesOf(alone)).toContain("with the back they give a front of 36 9/32, read as 36; read again what is struck");
    // By hand: leg(36.75) + leg(37.125) - 36 = 35.9766 + 36.3595 - 36 = 36.336 over a height of 7 1/2, 11/32 less 0.008.
    expect(linesOf(riser)).toContain("with the top they give a bottom of 36 11/32");
  });

  test("where every step is off alike the run is struck, and with it what is ripped", () => {
    // By hand: 36 wide and 11 deep the diagonals are 37.64, whatever the run was typed as.
    const alike = cutPieces("tread", [[
      HEADINGS.slice(0, 6), ...[1, 2, 3].map((step) => [step, 10, 36, 36, 37.625, 37.625]),
    ]]) as readonly CutPiece[];
    for (const piece of alike) {
      expect(struckReadings(piece)).toEqual(["10", "10"]);
      expect(linesOf(piece)).toContain("is run the distance between the lines you measured?");
      expect(touches(cardOf(piece))).toEqual([]);
    }
  });

  test("lengths that angles speak against are struck with the angles", () => {
    expect(new Set(struckReadings(angled))).toEqual(new Set(["36", "10.0°"]));
    expect(cardOf(angled).texts.filter(({ part }) => part === "reading").map(({ text }) => text)).toEqual(["10", "10 1/2"]);
    // What is to be done about a tapered piece is said once its readings hold.
    expect(linesOf(angled)).not.toMatch(/rip to|scribe|pack the riser/);
    // By hand: along the back 36 + 10 tan 10 + 10 1/2 tan 10 = 36 + 20.5 x 0.176327 = 39.6147; with 1/2 square to it 39.6179, 5/8 - 0.007.
    expect(linesOf(angled)).toContain("with the back they give a front of 39 5/8, read as 36");
  });

  test("a reading the flight speaks against though its step closes is said in a frame before the first act", () => {
    // Steps 2 and 3 with each other's readings: both close.
    const odd = cutPieces("tread", [[
      HEADINGS.slice(0, 6), ...[1, 3, 2, 4, 5, 6].map((step, place) => {
        const back = 36 + step / 2;
        const front = back + 0.25;
        return [place + 1, 10, back, front, Math.hypot(front, 10), Math.hypot(back, 10)];
      }),
    ]]) as readonly CutPiece[];
    const said = odd.map((piece) => cardOf(piece).texts.filter(({ part }) => part === "doubt").map(({ text }) => text).join());
    expect(said[1]).toBe("BEFORE YOU CUT: likely exchanged with step 3: read again (MISREAD)");
    expect(said[2]).toBe("BEFORE YOU CUT: likely exchanged with step 2: read again (MISREAD)");
    for (const piece of odd) expect(touches(cardOf(piece))).toEqual([]);
  });
});

describe("a mirrored stair", () => {
  const CARD = 210;
  const flipped = (points: readonly Spot[], middle: number): readonly Spot[] => points.map(([x, y]) => [2 * middle - x, y]);
  const expectSame = (points: readonly Spot[], others: readonly Spot[]): void => {
    expect(points).toHaveLength(others.length);
    for (const [x, y] of points) expect(others.some(([otherX, otherY]) => Math.hypot(x - otherX, y - otherY) < 0.02)).toBe(true);
  };

  test.each([["none", "none"], ["right", "left"]])("open end %s: plan and end pictures are those of the stair, mirrored", (one, other) => {
    const [card, mirror] = [cardOf(treadOf(OPENING, one)), cardOf(treadOf(mirrored(OPENING), other))];
    const { points } = path(card, "piece");
    const xs = points.map(([x]) => x);
    const mirrorXs = path(mirror, "piece").points.map(([x]) => x);
    const middle = (Math.min(...xs) + Math.max(...mirrorXs)) / 2;
    expectSame(path(mirror, "piece").points, flipped(points, middle));
    const parts = card.paths.map(({ part }) => part).filter((part) => /^(left|right) (swing|tilt|open|return)/.test(part));
    expect(parts.length).toBeGreaterThan(4);
    for (const part of parts) {
      const same = part.startsWith("left") ? part.replace("left", "right") : part.replace("right", "left");
      expectSame(path(mirror, same).points, flipped(path(card, part).points, CARD / 2));
    }
  });
});

test.each([
  ["between two skirts", treadOf(OPENING, "none")],
  ["with a return", treadOf(OPENING, "right")],
  ["with a return at the left", treadOf(mirrored(OPENING), "left")],
  ["with two returns", treadOf({ ...OPENING, leftLean: 0 }, "both")],
  ["tapered", taperedOf(10, 10.75, 36, 37, "none")],
  ["tapered with two returns", taperedOf(10, 10.75, 36, 37, "both")],
  ["metric", metricOf(OPENING, "right")],
  ["riser between skirts", riserOf({ ...OPENING, depth: 7.5 }, "none", 0)],
  ["riser run past", riserOf({ ...OPENING, depth: 7.5 }, "right", 0)],
])("%s: the acts copied from the card's own text are the rows on which the simulated saw is proved", (_, piece) => {
  const rows = piece.acts.map(({ cells }) => {
    const { number, act, hookOn, tape, swing, offset, tilt } = cells;
    // A card of more than 12 acts has a mitre as it is counted from the edge in its picture alone.
    const set = piece.acts.length > 12 ? swing.replace(/ \([\d.]+° from the [a-z ]+\)/, "") : swing;
    return { number, act, hookOn, tape, swing: set, offset, tilt };
  });
  expect(transcribed(cardOf(piece))).toEqual(rows);
});

test("a long name of a job is cut short, and what card of how many is not", () => {
  const job = "The stair of the house behind the mill at the end of the long lane, second floor, left side";
  const { texts } = readCard(cutCard(treadOf(OPENING, "none"), { ...FACTS, job, card: 12, cards: 19 }));
  expect(texts.some(({ text }) => /^The stair.*\.\.\. · 2026-01-02 · card 12 of 19$/.test(text))).toBe(true);
  expect(touches(readCard(cutCard(treadOf(OPENING, "none"), { ...FACTS, job })))).toEqual([]);
});

test("a metric card is in millimetres, to the nearest half", () => {
  const { texts } = cardOf(metricOf(OPENING, "right"));
  expect(texts.some(({ text }) => text === "millimetres")).toBe(true);
  // By hand: the opening is 10 in deep, 254 mm, and the nosing of a tread 1 1/4, 31.75.
  expect(texts.find(({ part }) => part === "act 1 figure")?.text).toBe("286");
  for (const { part, text } of texts.filter((one) => /^act \d+ figure$/.test(one.part))) {
    expect([part, text]).toEqual([part, expect.stringMatching(/^(\d+(\.5)?|[\d.]+°|square)$/)]);
  }
});

test("every card of 200 says how its piece lies, and numbers each mark where it is made", () => {
  for (const piece of randomPieces(200, 18)) {
    const { texts } = cardOf(piece);
    const said = texts.map(({ text }) => text).join(" ");
    const [near, far] = piece.kind === "tread" ? ["NOSE", "BACK"] : ["BOTTOM", "TOP"];
    for (const words of ["FACE UP", `${near} TOWARD YOU`, `${far} EDGE AT THE SAW'S FENCE`]) expect(said).toContain(words);
    const ticks = piece.acts.filter(({ act }) => act?.kind === "mark").map(({ cells }) => `tick ${cells.number}`);
    const drawn = readCard(cutCard(piece, FACTS)).paths.map(({ part }) => part);
    expect(drawn).toEqual(expect.arrayContaining(ticks));
  }
});

test("no letter of 200 cards is smaller than 2.5 mm", () => {
  const small = [...randomPieces(200, 17), ...randomPieces(200, 19)].flatMap((piece) =>
    cardOf(piece).texts.filter(({ size }) => size < 2.5).map(({ text, size }) => `${text} ${size}`));
  expect(small).toEqual([]);
});

test.each([
  ["one return", treadOf(OPENING, "right"), 1], ["two returns", treadOf({ ...OPENING, leftLean: 0 }, "both"), 2],
  ["two returns, tapered", taperedOf(10, 10.75, 36, 37, "both"), 2],
] as const)("%s: where a cut ends at a heel its row says where the saw stops, and what is done by hand", (_, piece, open) => {
  const acts = [...actsOn(cardOf(piece)).values()].map((texts) => texts.join(" "));
  const cuts = acts.filter((text) => /^(SAW|MITRE) (LEFT|RIGHT) END/.test(text) && /by hand|hand saw/i.test(text));
  // By hand: each open end has a cut to its heel and a mitre to its heel.
  expect(cuts).toHaveLength(2 * open);
  for (const text of cuts) {
    expect(text).toMatch(/^SAW.*kerf on (the )?face (at|from).*push.*rest by hand|^MITRE (LEFT|RIGHT) END HAND SAW \d/);
  }
  const said = cardOf(piece).texts.map(({ text }) => text).join(" ");
  expect(said).toContain("a round blade may only begin it, and");
  expect(said).toMatch(/stops (where|with) its kerf on the face (reaches mark \d|at the heel)/);
  expect(said).toContain("clamp long stick");
});

test("no text of 200 cards touches another, a line, a circle or the margin", () => {
  const found = randomPieces(200, 17).flatMap((piece, place) =>
    touches(cardOf(piece)).map((touch) => `${place} ${piece.kind} ${piece.acts.length}: ${touch}`));
  expect(found).toEqual([]);
});
