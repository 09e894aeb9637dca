import { cellAddress } from "../sheets/cell-address";
import type { Block, Place } from "./host";

/** A cell in words: Layout B7. */
export const placeText = (place: Place): string => `${place.sheet} ${cellAddress(place)}`;

/** A block in words: Layout B7:D9. */
export const blockText = (block: Block): string =>
  block.rows === 1 && block.columns === 1
    ? placeText(block)
    : `${placeText(block)}:${cellAddress({ row: block.row + block.rows - 1, column: block.column + block.columns - 1 })}`;
