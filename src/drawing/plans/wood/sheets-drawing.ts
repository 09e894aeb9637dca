import { type Length, measure } from "../../../solver/length/length";
import type { LaidSheet, LaidStrip } from "../../../solver/yield/sheets/laid-sheets";
import { edgeTrimOf, type SheetJob, sizeOnSheet } from "../../../solver/yield/sheets/sheet-job";
import { keptOf } from "../../../solver/yield/sheets/sheet-offcuts";
import type { SheetPlan } from "../../../solver/yield/sheets/sheet-plan";
import { boardsDrawings, type NamedBoards } from "./boards-drawings";
import type { Area, CutBoard, DrawnPiece } from "./cut-board";
import { stretchParts } from "./cut-strips";
import { keptRests, lostAround } from "./kept-rests";
import { flatText, placeText, sizeText } from "./size-text";

const pieceOf = (job: SheetJob, { piece, along, across, turned }: LaidStrip["pieces"][number]): DrawnPiece => {
  const { unit } = job;
  const { label, length, width } = job.pieces[piece]!;
  const lies = sizeOnSheet(job.pieces[piece]!, turned);
  const [x, y] = [measure(along, unit), measure(across, unit)];
  const size = flatText(measure(length, unit), measure(width ?? length, unit), unit);
  return {
    area: { along: x, across: y, length: measure(lies.length, unit), width: measure(lies.width, unit) },
    label: String(label), size: `${size}${turned ? ", turned" : ""}`,
    place: placeText(x, y, unit),
  };
};

const boardOf = (job: SheetJob, sheet: LaidSheet, number: number): CutBoard => {
  const { unit, keep } = job;
  const { label, length: long, width: wide, grade } = job.stock[sheet.stock]!;
  const [length, width] = [measure(long, unit), measure(wide ?? long, unit)];
  const [trim, edgeTrim] = [measure(job.trim, unit), measure(edgeTrimOf(job), unit)];
  const strips = sheet.strips.map(({ pieces, leftOver }) => ({
    pieces: pieces.map((piece) => pieceOf(job, piece)), leftOver: measure(leftOver, unit),
  }));
  const room: Area = {
    along: trim, across: edgeTrim, length: measure(sheet.usableLength, unit), width: measure(sheet.usableWidth, unit),
  };
  const { rests, firstCuts } = stretchParts({
    room, first: sheet.first, strips: strips.map(({ pieces, leftOver }) => ({ pieces: pieces.map(({ area }) => area), leftOver })),
  }, measure(job.kerf, unit));
  const kept = keep === undefined ? [] : keptOf(sheet, keep).map((one) => ({
    length: measure(one.length, unit), width: measure(one.width, unit),
  }));
  const names = [label, grade].map(String).filter((text) => text !== "");
  return {
    name: String(number), length, width,
    facts: [...names, flatText(length, width, unit), `${sheet.first} first`].join(", "),
    pieces: strips.flatMap(({ pieces }) => pieces), rests: keptRests(rests, kept, unit), spoilt: [],
    lost: lostAround(length, width, trim, edgeTrim), firstCuts,
  };
};

/** What is hatched as trimmed off, in words; nothing where nothing is. */
const trimText = (job: SheetJob, said: (length: Length) => string): string => {
  const [ends, edges] = [job.trim, edgeTrimOf(job)];
  if (ends.isZero() && edges.isZero()) return "";
  return `, hatched close the trim of ${ends.eq(edges) ? said(ends) : `${said(ends)} off the ends and ${said(edges)} off the edges`}`;
};

/** A plan of sheets to scale: each sheet with its pieces, the first cuts, the grain and what is left. */
export const sheetsDrawings = (job: SheetJob, plan: SheetPlan): readonly NamedBoards[] => {
  const said = (length: Length): string => sizeText(measure(length, job.unit), job.unit);
  return boardsDrawings(plan.sheets.map((sheet, place) => boardOf(job, sheet, place + 1)), {
    title: `Cut plan of ${plan.sheets.length === 1 ? "1 sheet" : `${plan.sheets.length} sheets`}`,
    one: "sheet", several: "sheets", listed: "SHEETCUTS", unit: job.unit,
    says: "The cut plan of sheets to scale, each with its pieces, the first cuts heavy, and what is left over hatched.",
    notes: [
      "The dot is the corner measured from: along from its end of the sheet, across from its edge. Heavy lines are the first cuts: rip " +
        `is along the length, crosscut across it. Between pieces lies the kerf of ${said(job.kerf)}. ` +
        `Hatched wide is left over${trimText(job, said)}.`,
      `Yield ${plan.yield.times(100).toDecimalPlaces(1).toString()} %, ${plan.verdict}.`,
    ],
  });
};
