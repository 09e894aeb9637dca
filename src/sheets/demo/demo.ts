import type { SheetData } from "../sheet-data";
import { bid } from "./bid";
import { books } from "./books";
import { check } from "./check";
import { cutPlan } from "./cut-plan";
import { fit } from "./fit";
import { layout } from "./layout";
import { order } from "./order";
import { survey } from "./survey";

/** The demo job, sheet after sheet in the order of the work. Names, readings and prices are invented. */
export const demo: readonly SheetData[] = [survey, layout, check, order, cutPlan, fit, bid, books];
