import type { WorkedCase } from "../case-kind";
import { alternateCases } from "./alternates";
import { boardCases } from "./boards";
import { bookCases } from "./books";
import { codeCases } from "./code";
import { cuttingCases } from "./cutting";
import { fitCases } from "./fit";
import { flightCases } from "./flight";
import { layoutCases } from "./layout";
import { notationCases } from "./notation";
import { orderCases } from "./order";
import { sheetCases } from "./sheets";

/** Cases by hand that no user needs to read, by function. */
export const handCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  ...notationCases,
  ...layoutCases,
  ...codeCases,
  ...orderCases,
  ...cuttingCases,
  ...fitCases,
  ...flightCases,
  ...bookCases,
  ...alternateCases,
  ...boardCases,
  PLAN: [...(cuttingCases["PLAN"] ?? []), ...(boardCases["PLAN"] ?? [])],
  ...sheetCases,
};
