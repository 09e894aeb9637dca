/** Two cards are as high as a Letter page, in millimetres. */
export const CARD_WIDTH = 210;
export const CARD_HEIGHT = 139.5;

/** What a card says beside its piece. */
export interface CardFacts {
  readonly job: string;
  readonly date: string;
  /** Which card of how many. */
  readonly card: number;
  readonly cards: number;
  readonly caution: string;
}
