import type { Declaration } from "../functions/declare";

/** The name of a function in a script: RISERS is `risers`, RISERHEIGHT, a riser height, is `riserHeight`. */
export const exportedName = ({ id, words = id }: Pick<Declaration, "id" | "words">): string =>
  words.toLowerCase().replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());
