/**
 * Every label of the stair table, one record each: its kind, what stands in where it is left out and why, what it means, and the functions
 * whose answer turns on it. The table, the facts a solver gets, the facts of a code check, the reference and the search follow from these
 * records; a new label is one record here.
 */

/** Functions that take a stair table. LAYOUT prints every label again, whoever reads it. */
export type StairReader =
  | "LAYOUT" | "SKIRT" | "STARTINGSTEP" | "TREADBALUSTERS" | "RAIL" | "FLIGHTS" | "ONEFLIGHT" | "CHECK" | "BLANK" | "ORDER" | "TAKEOFF"
  | "ALTERNATES";

/** What a code check asks labels for, in the order it names them. */
export const LABEL_TOPICS = [
  "building", "rise and run", "open risers", "nosing", "width", "headroom", "handrail", "guard", "landing", "winders",
  "stringers and treads",
] as const;

export type LabelTopic = (typeof LABEL_TOPICS)[number];

/** What stands in for a label that was left out, and why this and no other. A length is written as a user would type it, in inches. */
export type LabelDefault = { readonly because: string } & (
  | { readonly inches: string | number }
  | { readonly value: string | number | boolean }
  /** As much as another label says. */
  | { readonly as: string }
);

export interface StairLabel {
  /** An angle is in degrees, a ratio is rise over run. */
  readonly kind: "length" | "count" | "number" | "angle" | "ratio" | "choice" | "flag" | "text";
  /** What a number may be; more than 0 where this is left out. */
  readonly sign?: "not negative" | "any";
  readonly plausible?: "total rise" | "rise" | "run";
  readonly options?: readonly string[];
  readonly default?: LabelDefault;
  readonly says: string;
  /** Other words of the trade and of the codes that are read as this label. */
  readonly alsoCalled?: readonly string[];
  readonly readBy: readonly StairReader[];
  /** Follows from the other labels; given as well, it has to agree with them. */
  readonly follows?: true;
  /** What a code check asks this for. */
  readonly topic?: LabelTopic;
  /** What a code check calls this where it works it out of the stair; without a name of its own the label is held as it stands. */
  readonly fact?: string;
  /** What every code takes it for where nobody says so. */
  readonly usual?: string;
}

const YES_NO = ["yes", "no"] as const;
const ALL = [
  "LAYOUT", "SKIRT", "STARTINGSTEP", "TREADBALUSTERS", "RAIL", "FLIGHTS", "ONEFLIGHT", "CHECK", "BLANK", "ORDER", "TAKEOFF",
  "ALTERNATES",
] as const;
/** Several flights do not take them from the stair. */
const OF_ONE_FLIGHT = [
  "LAYOUT", "SKIRT", "STARTINGSTEP", "TREADBALUSTERS", "RAIL", "CHECK", "BLANK", "ORDER", "TAKEOFF", "ALTERNATES",
] as const;
/** What a code check alone reads, of the stair as drawn and of its alternates. */
const CHECKS = ["CHECK", "ALTERNATES"] as const;
const PRACTICE = "common practice, no source";

/** Labels that only a code check reads, by what it asks them for. */
const checked = <const Topic extends LabelTopic, const Labels extends Readonly<Record<string, Omit<StairLabel, "topic" | "readBy">>>>(
  topic: Topic, labels: Labels,
): { readonly [Name in keyof Labels]: Labels[Name] & { readonly topic: Topic; readonly readBy: typeof CHECKS } } =>
  Object.fromEntries(Object.entries(labels).map(([name, label]) => [name, { ...label, topic, readBy: CHECKS }])) as never;

export const STAIR_LABELS = {
  unit: { kind: "choice", options: ["in", "mm"], readBy: ALL, says: "Unit of bare numbers." },
  totalRise: {
    kind: "length", plausible: "total rise", topic: "rise and run", fact: "totalRise", readBy: ALL, says: "Finish floor to finish floor.",
  },
  risers: {
    kind: "count", topic: "rise and run", fact: "risers", readBy: OF_ONE_FLIGHT,
    says: "Number of risers; without it, from the treads or the greatest rise.",
  },
  maxRise: {
    kind: "length", plausible: "rise", default: { inches: "7 3/4", because: "the greatest rise of the IRC, R311.7.5.1" }, readBy: ALL,
    says: "Greatest rise wanted.",
  },
  unitRise: {
    kind: "length", plausible: "rise", topic: "rise and run", fact: "riserHeight", readBy: ALL, says: "Rise of one step.",
    alsoCalled: ["riser height", "rise"],
  },
  run: { kind: "length", plausible: "run", topic: "rise and run", fact: "treadDepth", readBy: ALL, says: "Nosing to nosing." },
  treadDepth: { kind: "length", plausible: "run", readBy: ALL, says: "The codes' word for the run, nosing to nosing." },
  treads: { kind: "count", readBy: OF_ONE_FLIGHT, says: "Number of treads." },
  totalRun: { kind: "length", readBy: OF_ONE_FLIGHT, says: "Run times the number of treads." },
  availableRun: { kind: "length", readBy: OF_ONE_FLIGHT, says: "Room there is for the total run." },
  topTread: {
    kind: "choice", options: ["floor", "flush"], default: { value: "floor", because: "the upper floor serves as the last tread" },
    readBy: ALL,
    says: "Whether the upper floor is the last tread, or a tread lies level with it.",
  },
  nosing: {
    kind: "length", sign: "not negative", default: { inches: "1 1/4", because: PRACTICE }, topic: "nosing", fact: "nosing", readBy: ALL,
    says: "How far the nosing projects past the riser face below it.",
  },
  treadThickness: {
    kind: "length", default: { inches: 1, because: PRACTICE }, topic: "stringers and treads", fact: "treadThickness",
    readBy: ["LAYOUT", "SKIRT", "FLIGHTS", "CHECK", "BLANK", "ORDER", "ALTERNATES"],
    says: "Thickness of the finished tread.",
  },
  riserThickness: {
    kind: "length", default: { inches: "3/4", because: PRACTICE },
    readBy: ["STARTINGSTEP", "FLIGHTS", "ONEFLIGHT", "BLANK", "ORDER", "TAKEOFF"], says: "Thickness of the finished riser.",
  },
  width: {
    kind: "length", topic: "width", fact: "width",
    readBy: ["STARTINGSTEP", "FLIGHTS", "ONEFLIGHT", "CHECK", "BLANK", "ORDER", "TAKEOFF", "ALTERNATES"],
    says: "Skirt to skirt, finished.",
  },
  openEnd: {
    kind: "choice", options: ["none", "left", "right", "both"], default: { value: "none", because: "skirts at both ends" },
    readBy: ["BLANK", "ORDER", "TAKEOFF"], says: "Open ends, with a mitred return.",
  },
  overhang: {
    kind: "length", sign: "not negative", default: { as: "nosing", because: "as much as the nosing" }, readBy: ["BLANK", "ORDER"],
    says: "How far a mitred return stands past the skirt.",
  },
  returnWidth: {
    kind: "length", default: { as: "overhang", because: "as wide as the overhang" },
    readBy: ["BLANK", "ORDER"], says: "Width of the return.",
  },
  runPast: {
    kind: "length", sign: "not negative", default: { inches: "1/4", because: PRACTICE },
    readBy: ["STARTINGSTEP", "BLANK", "ORDER", "TAKEOFF"],
    says: "How far risers run past an open skirt; 0 for risers that end at it.",
  },
  lap: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "risers end on the tread" }, readBy: ["BLANK", "ORDER"],
    says: "How far a riser runs down past the top of the tread below it.",
  },
  riserOn: {
    kind: "choice", options: ["off", "behind", "both"], default: { value: "both", because: "treads were read between finished risers" },
    readBy: ["BLANK", "ORDER"], says: "Finished risers in place when treads were read: none, the one behind the tread, or both.",
  },
  lowerBuildUp: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "the lower floor is finished" }, readBy: ["LAYOUT", "SKIRT"],
    says: "Floor still to be laid at the bottom.",
  },
  upperBuildUp: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "the upper floor is finished" },
    readBy: ["LAYOUT", "FLIGHTS", "ONEFLIGHT"],
    says: "Floor still to be laid at the top.",
  },
  stringers: { kind: "count", default: { value: 3, because: PRACTICE }, readBy: ["TAKEOFF"], says: "Number of stringers." },
  stringerBoard: {
    kind: "length", default: { inches: "11 1/4", because: "a dry 2x12, PS 20" }, topic: "stringers and treads", fact: "stringerBoard",
    readBy: ["LAYOUT", "SKIRT", "FLIGHTS", "CHECK", "ALTERNATES"],
    says: "Width of the board stringers are cut from.",
  },
  skirtThickness: { kind: "length", readBy: [], says: "Thickness of the skirt boards." },
  skirtShows: {
    kind: "length", sign: "not negative", default: { inches: 2, because: PRACTICE }, readBy: ["SKIRT"],
    says: "What a closed skirt shows above the nosing line, square to it.",
  },
  skirtFoot: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "the closed skirt begins under the first nosing" },
    readBy: ["SKIRT"],
    says: "How far a closed skirt runs on before the first nosing, level.",
  },
  skirtHead: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "the closed skirt ends at the landing nosing" }, readBy: ["SKIRT"],
    says: "How far a closed skirt runs on past the landing nosing, level.",
  },
  handrailHeight: {
    kind: "length", topic: "handrail", readBy: ["TREADBALUSTERS", "RAIL", "FLIGHTS", "CHECK", "ALTERNATES"],
    says: "Top of the handrail, plumb above the line of the nosings.",
  },
  headroom: { kind: "length", readBy: ["LAYOUT", "FLIGHTS", "CHECK", "ALTERNATES"], says: "Headroom wanted." },
  opening: {
    kind: "length", readBy: ["LAYOUT", "FLIGHTS", "CHECK", "ALTERNATES"], says: "Opening there is, level, from the landing nosing.",
  },
  floorThickness: {
    kind: "length", readBy: ["LAYOUT", "FLIGHTS", "CHECK", "ALTERNATES"], says: "Floor structure at the opening, finish to finish.",
  },
  trimLength: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "blanks are ordered to size" }, readBy: ["BLANK", "ORDER"],
    says: "Saw allowance on the length of a blank.",
  },
  trimDepth: {
    kind: "length", sign: "not negative", default: { inches: 0, because: "blanks are ordered to size" }, readBy: ["BLANK", "ORDER"],
    says: "Saw allowance on the depth of a blank.",
  },
  landingNosing: {
    kind: "flag", default: { value: true, because: PRACTICE }, readBy: ["FLIGHTS", "ONEFLIGHT", "BLANK", "ORDER", "TAKEOFF"],
    says: "Whether the upper floor, or a landing, gets a nosing piece.",
  },
  landingTread: {
    kind: "length", readBy: ["FLIGHTS", "BLANK", "ORDER", "TAKEOFF"],
    says: "Depth of a landing's nosing piece, where the flight ends on a landing: a landing tread in place of the landing nosing.",
  },
  landingTreadLength: {
    kind: "length", readBy: ["BLANK", "ORDER"], says: "Length of the landing tread given, where it is not that of a tread.",
  },
  species: { kind: "text", readBy: [], says: "Wood of the treads." },
  boardDepth: { kind: "length", follows: true, readBy: ALL, says: "Run + nosing." },
  pitch: { kind: "angle", follows: true, readBy: [], says: "Angle of the nosing line in degrees." },
  slopeLength: { kind: "length", follows: true, readBy: [], says: "Nosing to nosing along the slope." },
  throat: {
    kind: "length", sign: "any", topic: "stringers and treads", fact: "throat", follows: true, readBy: [],
    says: "What is left of the stringer board under the cuts, square to the slope.",
  },
  drop: { kind: "length", sign: "any", follows: true, readBy: [], says: "Taken off the foot of the stringers." },
  hang: { kind: "length", sign: "any", follows: true, readBy: [], says: "Rough upper floor down to the stringer's top level cut." },
  "2R+T": { kind: "length", follows: true, readBy: [], says: "Twice the rise plus the run." },
  openingNeededFromTheLandingNosing: {
    kind: "length", follows: true, readBy: [], says: "Opening that gives the headroom wanted, from the landing nosing.",
  },
  openingNeededFromTheFace: { kind: "length", follows: true, readBy: [], says: "The same from the face of the top riser." },
  headroomFound: {
    kind: "length", topic: "headroom", fact: "headroom", follows: true, readBy: CHECKS, says: "Headroom under the opening there is.",
  },
  ...checked("building", {
    dwelling: { kind: "choice", options: YES_NO, says: "Whether the stair is inside, or serves only, one dwelling." },
    use: {
      kind: "choice", options: ["private", "public", "service"],
      says: "private (in or for one house or dwelling), public, or service (service rooms, attics, crawl spaces, small mezzanines).",
    },
    egress: {
      kind: "choice", options: YES_NO,
      says: "Whether the stair is part of a required way out, as an exit or a necessary stair is.",
    },
    occupants: { kind: "count", says: "People the stair has to serve, as the code counts them." },
    storeys: { kind: "count", says: "Storeys above grade of the building." },
    storeysJoined: { kind: "count", says: "Storeys the stair joins." },
    outside: { kind: "choice", options: YES_NO, says: "Whether the stair is outdoors." },
    loft: { kind: "choice", options: YES_NO, says: "Whether the stair serves a loft conversion with little room." },
    infrequent: {
      kind: "choice", options: YES_NO,
      says: "Whether the stair serves only attics, stores and the like that are not used daily.",
    },
    installed: {
      kind: "choice", options: ["new", "before 2017", "before 1991"],
      says: "When the stair or rail was put in: new, before 2017 (17 January 2017), or before 1991 (16 March 1991).",
    },
    temporary: {
      kind: "choice", options: YES_NO,
      says: "Whether the stair will be taken out again and is no part of the finished building.",
    },
    children: { kind: "choice", options: YES_NO, says: "Whether children under five are likely to use the stair." },
    smallPremises: { kind: "choice", options: YES_NO, says: "Whether the building is small premises with a restricted plan." },
    partThree: { kind: "choice", options: YES_NO, says: "Whether the building falls under Part 3 of the code instead of Part 9." },
    stairKind: {
      kind: "choice", options: ["standard", "spiral", "ship", "alternating", "aisle"], usual: "standard",
      says: "standard (straight, with landings or winders), spiral, ship's stair, alternating treads, or steps of an aisle.",
    },
    laterExceptions: {
      kind: "choice", options: YES_NO,
      says: "Whether the authority grants, under an earlier edition, the exceptions that stand in the 2024 edition only.",
    },
  }),
  ...checked("rise and run", {
    stairHeight: { kind: "length", says: "Whole height the stair climbs, all flights together." },
    stairRisers: { kind: "count", says: "Risers of the whole stair, all flights between two floors together." },
    risersBeforeTurn: { kind: "count", says: "Risers one after another, in flights in line, without a turn." },
    riserSlope: { kind: "angle", usual: "plumb", says: "Degrees a closed riser leans in under the nosing above it." },
    endRiserSlope: {
      kind: "ratio",
      says: "Slope across the width of the stair along a bottom or top riser that meets sloping ground, rise over run.",
    },
    treadSlope: { kind: "ratio", says: "Steepest slope of a tread, rise over run." },
    treadGap: { kind: "length", says: "Level gap between a tread and the nosing of the next, where they do not lap." },
    solidTreads: { kind: "choice", options: YES_NO, says: "Whether the treads are solid, without holes or slots." },
  }),
  ...checked("open risers", {
    openRisers: { kind: "choice", options: YES_NO, says: "Whether the risers are open." },
    openRisersAllowed: {
      kind: "choice", options: YES_NO,
      says: "Whether the code lists this stair among those that may have open risers.",
    },
    openRiserGap: { kind: "length", says: "Clear opening between two treads with no riser." },
    openRiserHeight: { kind: "length", says: "Height of the highest such opening above the floor or grade below." },
    riserPerforation: { kind: "length", says: "Largest hole in a perforated riser." },
  }),
  ...checked("nosing", {
    nosingRadius: { kind: "length", says: "Radius of a rounded nosing." },
    nosingBevel: { kind: "length", says: "Bevel of a nosing's edge." },
    nosingUnderside: { kind: "choice", options: ["curved", "bevelled", "square"], says: "Shape of a nosing from below." },
    resilientCovering: { kind: "choice", options: YES_NO, says: "Whether the nosing has a resilient covering." },
    bevelLoss: { kind: "length", says: "How much of the tread depth a bevelled or rounded edge takes off." },
    bevelReach: { kind: "length", says: "How far a bevel or rounding reaches back, level." },
  }),
  ...checked("width", {
    clearWidth: { kind: "length", says: "Clear width above the handrails and below the headroom." },
    widthAtHandrails: { kind: "length", says: "Clear width at and below the height of the handrails." },
    capacityWidth: { kind: "length", says: "Width the exit capacity of the building asks for, where it was worked out." },
    dividedFlight: { kind: "choice", options: YES_NO, says: "Whether a wide flight is divided by handrails." },
  }),
  ...checked("headroom", {
    headroomAtSide: { kind: "length", says: "Headroom at the side of the stair, where the ceiling slopes." },
    openingOverlap: {
      kind: "length",
      says: "Where only the edge of the floor opening at the side is too low: how far that edge stands in over the stair, level.",
    },
    underBeam: {
      kind: "choice", options: YES_NO, usual: "no",
      says: "Whether headroom was taken under a beam or duct of a secondary suite.",
    },
  }),
  ...checked("handrail", {
    openSides: { kind: "choice", options: ["none", "one", "both"], says: "Sides of the flight without a wall." },
    handrails: { kind: "choice", options: ["none", "one", "both"], says: "Sides that have a handrail." },
    handrailFitting: {
      kind: "choice", options: YES_NO, usual: "no",
      says: "Whether that height was taken at a volute, turnout, easing or other fitting.",
    },
    handrailPlace: {
      kind: "choice", options: ["flight", "landing", "newel winders"], usual: "flight",
      says: "Where the handrail is asked for: on the flight, on a landing, or at winders that turn round a newel post.",
    },
    handrailPassesNosing: {
      kind: "choice", options: YES_NO,
      says: "Whether the handrail has to clear the nosing of a landing or of a passing flight.",
    },
    handrailProjection: { kind: "length", says: "How far a handrail stands into the stair from its side." },
    handrailClearance: { kind: "length", says: "Free space between the handrail and the wall." },
    roughWall: { kind: "choice", options: YES_NO, says: "Whether the wall behind the handrail is rough." },
    handrailExtension: { kind: "length", says: "How far the handrail runs on level beyond the top riser." },
    handrailFootExtension: { kind: "length", says: "How far the handrail runs on at the slope beyond the bottom riser, measured level." },
    grip: { kind: "length", says: "Diameter of a round handrail." },
    gripPerimeter: { kind: "length", says: "Perimeter of a handrail that is not round." },
    gripCrossSection: { kind: "length", says: "Largest dimension across a handrail that is not round." },
    gripRecess: { kind: "length", says: "Depth of the finger recess on each side of a handrail." },
    recessStart: { kind: "length", says: "Top of the handrail down to where its finger recess starts." },
    recessReach: { kind: "length", says: "Widest part of the handrail down to where its finger recess is full." },
    recessHeight: { kind: "length", says: "Height over which the finger recess stays full." },
    recessFoot: { kind: "length", says: "Top of the handrail down to the end of the full recess." },
    widthAboveRecess: { kind: "length", says: "Width of the handrail above its finger recess." },
  }),
  ...checked("guard", {
    guard: { kind: "choice", options: YES_NO, says: "Whether the open side has a guard." },
    fallHeight: { kind: "length", says: "Greatest drop from the open side to the floor or grade below." },
    guardHeight: { kind: "length", says: "Top of the guard on the stair's open side, plumb above the line of the nosings." },
    guardIsHandrail: { kind: "choice", options: YES_NO, says: "Whether the top of the guard is the handrail too." },
  }),
  guardGap: {
    kind: "length", topic: "guard", readBy: ["TREADBALUSTERS", "CHECK", "ALTERNATES"],
    says: "Largest opening in the guard on the stair's open side.",
  },
  ...checked("guard", {
    upperGuardGap: { kind: "length", says: "Largest opening in a guard from 36 to 42 in up." },
    guardSideGap: { kind: "length", says: "Gap between the edge of the stair or landing and a guard fixed to its face." },
    guardRails: { kind: "choice", options: YES_NO, says: "Whether the guard has only a top and a middle rail." },
    triangleGap: { kind: "length", says: "Largest ball that fits the triangle between riser, tread and bottom rail." },
  }),
  landingGuardHeight: {
    kind: "length", topic: "guard", readBy: ["FLIGHTS", "CHECK", "ALTERNATES"], says: "Top of a level guard above its landing or floor.",
  },
  ...checked("guard", {
    landingGuardGap: { kind: "length", says: "Largest opening in a level guard." },
    insideEdgeGuard: {
      kind: "choice", options: YES_NO, usual: "no",
      says: "Whether the height of the landing guard was taken at the inside edge of a landing, over at most 500 mm of it.",
    },
  }),
  ...checked("landing", {
    landing: {
      kind: "choice", options: ["straight", "turn", "exterior door"],
      says: "Straight run across the landing, a turn on it, or the top of one or two risers at an exterior door.",
    },
    landingShape: { kind: "choice", options: ["rectangle", "other"], usual: "rectangle", says: "Shape of the landing in plan." },
    landingDepth: { kind: "length", says: "Landing in the direction of travel." },
    landingWidth: { kind: "length", says: "Landing across the direction of travel." },
    landingSlope: { kind: "ratio", says: "Steepest slope of a landing, rise over run." },
    landingDrains: { kind: "choice", options: YES_NO, says: "Whether the landing has to shed water." },
    doorSwing: { kind: "choice", options: YES_NO, says: "Whether a door swings over the stair or its landing." },
    doorClearance: { kind: "length", says: "Landing left clear of the swing of a door at the bottom." },
    doorPlatform: { kind: "length", says: "Platform left clear of the swing of a door that opens on the stair." },
    threshold: { kind: "length", says: "Height of a doorway's sill above the surface outside it." },
  }),
  ...checked("winders", {
    winders: { kind: "count", usual: "none", says: "Winders in the flight." },
    turnTreads: {
      kind: "choice", options: ["winders", "tapered"],
      says: "Treads of a turn: winders that run to a point, or tapered treads with a depth at the narrow end.",
    },
    windersAlike: { kind: "choice", options: YES_NO, says: "Whether all winders were measured and are equally deep." },
    windersInSteps: { kind: "choice", options: YES_NO, usual: "yes", says: "Whether the table of measured steps holds winders." },
    winderTurnsAlike: { kind: "choice", options: YES_NO, says: "Whether neighbouring winders turn through the same angle." },
    winderDepth: { kind: "length", says: "Least depth of a winder at the walkline, nosing to nosing." },
    winderNarrowEnd: { kind: "length", says: "Least depth of a winder anywhere within the clear width." },
    winderSpread: { kind: "length", says: "Deepest less shallowest winder of the flight, measured at the walkline." },
    winderTurn: { kind: "angle", says: "Degrees one winder turns through." },
    winderSetTurn: { kind: "angle", says: "Degrees all winders of a set turn through together." },
    winderSets: { kind: "count", says: "Sets of winders between two floors." },
    winderSetsApart: { kind: "length", says: "Distance in plan between two sets of winders." },
    walkline: { kind: "length", says: "Distance from the narrow side at which the winder depth was measured." },
    walklineFromHandrail: {
      kind: "length",
      says: "Distance from the centre line of the handrail at the narrow end at which the winder depth was measured.",
    },
  }),
  ...checked("stringers and treads", {
    stringerThickness: { kind: "length", says: "Actual thickness of a stringer." },
    stringerSupported: { kind: "choice", options: YES_NO, says: "Whether the stringers are supported along their length." },
    stringerSpacing: { kind: "length", says: "Distance between stringers." },
    risersSupportTreads: { kind: "choice", options: YES_NO, says: "Whether the risers carry the front of the treads." },
  }),
} as const satisfies Readonly<Record<string, StairLabel>>;
