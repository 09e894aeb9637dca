import type { CodeProfile } from "./profile";

/** What every stair is asked, with the rows of a code that answer it. */
export const TOPICS = {
  rise: ["riser height", "riser height dwelling", "riser height public", "riser height service", "riser height infrequent"],
  run: ["tread depth", "tread depth dwelling", "tread depth pre 2017", "going", "going infrequent", "run", "run public"],
  uniformity: [
    "riser uniformity",
    "riser uniformity adjacent",
    "tread uniformity",
    "run uniformity",
    "run uniformity adjacent",
    "going uniformity",
    "going uniformity adjacent",
    "first riser deviation",
    "riser deviation from nominal",
  ],
  nosing: ["nosing projection", "nosing projection dwelling", "nosing overlap", "tread depth over run"],
  width: ["clear width above handrail", "stair width", "stair width under 50 occupants", "stair width other"],
  headroom: ["headroom", "headroom other", "headroom secondary suite beams"],
  "handrail required": ["handrail required", "handrail required risers", "handrail required rise", "handrail sides"],
  "handrail height": ["handrail height", "stair rail as handrail height"],
  "guard required": ["guard required", "guard required drop", "guard required risers"],
  "guard height": [
    "guard height",
    "guard height dwelling",
    "guard height dwelling interior",
    "guard height stair",
    "guard height stair open side",
    "guard height landing",
    "stair rail height",
  ],
  "guard openings": ["guard opening", "guard opening stair side", "guard opening stair triangle", "guard opening infrequent"],
  landing: [
    "landing depth",
    "landing depth straight run",
    "landing depth infrequent",
    "landing width",
    "landing clear length",
    "temporary landing depth",
    "temporary landing width",
  ],
  "open risers": ["open riser", "open riser opening"],
  winders: [
    "winder tread depth walkline",
    "winder tread depth walkline dwelling",
    "winder tread depth any point",
    "winder tread depth any point dwelling",
    "winder uniformity walkline",
    "walkline offset",
    "winder tread turn",
    "winder set turn",
    "winder sets",
    "winder sets separation",
    "winders in place of landing",
    "winder handrail offset tread",
    "tapered tread going",
    "tapered going measure point",
    "tapered going narrow end",
    "tapered tread run narrow end",
    "tapered tread measure point",
    "tapered run uniformity",
    "winder run at 200",
    "winders allowed",
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type Topic = keyof typeof TOPICS;

export const TOPIC_NAMES = Object.keys(TOPICS) as Topic[];

/** What is known here of a code on one topic. */
export type Coverage = "limit" | "none in this code" | "not on file";

/** The limits of a code that answer a topic. */
export const limitsOn = (topic: Topic, profile: CodeProfile): CodeProfile["limits"] => {
  const items: readonly string[] = TOPICS[topic];
  return profile.limits.filter(({ item }) => items.includes(item));
};

/** A code nobody has filled in has nothing on file; rules of the trade are no code and have no topics. */
export const coverage = (topic: Topic, profile: CodeProfile): Coverage => {
  const rows = limitsOn(topic, profile);
  if (rows.length === 0) return "not on file";
  return rows.every(({ rule, amendment }) => rule.comparator === "shown" && amendment === undefined) ? "none in this code" : "limit";
};
