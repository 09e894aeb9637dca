import { type Injector, ThemeService } from "@univerjs/core";

const DARK = "(prefers-color-scheme: dark)";

export const isDark = (): boolean => matchMedia(DARK).matches;

/** The sheet is dark where the page is, also when that changes. */
export const followColourScheme = (injector: Injector): void =>
  matchMedia(DARK).addEventListener("change", ({ matches }) => injector.get(ThemeService).setDarkMode(matches));
