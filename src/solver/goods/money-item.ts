import { plainMarks } from "./plain-marks";

/** Lines of an invoice that are money for the goods beside them and no goods: they are not counted, used or laid on the rack. */
const MONEY_ITEMS: ReadonlySet<string> = new Set(
  [
    "freight",
    "freight and tax",
    "delivery",
    "delivery charge",
    "shipping",
    "carriage",
    "tax",
    "sales tax",
    "use tax",
    "gst",
    "hst",
    "pst",
    "vat",
    "discount",
    "surcharge",
    "fuel surcharge",
    "restocking fee",
  ].map(plainMarks),
);

export const isMoneyItem = (item: string | number): boolean => MONEY_ITEMS.has(plainMarks(String(item)));
