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
  readonly stringerBoard?: Length;
  readonly treadThickness?: Length;
  readonly throat?: Length;
  readonly dwelling?: YesNo;
  readonly use?: "private" | "public" | "service";
  readonly egress?: YesNo;
  readonly occupants?: number;
  readonly storeys?: number;
  readonly storeysJoined?: number;
  readonly outside?: YesNo;
  readonly loft?: YesNo;
  readonly infrequent?: YesNo;
  readonly installed?: "new" | "before 2017" | "before 1991";
  readonly temporary?: YesNo;
  readonly children?: YesNo;
  readonly smallPremises?: YesNo;
  readonly partThree?: YesNo;
  readonly underBeam?: YesNo;
  readonly headroomAtSide?: Length;
  readonly capacityWidth?: Length;
  readonly openRisersAllowed?: YesNo;
  readonly riserPerforation?: Length;
  readonly solidTreads?: YesNo;
  readonly stairHeight?: Length;
  readonly endRiserSlope?: number;
  readonly handrailExtension?: Length;
  readonly roughWall?: YesNo;
  readonly upperGuardGap?: Length;
  readonly guardSideGap?: Length;
  readonly guardRails?: YesNo;
  readonly resilientCovering?: YesNo;
  readonly bevelLoss?: Length;
  readonly bevelReach?: Length;
  readonly doorSwing?: YesNo;
  readonly doorClearance?: Length;
  readonly doorPlatform?: Length;
  readonly threshold?: Length;
  readonly risersBeforeTurn?: number;
  readonly turnTreads?: "winders" | "tapered";
  readonly windersAlike?: YesNo;
  readonly windersInSteps?: YesNo;
  readonly winderTurn?: number;
  readonly winderSetTurn?: number;
  readonly winderSets?: number;
  readonly winderSetsApart?: Length;
  readonly walklineFromHandrail?: Length;
  readonly stringerThickness?: Length;
  readonly stringerSupported?: YesNo;
  readonly stringerSpacing?: Length;
  readonly risersSupportTreads?: YesNo;
  readonly stairKind?: "standard" | "spiral" | "ship" | "alternating" | "aisle";
  readonly laterExceptions?: YesNo;
  readonly openSides?: "none" | "one" | "both";
  readonly nosingUnderside?: "curved" | "bevelled" | "square";
  readonly handrailFootExtension?: Length;
  readonly handrailPlace?: "flight" | "landing" | "newel winders";
  readonly recessStart?: Length;
  readonly recessReach?: Length;
  readonly recessHeight?: Length;
  readonly recessFoot?: Length;
  readonly widthAboveRecess?: Length;
  readonly winderTurnsAlike?: YesNo;
  readonly treadGap?: Length;
  readonly insideEdgeGuard?: YesNo;
  readonly dividedFlight?: YesNo;
  readonly landingShape?: "rectangle" | "other";
  readonly stairRisers?: number;
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
  openingOverlap: length("opening overlap", "Where the headroom is short only under the edge of the floor opening at the side: how far that edge stands in over the stair, level."),
  clearWidth: length("clear width", "Clear width above the handrails and below the headroom."),
  widthAtHandrails: length("width at handrails", "Clear width at and below the height of the handrails."),
  handrails: { label: "handrails", kind: "choice", choices: ["none", "one", "both"], says: "Sides that have a handrail." },
  handrailHeight: length("handrail height", "Top of the handrail, plumb above the line of the nosings."),
  handrailFitting: yesNo("handrail fitting", "Whether that height was taken at a volute, turnout, easing or other fitting; left out = no."),
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
  stringerBoard: length("stringer board", "Width of the board the stringers are cut from."),
  treadThickness: length("tread thickness", "Thickness of the finished tread."),
  throat: length("throat", "What is left of a stringer board under its cuts, square to the slope."),
  dwelling: yesNo("dwelling", "Whether the stair is inside, or serves only, one dwelling."),
  use: {
    label: "use", kind: "choice", choices: ["private", "public", "service"],
    says: "private (in or for one house or dwelling), public, or service (service rooms, attics, crawl spaces, small mezzanines).",
  },
  egress: yesNo("egress", "Whether the stair is part of a required way out, as an exit or a necessary stair is."),
  occupants: { label: "occupants", kind: "count", says: "People the stair has to serve, as the code counts them." },
  storeys: { label: "storeys", kind: "count", says: "Storeys above grade of the building." },
  storeysJoined: { label: "storeys joined", kind: "count", says: "Storeys the stair joins." },
  outside: yesNo("outside", "Whether the stair is outdoors."),
  loft: yesNo("loft", "Whether the stair serves a loft conversion with little room."),
  infrequent: yesNo("infrequent", "Whether the stair serves only attics, stores and the like that are not used daily."),
  installed: {
    label: "installed", kind: "choice", choices: ["new", "before 2017", "before 1991"],
    says: "When the stair or rail was put in: new, before 2017 (17 January 2017), or before 1991 (16 March 1991).",
  },
  temporary: yesNo("temporary", "Whether the stair will be taken out again and is no part of the finished building."),
  children: yesNo("children", "Whether children under five are likely to use the stair."),
  smallPremises: yesNo("small premises", "Whether the building is small premises with a restricted plan."),
  partThree: yesNo("part three", "Whether the building falls under Part 3 of the code instead of Part 9."),
  underBeam: yesNo("under beam", "Whether headroom was taken under a beam or duct of a secondary suite; left out = no."),
  headroomAtSide: length("headroom at side", "Headroom at the side of the stair, where the ceiling slopes."),
  capacityWidth: length("capacity width", "Width the exit capacity of the building asks for, where it was worked out."),
  openRisersAllowed: yesNo("open risers allowed", "Whether the code lists this stair among those that may have open risers."),
  riserPerforation: length("riser perforation", "Largest hole in a perforated riser."),
  solidTreads: yesNo("solid treads", "Whether the treads are solid, without holes or slots."),
  stairHeight: length("stair height", "Whole height the stair climbs, all flights together."),
  endRiserSlope: { label: "end riser slope", kind: "ratio", says: "Slope across the width of the stair along a bottom or top riser that meets sloping ground, rise over run." },
  handrailExtension: length("handrail extension", "How far the handrail runs on level beyond the top riser."),
  roughWall: yesNo("rough wall", "Whether the wall behind the handrail is rough."),
  upperGuardGap: length("upper guard gap", "Largest opening in a guard from 36 to 42 in up."),
  guardSideGap: length("guard side gap", "Gap between the edge of the stair or landing and a guard fixed to its face."),
  guardRails: yesNo("guard rails", "Whether the guard has only a top and a middle rail."),
  resilientCovering: yesNo("resilient covering", "Whether the nosing has a resilient covering."),
  bevelLoss: length("bevel loss", "How much of the tread depth a bevelled or rounded edge takes off."),
  bevelReach: length("bevel reach", "How far a bevel or rounding reaches back, level."),
  doorSwing: yesNo("door swing", "Whether a door swings over the stair or its landing."),
  doorClearance: length("door clearance", "Landing left clear of the swing of a door at the bottom."),
  doorPlatform: length("door platform", "Platform left clear of the swing of a door that opens on the stair."),
  threshold: length("threshold", "Height of a doorway's sill above the surface outside it."),
  risersBeforeTurn: { label: "risers before turn", kind: "count", says: "Risers one after another, in flights in line, without a turn." },
  turnTreads: {
    label: "turn treads", kind: "choice", choices: ["winders", "tapered"],
    says: "Treads of a turn: winders that run to a point, or tapered treads with a depth at the narrow end.",
  },
  windersAlike: yesNo("winders alike", "Whether all winders were measured and are equally deep."),
  windersInSteps: yesNo("winders in steps", "Whether the table of measured steps holds winders; left out = yes."),
  winderTurn: { label: "winder turn", kind: "angle", says: "Degrees one winder turns through." },
  winderSetTurn: { label: "winder set turn", kind: "angle", says: "Degrees all winders of a set turn through together." },
  winderSets: { label: "winder sets", kind: "count", says: "Sets of winders between two floors." },
  winderSetsApart: length("winder sets apart", "Distance in plan between two sets of winders."),
  walklineFromHandrail: length("walkline from handrail", "Distance from the centre line of the handrail at the narrow end at which the winder depth was measured."),
  stringerThickness: length("stringer thickness", "Actual thickness of a stringer."),
  stringerSupported: yesNo("stringer supported", "Whether the stringers are supported along their length."),
  stringerSpacing: length("stringer spacing", "Distance between stringers."),
  risersSupportTreads: yesNo("risers support treads", "Whether the risers carry the front of the treads."),
  stairKind: {
    label: "stair kind", kind: "choice", choices: ["standard", "spiral", "ship", "alternating", "aisle"],
    says: "standard (straight, with landings or winders), spiral, ship's stair, alternating treads, or steps of an aisle; left out = standard.",
  },
  laterExceptions: yesNo("later exceptions", "Whether the authority grants, under an earlier edition, the exceptions that stand in the 2024 edition only."),
  openSides: { label: "open sides", kind: "choice", choices: ["none", "one", "both"], says: "Sides of the flight without a wall." },
  nosingUnderside: {
    label: "nosing underside", kind: "choice", choices: ["curved", "bevelled", "square"], says: "Shape of a nosing from below.",
  },
  handrailFootExtension: length("handrail foot extension", "How far the handrail runs on at the slope beyond the bottom riser, measured level."),
  handrailPlace: {
    label: "handrail place", kind: "choice", choices: ["flight", "landing", "newel winders"],
    says: "Where the handrail is asked for: on the flight, on a landing, or at winders that turn round a newel post; left out = flight.",
  },
  recessStart: length("recess start", "Top of the handrail down to where its finger recess starts."),
  recessReach: length("recess reach", "Widest part of the handrail down to where its finger recess is full."),
  recessHeight: length("recess height", "Height over which the finger recess stays full."),
  recessFoot: length("recess foot", "Top of the handrail down to the end of the full recess."),
  widthAboveRecess: length("width above recess", "Width of the handrail above its finger recess."),
  winderTurnsAlike: yesNo("winder turns alike", "Whether neighbouring winders turn through the same angle."),
  treadGap: length("tread gap", "Level gap between a tread and the nosing of the next, where they do not lap."),
  insideEdgeGuard: yesNo("inside edge guard", "Whether the height of the landing guard was taken at the inside edge of a landing, over at most 500 mm of it; left out = no."),
  dividedFlight: yesNo("divided flight", "Whether a wide flight is divided by handrails."),
  landingShape: { label: "landing shape", kind: "choice", choices: ["rectangle", "other"], says: "Shape of the landing in plan; left out = rectangle." },
  stairRisers: { label: "stair risers", kind: "count", says: "Risers of the whole stair, all flights between two floors together." },
};

/** Facts that are worked out of the stair and not copied from its labels. */
const WORKED_OUT: readonly FactName[] = [
  "riserHeight", "treadDepth", "nosing", "totalRise", "risers", "width", "headroom", "stringerBoard", "treadThickness", "throat",
];

/** Labels of the stair table that are only for the check. */
export const CHECK_LABELS: readonly FactName[] = (Object.keys(FACT_LABELS) as FactName[]).filter((name) => !WORKED_OUT.includes(name));
