import { type Length, measure, type Unit } from "../../../solver/length/length";
import type { Stretch } from "../../../solver/yield/tally/clear-stretches";
import type { TallyBoard } from "../../../solver/yield/tally/tally-board";
import type { Area } from "./cut-board";

/** What of a board can be cut: its clear ranges between the trims, half the edge in from both edges. */
export const clearRooms = (
  board: Pick<TallyBoard, "length" | "width" | "edge">, clear: readonly Stretch[], trimmed: Length, unit: Unit,
): readonly Area[] => {
  const [trim, edge] = [measure(trimmed, unit), measure(board.edge, unit) / 2];
  const end = measure(board.length, unit) - trim;
  return clear.flatMap((range): Area[] => {
    const [from, to] = [Math.max(trim, measure(range.from, unit)), Math.min(end, measure(range.to, unit))];
    return to <= from ? [] : [{ along: from, across: edge, length: to - from, width: measure(board.width, unit) - 2 * edge }];
  });
};

/** Whether a piece begins in a room. */
export const isIn = ({ along, length }: Area, piece: Area): boolean => piece.along >= along - 1e-6 && piece.along < along + length;
