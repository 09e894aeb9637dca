import { limitInForce } from "../../solver/code/limit-in-force";
import type { SourceStatus } from "../../solver/code/profile";
import { foundCode } from "../../solver/code/profiles";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, unit } from "../declare";

/** The note for a limit that was not checked against the text of its own edition. */
const STATUS_NOTES: Readonly<Partial<Record<SourceStatus, readonly string[]>>> = {
  "not yet checked": ["not yet checked against the code's text"],
  "checked against another edition": ["checked against another edition of the code's text"],
};

export const LIMIT = declare({
  id: "LIMIT",
  group: "Code check",
  says: "One limit of a building code.",
  parameters: {
    code: {
      kind: "text",
      says: "The code and its edition, such as irc-2021; CODES lists them. A code without its edition, such as IRC, is the newest on file.",
    },
    item: {
      kind: "text",
      says:
        "What it limits, as CHECK prints it: riser height, tread depth, headroom. Rise is riser " +
        "height; run, going and tread depth are one.",
    },
    unit: { ...unit, says: "Unit of the answer where it is a length: in or mm." },
  },
  result: {
    kind: "row",
    says: "One cell; a second with a note where there is one. Conditions and exceptions stand in CHECK.",
    columns: {
      limit: {
        kind: "value",
        says:
          "In the unit asked for; two limits as text, such as 34 to 38; a slope as rise over run; " +
          "none in this code where it has no limit.",
      },
      note: {
        kind: "text",
        says:
          "The newest edition on file, where the code was given without one; whether the limit is not yet checked against the " +
          "code's text, or was checked against another edition.",
        mayLack: true,
      },
    },
  },
  problems: {
    "unknown-code": { cell: "#N/A", says: 'code: "{code}" is not known{hint}; known are {known}' },
    "unknown-item": { cell: "#N/A", says: 'item: "{item}" is no limit of {code}{nearest}' },
    "limit-not-on-file": { cell: "#N/A", says: "item: whether {code} limits {item} is not on file; look it up in the code" },
    "limit-is-no-figure": {
      cell: "#VALUE!",
      says: "item: {item} of {code} has no figure, {clause} says: {text}; CHECK shows it with its note",
    },
    "limit-depends": {
      cell: "#VALUE!",
      says: "item: {item} of {code} depends on the stair, {clause} says: {text}; give the stair to CHECK and read the limit of that row",
    },
  },
  examples: [
    { given: { code: "irc-2021", item: "riser height" }, gives: [[7.75]], from: "IRC 2021 R311.7.5.1: 7 3/4 in" },
    {
      given: { code: "IRC", item: "riser height" },
      gives: [[7.75, "irc-2024"]],
      from: "IRC 2024 R318.7.5.1: 7 3/4 in; the newest edition on file",
    },
    {
      given: { code: "IRC", item: "going" },
      gives: [[10, "irc-2024"]],
      from: "IRC 2024 R318.7.5.2: tread depth, nosing to nosing, 10 in; run, going and tread depth are one",
    },
    {
      given: { code: "nbc-ca-2015", item: "riser height", unit: "mm" },
      gives: [["125 to 200", "not yet checked against the code's text"]],
      from: "no row of this edition is confirmed",
    },
    {
      given: { code: "uk-adk-private", item: "headroom", unit: "mm" },
      gives: [[2000, "not yet checked against the code's text"]],
      from: "Approved Document K, edition not named: 2 m; not confirmed in the text of 2013",
    },
    {
      given: { code: "uk-adk-private", item: "tread depth", unit: "mm" },
      gives: [["220 to 300"]],
      from: "Approved Document K 2013, 1.3 Table 1.1: going 220 to 300 mm",
    },
    {
      given: { code: "au-ncc-2022-class1", item: "stair width" },
      gives: [["none in this code", "checked against another edition of the code's text"]],
      from: "ABCB Housing Provisions Standard: no least width of a stair, read in another edition than 2022",
    },
    {
      given: { code: "osha-1926.1052", item: "headroom" },
      fails: "#N/A",
      says: "item: whether osha-1926.1052 limits headroom is not on file; look it up in the code",
      from: "by hand: no row on headroom",
    },
    {
      given: { code: "IRC 2021", item: "Riser Height", unit: "mm" },
      gives: [[196.85]],
      from: "IRC 2021 R311.7.5.1: 7 3/4 in; by hand x 25.4, though 196 mm is printed beside it",
    },
    { given: { code: "irc-2021", item: "handrail height" }, gives: [["34 to 38"]], from: "IRC 2021 R311.7.8.1: 34 to 38 in" },
    {
      given: { code: "irc-2021", item: "handrail height", unit: "mm" },
      gives: [["863.6 to 965.2"]],
      from: "IRC 2021 R311.7.8.1: 34 to 38 in; by hand 34 x 25.4 and 38 x 25.4",
    },
    {
      given: { code: "irc-2021", item: "landing width" },
      fails: "#VALUE!",
      says:
        "item: landing width of irc-2021 depends on the stair, R311.7.6 says: the width of the flight it serves; give the stair to " +
        "CHECK and read the limit of that row",
      from: "IRC 2021 R311.7.6: as wide as the flight it serves, a relation",
    },
    {
      given: { code: "irc-2021", item: "riser hight" },
      fails: "#N/A",
      says: 'item: "riser hight" is no limit of irc-2021; nearest is "riser height"',
      from: "by hand: one letter from riser height",
    },
  ],
  source:
    "The figures of the code with clause and source as the reference of codes has them; a second cell says which of them are not " +
    "checked against the text of that edition. Amendments are the local authority's.",
  caution: CAUTION,
  solve: ({ code, item, unit: wanted }) => {
    const found = foundCode(code);
    if (isProblem(found)) return found;
    const limit = limitInForce(found.profile, item, wanted);
    if (isProblem(limit)) return limit;
    const { status, ...value } = limit;
    const note = [...(found.isNewest ? [found.profile.id] : []), ...(STATUS_NOTES[status] ?? [])].join("; ");
    return { limit: value, ...(note === "" ? {} : { note }) };
  },
});
