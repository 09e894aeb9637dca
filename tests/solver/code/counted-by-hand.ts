import type { Topic } from "../../../src/solver/code/coverage";

/** An item that is left to a person, and why no label states it. */
type Left = readonly [item: string, reason: string];

interface Counted {
  /** Records that are compared, shown, and out of scope, and those confirmed in the text of that edition. */
  readonly checked: number;
  readonly shown: number;
  readonly outOfScope: number;
  readonly confirmed: number;
  /**
   * Topics on which nothing of the code is on file: it may have a rule or none. A code that is known to have no limit has a row that shows
   * so, with its clause; that it has none is nowhere taken from memory. Rules of the trade have none of these.
   */
  readonly notOnFile?: readonly Topic[];
  /**
   * Rows left to a person. No other answers `judge` once its labels are given, but for a gap that equals the ball and for the sizes of a
   * kind of stair whose own limits were not read.
   */
  readonly judged: readonly Left[];
}

const WINDERS = "winders among the steps";
const SHAPE = "depth at the walkline and area of a landing that is no rectangle";
const NO_FIGURE = "uniform, without a figure";
const IRC: readonly Left[] = [["tread uniformity", WINDERS], ["landing width", SHAPE]];
const CANADA: readonly Left[] = [["run uniformity adjacent", WINDERS], ["run uniformity", WINDERS]];
const NEIGHBOURS = "which tapered treads are neighbours";
const CANADA_2020: readonly Left[] = [...CANADA, ["tapered run uniformity", NEIGHBOURS]];
const IBC: readonly Left[] = [["riser height", "which riser runs out on sloping ground"], ["tread uniformity", WINDERS]];
const IBC_2021: readonly Left[] = [...IBC, ["landing depth", SHAPE]];

/** Each code, counted record by record in the list it was read into. */
export const COUNTED: Readonly<Record<string, Counted>> = {
  "irc-2024": {
    checked: 37, shown: 0, outOfScope: 13, confirmed: 50,
    notOnFile: [],
    judged: IRC,
  },
  "irc-2021": {
    checked: 37, shown: 0, outOfScope: 11, confirmed: 48,
    notOnFile: [],
    judged: IRC,
  },
  "irc-2018": {
    checked: 37, shown: 0, outOfScope: 10, confirmed: 47,
    notOnFile: [],
    judged: IRC,
  },
  "crc-2025": {
    checked: 37, shown: 0, outOfScope: 13, confirmed: 50,
    notOnFile: [],
    judged: IRC,
  },
  "ibc-2024": {
    checked: 44, shown: 0, outOfScope: 12, confirmed: 56,
    notOnFile: [],
    judged: [...IBC_2021, ["nosing projection uniformity", NO_FIGURE]],
  },
  "ibc-2021": {
    checked: 42, shown: 0, outOfScope: 11, confirmed: 53,
    notOnFile: [],
    judged: IBC_2021,
  },
  "ibc-2018": {
    checked: 42, shown: 0, outOfScope: 11, confirmed: 51,
    notOnFile: [],
    judged: IBC,
  },
  "osha-1910.25": {
    checked: 15, shown: 0, outOfScope: 14, confirmed: 18,
    notOnFile: ["nosing", "open risers", "winders"],
    judged: [["riser uniformity", NO_FIGURE]],
  },
  "osha-1926.1052": {
    checked: 16, shown: 0, outOfScope: 0, confirmed: 5,
    notOnFile: ["rise", "run", "nosing", "width", "headroom", "open risers"],
    judged: [],
  },
  "ada-2010": {
    checked: 17, shown: 0, outOfScope: 1, confirmed: 18,
    notOnFile: ["width", "guard required", "guard height", "guard openings", "landing", "winders"],
    judged: [["riser uniformity", NO_FIGURE]],
  },
  "uk-adk-private": {
    checked: 21, shown: 0, outOfScope: 2, confirmed: 13,
    notOnFile: ["nosing", "width"],
    judged: [["riser uniformity", NO_FIGURE]],
  },
  "uk-adk-utility": {
    checked: 22, shown: 0, outOfScope: 0, confirmed: 11,
    notOnFile: ["nosing", "open risers"],
    judged: [["riser uniformity", NO_FIGURE]],
  },
  "uk-adk-general": {
    checked: 24, shown: 0, outOfScope: 0, confirmed: 12,
    notOnFile: ["open risers"],
    judged: [["riser uniformity", NO_FIGURE]],
  },
  "ie-tgd-k": {
    checked: 16, shown: 0, outOfScope: 1, confirmed: 9,
    notOnFile: ["nosing", "winders"],
    judged: [["riser uniformity", NO_FIGURE]],
  },
  "obc-2024-part9": {
    checked: 41, shown: 0, outOfScope: 20, confirmed: 61,
    notOnFile: [],
    judged: CANADA_2020,
  },
  "obc-part9": {
    checked: 36, shown: 0, outOfScope: 5, confirmed: 11,
    notOnFile: [],
    judged: CANADA,
  },
  "nbc-ca-2020": {
    checked: 44, shown: 1, outOfScope: 20, confirmed: 65,
    notOnFile: [],
    judged: CANADA_2020,
  },
  "nbc-ca-2015": {
    checked: 30, shown: 0, outOfScope: 0, confirmed: 3,
    notOnFile: [],
    judged: CANADA,
  },
  "bc-2024-part9": {
    checked: 44, shown: 0, outOfScope: 17, confirmed: 61,
    notOnFile: [],
    judged: CANADA_2020,
  },
  "au-ncc-2022-class1": {
    checked: 30, shown: 1, outOfScope: 6, confirmed: 36,
    notOnFile: ["nosing"],
    judged: [["going uniformity adjacent", WINDERS], ["going uniformity", WINDERS]],
  },
  "au-ncc-2022-vol1": {
    checked: 10, shown: 0, outOfScope: 2, confirmed: 7,
    notOnFile: ["nosing", "width", "headroom", "handrail required", "guard openings", "landing", "winders"],
    judged: [],
  },
  "as-1657-2018": {
    checked: 15, shown: 0, outOfScope: 1, confirmed: 10,
    notOnFile: ["nosing", "guard openings", "open risers", "winders"],
    judged: [],
  },
  "nz-d1as1": {
    checked: 19, shown: 1, outOfScope: 1, confirmed: 0,
    notOnFile: [],
    judged: [],
  },
  "nz-d1as1-secondary": {
    checked: 19, shown: 1, outOfScope: 1, confirmed: 0,
    notOnFile: [],
    judged: [],
  },
  "nz-d1as1-minor": {
    checked: 19, shown: 1, outOfScope: 1, confirmed: 0,
    notOnFile: [],
    judged: [],
  },
  "nz-d1as1-accessible": {
    checked: 20, shown: 1, outOfScope: 1, confirmed: 0,
    notOnFile: [],
    judged: [],
  },
  "din-18065-dwelling": {
    checked: 14, shown: 0, outOfScope: 2, confirmed: 0,
    notOnFile: ["handrail required", "landing", "open risers", "winders"],
    judged: [],
  },
  "din-18065-general": {
    checked: 17, shown: 0, outOfScope: 3, confirmed: 0,
    notOnFile: ["handrail required", "landing", "open risers", "winders"],
    judged: [],
  },
  "trade-rules": {
    checked: 8, shown: 2, outOfScope: 0, confirmed: 2,
    judged: [],
  },
};
