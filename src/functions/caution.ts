/** Stands wherever a verdict or a saw setting is read. */
export const CAUTION =
  "Arithmetic on the numbers given, not an approval. The code as locally adopted and amended, the building official, and a licensed engineer for anything that carries load decide. Saw settings: test cut in scrap, guards on.";
