import { dayText, type GivenDay } from "../solver/books/day";
import { Exact } from "../solver/length/exact";
import { type Length, lengthOf, type Unit } from "../solver/length/length";
import type { Parameter, ResultKind } from "./declare";
import { grouped, lengthText, numberText } from "./say";

const HUNDRED = 100;

const angleText = (degrees: number): string => `${numberText(degrees)} deg`;

const rateText = (share: Exact): string => `${numberText(share.times(HUNDRED).toNumber())} %`;

const moneyText = (amount: Exact): string => {
  const rounded = amount.toDecimalPlaces(2);
  const [whole = "", cents = ""] = rounded.abs().toFixed(2).split(".");
  return `${rounded.lt(0) ? "-" : ""}${grouped(Number(whole))}.${cents}`;
};

type ToldKind = Exclude<Parameter["kind"], "table" | "stair" | "lengths" | "numbers" | "cells"> | "ratio" | "label";

/** A value as a solver is given it, in words with its unit. */
export const toldRead = (value: unknown, kind: ToldKind, unit: Unit | undefined): string => {
  const used = unit ?? "in";
  switch (kind) {
    case "length": return lengthText(value as Length, used);
    case "reading": return lengthText(lengthOf(value as number, used), used);
    case "angle": return angleText(value as number);
    case "rate": return rateText(value as Exact);
    case "money": return moneyText(value as Exact);
    case "date": return dayText((value as GivenDay).day);
    case "flag": return String(value).toUpperCase();
    default: return typeof value === "number" ? numberText(value) : String(value);
  }
};

/** A cell of a result in words with its unit: a length as it is read on a tape, `beside` what stands in the row's own unit column. */
export const toldCell = (cell: number | string | boolean, kind: ResultKind, unit: Unit | undefined, beside: string): string => {
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  if (typeof cell === "string") return cell;
  const used = unit ?? "in";
  switch (kind) {
    case "length":
    case "reading": return lengthText(lengthOf(cell, used), used);
    case "angle": return angleText(cell);
    case "rate": return rateText(new Exact(cell));
    case "money": return moneyText(new Exact(cell));
    case "date": return dayText(cell);
    case "value":
      return beside === "in" || beside === "mm" ? lengthText(lengthOf(cell, beside), beside) : `${numberText(cell)} ${beside}`.trim();
    default: return numberText(cell);
  }
};
