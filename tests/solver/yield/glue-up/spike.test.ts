import { draws } from "../../../../src/solver/yield/glue-up/draws";
import { glueSearch } from "../../../../src/solver/yield/glue-up/glue-search";
import type { GlueWork } from "../../../../src/solver/yield/glue-up/glue-work";

const job = (seed: number): { work: GlueWork; cents: number[] } => {
  const r = draws(8000 + seed);
  const boards = Array.from({ length: 25 }, () => {
    const L = 96 + Math.floor(97 * r());
    const W = 5 + Math.floor(41 * r()) / 8;
    return { L, W, c: Math.round((1.25 * L * W) / 144 * 720) };
  });
  const Q = 64;
  return {
    cents: boards.map(({ c }) => c),
    work: {
      kinds: [{ length: 43 * Q, need: 11.5 * Q, least: 2 * Q, greatest: 5.5 * Q, count: 14 }],
      woods: boards.map(({ L, W }) => ({ width: W * Q - Q / 4, stretches: [(L - 2) * Q], suits: [true] })),
      offers: boards.map(({ c }, i) => ({ woods: [i], weight: c, alike: i })),
      kerf: Q / 8, joints: Q / 8, strips: 5, isOfOneBoard: false,
    },
  };
};
test("spike", () => {
  const out: string[] = [];
  let sum = 0, proven = 0, max = 0;
  const N = Number(process.env.N ?? 20);
  for (let s = 1; s <= N; s++) {
    const { work, cents } = job(s);
    const t = Date.now();
    const effort = { left: 2e7 };
    const f = glueSearch(work, effort) as any;
    const cost = (o: number[]) => o.reduce((x, i) => x + cents[i]!, 0);
    if (!f.strips) { out.push(`${s} none ${JSON.stringify(f)}`); continue; }
    const c = cost(f.offers), b = Array.isArray(f.bound) ? cost(f.bound) : f.bound;
    const g = 100 * (c - b) / c;
    sum += g; if (g === 0) proven++; max = Math.max(max, g);
    out.push(`${s} ${b} ${c} ${g.toFixed(2)}% strips ${f.strips.length} boards ${f.offers.length} ${Date.now() - t} ms effort ${2e7 - effort.left}`);
  }
  console.log(out.join("\n") + `\nmean ${(sum / N).toFixed(3)} max ${max.toFixed(2)} proven ${proven}/${N}`);
});
