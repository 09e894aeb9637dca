import { type PlainJob, seeded } from "./job";

/** Jobs of a few pieces with one or two grades, limited rows and offcuts, in whole inches: few enough plans to lay out every one. */
export const tinyJobs = (seed: number, count: number): PlainJob[] => {
  const draw = seeded(seed);
  return Array.from({ length: count }, () => {
    const grades = draw(4) === 0 ? ["clear", "paint"] : [""];
    const kinds = Array.from({ length: 2 + draw(2) }, () => ({
      length: 2 + draw(7),
      quantity: 1 + draw(2),
      grade: grades[draw(grades.length)]!,
    }));
    const stock = Array.from({ length: 2 + draw(3) }, (_, row) => {
      const owned = draw(4) === 0;
      return {
        length: 6 + draw(9),
        cents: owned ? 0 : 10 + draw(40),
        available: owned || draw(2) === 0 ? 1 + draw(3) : Infinity,
        owned,
        grade: grades[row % grades.length]!,
      };
    });
    return { pieces: kinds, stock, kerf: draw(2), trim: draw(2) };
  });
};

/** The same with widths and thicknesses, in whole inches: some pieces without one, all stock with both. */
export const tinySectionJobs = (seed: number, count: number): PlainJob[] => {
  const draw = seeded(seed);
  const piece = () => {
    const size = draw(6);
    const across = size === 0 ? {} : { width: 3 + draw(3), ...(size === 1 ? {} : { thickness: 1 + draw(2) }) };
    return { length: 2 + draw(7), quantity: 1 + draw(2), ...across };
  };
  return Array.from({ length: count }, () => ({
    pieces: Array.from({ length: 2 + draw(2) }, piece),
    stock: Array.from({ length: 3 + draw(3) }, () => {
      const owned = draw(5) === 0;
      return {
        length: 6 + draw(9),
        width: 3 + draw(4),
        thickness: 1 + draw(2),
        cents: owned ? 0 : 10 + draw(40),
        available: owned || draw(2) === 0 ? 1 + draw(3) : Infinity,
        owned,
      };
    }),
    kerf: draw(2),
    trim: draw(2),
  }));
};
