import type { Length, Unit } from "../length/length";

export type YesNo = "yes" | "no";

/** What is known of a stair for a code check; whatever is not known is left out. Slopes are rise over run, angles in degrees. */
export interface CodeFacts {
  readonly unit?: Unit;
  /** What has to be said of a fact that was not given as it stands: a default, or a wish in place of a finding. */
  readonly assumed?: Readonly<Partial<Record<string, string>>>;
  readonly riserHeight?: Length;
  readonly treadDepth?: Length;
  readonly nosing?: Length;
  readonly totalRise?: Length;
  readonly risers?: number;
  readonly width?: Length;
  readonly headroom?: Length;
  readonly openingOverlap?: Length;
  readonly clearWidth?: Length;
  readonly widthAtHandrails?: Length;
  readonly handrails?: "none" | "one" | "both";
  readonly handrailHeight?: Length;
  readonly handrailFitting?: YesNo;
  readonly handrailProjection?: Length;
  readonly handrailPassesNosing?: YesNo;
  readonly handrailClearance?: Length;
  readonly grip?: Length;
  readonly gripPerimeter?: Length;
  readonly gripCrossSection?: Length;
  readonly gripRecess?: Length;
  readonly fallHeight?: Length;
  readonly guard?: YesNo;
  readonly guardHeight?: Length;
  readonly guardIsHandrail?: YesNo;
  readonly guardGap?: Length;
  readonly triangleGap?: Length;
  readonly landingGuardHeight?: Length;
  readonly landingGuardGap?: Length;
  readonly nosingRadius?: Length;
  readonly nosingBevel?: Length;
  readonly riserSlope?: number;
  readonly openRisers?: YesNo;
  readonly openRiserGap?: Length;
  readonly openRiserHeight?: Length;
  readonly treadSlope?: number;
  readonly landingSlope?: number;
  readonly landingDrains?: YesNo;
  readonly landing?: "straight" | "turn" | "exterior door";
  readonly landingDepth?: Length;
  readonly landingWidth?: Length;
  readonly winders?: number;
  readonly winderDepth?: Length;
  readonly winderNarrowEnd?: Length;
  readonly winderSpread?: Length;
  readonly walkline?: Length;
}

/** One step of a flight as built; the top riser of a stair that ends on a floor has no run. */
export interface Step {
  readonly step: string | number;
  readonly rise?: Length;
  readonly run?: Length;
  readonly width?: Length;
  readonly nosing?: Length;
}

export type StepColumn = Exclude<keyof Step, "step">;

export type FactName = Exclude<keyof CodeFacts, "unit" | "assumed">;
type NamesOf<Value> = { [Name in FactName]-?: NonNullable<CodeFacts[Name]> extends Value ? Name : never }[FactName];
export type ChoiceFact = NamesOf<string>;
export type MeasuredFact = Exclude<FactName, ChoiceFact>;

export interface FactLabel {
  /** As it stands in a stair table. */
  readonly label: string;
  readonly kind: "length" | "count" | "ratio" | "angle" | "choice";
  readonly choices?: readonly string[];
  readonly says: string;
}

const YES_NO = ["yes", "no"] as const;

const length = (label: string, says: string): FactLabel => ({ label, kind: "length", says });
const yesNo = (label: string, says: string): FactLabel => ({ label, kind: "choice", choices: YES_NO, says });

/** The label of every fact in a stair table and what it means there. */
export const FACT_LABELS: Readonly<Record<FactName, FactLabel>> = {
  riserHeight: length("unit rise", "Height of each riser, top of tread to top of tread."),
  treadDepth: length("run", "Tread depth, nosing to nosing, level."),
  nosing: length("nosing", "How far a tread stands out over the riser below it."),
  totalRise: length("total rise", "Rise of the flight, between floors or landings."),
  risers: { label: "risers", kind: "count", says: "Risers in the flight." },
  width: length("width", "Finished width, skirt to skirt."),
  headroom: length("headroom found", "Plumb clearance above the line of the nosings."),
  openingOverlap: length("opening overlap", "How far the edge of the floor opening stands in over the side of the stair, level."),
  clearWidth: length("clear width", "Clear width above the handrails and below the headroom."),
  widthAtHandrails: length("width at handrails", "Clear width at and below the height of the handrails."),
  handrails: { label: "handrails", kind: "choice", choices: ["none", "one", "both"], says: "Sides that have a handrail." },
  handrailHeight: length("handrail height", "Top of the handrail, plumb above the line of the nosings."),
  handrailFitting: yesNo("handrail fitting", "Whether that height was taken at a volute, turnout, easing or other fitting."),
  handrailProjection: length("handrail projection", "How far a handrail stands into the stair from its side."),
  handrailPassesNosing: yesNo("handrail passes nosing", "Whether the handrail has to clear the nosing of a landing or of a passing flight."),
  handrailClearance: length("handrail clearance", "Free space between the handrail and the wall."),
  grip: length("grip", "Diameter of a round handrail."),
  gripPerimeter: length("grip perimeter", "Perimeter of a handrail that is not round."),
  gripCrossSection: length("grip cross section", "Largest dimension across a handrail that is not round."),
  gripRecess: length("grip recess", "Depth of the finger recess on each side of a handrail."),
  fallHeight: length("fall height", "Greatest drop from the open side to the floor or grade below."),
  guard: yesNo("guard", "Whether the open side has a guard."),
  guardHeight: length("guard height", "Top of the guard on the stair's open side, plumb above the line of the nosings."),
  guardIsHandrail: yesNo("guard is handrail", "Whether the top of the guard is the handrail too."),
  guardGap: length("guard gap", "Largest opening in the guard on the stair's open side."),
  triangleGap: length("triangle gap", "Largest ball that fits the triangle between riser, tread and bottom rail."),
  landingGuardHeight: length("landing guard height", "Top of a level guard above its landing or floor."),
  landingGuardGap: length("landing guard gap", "Largest opening in a level guard."),
  nosingRadius: length("nosing radius", "Radius of a rounded nosing."),
  nosingBevel: length("nosing bevel", "Bevel of a nosing's edge."),
  riserSlope: { label: "riser slope", kind: "angle", says: "Degrees a closed riser leans in under the nosing above it; left out = plumb." },
  openRisers: yesNo("open risers", "Whether the risers are open."),
  openRiserGap: length("open riser gap", "Clear opening between two treads with no riser."),
  openRiserHeight: length("open riser height", "Height of the highest such opening above the floor or grade below."),
  treadSlope: { label: "tread slope", kind: "ratio", says: "Steepest slope of a tread, rise over run." },
  landingSlope: { label: "landing slope", kind: "ratio", says: "Steepest slope of a landing, rise over run." },
  landingDrains: yesNo("landing drains", "Whether the landing has to shed water."),
  landing: {
    label: "landing", kind: "choice", choices: ["straight", "turn", "exterior door"],
    says: "Straight run across the landing, a turn on it, or the top of one or two risers at an exterior door.",
  },
  landingDepth: length("landing depth", "Landing in the direction of travel."),
  landingWidth: length("landing width", "Landing across the direction of travel."),
  winders: { label: "winders", kind: "count", says: "Winders in the flight; left out = none." },
  winderDepth: length("winder depth", "Least depth of a winder at the walkline, nosing to nosing."),
  winderNarrowEnd: length("winder narrow end", "Least depth of a winder anywhere within the clear width."),
  winderSpread: length("winder spread", "Deepest less shallowest winder of the flight, measured at the walkline."),
  walkline: length("walkline", "Distance from the narrow side at which the winder depth was measured."),
};

/** Facts that are worked out of the stair and not copied from its labels. */
const WORKED_OUT: readonly FactName[] = ["riserHeight", "treadDepth", "nosing", "totalRise", "risers", "width", "headroom"];

/** Labels of the stair table that are only for the check. */
export const CHECK_LABELS: readonly FactName[] = (Object.keys(FACT_LABELS) as FactName[]).filter((name) => !WORKED_OUT.includes(name));
