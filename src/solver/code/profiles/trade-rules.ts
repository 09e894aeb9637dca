import type { Source } from "../profile";
import { edition } from "../record/edition";
import { limitRecord, type LimitRecord } from "../record/limit-record";

const EN5156: Source = { title: "US Army Engineer School, EN5156, lesson 2, laying off run and rise" };
const MODERN_CARPENTRY: Source = { title: "Modern Carpentry, 2008, page 604" };

const limit = limitRecord({ unit: "in", status: "not yet checked", sources: [] });

const RECORDS: readonly LimitRecord[] = [
  limit({
    item: "two r plus t", clause: "rule of thumb", text: "24 to 25",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
  }),
  limit({
    item: "two r plus t 23 to 24", clause: "rule of thumb", text: "23 to 24",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
    remark: "a variant, at odds with 24 to 25",
  }),
  limit({
    item: "two r plus t stride", clause: "rule of thumb", text: "24.6",
    measured: "twice the riser plus the run",
    rule: { comparator: "equals", of: { formula: "two risers plus run" } },
    advisory: true,
    remark: "the stride of 625 mm",
  }),
  limit({
    item: "two r plus t industrial", clause: "Table 5-18 item 4", unit: "mm", text: "610 to 660",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
  }),
  limit({
    item: "r plus t", clause: "rule of thumb", text: "17 to 18",
    measured: "riser plus run",
    rule: { comparator: "range", of: { formula: "riser plus run" } },
    advisory: true,
  }),
  limit({
    item: "r times t", clause: "rule of thumb", unit: "sq in", text: "70 to 75",
    measured: "riser times run, in square inches",
    rule: { comparator: "range", of: { formula: "riser times run" } },
    advisory: true,
    remark: "7 on 11 makes 77, a lawful stair outside the band",
  }),
  limit({
    item: "r times t 72 to 75", clause: "rule of thumb", unit: "sq in", text: "72 to 75",
    measured: "riser times run, in square inches",
    rule: { comparator: "range", of: { formula: "riser times run" } },
    advisory: true,
  }),
  limit({
    item: "riser count start", clause: "lesson 2, rise height", text: "total rise in steps of 7 in, then evened out",
    measured: "a way of finding the number of risers",
    rule: { comparator: "shown" },
    advisory: true,
    status: "checked against the code's text", sources: [EN5156],
    remark: "treads are one fewer than risers; tread = total run over treads",
  }),
  limit({
    item: "riser count divisor", clause: "rule of thumb", text: "total rise over 7 in, to the nearest whole number",
    measured: "a way of finding the number of risers",
    rule: { comparator: "shown" },
    advisory: true,
    status: "checked against the code's text", sources: [MODERN_CARPENTRY],
  }),
  limit({
    item: "blondel", clause: "rule of thumb", unit: "mm", text: "600 to 660",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" } },
    advisory: true,
  }),
];

/** Rules of thumb of the trade: they caution and never fail a stair. */
export const tradeRules = edition({
  id: "trade-rules",
  title: "Trade rules of thumb, which only caution",
  edition: "no edition",
  region: "anywhere",
  isCode: false,
  records: RECORDS,
});
