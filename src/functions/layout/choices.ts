import { foundCode } from "../../solver/code/profiles";
import { choices } from "../../solver/layout/choices";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";

export const CHOICES = declare({
  id: "CHOICES",
  group: "Layout",
  says: "Workable numbers of risers side by side, those that pass the code first.",
  parameters: {
    totalRise: { kind: "length", sign: "positive", plausible: "total rise", says: "Finish floor to finish floor, measured plumb." },
    availableRun: {
      kind: "length",
      sign: "positive",
      optional: true,
      says: "Room for the total run; it is shared out over the treads.",
      without: "Left out: the run is 25 in less two rises, but not under the code's least, or 10 in without a code.",
    },
    code: {
      kind: "text",
      default: "",
      says: "The code and its edition, such as irc-2021; without its edition, such as IRC, the newest on file; left out, no verdict.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per count with a rise from 5 to 8 1/4 in; first those that pass, then nearest to 25 in for two rises and a run, " +
      "then fewer risers.",
    columns: {
      risers: { kind: "count", says: "Number of risers." },
      rise: { kind: "length", says: "Unit rise." },
      run: { kind: "length", says: "Run, nosing to nosing." },
      pitch: { kind: "angle", says: "Degrees from level." },
      "2R+T": { kind: "length", says: "Two rises and a run." },
      totalRun: { kind: "length", says: "Run times the treads; the upper floor is the last." },
      verdict: {
        kind: "text",
        says:
          "Of the rise and run alone, in CHECK's words: pass, fail, caution, assumed: would pass or assumed: would fail " +
          "where another kind of building or use would change it, not on file where the code's limit of either is not known here, " +
          "or not given without a code.",
      },
      note: {
        kind: "text",
        says: "The edition, where the code was given without one; rows of the code that are not passed; what is assumed of the building.",
      },
    },
  },
  problems: {
    "unknown-code": { cell: "#N/A", says: 'code: "{code}" is not known{hint}; known are {known}' },
    "no-workable-count": {
      cell: "#N/A",
      says: "totalRise: {totalRise} has no count of two risers or more between {least} and {greatest} each",
    },
  },
  examples: [
    {
      given: { totalRise: 30, code: "irc-2021" },
      gives: [
        ["risers", "rise", "run", "pitch", "2R+T", "total run", "verdict", "note"],
        [4, 7.5, 10, 36.86989764584402, 25, 30, "pass", ""],
        [5, 6, 13, 24.77514056883192, 25, 52, "pass", ""],
        [6, 5, 15, 18.43494882292201, 25, 75, "pass", ""],
      ],
      from:
        "by hand: 30 / 4, / 5, / 6; US Army EN5156 pairs rise 7 1/2 with tread 10; 25 - 12 = 13, 25 - 10 = 15; atan(3/4), " +
        "atan(6/13), atan(1/3)",
    },
    {
      given: { totalRise: 30, availableRun: 27, code: "irc-2021", headings: false },
      gives: [
        [4, 7.5, 9, 39.80557109226519, 24, 27, "fail", "tread depth (R311.7.5.2)"],
        [5, 6, 6.75, 41.63353933657021, 18.75, 27, "fail", "tread depth (R311.7.5.2)"],
        [6, 5, 5.4, 42.79740183823421, 15.4, 27, "fail", "tread depth (R311.7.5.2)"],
      ],
      from: "by hand: 27 over 3, 4 and 5 treads; IRC 2021 R311.7.5.2 wants 10; atan(7.5/9), atan(6/6.75), atan(5/5.4)",
    },
    {
      given: { totalRise: 9 },
      fails: "#N/A",
      says: 'totalRise: 9" has no count of two risers or more between 5" and 8 1/4" each',
      from: "by hand: 9 / 2 = 4 1/2",
    },
  ],
  source: "Rise = total rise / risers; run = available run / treads, else 25 in less two rises (US Army EN5156).",
  caution: CAUTION,
  solve: ({ totalRise, availableRun, code, unit: used }) => {
    const named = code === "" ? undefined : foundCode(code);
    if (isProblem(named)) return named;
    const found = choices(totalRise, availableRun, named?.profile, used);
    const edition = named?.isNewest === true ? [named.profile.id] : [];
    return isProblem(found)
      ? found
      : found.map(({ twiceRisePlusRun, note, ...choice }) => ({
          ...choice,
          "2R+T": twiceRisePlusRun,
          note: [...edition, ...(note === "" ? [] : [note])].join("; "),
        }));
  },
});
