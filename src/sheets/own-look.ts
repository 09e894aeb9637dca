/** How the edge of a cell is drawn. */
export const BORDER_LINES = [
  "thin", "hair", "dotted", "dashed", "dash-dot", "dash-dot-dot", "double", "medium", "medium-dashed", "medium-dash-dot",
  "medium-dash-dot-dot", "slant-dash-dot", "thick",
] as const;

export const ACROSS = ["left", "center", "right"] as const;
export const DOWN = ["top", "middle", "bottom"] as const;
export const SIDES = ["top", "right", "bottom", "left"] as const;

export interface Border {
  readonly line: (typeof BORDER_LINES)[number];
  readonly ink: string;
}

/** How a person has made a cell look, beside its style or without one. */
export interface OwnLook {
  readonly bold?: true;
  readonly italic?: true;
  readonly underline?: true;
  readonly strike?: true;
  readonly wrap?: true;
  readonly clip?: true;
  readonly font?: string;
  readonly size?: number;
  readonly ink?: string;
  readonly fill?: string;
  readonly across?: (typeof ACROSS)[number];
  readonly down?: (typeof DOWN)[number];
  /** In degrees, up to the right positive. */
  readonly turned?: number;
  /** Letters under each other. */
  readonly stacked?: true;
  readonly borders?: Partial<Record<(typeof SIDES)[number], Border>>;
}

/** Type sizes as Excel takes them ("Font size: between 1 and 409"). */
const MOST_SIZE = 409;
const MOST_TURNED = 90;
const FONT = /^[\p{L}\p{N} ,.'_-]{1,80}$/u;
const COLOUR = /^(#[0-9a-f]{3,8}|[a-z]{3,20}|rgba?\([0-9 ,.%]{5,40}\))$/i;

interface Field {
  readonly is: (value: unknown) => boolean;
  readonly says: string;
}

const flag: Field = { is: (value) => value === true, says: "true" };
const oneOf = (known: readonly unknown[]): Field => ({ is: (value) => known.includes(value), says: `one of ${known.join(", ")}` });
const between = (least: number, most: number): Field => ({
  is: (value) => typeof value === "number" && value >= least && value <= most, says: `a number from ${least} to ${most}`,
});
const colour: Field = { is: (value) => typeof value === "string" && COLOUR.test(value), says: "a colour such as #7a4a1e" };
const line = oneOf(BORDER_LINES);

const isBorder = (value: unknown): boolean =>
  typeof value === "object" && value !== null && Object.keys(value).length === 2 && "line" in value && line.is(value.line) &&
  "ink" in value && colour.is(value.ink);

const FIELDS: Readonly<Record<keyof OwnLook, Field>> = {
  bold: flag, italic: flag, underline: flag, strike: flag, wrap: flag, clip: flag, stacked: flag,
  font: { is: (value) => typeof value === "string" && FONT.test(value), says: "the name of a font" },
  size: between(1, MOST_SIZE),
  ink: colour, fill: colour,
  across: oneOf(ACROSS), down: oneOf(DOWN),
  turned: between(-MOST_TURNED, MOST_TURNED),
  borders: {
    is: (value) =>
      typeof value === "object" && value !== null &&
      Object.entries(value).every(([side, border]) => SIDES.some((one) => one === side) && isBorder(border)),
    says: `of ${SIDES.join(", ")}, each with a line (${line.says}) and an ink (${colour.says})`,
  },
};

const isField = (name: string): name is keyof OwnLook => Object.keys(FIELDS).includes(name);

export const isColour = (value: unknown): value is string => colour.is(value);

/** What is wrong with a part of a look, by its name; undefined where nothing is. */
export const lookFault = (name: string, value: unknown): string | undefined => {
  if (!isField(name)) return `there is no ${JSON.stringify(name)}; there are ${Object.keys(FIELDS).join(", ")}`;
  return FIELDS[name].is(value) ? undefined : `${name}: must be ${FIELDS[name].says}`;
};
