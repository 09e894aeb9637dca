/** Stands wherever a verdict is read. */
export const CAUTION =
  "This is arithmetic, not approval. Follow your local code and building official. Ask a licensed engineer about anything that " +
  "carries load.";

/** Stands wherever a saw is set. */
export const SAW_CAUTION = "Test cut in scrap. Guards on. Eye, ear and dust protection.";
