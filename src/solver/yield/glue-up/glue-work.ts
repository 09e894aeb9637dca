/** A glue-up in whole marks, as the search takes it: what the panels need, and what the boards are. */
export interface GlueWork {
  readonly kinds: readonly PanelKind[];
  readonly woods: readonly Wood[];
  readonly offers: readonly Offer[];
  readonly kerf: number;
  /** What jointing takes off both edges of a strip together. */
  readonly joints: number;
  /** The most strips in a panel; Infinity for any. */
  readonly strips: number;
  /** Each panel is of one board. */
  readonly isOfOneBoard: boolean;
}

/** Panels alike. */
export interface PanelKind {
  /** Rough length of a strip. */
  readonly length: number;
  /** Net width of the panel before it is trimmed. */
  readonly need: number;
  /** Net width of a strip. */
  readonly least: number;
  readonly greatest: number;
  readonly count: number;
}

/** A board, straightened. */
export interface Wood {
  readonly width: number;
  /** Lengths of its clear stretches, from the end chalked 0. */
  readonly stretches: readonly number[];
  /** Whether a panel of each kind may be made of it. */
  readonly suits: readonly boolean[];
}

/** What is bought at once: a board, or a lot. */
export interface Offer {
  readonly woods: readonly number[];
  /** Money before board feet before boards, more than 0. */
  readonly weight: number;
  /** The first offer that differs from this one in nothing. */
  readonly alike: number;
}

/** A strip of a plan: where on which board it lies, what it nets, and in which panel of which kind. */
export interface GluedStrip {
  readonly wood: number;
  readonly stretch: number;
  /** Places from the start of the stretch and from the straightened edge. */
  readonly along: number;
  readonly across: number;
  readonly net: number;
  readonly kind: number;
  readonly panel: number;
}
