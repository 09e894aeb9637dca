/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { CARD_HEIGHT, CARD_WIDTH } from "../../src/drawing/cards/card-facts";
import { cutCard, isDoubtful } from "../../src/drawing/cards/cut-card";
import { cardsByPage, type CutPiece } from "../../src/drawing/cards/pieces";
import { cutPieces } from "../../src/functions/cut-pieces";
import { cardsAt } from "../../src/pane/cards-part";
import { cardsCell } from "../../src/pane/cards-cell";
import { cardsPage } from "../../src/pane/cards-page";
import { cellPlace } from "../../src/sheets/cell-address";
import { demo } from "../../src/sheets/demo/demo";
import { standIn } from "../../src/workbook/stand-in";
import type { Workbook } from "../../src/workbook/workbook";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedData, openedWorkbook } from "../workbook/opened-workbook";
import { standingHost } from "./standing-host";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => {
  const found = functions.get(id);
  if (found === undefined) throw standIn().error("#NAME?", `no function ${id}`);
  return found(...args);
};

const cellsOf = (workbook: Workbook, sheet: string, address: string) => {
  const { cells, sheets } = standingHost(workbook, sheet, address);
  if (cells === undefined) throw new Error("no cells");
  return { cells, sheets, solve };
};

const found = (workbook: Workbook, address: string, sheet = "Own") =>
  cardsCell({ sheet, ...cellPlace(address) }, cellsOf(workbook, sheet, address).cells, solve);

const made = async (workbook: Workbook, address: string, sheet = "Own"): Promise<readonly CutPiece[]> => {
  const cards = await found(workbook, address, sheet);
  if (cards === undefined || typeof cards === "string") throw new Error(cards ?? `nothing at ${address}`);
  return cards.pieces;
};

const HEADINGS = ["step", "run", "back", "front", "left offset"];
/** Three openings, square: 36, 36 1/2 and 37 wide, 10 deep. */
const ROWS = [[1, 10, 36, 36, "square"], [2, 10, 36.5, 36.5, "square"], [3, 10, 37, 37, "square"]];
const typed = (rows: readonly (readonly unknown[])[]): Record<string, string | number> =>
  Object.fromEntries(rows.flatMap((row, down) =>
    row.map((cell, right) => [`${String.fromCharCode(65 + right)}${down + 1}`, cell as string | number])));

const FACTS = { job: "Invented job", date: "2026-01-02", caution: "Test cut in scrap." };
const svgs = (html: string): readonly string[] => html.match(/<svg[\s\S]*?<\/svg>/g) ?? [];

const WHERE = [["its first cell", "H1"], ["a cell further on", "K5"]] as const;

test.each(WHERE)("from %s the page holds a card a step, that of the same call", async (_, at) => {
  const workbook = await openedWorkbook({ Own: { ...typed([HEADINGS, ...ROWS]), H1: '=STAIR.MARKS(A1:E4,,"right")' } });
  const pieces = await made(workbook, at);
  const html = cardsPage("Own H1 cut cards", cardsByPage(pieces, FACTS));
  const direct = cutPieces("tread", [[HEADINGS, ...ROWS], null, "right"]);
  if (typeof direct === "string") throw new Error(direct);
  // Three steps were taped: two on the first page, one on the second.
  expect(direct).toHaveLength(3);
  expect(svgs(html)).toEqual(direct.map((piece, place) => cutCard(piece, { ...FACTS, card: place + 1, cards: 3 })));
  expect(html.match(/<section>/g)).toHaveLength(2);
  expect(html.replaceAll('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(/https?:|<script|src=|href=/);
});

test("a page is two cards, no higher and no wider than both papers together leave", () => {
  // Letter is 215.9 x 279.4 mm, A4 210 x 297 mm (ANSI Y14.1, ISO 216).
  expect(CARD_WIDTH).toBeLessThanOrEqual(210);
  expect(2 * CARD_HEIGHT).toBeLessThanOrEqual(279.4);
});

test("risers have cards, and a step whose readings disagree comes as a doubtful one, in its place", async () => {
  const headings = ["step", "height", "top", "bottom", "diagonal", "second diagonal"];
  // By hand: both diagonals of 36 x 7 are 36.674; 40 instead of one of them is 3.326 too long.
  const sound = Math.hypot(36, 7);
  const rows = [[1, 7, 36, 36, sound, sound], [2, 7, 36, 36, 40, sound], [3, 7, 36, 36, sound, sound]];
  const workbook = await openedWorkbook({ Own: { ...typed([headings, ...rows]), H1: "=STAIR.RISERMARKS(A1:F4)" } });
  const pieces = await made(workbook, "H1");
  expect(pieces.map((piece) => [piece.kind, piece.step, isDoubtful(piece)])).toEqual([
    ["riser", "1", false], ["riser", "2", true], ["riser", "3", false],
  ]);
  expect(svgs(cardsPage("risers", cardsByPage(pieces, FACTS)))[1]).toContain("READ AGAIN");
});

test("what has no cards: another table, a call in error, a sentence in place of a table, only a part of the marks", async () => {
  const workbook = await openedWorkbook({ Own: {
    ...typed([HEADINGS, ...ROWS]),
    H1: '=STAIR.TREADFIT(A1:E4,,"right")', H20: '=STAIR.MARKS(A1:E4,"x","right")', H21: '=IF(A2="","",COUNT(STAIR.MARKS(A1:E4,,"right")))',
    H30: '=TAKE(STAIR.MARKS(A1:E4,,"right"),3)', H40: '=STAIR.MARKS(SORT(A1:E4),,"right")', A60: 1,
  } });
  for (const address of ["H1", "H20", "H21", "A60", "A1"]) expect([address, await found(workbook, address)]).toEqual([address, undefined]);
  expect(await found(workbook, "H30")).toBe(
    "No cards of MARKS at Own H30: what the sheet shows is not what its readings give now. Recalculate, or print the sheet.",
  );
  expect(await found(workbook, "H40")).toBe(
    "No cards of MARKS at Own H40: SORT(A1:E4) cannot be worked out here. Give the call cells in its place, or print the sheet.",
  );
});

test("the demo's cards say the job its sheet Job says; a workbook without one leaves a line for it and for the wood", async () => {
  const workbook = await openedData({ version: 1, sheets: demo });
  const cards = await cardsAt({ sheet: "Fit", ...cellPlace("CA8") }, cellsOf(workbook, "Fit", "CA8"));
  if (cards === undefined || typeof cards === "string") throw new Error(cards);
  // Typed on the demo's Job; five treads were taped.
  expect([cards.job, cards.pieces.length]).toEqual(["Oak stair (invented job)", 5]);
  const own = await openedWorkbook({ Own: { ...typed([HEADINGS, ...ROWS]), H1: '=STAIR.MARKS(A1:E4,,"right")' } });
  const bare = await cardsAt({ sheet: "Own", ...cellPlace("H1") }, cellsOf(own, "Own", "H1"));
  if (bare === undefined || typeof bare === "string") throw new Error(bare);
  const [card = ""] = cardsByPage(bare.pieces, { ...FACTS, job: bare.job }).flat();
  expect(card).toContain("job ____________ · 2026-01-02 · card 1 of 3");
  expect(card).toContain("wood ____________  board ______");
});
