import { nearestSaid } from "../nearest-word";
import { type Problem, problem } from "../problem";

export type ValueStatus = "seen" | "from memory";

/** A wood by its common names, with the handbook values that are known of it. */
export interface Species {
  readonly name: string;
  readonly alsoCalled: readonly string[];
  /** Change per percent of moisture content across the grain, radial (quartersawn width) and tangential (flatsawn width): Table 13-5. */
  readonly movement?: { readonly radial: number; readonly tangential: number; readonly status: ValueStatus };
  /**
   * Averages of clear specimens at 12 %: modulus of rupture in psi, of elasticity in million psi, shear along the grain in psi: Table
   * 5-3b. From memory where one of the three was not seen in psi; those agree with the metric Table 5-3a, which was seen, to its
   * rounding.
   */
  readonly strength: { readonly rupture: number; readonly elasticity: number; readonly shear: number; readonly status: ValueStatus };
}

const movement = (radial: number, tangential: number, status: ValueStatus = "seen") => ({ radial, tangential, status });
const strength = (rupture: number, elasticity: number, shear: number, status: ValueStatus = "from memory") => ({
  rupture,
  elasticity,
  shear,
  status,
});

/** USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190: Table 13-5 (movement) and Table 5-3b (strength). */
export const SPECIES: readonly Species[] = [
  { name: "white oak", alsoCalled: ["oak white"], movement: movement(0.0018, 0.00365), strength: strength(15200, 1.78, 2000) },
  {
    name: "red oak",
    alsoCalled: ["oak red", "northern red oak"],
    movement: movement(0.00158, 0.00369),
    strength: strength(14300, 1.82, 1780),
  },
  {
    name: "hard maple",
    alsoCalled: ["sugar maple", "rock maple", "maple"],
    movement: movement(0.00165, 0.00353),
    strength: strength(15800, 1.83, 2330),
  },
  { name: "soft maple", alsoCalled: ["red maple"], movement: movement(0.00137, 0.00289), strength: strength(13400, 1.64, 1850) },
  { name: "black walnut", alsoCalled: ["walnut"], movement: movement(0.0019, 0.00274), strength: strength(14600, 1.68, 1370) },
  { name: "black cherry", alsoCalled: ["cherry"], movement: movement(0.00126, 0.00248), strength: strength(12300, 1.49, 1700, "seen") },
  { name: "white ash", alsoCalled: ["ash"], movement: movement(0.00169, 0.00274), strength: strength(15000, 1.74, 1910, "seen") },
  { name: "pecan hickory", alsoCalled: ["pecan"], movement: movement(0.00169, 0.00315), strength: strength(13700, 1.73, 2080) },
  {
    name: "true hickory",
    alsoCalled: ["hickory", "mockernut hickory"],
    movement: movement(0.00259, 0.00411, "from memory"),
    strength: strength(19200, 2.22, 1740, "seen"),
  },
  { name: "yellow birch", alsoCalled: ["birch"], movement: movement(0.00256, 0.00338), strength: strength(16600, 2.01, 1880, "seen") },
  { name: "American beech", alsoCalled: ["beech"], movement: movement(0.0019, 0.00431), strength: strength(14900, 1.72, 2010, "seen") },
  { name: "red alder", alsoCalled: ["alder"], movement: movement(0.00151, 0.00256), strength: strength(9800, 1.38, 1080) },
  {
    name: "yellow poplar",
    alsoCalled: ["poplar", "tulip poplar"],
    movement: movement(0.00158, 0.00289, "from memory"),
    strength: strength(10100, 1.58, 1190),
  },
  { name: "live oak", alsoCalled: [], movement: movement(0.0023, 0.00338), strength: strength(18400, 1.98, 2660) },
  { name: "overcup oak", alsoCalled: [], movement: movement(0.00183, 0.00462), strength: strength(12600, 1.42, 2000) },
  { name: "American chestnut", alsoCalled: ["chestnut"], movement: movement(0.00116, 0.00234), strength: strength(8600, 1.23, 1080) },
  { name: "sweetgum", alsoCalled: ["gum"], movement: movement(0.00183, 0.00365), strength: strength(12500, 1.64, 1600) },
  { name: "basswood", alsoCalled: ["American basswood"], movement: movement(0.0023, 0.0033), strength: strength(8700, 1.46, 990) },
  { name: "quaking aspen", alsoCalled: ["aspen"], movement: movement(0.00119, 0.00234), strength: strength(8400, 1.18, 850) },
  {
    name: "longleaf pine",
    alsoCalled: ["yellow pine", "southern yellow pine"],
    movement: movement(0.00176, 0.00263, "from memory"),
    strength: strength(14500, 1.98, 1510),
  },
  { name: "loblolly pine", alsoCalled: [], movement: movement(0.00165, 0.00259, "from memory"), strength: strength(12800, 1.79, 1390) },
  { name: "shortleaf pine", alsoCalled: [], movement: movement(0.00158, 0.00271, "from memory"), strength: strength(13100, 1.75, 1390) },
  { name: "slash pine", alsoCalled: [], movement: movement(0.00187, 0.00267, "from memory"), strength: strength(16300, 1.98, 1680) },
  { name: "pond pine", alsoCalled: [], strength: strength(11600, 1.75, 1380) },
  { name: "ponderosa pine", alsoCalled: [], strength: strength(9400, 1.29, 1130) },
  { name: "western white pine", alsoCalled: [], strength: strength(9700, 1.46, 1040) },
  { name: "shagbark hickory", alsoCalled: [], strength: strength(20200, 2.16, 2430) },
  { name: "pignut hickory", alsoCalled: [], strength: strength(20100, 2.26, 2150) },
  { name: "white fir", alsoCalled: [], movement: movement(0.00112, 0.00245, "from memory"), strength: strength(9800, 1.5, 1100) },
];

/** The words of a name, in any order, without their signs. */
const wordsOf = (name: string): string => name.toLowerCase().split(/[^a-z]+/).filter(Boolean).sort().join(" ");

export type SpeciesProblem = "species-unknown" | "species-ambiguous";

/** The wood of a common name, in any order of its words; one that is only part of names, such as oak, lists them. */
export const speciesNamed = (name: string): Species | Problem<SpeciesProblem> => {
  const wanted = wordsOf(name);
  const exact = SPECIES.find((species) => [species.name, ...species.alsoCalled].some((known) => wordsOf(known) === wanted));
  if (exact !== undefined) return exact;
  const parts = wanted.split(" ").filter(Boolean);
  const holding = SPECIES.filter(
    (species) =>
      parts.length > 0 &&
      [species.name, ...species.alsoCalled].some((known) => parts.every((part) => wordsOf(known).split(" ").includes(part))),
  );
  if (holding.length > 0) return problem("species-ambiguous", { name, choices: holding.map((species) => species.name).join(", ") });
  const known = SPECIES.map((species) => species.name).join(", ");
  return problem("species-unknown", {
    name,
    known,
    nearest: nearestSaid(name, SPECIES.flatMap((species) => [species.name, ...species.alsoCalled])),
  });
};
