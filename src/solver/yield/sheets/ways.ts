import { commonDivisor } from "../common-divisor";
import { type Cutting, type Filling, type Shape, type SheetShelf, type Way } from "./sheet-shelf";

/** Cells of a table along a strip and across a sheet: as many as are quick for so many shapes. */
const MOST_CELLS = 2_000;
const FEWEST_CELLS = 250;
const TABLE_CELLS = 60_000;

const shapesOf = ({ kinds, takes }: SheetShelf, sheet: number, first: Cutting, room: number, depth: number): Shape[] =>
  kinds
    .flatMap(({ length, width, turns, wanted }, kind): Shape[] => {
      if (wanted === 0 || !takes[sheet]![kind]!) return [];
      const [along, across] = first === "rip" ? [length, width] : [width, length];
      const lying = { kind, along, across, turned: false };
      return turns && length !== width ? [lying, { kind, along: across, across: along, turned: true }] : [lying];
    })
    .filter(({ along, across }) => along <= room && across <= depth)
    .sort((one, other) => one.across - other.across || one.along - other.along || one.kind - other.kind);

/** Every kind of sheet each way round on which a piece fits, in the coarsest whole numbers that hold exactly. */
export const waysOf = (shelf: SheetShelf): Way[] =>
  shelf.sheets.flatMap(({ length, width, available }, sheet) =>
    available === 0
      ? []
      : shelf.firsts.flatMap((first): Way[] => {
          const [room, depth] = first === "rip" ? [length, width] : [width, length];
          const shapes = shapesOf(shelf, sheet, first, room, depth);
          if (shapes.length === 0) return [];
          const long = shapes.reduce((divisor, { along }) => commonDivisor(along, divisor), 0);
          const wide = shapes.reduce((divisor, { across }) => commonDivisor(across, divisor), 0);
          const most = Math.max(FEWEST_CELLS, Math.min(MOST_CELLS, Math.floor(TABLE_CELLS / shapes.length)));
          return [
            {
              sheet,
              first,
              room: Math.floor(room / long),
              depth: Math.floor(depth / wide),
              cell: { along: Math.ceil(room / long / most), across: Math.ceil(depth / wide / most) },
              shapes: shapes.map((shape) => ({ ...shape, along: shape.along / long, across: shape.across / wide })),
            },
          ];
        }),
  );

/** How many of each kind a sheet holds. */
export const countsOf = (kinds: number, ways: readonly Way[], { way, strips }: Filling): number[] => {
  const counts = Array.from({ length: kinds }, () => 0);
  for (const shape of strips.flat()) counts[ways[way]!.shapes[shape]!.kind]! += 1;
  return counts;
};
