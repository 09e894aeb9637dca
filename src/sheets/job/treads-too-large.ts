import { TREADFIT } from "../../functions/fit/treadfit";
import { ORDER } from "../../functions/order/order";
import { chosen, placesOf } from "../result-looks";
import { lacks } from "../sheet-builder";

/** Where Fit says which steps they are, for Job as well. */
export const TOO_LARGE = "AD70";

/** The steps whose tread is longer or deeper than the blank that Order buys for treads, which is its first. */
export const treadsTooLarge = (fits: string): string => {
  const [blankLength, blankWidth, blankPrice] = placesOf(ORDER, "length", "width", "price");
  const bought = (place: number | undefined): string => `INDEX(Order!A17#,2,${String(place)})`;
  const fitted = (key: string): string => `DROP(${chosen(TREADFIT, `${fits}#`, key)},1)`;
  const over = (key: string, place: number | undefined): string => `IFERROR(--(${fitted(key)}>${bought(place)}),0)`;
  return (
    `=IF(${lacks(fits)},"",IF(${lacks("Order!A17")},"",IF(NOT(ISNUMBER(${bought(blankPrice)})),"",` +
    `TEXTJOIN(", ",TRUE,IF(${over("length", blankLength)}+${over("depth", blankWidth)}>0,${fitted("step")},"")))))`
  );
};
