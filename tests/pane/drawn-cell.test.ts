/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { drawnCell } from "../../src/pane/drawn-cell";
import { cellPlace } from "../../src/sheets/cell-address";
import { standIn } from "../../src/workbook/stand-in";
import type { Workbook } from "../../src/workbook/workbook";
import { dimension, parsedDraft } from "../drawing/plans/parsed-draft";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedWorkbook } from "../workbook/opened-workbook";
import { standingHost } from "./standing-host";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => {
  const found = functions.get(id);
  if (found === undefined) throw standIn().error("#NAME?", `no function ${id}`);
  return found(...args);
};

const drawnAt = (workbook: Workbook, address: string) => {
  const { cells } = standingHost(workbook, "Mine", address);
  if (cells === undefined) throw new Error("no cells");
  return drawnCell({ sheet: "Mine", ...cellPlace(address) }, cells, solve);
};

const stair = {
  A1: "total rise", B1: 98, A2: "risers", B2: 14, A3: "run", B3: 9.5,
  D1: "=STAIR.LAYOUT(A1:B3)", I1: '=STAIR.STRINGER(STAIR.PICK(D1#,"unit rise"),B3,B2,11.25)',
  N1: '=IF(B2>1,STAIR.STRINGER(B1/B2,B3,B2,12),"")',
  N20: '=STAIR.STRINGER("x",B3,B2,12)', N21: "=B1+B2",
};

const names = (found: Awaited<ReturnType<typeof drawnAt>>): readonly string[] =>
  Array.isArray(found) ? found.map(({ name }: { readonly name: string }) => name) : [String(found)];

test("any cell of a spilled result has the drawings of its call, a typed stair table those of its stair, whatever its cell", async () => {
  const workbook = await openedWorkbook({ Mine: stair });
  const all = ["elevation", "stringer", "closed skirt", "open skirt"];
  for (const address of ["D1", "E4", "A1", "B3", "A2"]) expect(names(await drawnAt(workbook, address))).toEqual(all);
  expect(await drawnAt(workbook, "B2")).toEqual(await drawnAt(workbook, "D1"));
});

test("the arguments are the sheet's: a spill that is picked from, and a call within a function of the sheet", async () => {
  const workbook = await openedWorkbook({ Mine: stair });
  for (const [address, board] of [["J2", 11.25], ["N1", 12]] as const) {
    const [only] = (await drawnAt(workbook, address)) as readonly { readonly svg: string }[];
    const found = parsedDraft(only ?? { svg: "" });
    // By hand: 98 / 14 = 7; the board as it is given.
    expect(dimension(found, "rise").text).toBe('rise 7"');
    expect(dimension(found, "board").length).toBeCloseTo(board, 1);
  }
});

test("of several calls of one function in a formula each is drawn", async () => {
  const workbook = await openedWorkbook({ Mine: {
    A1: "length", B1: "quantity", A2: 36, B2: 2, A4: "length", B4: "quantity", A5: 40, B5: 1, D1: "length", E1: "price", D2: 96, E2: 10,
    G1: "=VSTACK(STAIR.CUTS(A1:B2,D1:E2),STAIR.CUTS(A4:B5,D1:E2))",
  } });
  const found = (await drawnAt(workbook, "G1")) as readonly { readonly name: string; readonly svg: string }[];
  expect(found.map(({ name }) => name)).toEqual(["stick 1", "stick 1, 2"]);
  // By hand: 96 - 40 - 1/8 = 55 7/8, and 96 - 2 x 36 1/8 = 23 3/4.
  const left = found.map(({ svg }) => dimension(parsedDraft({ svg }), "left over").text);
  expect([...left].sort()).toEqual(['left over 23 3/4"', 'left over 55 7/8"']);
});

test("a call in error has its sentence in the place of a drawing, and a cell of no table nothing", async () => {
  const workbook = await openedWorkbook({ Mine: stair });
  expect(await drawnAt(workbook, "N20")).toContain('rise: read "x", which is not a length');
  expect(await drawnAt(workbook, "N21")).toBeUndefined();
  expect(await drawnAt(workbook, "Z40")).toBeUndefined();
});
