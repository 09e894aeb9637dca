import type { Drawing } from "../drawing/plans/drawn-call";
import { escaped, htmlPage } from "./html-page";

/** A drawing a sheet, Letter or A4 lying, in black and at its own size. */
const STYLE =
  "@page { size: landscape; margin: 12mm } body { margin: 0; color: #000; background: #fff; font: 10pt/1.35 system-ui, sans-serif } " +
  "section { break-inside: avoid } section + section { break-before: page } p { margin: 0 0 3mm; font-weight: 600 } " +
  "svg { display: block; max-width: 100% } @media screen { body { margin: 8mm } section { margin-bottom: 8mm } }";

/** A page of drawings that opens in any browser and prints there, to scale; each under whose it is. */
export const drawingsPage = (title: string, drawings: readonly Drawing[]): string =>
  htmlPage(title, STYLE, drawings.map(({ svg }) => `<section><p>${escaped(title)}</p>${svg}</section>`));
