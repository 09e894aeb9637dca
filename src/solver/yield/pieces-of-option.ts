import { goodsKey } from "../goods/goods-key";
import type { Piece } from "./cutting-job";

/** A piece that is cut whatever is chosen, or with one alternate alone. */
export interface PieceOfOption extends Piece {
  /** Empty: whatever is chosen. */
  readonly option: string;
}

const isOf = ({ option }: PieceOfOption, name: string): boolean => goodsKey(option) === goodsKey(name);

/**
 * The pieces of an alternate: its own stand in place of those of the same label, all others are cut as drawn. A quantity of 0 leaves the
 * label out.
 */
export const piecesOfOption = (pieces: readonly PieceOfOption[], option: string): readonly PieceOfOption[] => {
  const own = option === "" ? [] : pieces.filter((piece) => isOf(piece, option));
  const labels = new Set(own.map(({ label }) => goodsKey(label)));
  return [...pieces.filter((piece) => piece.option === "" && !labels.has(goodsKey(piece.label))), ...own].filter(
    ({ quantity }) => quantity > 0,
  );
};
