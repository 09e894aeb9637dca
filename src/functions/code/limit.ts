import { limitInForce } from "../../solver/code/limit-in-force";
import { foundCode } from "../../solver/code/profiles";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, unit } from "../declare";

export const LIMIT = declare({
  id: "LIMIT",
  group: "Code check",
  says: "One limit of a building code.",
  parameters: {
    code: { kind: "text", says: "The code and its edition, such as irc-2021; CODES lists them. A code without its edition, such as IRC, is the newest on file." },
    item: { kind: "text", says: "What it limits, as CHECK prints it: riser height, tread depth, headroom." },
    unit: { ...unit, says: "Unit of the answer where it is a length: in or mm." },
  },
  result: {
    kind: "row",
    says: "One cell; two where the code was given without an edition: the limit, then the edition it is of. Conditions and exceptions stand in CHECK.",
    columns: {
      limit: { kind: "value", says: "In the unit asked for; two limits as text, such as 34 to 38; a slope as rise over run; none in this code where it has no limit." },
      code: { kind: "text", says: "The newest edition on file, where the code was given without one.", mayLack: true },
    },
  },
  problems: {
    "unknown-code": { cell: "#N/A", says: 'code: "{code}" is not known; {hint}known are {known}' },
    "unknown-item": { cell: "#N/A", says: 'item: "{item}" is no limit of {code}; nearest is "{nearest}"' },
    "limit-not-on-file": { cell: "#N/A", says: "item: whether {code} limits {item} is not on file; look it up in the code" },
    "limit-is-no-figure": { cell: "#VALUE!", says: "item: {item} of {code} has no figure, {clause} says: {text}; CHECK shows it with its note" },
    "limit-depends": { cell: "#VALUE!", says: "item: {item} of {code} depends on the stair, {clause} says: {text}; give the stair to CHECK and read the limit of that row" },
  },
  examples: [
    { given: { code: "irc-2021", item: "riser height" }, gives: [[7.75]], from: "IRC 2021 R311.7.5.1: 7 3/4 in" },
    { given: { code: "IRC", item: "riser height" }, gives: [[7.75, "irc-2024"]], from: "IRC 2024 R318.7.5.1: 7 3/4 in; the newest edition on file" },
    { given: { code: "au-ncc-2022-class1", item: "stair width" }, gives: [["none in this code"]], from: "ABCB Housing Provisions Standard, 2022: no least width of a stair" },
    { given: { code: "nbc-ca-2015", item: "guard required" }, fails: "#N/A", says: "item: whether nbc-ca-2015 limits guard required is not on file; look it up in the code", from: "by hand: no row on guards that are required" },
    { given: { code: "IRC 2021", item: "Riser Height", unit: "mm" }, gives: [[196.85]], from: "IRC 2021 R311.7.5.1: 7 3/4 in; by hand x 25.4, though 196 mm is printed beside it" },
    { given: { code: "irc-2021", item: "handrail height" }, gives: [["34 to 38"]], from: "IRC 2021 R311.7.8.1: 34 to 38 in" },
    { given: { code: "irc-2021", item: "handrail height", unit: "mm" }, gives: [["863.6 to 965.2"]], from: "IRC 2021 R311.7.8.1: 34 to 38 in; by hand 34 x 25.4 and 38 x 25.4" },
    { given: { code: "irc-2021", item: "landing width" }, fails: "#VALUE!", says: "item: landing width of irc-2021 depends on the stair, R311.7.6 says: the width of the flight it serves; give the stair to CHECK and read the limit of that row", from: "IRC 2021 R311.7.6: as wide as the flight it serves, a relation" },
    { given: { code: "irc-2021", item: "riser hight" }, fails: "#N/A", says: 'item: "riser hight" is no limit of irc-2021; nearest is "riser height"', from: "by hand: one letter from riser height" },
  ],
  source: "The figures of the code as published, each with clause and source in the reference of codes; amendments are the local authority's.",
  caution: CAUTION,
  solve: ({ code, item, unit: wanted }) => {
    const found = foundCode(code);
    if (isProblem(found)) return found;
    const limit = limitInForce(found.profile, item, wanted);
    return isProblem(limit) ? limit : { limit, ...(found.isNewest ? { code: found.profile.id } : {}) };
  },
});
