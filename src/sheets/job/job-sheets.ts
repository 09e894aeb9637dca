import type { SheetData } from "../sheet-data";
import { bid } from "./bid";
import { boards } from "./boards";
import { books } from "./books";
import { check } from "./check";
import { cutPlan } from "./cut-plan";
import type { Filling } from "./filling";
import { fit } from "./fit";
import { job } from "./job";
import { layout } from "./layout";
import { order } from "./order";
import { quote } from "./quote";
import { register } from "./register";
import { survey } from "./survey";
import { takeoff } from "./takeoff";
import { yardOrder } from "./yard-order";

/** The linked sheets of a job, in the order of the work. */
export const jobSheets = (filling: Filling): readonly SheetData[] => {
  const { pile } = filling;
  const sheets = (...each: readonly ((filling: Filling) => SheetData)[]): readonly SheetData[] => each.map((sheet) => sheet(filling));
  return [
    ...sheets(job, survey, layout, check, order, cutPlan),
    ...(pile === undefined ? [] : [boards(filling, pile)]),
    ...sheets(yardOrder, fit, takeoff, bid, quote, books, register),
  ];
};
