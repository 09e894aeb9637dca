import { lengthOf, measure } from "../../solver/length/length";
import { isProblem, problem } from "../../solver/problem";
import { speciesNamed } from "../../solver/wood/species";
import { treadLoad } from "../../solver/wood/tread-load";
import { declare, headings } from "../declare";
import { WOOD_PROBLEMS } from "../wood-problems";

const CAUTION =
  "Averages of clear specimens are no design values: knots, grain and duration of load take much of them. No tread is passed or " +
  "failed here; a licensed engineer decides for anything that carries load.";
/** On an area of 4 sq in, which is taken as a point. */
const CODE_LOAD = 300;
const CODE_LOAD_SOURCE = "IRC Table R301.5, note c: 300 lb on 4 sq in of a tread, taken as a point";
const STRENGTH_SOURCE = "Wood Handbook, FPL-GTR-190, Table 5-3b: averages of clear specimens at 12 %";
const FROM_MEMORY = "; the figures in psi are from memory and agree with the metric Table 5-3a, which was seen";
const MILLION = 1e6;
const INCHES_PER_FOOT = 12;

export const TREADLOAD = declare({
  id: "TREADLOAD",
  words: "tread load",
  group: "Wood",
  says: "Deflection and stress of an open-riser tread beside the clear-wood average, without a verdict.",
  parameters: {
    span: { kind: "length", sign: "positive", says: "Clear span between the supports." },
    depth: { kind: "length", sign: "positive", says: "Depth of the tread, front to back." },
    thickness: { kind: "length", sign: "positive", says: "Thickness of the tread." },
    species: { kind: "text", says: "Wood by its common name." },
    load: { kind: "number", sign: "not negative", default: CODE_LOAD, says: "Pounds at mid-span." },
    uniform: {
      kind: "number",
      sign: "not negative",
      default: 0,
      says: "Pounds per foot of span, in addition, in a call in mm too; 40 lb a sq ft on 12 in of depth is 40.",
    },
    headings,
  },
  result: {
    kind: "table",
    says: "One row per label; the last is the caution.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in or mm, psi, lb or lb/ft; none for a ratio or words." },
    },
  },
  problems: {
    ...WOOD_PROBLEMS,
    "no-load": { cell: "#VALUE!", says: "load: there is neither a load nor a uniform one; give one of them" },
  },
  examples: [
    {
      given: { span: 36, depth: 11.25, thickness: 1.75, species: "white oak" },
      shows: [
        { label: "deflection", value: 0.03260484162, unit: "in" },
        { label: "span ratio", value: 1104.130498, unit: "" },
        { label: "bending stress", value: 470.204081633, unit: "psi" },
        { label: "clear-wood average in bending", value: 15200, unit: "psi" },
        { label: "shear stress", value: 11.4285714286, unit: "psi" },
        { label: "clear-wood average in shear", value: 2000, unit: "psi" },
        { label: "load at mid-span", value: 300, unit: "lb" },
        { label: "source of the load", value: CODE_LOAD_SOURCE },
        { label: "caution", value: CAUTION },
      ],
      from:
        "by hand: 300 x 36³ / (48 x 1,780,000 x 11.25 x 1.75³ / 12); 36 over that; 300 x 36 / 4 / (11.25 x 1.75² / 6) = 470.2; 3 x " +
        "150 / (2 x 11.25 x 1.75) = 11.43; Wood Handbook: white oak 15,200 and 2,000 psi",
    },
    {
      given: { span: "914.4 mm", depth: "285.75 mm", thickness: "44.45 mm", species: "white oak" },
      shows: [
        { label: "deflection", value: 0.828162977, unit: "mm" },
        { label: "bending stress", value: 470.204081633, unit: "psi" },
      ],
      from: "by hand: the tread above in mm; 0.03260484162 x 25.4 = 0.82816297715",
    },
    {
      given: { span: 36, depth: 11.25, thickness: 1, species: "white oak", load: 0 },
      fails: "#VALUE!",
      says: "load: there is neither a load nor a uniform one; give one of them",
      from: "by hand: nothing bends under nothing",
    },
    {
      given: { span: 36, depth: 11.25, thickness: 1, species: "wite oak" },
      fails: "#N/A",
      says:
        'species: "wite oak" is not known; nearest is "white oak"; known are white oak, red oak, hard maple, soft maple, black ' +
        "walnut, black cherry, white ash, pecan hickory, true hickory, yellow birch, American beech, red alder, yellow poplar, live " +
        "oak, overcup oak, American chestnut, sweetgum, basswood, quaking aspen, longleaf pine, loblolly pine, shortleaf pine, " +
        "slash pine, pond pine, ponderosa pine, western white pine, shagbark hickory, pignut hickory, white fir",
      from: "by hand: one letter short of white oak; the woods of the table in its order",
    },
  ],
  source:
    `Simple span, Wood Handbook, FPL-GTR-190, Table 9-1 and equation 9-9; shear 3V/2bh. The default load: ${CODE_LOAD_SOURCE}. ` +
    `${STRENGTH_SOURCE}.`,
  caution: CAUTION,
  solve: ({ span, depth, thickness, species, load, uniform }) => {
    const wood = speciesNamed(species);
    if (isProblem(wood)) return wood;
    if (load === 0 && uniform === 0) return problem("no-load");
    const inches = (length: typeof span): number => measure(length, "in");
    const found = treadLoad({
      span: inches(span),
      depth: inches(depth),
      thickness: inches(thickness),
      load,
      uniform: uniform / INCHES_PER_FOOT,
      elasticity: wood.strength.elasticity * MILLION,
    });
    const row = (label: string, value: number | string, unit = "") => ({ label, value, unit });
    return [
      { label: "deflection", value: { kind: "length", value: lengthOf(found.deflection, "in") } },
      row("span ratio", found.spanRatio),
      row("bending stress", found.bendingStress, "psi"),
      row("clear-wood average in bending", wood.strength.rupture, "psi"),
      row("shear stress", found.shearStress, "psi"),
      row("clear-wood average in shear", wood.strength.shear, "psi"),
      row("modulus of elasticity", wood.strength.elasticity * MILLION, "psi"),
      row("load at mid-span", load, "lb"),
      row("uniform load", uniform, "lb/ft"),
      row("source of the load", load === CODE_LOAD ? CODE_LOAD_SOURCE : "as given"),
      row("source of the averages", `${wood.name}: ${STRENGTH_SOURCE}${wood.strength.status === "seen" ? "" : FROM_MEMORY}`),
      row("caution", CAUTION),
    ];
  },
});
