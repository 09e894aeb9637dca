import { TREADFIT } from "../../functions/fit/treadfit";
import { ORDER } from "../../functions/order/order";
import { chosen } from "../result-looks";
import { lacks } from "../sheet-builder";

/** Where Fit says which steps they are, for Job as well. */
export const TOO_LARGE = "AD70";

/** The steps whose tread is longer or deeper than the largest blank that Order buys for treads. */
export const treadsTooLarge = (fits: string): string => {
  const ordered = (key: string): string => chosen(ORDER, "Order!A17#", key);
  const isForTreads = `ISNUMBER(SEARCH("tread",${ordered("note")}))*ISNUMBER(${ordered("price")})`;
  const largest = (key: string): string => `MAX(IF(${isForTreads},${ordered(key)},0))`;
  const fitted = (key: string): string => `DROP(${chosen(TREADFIT, `${fits}#`, key)},1)`;
  const over = (key: string, blank: string): string => `IFERROR(--(${fitted(key)}>${largest(blank)}),0)`;
  return (
    `=IF(${lacks(fits)},"",IF(${lacks("Order!A17")},"",IF(SUM(${isForTreads})=0,"",` +
    `TEXTJOIN(", ",TRUE,IF(${over("length", "length")}+${over("depth", "width")}>0,${fitted("step")},"")))))`
  );
};
