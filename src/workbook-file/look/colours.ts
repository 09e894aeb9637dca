import { numberOf, type XmlElement } from "../xml-tree";

/** The palette that indexed colours name (ECMA-376-1, 18.8.27); the first eight stand twice. */
const FIRST = "000000 ffffff ff0000 00ff00 0000ff ffff00 ff00ff 00ffff";
const PALETTE = `${FIRST} ${FIRST} 800000 008000 000080 808000 800080 008080 c0c0c0 808080 9999ff 993366 ffffcc ccffff 660066 ff8080 0066cc
ccccff 000080 ff00ff ffff00 00ffff 800080 800000 008080 0000ff 00ccff ccffff ccffcc ffff99 99ccff ff99cc cc99ff ffcc99 3366ff 33cccc
99cc00 ffcc00 ff9900 ff6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333`.split(/\s+/);

/** Where a theme's colours stand in the order in which cells count them (18.8.3, from the order of a colour scheme in 20.1.6.2). */
export const THEME_ORDER = [
  "lt1", "dk1", "lt2", "dk2", "accent1", "accent2", "accent3", "accent4", "accent5", "accent6", "hlink", "folHlink",
];

export interface Colours {
  readonly theme: readonly (string | undefined)[];
  /** A palette of the workbook's own. */
  readonly palette?: readonly string[];
}

const HEX = 16;
const FULL = 255;
const SIXTH = 60;
const CIRCLE = 360;
/** From hue and light to red, green and blue, in twelfths of the circle (CSS Color Module Level 4, 7.1). */
const TWELFTHS = 12;
const [RISE, FALL] = [3, 9];
const [RED, GREEN, BLUE] = [0, 8, 4];
/** Where the three stand in #rrggbb. */
const DIGITS = [1, 3, 5];

const parts = (colour: string): readonly number[] => DIGITS.map((at) => Number.parseInt(colour.slice(at, at + 2), HEX) / FULL);

const hueOf = ([red = 0, green = 0, blue = 0]: readonly number[], most: number, span: number): number => {
  if (span === 0) return 0;
  if (most === red) return (SIXTH * ((green - blue) / span) + CIRCLE) % CIRCLE;
  return most === green ? SIXTH * ((blue - red) / span + 2) : SIXTH * ((red - green) / span + 2 * 2);
};

const written = (share: number): string => Math.round(share * FULL).toString(HEX).padStart(2, "0");

/** A colour made lighter by a positive share, or darker by a negative one (18.8.19, tint). */
const tinted = (colour: string, tint: number): string => {
  const rgb = parts(colour);
  const [most, least] = [Math.max(...rgb), Math.min(...rgb)];
  const span = most - least;
  const light = (most + least) / 2;
  const full = span === 0 ? 0 : span / (1 - Math.abs(2 * light - 1));
  const hue = hueOf(rgb, most, span);
  const lighter = tint < 0 ? light * (1 + tint) : light * (1 - tint) + tint;
  const reach = full * Math.min(lighter, 1 - lighter);
  const share = (step: number): string => {
    const turn = (step + hue / (SIXTH / 2)) % TWELFTHS;
    return written(lighter - reach * Math.max(-1, Math.min(turn - RISE, FALL - turn, 1)));
  };
  return `#${[RED, GREEN, BLUE].map(share).join("")}`;
};

const RGB = /^(?:[0-9a-f]{2})?([0-9a-f]{6})$/i;

const plain = ({ attributes: given }: XmlElement, { theme, palette = PALETTE }: Colours): string | undefined => {
  const [, rgb] = RGB.exec(given["rgb"] ?? "") ?? [];
  if (rgb !== undefined) return `#${rgb.toLowerCase()}`;
  const [ofTheme, index] = [numberOf(given["theme"]), numberOf(given["indexed"])];
  if (ofTheme !== undefined) return theme[ofTheme];
  const own = index === undefined ? undefined : palette[index];
  return own === undefined ? undefined : `#${own}`;
};

/** A colour as #rrggbb; undefined for the one that is used by itself. */
export const colourOf = (element: XmlElement | undefined, colours: Colours): string | undefined => {
  const colour = element && plain(element, colours);
  const tint = Math.max(-1, Math.min(1, numberOf(element?.attributes["tint"]) ?? 0));
  return colour === undefined || tint === 0 ? colour : tinted(colour, tint);
};

const SHORT = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i;
const LONG = /^#([0-9a-f]{6})(?:[0-9a-f]{2})?$/i;

/** A colour of a look as a file takes it; undefined for one written any other way. */
export const fileColour = (colour: string): string | undefined => {
  const [, ...digits] = SHORT.exec(colour) ?? [];
  const long = digits.length > 0 ? digits.map((digit) => digit + digit).join("") : LONG.exec(colour)?.[1];
  return long === undefined ? undefined : `FF${long.toUpperCase()}`;
};
