import { seeded } from "../job";
import type { PlainSheetJob } from "./job";

/** Up to eight pieces and three rows of sheets in whole inches. */
export const tinyJobs = (seed: number, count: number): PlainSheetJob[] => {
  const draw = seeded(seed);
  return Array.from({ length: count }, () => {
    const some = (most: number) => ({ length: 2 + draw(8), width: 1 + draw(7), quantity: 1 + draw(most), free: draw(3) === 0 });
    const stock = () => {
      const owned = draw(5) === 0;
      return {
        length: 6 + draw(10), width: 4 + draw(9), cents: owned ? 0 : 10 + draw(40), owned,
        available: owned || draw(2) === 0 ? 1 + draw(3) : Infinity,
      };
    };
    return {
      pieces: [some(3), some(2), some(2)].slice(0, 2 + draw(2)),
      stock: Array.from({ length: 1 + draw(3) }, stock),
      kerf: draw(2), trim: draw(4) === 0 ? 1 : 0, first: (["either", "rip", "crosscut"] as const)[draw(3)]!,
    };
  });
};
