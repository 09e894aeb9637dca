import type { Amendment } from "./amended-profile";

/** What a state has otherwise than the code it adopts, as it was read in its adoption. */
export interface StateAmendments {
  readonly state: string;
  /** The code it adopts, as it is on file. */
  readonly code: string;
  readonly source: string;
  readonly amendments: readonly (Omit<Amendment, "authority"> & { readonly clause: string })[];
  /** What the state has otherwise too and no row of the code holds. */
  readonly remark?: string;
}

const RISER = { item: "riser height", limit: "8 1/4" } as const;
const TREAD = { item: "tread depth", limit: "9" } as const;
const WINDER = { item: "winder tread depth walkline", clause: "R311.7.5.2.1", limit: "9" } as const;
const HANDRAIL = { item: "handrail height", clause: "R311.7.8.1", limit: "30 to 38" } as const;
const LEAST_HANDRAIL = "the state changes the least height of a handrail, 30 in; the greatest is that of the model code";

const residential = (state: string, edition: string): Pick<StateAmendments, "state" | "code" | "source"> => ({
  state, code: `irc-${edition}`, source: `International Residential Code, ${edition}, as adopted by ${state}`,
});

/** Amendments of states, ready for CHECK: items and limits as it takes them, in inches. */
export const STATE_AMENDMENTS: readonly StateAmendments[] = [
  {
    ...residential("Connecticut", "2021"),
    amendments: [
      { ...RISER, clause: "R311.7.5.1" },
      { ...TREAD, clause: "R311.7.5.2" },
    ],
    remark: "existing stairs have smaller figures of their own",
  },
  {
    ...residential("Montana", "2021"),
    amendments: [
      { ...RISER, clause: "R311.7.5.1" },
      { ...TREAD, clause: "R311.7.5.2" },
    ],
  },
  {
    ...residential("New Jersey", "2021"),
    amendments: [{ ...RISER, clause: "R311.7.5.1" }, { ...TREAD, clause: "R311.7.5.2" }, WINDER, HANDRAIL],
    remark: LEAST_HANDRAIL,
  },
  {
    ...residential("New York", "2024"),
    amendments: [
      { ...RISER, clause: "R318.7.5.1" },
      { ...TREAD, clause: "R318.7.5.2" },
    ],
  },
  {
    ...residential("North Carolina", "2021"),
    amendments: [
      { ...RISER, clause: "R311.7.5.1" },
      { ...TREAD, clause: "R311.7.5.2" },
      { item: "winder tread depth any point", clause: "R311.7.5.2.1", limit: "4" },
    ],
    remark: "a top or bottom riser may differ from the next by 3/4 in (R311.7.5.1), which no row holds",
  },
  {
    ...residential("Ohio", "2018"),
    amendments: [
      { ...RISER, clause: "R311.7.5.1" },
      { ...TREAD, clause: "R311.7.5.2" },
      { item: "flight vertical rise", clause: "R311.7.3", limit: "148 1/2" },
    ],
  },
  {
    ...residential("Oregon", "2021"),
    amendments: [
      { item: "riser height", clause: "R311.7.5.1", limit: "8" },
      { ...TREAD, clause: "R311.7.5.2" },
      WINDER,
      { item: "nosing exempt tread depth", clause: "R311.7.5.3", limit: "10" },
      HANDRAIL,
      { item: "guard opening stair side", clause: "R312.1.3", limit: "5" },
    ],
    remark: LEAST_HANDRAIL,
  },
  {
    state: "Pennsylvania",
    code: "ibc-2021",
    source: "34 Pa. Code 403.21, on 1011.5.2 of the International Building Code, 2021",
    amendments: [
      { item: "riser height dwelling", clause: "1011.5.2", limit: "8 1/4" },
      { item: "tread depth dwelling", clause: "1011.5.2", limit: "9" },
    ],
  },
];
