import { printed } from "./printed-figure";
import type { Applicability, Condition, LimitException, Threshold } from "../profile";

export const HAS_WINDERS: Condition = {
  any: [
    { all: [{ given: "winders" }, { fact: "winders", moreThan: printed("0 winders") }] },
    { given: "winderDepth" },
    { given: "winderNarrowEnd" },
    { given: "winderSpread" },
    { given: "winderTurn" },
    { given: "winderSetTurn" },
  ],
};
export const WINDERS: Applicability = { when: HAS_WINDERS, words: "the flight has winders" };

/** Winders run to a point; tapered treads keep a depth at the narrow end. */
export const TAPERED_TREADS: Applicability[] = [
  { when: HAS_WINDERS, words: "the flight has treads that turn" },
  { when: { fact: "turnTreads", is: ["tapered"] }, words: "the treads of the turn are tapered and no winders" },
];
export const POINTED_WINDERS: Applicability[] = [
  { when: HAS_WINDERS, words: "the flight has winders" },
  { when: { fact: "turnTreads", is: ["winders"], otherwise: "winders" }, words: "the treads of the turn are winders" },
];

/** Winders are compared with winders and straight treads with straight treads, which one column of runs cannot tell apart. */
export const WINDERS_AMONG_STEPS: LimitException = {
  when: { all: [HAS_WINDERS, { not: { fact: "windersInSteps", is: ["no"], otherwise: "yes" } }] },
  then: "judge",
  words:
    "winders are compared with winders and straight treads against straight treads; leave the winders out of the steps and give " +
    "winders in steps, no",
};

const OPEN: Condition = { fact: "openRisers", is: ["yes"], otherwise: "no" };
export const OPEN_RISERS: Condition = { any: [OPEN, { given: "openRiserGap" }] };
export const RISERS_OPEN: Applicability = { when: OPEN_RISERS, words: "the risers are open" };

export const GUARD_NEEDED: Applicability = { when: { reached: "guard required drop" }, words: "a guard is required" };

const NO_GUARD: Condition = { fact: "guard", is: ["no"], otherwise: "unknown" };
export const HAS_GUARD: Condition = {
  any: [
    { fact: "guard", is: ["yes"] },
    { all: [{ not: NO_GUARD }, { any: [{ given: "guardHeight" }, { given: "landingGuardHeight" }] }] },
  ],
};
export const WITH_GUARD: Applicability = { when: { not: NO_GUARD }, words: "there is a guard" };
export const GUARD_TOPPED_BY_HANDRAIL: Condition = { fact: "guardIsHandrail", is: ["yes"], otherwise: "no" };

const NO_HANDRAIL: Condition = { fact: "handrails", is: ["none"], otherwise: "unknown" };
export const HAS_HANDRAIL: Applicability = { when: { not: NO_HANDRAIL }, words: "there is a handrail" };
export const HANDRAIL_PROVIDED: Condition = {
  any: [{ fact: "handrails", is: ["one", "both"] }, { all: [{ not: NO_HANDRAIL }, { given: "handrailHeight" }] }],
};
export const BOTH_HANDRAILS: Condition = { fact: "handrails", is: ["both"] };

const ROUND_GRIP: Condition = {
  not: { any: [{ given: "gripPerimeter" }, { given: "gripCrossSection" }, { given: "gripRecess" }] },
};
export const ROUND_HANDRAIL: Applicability[] = [
  HAS_HANDRAIL, { when: { any: [{ given: "grip" }, ROUND_GRIP] }, words: "the handrail is round" },
];
export const OTHER_HANDRAIL: Applicability[] = [
  HAS_HANDRAIL,
  { when: { not: ROUND_GRIP }, words: "the handrail is not round" },
  { when: { not: { given: "gripRecess" } }, words: "the handrail has no finger recess" },
];

export const AT_FITTING: LimitException = {
  when: { fact: "handrailFitting", is: ["yes"], otherwise: "no" }, then: "does not apply",
  words: "a volute, turnout or starting easing over the lowest tread, and fittings at transitions, may leave the range",
};

export const IN_DWELLING: Condition = { fact: "dwelling", is: ["yes"], otherwise: "no" };
export const DWELLING: Applicability = { when: IN_DWELLING, words: "the stair is inside, or serves only, one dwelling" };

const PRIVATE_USE: Condition = { fact: "use", is: ["private"], otherwise: "private" };
export const PRIVATE: Applicability = { when: PRIVATE_USE, words: "the stair is private, in or for one house or dwelling" };
export const PUBLIC: Applicability = { when: { fact: "use", is: ["public"], otherwise: "private" }, words: "the stair is public" };
export const NOT_PRIVATE: Applicability = { when: { not: PRIVATE_USE }, words: "the stair is not private" };
export const SERVICE: Applicability = {
  when: { fact: "use", is: ["service"], otherwise: "private" },
  words: "the stair serves only service rooms, an attic, a crawl space or a small mezzanine",
};
export const FREE_IN_DWELLING: LimitException = { when: PRIVATE_USE, then: "does not apply", words: "a flight within a dwelling is free" };
/** Whether a service stair serves a dwelling or another place has no label. */
export const NOT_SERVICE: Applicability = {
  when: { fact: "use", is: ["private", "public"], otherwise: "private" }, words: "the stair is private or public and no service stair",
};
export const EXIT: Condition = { fact: "egress", is: ["yes"], otherwise: "no" };
export const OUTSIDE: Condition = { fact: "outside", is: ["yes"], otherwise: "no" };

const SELDOM_USED: Condition = { fact: "infrequent", is: ["yes"], otherwise: "no" };
export const INFREQUENT: Applicability = { when: SELDOM_USED, words: "the stair serves only rooms nobody lives in or uses daily" };
export const FREED_IF_INFREQUENT: LimitException = {
  when: SELDOM_USED, then: "does not apply", words: "a stair that serves only rooms nobody lives in or uses daily has a row of its own",
};

/** Kinds of stair that have limits of their own in the code, which an ordinary stair's check leaves alone. */
const ofKind = (kinds: readonly string[], words: string): LimitException => ({
  when: { fact: "stairKind", is: kinds, otherwise: "standard" }, then: "does not apply",
  words: `${words} has limits of its own, which are not checked here`,
});
export const SPIRAL = ofKind(["spiral"], "a spiral stair");
export const SPECIAL_STAIR = ofKind(["spiral", "ship", "alternating"], "a spiral, ship's or alternating stair");
export const SPECIAL_STAIR_OR_AISLE = ofKind(
  ["spiral", "ship", "alternating", "aisle"], "a spiral, ship's or alternating stair or an aisle",
);

/** Width of the flight: the clear width where it is given, else the width between skirts. */
export const flightWidth = (threshold: Threshold): Condition => ({
  any: [
    { all: [{ given: "clearWidth" }, { fact: "clearWidth", ...threshold }] },
    { all: [{ not: { given: "clearWidth" } }, { fact: "width", ...threshold }] },
  ],
});
