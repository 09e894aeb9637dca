import { inches, limitRow, millimetres } from "./limit-row";
import { type CodeProfile, figure, type Limit, type Source } from "./profile";

const RULE_17_18: Source = { title: "Text with the rule of 17 to 18 and the stride rule", address: "secondary text, no public address" };
const RULE_2324: Source = {
  title: "Course notes on stair terminology and layout",
  address: "https://online.documentine.com/rise-and-run-in-math/1/stair-codes-calculations-stair-terminology-stringer-layout.html",
};
const RULE_2425: Source = {
  title: "Article on building stairs and stringers",
  address: "http://mobile.thearchitectureclub.com/architecture/build-stairs-and-calculate-stair-stringers-like-professional",
};
const RULE_API: Source = { title: "Industrial practice for stairs, Table 5-18", address: "secondary text, no public address" };
const RULE_ARMY: Source = {
  title: "Army carpentry course, laying off run and rise",
  address: "http://armyengineer.tpub.com/EN5156/Figure-2-39-Laying-Off-Run-And-Rise-61.htm",
};
const RULE_TRIPLE: Source = { title: "Text with three rules of thumb", address: "secondary text, no public address" };
const TXT_MC: Source = {
  title: "Carpentry textbook 2008, page 604",
  address: "https://www.g-wonlinetextbooks.com/modern-carpentry-2008/604",
};

const limit = limitRow({ unit: "in", status: "seen", sources: [RULE_17_18] });

const LIMITS: readonly Limit[] = [
  limit({
    item: "two r plus t", clause: "rule of thumb", text: "24 to 25",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" }, min: inches("24"), max: inches("25") },
    advisory: true,
    sources: [RULE_TRIPLE, RULE_2425],
  }),
  limit({
    item: "two r plus t 23 to 24", clause: "rule of thumb", text: "23 to 24",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" }, min: inches("23"), max: inches("24") },
    advisory: true,
    sources: [RULE_2324],
    remark: "a variant of course notes, at odds with 24 to 25",
  }),
  limit({
    item: "two r plus t stride", clause: "rule of thumb", text: "24.6",
    measured: "twice the riser plus the run",
    rule: { comparator: "equals", of: { formula: "two risers plus run" }, values: [inches("24.6")] },
    advisory: true,
    remark: "the stride of 625 mm",
  }),
  limit({
    item: "two r plus t industrial", clause: "Table 5-18 item 4", unit: "mm", text: "610 to 660",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" }, min: millimetres("610"), max: millimetres("660") },
    advisory: true,
    sources: [RULE_API],
  }),
  limit({
    item: "r plus t", clause: "rule of thumb", text: "17 to 18",
    measured: "riser plus run",
    rule: { comparator: "range", of: { formula: "riser plus run" }, min: inches("17"), max: inches("18") },
    advisory: true,
  }),
  limit({
    item: "r times t", clause: "rule of thumb", unit: "sq in", text: "70 to 75",
    measured: "riser times run, in square inches",
    rule: { comparator: "range", of: { formula: "riser times run" }, min: figure("70", "sq in"), max: figure("75", "sq in") },
    advisory: true,
    sources: [RULE_TRIPLE],
    remark: "7 on 11 makes 77, a lawful stair outside the band",
  }),
  limit({
    item: "r times t 72 to 75", clause: "rule of thumb", unit: "sq in", text: "72 to 75",
    measured: "riser times run, in square inches",
    rule: { comparator: "range", of: { formula: "riser times run" }, min: figure("72", "sq in"), max: figure("75", "sq in") },
    advisory: true,
    status: "from memory", sources: [],
  }),
  limit({
    item: "riser count start", clause: "lesson 2, rise height", text: "total rise in steps of 7 in, then evened out",
    measured: "a way of finding the number of risers",
    rule: { comparator: "shown", text: "total rise in steps of 7 in, then evened out" },
    advisory: true,
    sources: [RULE_ARMY],
    remark: "treads are one fewer than risers; tread = total run over treads",
  }),
  limit({
    item: "riser count divisor", clause: "rule of thumb", text: "total rise over 7 in, to the nearest whole number",
    measured: "a way of finding the number of risers",
    rule: { comparator: "shown", text: "total rise over 7 in, to the nearest whole number" },
    advisory: true,
    sources: [TXT_MC, RULE_2324],
  }),
  limit({
    item: "blondel", clause: "rule of thumb", unit: "mm", text: "600 to 660",
    measured: "twice the riser plus the run",
    rule: { comparator: "range", of: { formula: "two risers plus run" }, min: millimetres("600"), max: millimetres("660") },
    advisory: true,
    status: "from memory", sources: [],
  }),
];

/** Rules of thumb of the trade: they caution and never fail a stair. */
export const tradeRules: CodeProfile = {
  id: "trade-rules",
  title: "Trade rules of thumb, which only caution",
  edition: "no edition",
  region: "anywhere",
  limits: LIMITS,
  outOfScope: [],
};
