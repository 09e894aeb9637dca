import { stripModel, type StripWay } from "../strip-model";
import type { WholeModel } from "../whole-model";
import type { PlainSheetJob } from "./job";

/** A job of sheets in whole numbers: as many of each row as there are, or as there are pieces. */
export const sheetModel = ({ pieces, stock, kerf = 0, trim = 0, edges = trim, first = "either" }: PlainSheetJob): WholeModel => {
  const wanted = pieces.map(({ quantity = 1 }) => quantity);
  const all = wanted.reduce((sum, count) => sum + count, 0);
  const lying = pieces.flatMap(({ length, width, free = false }, kind) => [
    { kind, length, width: width! }, ...(free && length !== width ? [{ kind, length: width!, width: length }] : []),
  ]);
  const rips = lying.map(({ kind, length, width }) => ({ kind, along: length, across: width }));
  const crosscuts = lying.map(({ kind, length, width }) => ({ kind, along: width, across: length }));
  return stripModel({
    wanted, kerf,
    goods: stock.map(({ length, width, cents = 0, available = Infinity }) => {
      const [long, wide] = [length - 2 * trim, width! - 2 * edges];
      const ways: StripWay[] = [
        ...(first === "crosscut" ? [] : [{ long, wide, shapes: rips }]),
        ...(first === "rip" ? [] : [{ long: wide, wide: long, shapes: crosscuts }]),
      ];
      return { cents, available: Math.min(all, available), rectangles: [ways] };
    }),
  });
};
