import { type Length, measure, type Unit } from "../../../solver/length/length";
import type { GlueRow } from "../../../solver/yield/glue-up/glue-up-list";
import { boardsDrawings, type NamedBoards } from "./boards-drawings";
import type { CutBoard, DrawnPiece } from "./cut-board";
import { flatText, sizeText } from "./size-text";

const sizeOf = (length: Length | undefined, unit: Unit): number => (length === undefined ? 0 : measure(length, unit));

/** A panel from the row that sums it up and the rows of its strips, one beside another. */
const panelOf = (panel: GlueRow, strips: readonly GlueRow[], unit: Unit): CutBoard => {
  const [length, width] = [sizeOf(panel.length, unit), sizeOf(panel.netWidth, unit)];
  let across = 0;
  const pieces = strips.map((strip): DrawnPiece => {
    const [long, net] = [sizeOf(strip.length, unit), sizeOf(strip.netWidth, unit)];
    const area = { along: 0, across, length: long, width: net };
    across += net;
    const cell = strip.board === undefined ? "" : String(strip.board);
    return {
      area,
      label: `strip ${strip.strip ?? ""}: board ${cell}, section ${strip.section ?? ""}, net`,
      size: sizeText(net, unit),
      place: `ripped to ${sizeText(sizeOf(strip.roughWidth, unit), unit)}`,
    };
  });
  return {
    name: String(panel.panel), length, width,
    facts: `${flatText(length, width, unit)} glued up, ${sizeText(sizeOf(panel.over, unit), unit)} more than it needs`,
    pieces, rests: [], spoilt: [], lost: [], firstCuts: [],
  };
};

const isStrip = ({ strip }: GlueRow): boolean => strip !== undefined;
const isPanel = ({ strip, over }: GlueRow): boolean => strip === undefined && over !== undefined;

/** The panels of a glue-up to scale, each with its strips as they are jointed, from the rows of the table. */
export const glueDrawings = (rows: readonly GlueRow[], unit: Unit): readonly NamedBoards[] => {
  const strips = rows.filter(isStrip);
  const panels = rows.filter(isPanel).map((panel) =>
    panelOf(panel, strips.filter((strip) => strip.panel === panel.panel), unit));
  return boardsDrawings(panels, {
    title: `Glue-up of ${panels.length === 1 ? "1 panel" : `${panels.length} panels`}`,
    one: "panel", several: "panels", listed: "GLUEUP", unit,
    says: "The panels of a glue-up to scale, each with its strips as they are jointed, and which board each is of.",
    notes: [
      "Rough length and net width: as glued, before the panel is cut to its finished size. The dot is where strip 1 begins; the strips " +
        "stand in the order of the table, which is no order they must be glued in. A section is counted from the board's end chalked 0.",
    ],
  });
};
