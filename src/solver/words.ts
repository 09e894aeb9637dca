/** camelCase of a name as words: `longPoint` is `long point`. A name with a sign in it, such as `2R+T`, stays as it is. */
export const words = (name: string): string =>
  name.includes("+") ? name : name.replace(/[A-Z0-9]+/g, (part) => ` ${part.toLowerCase()}`).trim();
