import { isProblem, problem } from "../../solver/problem";
import { speciesNamed } from "../../solver/wood/species";
import { treadLoad } from "../../solver/wood/tread-load";
import { declare, headings } from "../declare";
import { WOOD_PROBLEMS } from "../wood-problems";

const CAUTION = "Averages of clear specimens are no design values: knots, grain and duration of load take much of them. No tread is passed or failed here; a licensed engineer decides for anything that carries load.";
const MILLION = 1e6;
const INCHES_PER_FOOT = 12;

export const TREADLOAD = declare({
  id: "TREADLOAD",
  group: "Wood",
  says: "Deflection and stress of an open-riser tread beside the clear-wood average, without a verdict.",
  parameters: {
    span: { kind: "length", sign: "positive", says: "Clear span between the supports." },
    depth: { kind: "length", sign: "positive", says: "Depth of the tread, front to back." },
    thickness: { kind: "length", sign: "positive", says: "Thickness of the tread." },
    species: { kind: "text", says: "Wood by its common name." },
    load: { kind: "number", sign: "not negative", default: 300, says: "Pounds at mid-span." },
    uniform: { kind: "number", sign: "not negative", default: 0, says: "Pounds to the foot of span, besides." },
    headings,
  },
  result: {
    kind: "table",
    says: "One row a label; the last is the caution.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in or psi." },
    },
  },
  problems: {
    ...WOOD_PROBLEMS,
    "no-strength-value": { cell: "#N/A", says: "species: no strength is at hand for {species}" },
    "no-load": { cell: "#VALUE!", says: "load: there is neither a load nor a uniform one; give one of them" },
  },
  examples: [
    {
      given: { span: 36, depth: 11.25, thickness: 1.75, species: "white oak" },
      shows: [
        { label: "bending stress", value: 470.2040816326531, unit: "psi" },
        { label: "shear stress", value: 11.428571428571429, unit: "psi" },
        { label: "average clear wood, rupture", value: 15200, unit: "psi" },
        { label: "deflection", value: 0.03260484161561896, unit: "in" },
      ],
      from: "by hand: 300 x 36 / 4 / (11.25 x 1.75² / 6) = 470.2; 3 x 150 / (2 x 11.25 x 1.75) = 11.43; 300 x 36³ / (48 x 1,780,000 x 11.25 x 1.75³ / 12); Wood Handbook: white oak 15,200 psi",
    },
    { given: { span: 36, depth: 11.25, thickness: 1, species: "white oak", load: 0 }, fails: "#VALUE!", says: "load: there is neither a load nor a uniform one; give one of them", from: "by hand: nothing bends under nothing" },
    { given: { span: 36, depth: 11.25, thickness: 1, species: "red alder" }, fails: "#N/A", says: "species: no strength is at hand for red alder", from: "the strength table at hand has no alder" },
  ],
  source: "Simple span, Wood Handbook, FPL-GTR-190, Table 9-1 and equation 9-9; shear 3V/2bh. The default load is the 300 lb on a tread of IRC Table R301.5.",
  caution: CAUTION,
  solve: ({ span, depth, thickness, species, load, uniform }) => {
    const wood = speciesNamed(species);
    if (isProblem(wood)) return wood;
    if (wood.strength === undefined) return problem("no-strength-value", { species: wood.name });
    if (load === 0 && uniform === 0) return problem("no-load");
    const inches = (length: typeof span): number => length.div("25.4").toNumber();
    const found = treadLoad({ span: inches(span), depth: inches(depth), thickness: inches(thickness), load, uniform: uniform / INCHES_PER_FOOT, elasticity: wood.strength.elasticity * MILLION });
    const row = (label: string, value: number | string, unit = "") => ({ label, value, unit });
    return [
      row("deflection", found.deflection, "in"),
      row("span over deflection", found.spanRatio),
      row("bending stress", found.bendingStress, "psi"),
      row("average clear wood, rupture", wood.strength.rupture, "psi"),
      row("shear stress", found.shearStress, "psi"),
      row("load at mid-span", load, "lb"),
      row("strength value", wood.strength.status),
      row("caution", CAUTION),
    ];
  },
});
