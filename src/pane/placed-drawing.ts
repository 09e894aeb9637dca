import type { Drawing } from "../drawing/plans/drawn-call";
import { cellAddress } from "../sheets/cell-address";
import { drawingSize } from "./drawing-size";
import type { CellHost, Picture, Place } from "./host";
import { tableBlock } from "./table-block";

/** Between pictures that stand one under another, in points. */
const APART = 12;

/** What a drawing is called among the pictures of a sheet: the same from whichever cell of its table it is placed. */
const nameOf = (address: string, { name }: Drawing): string => `Treadsheet ${address} ${name}`;

/** What a drawing shows, as it says it itself. */
const saysOf = ({ svg, title }: Drawing): string => {
  const [, says = title] = /^<svg [^>]*aria-label="([^"]*)"/.exec(svg) ?? [];
  return says.replace(/&quot;/g, '"').replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&amp;/g, "&");
};

/** One of the drawings of a table as a picture at its right, under those before it. */
export const placedDrawing = async (
  place: Place, drawings: readonly Drawing[], which: number, cells: CellHost, toPng: (drawing: Drawing) => Promise<string>,
): Promise<Picture> => {
  const drawing = drawings[which];
  if (drawing === undefined) throw new Error("The drawing is not there any more. Select the table again.");
  const beside = await tableBlock(place, cells);
  const down = drawings.slice(0, which).reduce((sum, one) => sum + drawingSize(one).height + APART, 0);
  return {
    name: nameOf(cellAddress(beside), drawing), says: saysOf(drawing), png: await toPng(drawing), ...drawingSize(drawing), beside, down,
  };
};
