import { goodsKey } from "../../goods/goods-key";
import type { RippedPiece } from "./ripping-job";
import type { SingleBoard } from "./single-boards";

const ANY = goodsKey("any");

/** Grades a piece may be cut from, besides its own. */
const alsoGrades = ({ alsoFrom }: RippedPiece): readonly string[] =>
  alsoFrom.split(/[,;]/).map((grade) => goodsKey(grade)).filter((grade) => grade !== "");

export const isOfItsGrade = ({ grade }: RippedPiece, board: SingleBoard): boolean => goodsKey(grade) === goodsKey(board.row.grade);

export const isGradeTaken = (piece: RippedPiece, board: SingleBoard): boolean => {
  const also = alsoGrades(piece);
  return isOfItsGrade(piece, board) || also.includes(ANY) || also.includes(goodsKey(board.row.grade));
};

/** A piece without a species is of the only one there is. */
export const isSpeciesTaken = ({ species }: RippedPiece, board: SingleBoard): boolean =>
  species === "" || goodsKey(species) === goodsKey(board.row.species);

export const isThickEnough = ({ thickness }: RippedPiece, { dressed }: SingleBoard): boolean =>
  thickness === undefined || dressed.gte(thickness);

/** Whether a piece may come from a board, whatever its size. */
export const isTaken = (piece: RippedPiece, board: SingleBoard): boolean =>
  isGradeTaken(piece, board) && isSpeciesTaken(piece, board) && isThickEnough(piece, board);

/** `FAS only`, or the grades that will do. */
export const gradesInWords = (piece: RippedPiece): string => {
  const also = piece.alsoFrom.split(/[,;]/).map((grade) => grade.trim()).filter((grade) => grade !== "");
  return also.length === 0 ? `${piece.grade} only` : [piece.grade, ...also].join(", ");
};
