import { besideBadRows } from "../../solver/bad-row";
import { closureLimits } from "../../solver/fit/closure-limits";
import { treadActs } from "../../solver/fit/tread-acts";
import { ACT_COLUMNS, actRows } from "../act-words";
import { SAW_CAUTION } from "../caution";
import { declare } from "../declare";
import { TREADFIT } from "./treadfit";

export const MARKS = declare({
  id: "MARKS",
  group: "Fit",
  says: "What is marked and sawn to make each tread, act by act in cutting order: the ticket for the bench.",
  parameters: TREADFIT.parameters,
  result: {
    kind: "table",
    says:
      "One row per act, step after step. An end at a skirt comes first, then every mark from it, then the checks, then the other " +
      "end; with both ends open every mark is hooked on the blank's own left end, sawn square. A step whose readings disagree says READ " +
      "AGAIN and gives nothing to saw.",
    columns: ACT_COLUMNS,
  },
  problems: TREADFIT.problems,
  examples: [
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [1, 10, 36, 36, "square"],
        ],
      },
      shows: [{ step: 1, number: 1, act: "RIP", distance: 11.25, tape: "11 1/4", unit: "in" }],
      from: "by hand: a square opening of 36 in, 10 + 1 1/4 deep",
    },
  ],
  source: TREADFIT.source,
  caution: SAW_CAUTION,
  solve: ({ readings, tape, unit: used, headings: _headings, ...piece }) =>
    besideBadRows(
      readings,
      (good) => treadActs(good, { ...piece, unit: used, closure: closureLimits(tape, used) }).map((acts) => actRows(acts, used)),
      ({ label, bad }) => actRows({ step: label, acts: [], bad }, used),
    ).flat(),
});
