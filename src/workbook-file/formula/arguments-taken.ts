/**
 * How a function takes an argument in a plain formula: one value; cells as they are; a table of values worked out cell by cell; as whatever
 * stands around the call takes what comes of it.
 */
export type Taken = "one" | "cells" | "table" | "through";

/** Taken by the place of the argument, the last one again for all behind it. */
type Arguments = readonly Taken[];

const words = (text: string): readonly string[] => text.split(/\s+/);

/**
 * Of each function that takes more than single values, by the syntax in its description (ECMA-376-1, 18.17.7; Microsoft, "Excel functions
 * (alphabetical)"). A function that is missing here is taken to want one value, so that a formula which gives it several keeps the value
 * it had: a name too few leaves a number as it was, a name too many may change it.
 */
const TAKES: readonly (readonly [Arguments, readonly string[]])[] = [
  [["cells"], words(`SUM MAX MAXA MIN MINA COUNT COUNTA COUNTBLANK AVERAGE AVERAGEA PRODUCT SUMSQ MEDIAN MODE MODE.SNGL MODE.MULT GEOMEAN
    HARMEAN DEVSQ AVEDEV SKEW SKEW.P KURT STDEV STDEVA STDEVP STDEVPA STDEV.S STDEV.P VAR VARA VARP VARPA VAR.S VAR.P AND OR XOR CONCAT
    GCD LCM MULTINOMIAL AREAS ROWS COLUMNS ISREF DSUM DAVERAGE DCOUNT DCOUNTA DGET DMAX DMIN DPRODUCT DSTDEV DSTDEVP DVAR DVARP XIRR
    CHITEST CHISQ.TEST FTEST F.TEST UNIQUE SORT SORTBY VSTACK HSTACK TOCOL TOROW TAKE DROP CHOOSECOLS CHOOSEROWS WRAPROWS WRAPCOLS EXPAND
    MAP REDUCE SCAN BYROW BYCOL ARRAYTOTEXT TRIMRANGE SHEETS SHEET`)],
  [["one", "cells"], words("SUBTOTAL NPV CELL FVSCHEDULE XNPV")],
  [["one", "one", "cells"], words("TEXTJOIN NETWORKDAYS WORKDAY")],
  [["one", "one", "one", "cells"], words("NETWORKDAYS.INTL WORKDAY.INTL")],
  [["one", "cells", "one"], words("VLOOKUP HLOOKUP MATCH XMATCH RANK RANK.EQ RANK.AVG")],
  [["one", "cells", "cells", "through", "one"], words("XLOOKUP")],
  [["cells", "one", "cells"], words("SUMIF AVERAGEIF COUNTIF")],
  [["cells", "one"], words(`LARGE SMALL PERCENTILE PERCENTILE.INC PERCENTILE.EXC QUARTILE QUARTILE.INC QUARTILE.EXC PERCENTRANK
    PERCENTRANK.INC PERCENTRANK.EXC TRIMMEAN IRR MIRR OFFSET ZTEST Z.TEST`)],
  [["cells", "cells", "one"], words("TTEST T.TEST")],
  // These work out every cell of what they are given (Microsoft, "Guidelines and examples of array formulas"; the rest common practice).
  [["table"], words(`SUMPRODUCT SUMXMY2 SUMX2MY2 SUMX2PY2 MMULT MDETERM MINVERSE TRANSPOSE FREQUENCY LINEST LOGEST TREND GROWTH SLOPE
    INTERCEPT RSQ CORREL PEARSON COVAR COVARIANCE.P COVARIANCE.S STEYX`)],
  [["table", "table", "one"], words("PROB FILTER")],
  [["one", "table"], words("LOOKUP FORECAST FORECAST.LINEAR")],
  [["one", "one", "table"], words("AGGREGATE")],
  [["table", "one"], words("INDEX")],
  [["one", "through"], words("IF CHOOSE")],
];

/** Conditions and values in turn, from the place at which the first stands. */
const IN_TURN: ReadonlyMap<string, number> =
  new Map([["SUMIFS", 1], ["AVERAGEIFS", 1], ["MAXIFS", 1], ["MINIFS", 1], ["COUNTIFS", 0]]);

const BY_NAME: ReadonlyMap<string, Arguments> = new Map(TAKES.flatMap(([takes, names]) => names.map((name) => [name, takes] as const)));

/** The add-in's own take cells and work them out by themselves. */
const OURS = /^STAIR\./;

/** Functions that answer several cells whatever they are given (by the same descriptions). */
const SEVERAL: ReadonlySet<string> = new Set(words(`TRANSPOSE MMULT MINVERSE MUNIT FREQUENCY LINEST LOGEST TREND GROWTH MODE.MULT UNIQUE
  SORT SORTBY FILTER SEQUENCE RANDARRAY MAKEARRAY MAP SCAN BYROW BYCOL VSTACK HSTACK TOCOL TOROW TAKE DROP CHOOSECOLS CHOOSEROWS WRAPROWS
  WRAPCOLS EXPAND TEXTSPLIT TRIMRANGE`));

export const answersSeveralCells = (name: string): boolean => SEVERAL.has(name);

/** Whether it is known how a function takes its arguments, and so what it comes to. */
export const isKnownFunction = (name: string): boolean => BY_NAME.has(name) || IN_TURN.has(name);

/** How a function, its name in capitals, takes its argument at a place counted from 0; one value where nothing says otherwise. */
export const argumentTaken = (name: string, at: number): Taken => {
  if (OURS.test(name)) return "cells";
  const turn = IN_TURN.get(name);
  if (turn !== undefined) return at < turn || (at - turn) % 2 === 0 ? "cells" : "one";
  const takes = BY_NAME.get(name) ?? [];
  return takes[Math.min(at, takes.length - 1)] ?? "one";
};
