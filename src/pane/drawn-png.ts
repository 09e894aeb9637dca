import type { Drawing } from "../drawing/plans/drawn-call";
import { drawingSize } from "./drawing-size";
import { element } from "./element";

/** Dots to the inch: a line of a tenth of a millimetre is a dot wide. */
const DOTS = 240;
const POINTS = 72;
const HEAD = "data:image/png;base64,";

const loaded = (image: HTMLImageElement): Promise<void> =>
  new Promise((done, failed) => {
    image.addEventListener("load", () => done());
    image.addEventListener("error", () => failed(new Error("The drawing could not be made a picture. Save it as SVG instead.")));
  });

/** A drawing as a PNG in Base64, black on white, as a sheet's lines would show through it. */
export const drawnPng = async (page: Document, drawing: Drawing): Promise<string> => {
  const { width, height } = drawingSize(drawing);
  const image = new Image();
  const ready = loaded(image);
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(drawing.svg)}`;
  await ready;
  const canvas = element(page, "canvas");
  canvas.width = Math.round((width * DOTS) / POINTS);
  canvas.height = Math.round((height * DOTS) / POINTS);
  const pen = canvas.getContext("2d");
  if (pen === null) throw new Error("There is no room to make the drawing a picture. Save it as SVG instead.");
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL("image/png").slice(HEAD.length);
};
