import { call } from "../../../src/functions/call";
import { isFailed } from "../../../src/functions/cells";
import { argumentsOf, formula } from "../../../src/functions/formula";
import { BID } from "../../../src/functions/bid/bid";
import { EXTEND } from "../../../src/functions/bid/extend";
import { SELLINGPRICE } from "../../../src/functions/bid/sellingprice";
import { ADHESIVE } from "../../../src/functions/takeoff/adhesive";
import type { Declaration } from "../../../src/functions/declare";
const catalogue: readonly Declaration[] = [BID, EXTEND, SELLINGPRICE, ADHESIVE];
const plain = (a: any) => (Array.isArray(a) ? a : [[a]]).map((r: any[]) => r.map((c: any) => (isFailed(c) ? `${c.failed} ${c.says}` : c)));
for (const d of catalogue) for (const e of d.examples) test(formula(d, e.given), () => {
  const rows = plain(call(d, argumentsOf(d, e.given).map((c) => c === null ? undefined : c)));
  if ("fails" in e) expect(rows[0][0]).toBe(`${e.fails} ${e.says}`);
  else if ("gives" in e) expect(rows).toEqual(typeof e.gives === "object" ? e.gives : [[e.gives]]);
  else { const [h, ...data] = rows; const f = data.map((r: any[]) => Object.fromEntries(r.map((c, i) => [h[i], c])));
    for (const s of e.shows) expect(f).toContainEqual(expect.objectContaining(Object.fromEntries(Object.entries(s).map(([k, c]) => [k, c])))); }
});
for (const d of catalogue) test("sweep " + d.id, () => {
  const good = d.examples.find((e) => !("fails" in e))!.given; const names = Object.keys(d.parameters);
  const cells = argumentsOf(d, good).map((c) => c === null ? undefined : c);
  const shapes: any[] = ["not at all, a value", [[7]], [[7, 8, 9]], [[7], [8], [9]], [[7, 8], [9]], [[]], [["", null, 0]], [["step", "length"], [1, 2]], null, "", 0, -1, 1e300, 1e-300, true, { code: "#N/A", message: "x" }];
  names.forEach((n, i) => shapes.forEach((s) => {
    const a = plain(call(d, names.map((_, p) => p === i ? s : cells[p])));
    for (const c of a.flat()) { expect(["string", "number", "boolean"]).toContain(typeof c); if (typeof c === "number") expect(Number.isFinite(c)).toBe(true); else expect(String(c)).not.toMatch(/undefined|NaN|\[object|Infinity|\{\w+\}/); }
    if (process.env.SHOW) console.log(d.id, n, JSON.stringify(s), JSON.stringify(a).slice(0, 200));
  }));
});
