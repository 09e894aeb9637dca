import type { DrawingsHost } from "../pane/host";
import { rangeOf } from "./cells";
import { run } from "./run";

/** From a table to its picture, in points. */
const GAP = 12;

/**
 * Pictures in sheets. Images are PNG or JPEG (ShapeCollection.addImage); what adds SVG is not among the calls that are released.
 */
export const excelPictures: Required<Pick<DrawingsHost, "place">> = {
  place: ({ name, says, png, width, height, beside, down }) =>
    run({ asked: `to place a picture on ${beside.sheet}`, sheets: [beside.sheet] }, async (context) => {
      const { shapes } = context.workbook.worksheets.getItem(beside.sheet);
      const next = rangeOf(context, { ...beside, column: beside.column + beside.columns, rows: 1, columns: 1 });
      next.load("left,top");
      shapes.load("items/name,items/left,items/top");
      await context.sync();
      const before = shapes.items.filter((shape) => shape.name === name);
      const [first] = before;
      // Where somebody has moved it the new one takes that place.
      const [left, top] = first === undefined ? [next.left + GAP, next.top + down] : [first.left, first.top];
      for (const shape of before) shape.delete();
      const picture = shapes.addImage(png);
      picture.name = name;
      picture.altTextDescription = says;
      picture.left = left;
      picture.top = top;
      picture.width = width;
      picture.height = height;
      picture.lockAspectRatio = true;
      // Moves with its cells, and is not stretched when a column is made wider.
      picture.placement = "OneCell";
      await context.sync();
      return `${first === undefined ? "Placed" : "Placed anew"} on ${beside.sheet}: ${name}.`;
    }),
};
