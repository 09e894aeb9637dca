/** As many choices as a person takes in at once; the arrow in the cell shows all of them. */
const MOST_NAMED = 12;

/** What is said of an entry that is none of the choices. */
export const choiceSentence = (options: readonly string[]): string => {
  const more = options.length - MOST_NAMED;
  const named = options.slice(0, MOST_NAMED).map((option) => `“${option}”`).join(", ");
  return `This cell takes one of these: ${named}${more > 0 ? ` or one of ${more} more` : ""}. The arrow in the cell shows them.`;
};
