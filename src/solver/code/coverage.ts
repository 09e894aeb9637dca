import type { CodeProfile } from "./profile";

/** What every stair is asked, with the rows of a code that answer it. */
export const TOPICS = {
  rise: ["riser height", "riser height dwelling", "riser height public", "riser height service", "riser height infrequent"],
  run: ["tread depth", "tread depth dwelling", "tread depth pre 2017", "going", "going infrequent", "run", "run public"],
  uniformity: [
    "riser uniformity", "riser uniformity adjacent", "tread uniformity", "run uniformity", "run uniformity adjacent", "going uniformity",
    "going uniformity adjacent", "first riser deviation", "riser deviation from nominal",
  ],
  nosing: ["nosing projection", "nosing projection dwelling", "nosing overlap", "tread depth over run"],
  width: ["clear width above handrail", "stair width", "stair width under 50 occupants", "stair width other"],
  headroom: ["headroom", "headroom other", "headroom secondary suite beams"],
  "handrail required": ["handrail required", "handrail required risers", "handrail required rise", "handrail sides"],
  "handrail height": ["handrail height", "stair rail as handrail height"],
  "guard required": ["guard required drop", "guard required risers"],
  "guard height": ["guard height", "guard height dwelling", "guard height stair", "guard height stair open side", "stair rail height"],
  "guard openings": ["guard opening", "guard opening stair side", "guard opening stair triangle", "guard opening infrequent"],
  landing: [
    "landing depth", "landing depth straight run", "landing depth infrequent", "landing width", "landing clear length", "temporary landing depth",
    "temporary landing width",
  ],
  "open risers": ["open riser", "open riser opening"],
  winders: [
    "winder tread depth walkline", "winder tread depth walkline dwelling", "winder tread depth any point", "winder tread depth any point dwelling",
    "winder uniformity walkline", "walkline offset", "winder tread turn", "winder set turn", "winder sets", "winder sets separation",
    "winders in place of landing", "winder handrail offset tread", "tapered tread going", "tapered going measure point", "tapered going narrow end",
    "tapered tread run narrow end", "tapered tread measure point",
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type Topic = keyof typeof TOPICS;

export const TOPIC_NAMES = Object.keys(TOPICS) as Topic[];

/** What is known here of a code on one topic. */
export type Coverage = "limit" | "none in this code" | "not on file";

/**
 * Topics on which nothing of a code is on file: it may have a rule or none. A code that is known to have no limit has a row that shows so, with its
 * clause.
 */
export const NOT_ON_FILE: Readonly<Record<string, readonly Topic[]>> = {
  "irc-2024": [],
  "irc-2021": [],
  "irc-2018": [],
  "ibc-2021": [],
  "ibc-2018": [],
  "osha-1910.25": ["nosing", "guard required", "guard openings", "open risers", "winders"],
  "osha-1926.1052": ["rise", "run", "nosing", "width", "headroom", "guard required", "guard openings", "open risers"],
  "ada-2010": ["width", "headroom", "guard required", "guard height", "guard openings", "landing", "winders"],
  "uk-adk-private": ["uniformity", "nosing", "width", "landing"],
  "uk-adk-utility": [
    "uniformity", "nosing", "width", "handrail required", "handrail height", "guard required", "guard height", "guard openings", "landing", "open risers",
  ],
  "uk-adk-general": ["uniformity", "handrail required", "handrail height", "guard height", "guard openings", "open risers"],
  "obc-2024-part9": ["handrail required", "guard required", "landing", "open risers"],
  "obc-part9": ["handrail required", "handrail height", "guard required", "guard height", "guard openings", "landing", "open risers"],
  "nbc-ca-2020": ["landing", "open risers"],
  "nbc-ca-2015": ["handrail required", "guard required", "guard height", "landing", "open risers"],
  "au-ncc-2022-class1": ["nosing"],
  "din-18065-dwelling": [
    "nosing", "handrail required", "handrail height", "guard required", "guard height", "guard openings", "landing", "open risers", "winders",
  ],
  "din-18065-general": [
    "nosing", "handrail required", "handrail height", "guard required", "guard height", "guard openings", "landing", "open risers", "winders",
  ],
};

/** Rows that answer a second topic: Approved Document K asks for the handrail of a private stair in the sentence that gives its height. */
const ANSWERED_BESIDE: Readonly<Record<string, Partial<Record<Topic, readonly string[]>>>> = {
  "uk-adk-private": { "handrail required": ["handrail height"] },
};

/** The items under which a code answers a topic. */
export const itemsOn = (topic: Topic, { id }: CodeProfile): readonly string[] => [...TOPICS[topic], ...(ANSWERED_BESIDE[id]?.[topic] ?? [])];

/** The limits of a code that answer a topic. */
export const limitsOn = (topic: Topic, profile: CodeProfile): CodeProfile["limits"] => {
  const items = itemsOn(topic, profile);
  return profile.limits.filter(({ item }) => items.includes(item));
};

/** A code nobody has filled in has nothing on file; rules of the trade are no code and have no topics. */
export const coverage = (topic: Topic, profile: CodeProfile): Coverage => {
  const rows = limitsOn(topic, profile);
  if (rows.length === 0) return "not on file";
  return rows.every(({ rule, amendment }) => rule.comparator === "shown" && amendment === undefined) ? "none in this code" : "limit";
};
