import { cell, ran, rowsOf } from "../one-stair/ran-job";
import { metricStair } from "./metric-stair";

const job = ran(metricStair);

/** Rise over run is 2750 / 15 / 250 = 11 / 15, so the slope of a step is 250 x sqrt(225 + 121) / 15 = 250 x 18.6010752 / 15 = 310.017921. */
const SLOPE = (250 * Math.sqrt(346)) / 15;

const value = (label: string): unknown => cell(job, "layout", label);

describe("one invented stair in millimetres from survey to ticket, by hand beside every figure", () => {
  test("nothing in it is in error", () => {
    for (const [name, result] of job.results) {
      const cells = Array.isArray(result) ? result.flat() : [result];
      expect([name, cells.filter((one) => typeof one === "object")]).toEqual([name, []]);
    }
  });

  test("the first rise gains the tread and loses the floor, the last the other way round", () => {
    // 176 + 27 - 20 = 183; 191 + 20 - 27 = 184. Rough: 4 x 183 + 5 x 184 + 175 + 176 + 182 + 185 + 189 + 191 = 732 + 920 + 1098.
    const rises = rowsOf(job, "finished").flat();
    expect([rises[0], rises[4], rises[5], rises[14]]).toEqual([183, 175, 189, 184]);
    expect(rises.reduce<number>((sum, rise) => sum + Number(rise), 0)).toBe(2750);
  });

  test("one low sub-tread puts the flight out by 14 mm, over 3/8 in, which is 9.525 mm", () => {
    // 189 at the sixth less 175 at the fifth.
    expect([cell(job, "alike", "largest"), cell(job, "alike", "smallest"), cell(job, "alike", "spread"), cell(job, "alike", "verdict")]).toEqual([189, 175, 14, "fail"]);
  });

  test("packing under the low sub-tread makes all rises alike", () => {
    // 5 x 2750 / 15 - (183 + 183 + 182 + 184 + 175) = 916.667 - 907; 3 x 183.333 - 548; 6 x 183.333 - 1096.
    expect(cell(job, "packing", 5, "packing")).toBeCloseTo(29 / 3, 9);
    expect([cell(job, "packing", 3, "packing"), cell(job, "packing", 6, "packing")]).toEqual([2, 4]);
    expect(cell(job, "packing", "least spread", "packing")).toBe(0);
    expect(rowsOf(job, "packing").flat()).not.toContain("must come down");
  });

  test("fifteen risers, fourteen treads, every size in millimetres", () => {
    expect([value("unit"), value("total rise"), value("risers"), value("treads"), value("width")]).toEqual(["mm", 2750, 15, 14, 920]);
    expect(value("unit rise")).toBeCloseTo(550 / 3, 9);
    // 250 + 25; 14 x 250; 27 - 20; 2 x 183.333 + 250.
    expect([value("board depth"), value("total run"), value("drop")]).toEqual([275, 3500, 7]);
    expect(value("2R+T")).toBeCloseTo(1850 / 3, 9);
    // tan is 11 / 15: 36.25384 degrees. 286 - 183.333 x 250 / 310.017921 = 286 - 147.840916. 183.333 - 20 + 27.
    expect(value("pitch")).toBeCloseTo(36.25384, 5);
    expect(value("slope length")).toBeCloseTo(310.017921, 6);
    expect(value("throat")).toBeCloseTo(138.159084, 6);
    expect(value("hang")).toBeCloseTo(571 / 3, 9);
    // (2000 + 285) x 15 / 11 = 3115.909, and the nosing more from the face; 3150 x 11 / 15 - 285 = 2025.
    expect(value("opening needed from the landing nosing")).toBeCloseTo(34275 / 11, 9);
    expect(value("opening needed from the face")).toBeCloseTo(34275 / 11 + 25, 9);
    expect(value("headroom found")).toBe(2025);
    const units = new Set(rowsOf(job, "layout").slice(1).map((row) => row[2]));
    expect([...units].sort()).toEqual(["", "deg", "mm"]);
  });

  test("skirts, rail and balusters", () => {
    // 14 slopes less 7 x 183.333 / 310.017921 = 4340.250888 - 4.139546.
    expect(cell(job, "skirts", "open skirt length")).toBeCloseTo(4336.111343, 5);
    // 183.333 x 250 / 310.017921 + throat is the board again.
    expect(cell(job, "skirts", "open skirt width")).toBeCloseTo(286, 9);
    // 50 + 275 x 183.333 / 310.017921 + 27 x 250 / 310.017921 = 50 + 162.625007 + 21.772935.
    expect(cell(job, "skirts", "closed skirt width")).toBeCloseTo(234.397942, 5);
    // 14 slopes + 11 / 15 x (50 + 147.840916) = 4340.250888 + 145.083338.
    expect(cell(job, "skirts", "closed skirt length")).toBeCloseTo(4485.334227, 5);
    expect(cell(job, "rail", "rail length")).toBeCloseTo(14 * SLOPE, 9);
    // (250 - 99) / (32 + 99) = 1.15, so 2; (250 - 64) / 2.
    expect(rowsOf(job, "balusters")[0]?.slice(0, 2)).toEqual([2, 93]);
  });

  test("the pole is marked to a millimetre from exact heights", () => {
    // Sub-treads lie 27 lower: 183.333 - 27 = 156.333; 366.667 - 27 = 339.667; 5 x 183.333 - 27 = 889.667; 2750 - 27.
    expect([1, 2, 5, 15].map((riser) => cell(job, "pole", riser, "mark"))).toEqual([156, 340, 890, 2723]);
  });

  test("the plan keeps Approved Document K, in its own millimetres", () => {
    // 220 - 183.333; 250 - 220; the nearer of 616.667 - 550 and 700 - 616.667; 2025 - 2000; 42 - 36.25384; 100 - 93.
    expect(cell(job, "check", "riser height", "given")).toBeCloseTo(550 / 3, 9);
    expect(cell(job, "check", "riser height", "margin")).toBeCloseTo(100 / 3, 9);
    expect(cell(job, "check", "going", "margin")).toBe(30);
    expect(cell(job, "check", "two r plus g", "margin")).toBeCloseTo(200 / 3, 9);
    expect(cell(job, "check", "headroom", "margin")).toBe(25);
    expect(cell(job, "check", "pitch", "margin")).toBeCloseTo(5.74616, 5);
    expect(cell(job, "check", "guard opening", "margin")).toBe(7);
    expect(rowsOf(job, "check").map((row) => row[4])).not.toContain("fail");
  });

  test("blanks of a metre, 5 mm ripped off each", () => {
    // 920 + 25; 250 + 25. 275 + 25. 18 + 25. 920 + 6; 183.333 - 27 + 6.
    expect(["length", "width", "thickness", "quantity"].map((heading) => cell(job, "blanks", "tread", heading))).toEqual([945, 275, 27, 14]);
    expect([cell(job, "blanks", "return"), cell(job, "blanks", "landing nosing", "width"), cell(job, "blanks", "riser")]).toEqual([300, 43, 926]);
    expect(cell(job, "blanks", "riser", "width")).toBeCloseTo(487 / 3, 9);
    // 14 x 41; 280 - 275; 1000 - 945; 574 x 5 / 280.
    expect(["quantity", "price", "cost", "ripped off", "cut off", "rip cost"].map((heading) => cell(job, "order", "oak blank 1000", heading))).toEqual([14, 41, 574, 5, 55, 10.25]);
    expect(cell(job, "order", "oak nosing 1000", "cost")).toBe(14.5);
  });

  test("riser heights with the sub-treads packed", () => {
    // 183.333 - 27; 183.333 - 27 + 6.
    const [first, other] = rowsOf(job, "riser heights").flat();
    expect(first).toBeCloseTo(469 / 3, 9);
    expect(other).toBeCloseTo(487 / 3, 9);
  });

  test("fifteen risers out of three boards of 4.2 m and one of 3.6 m", () => {
    // Risers are 920 to 940 long: 4190 holds four with three kerfs of 3, 3590 three, 2390 two. 15 take 3 x 21.60 + 18.90 = 83.70;
    // four of 4.2 m are 86.40, and any other mix of 4, 3 and 2 to a board costs more than either.
    const bought = rowsOf(job, "buy").slice(1).map(([item, length, quantity, , cost]) => [item, length, quantity, cost]);
    expect(bought).toEqual(expect.arrayContaining([["pine 4.2 m", 4200, 3, 64.8], ["pine 3.6 m", 3600, 1, 18.9]]));
    const cut = rowsOf(job, "cuts").slice(1);
    expect(cut.map((row) => Number(row[3])).sort((one, other) => one - other)).toEqual(Array.from({ length: 15 }, (_, step) => step + 1));
    for (const stick of new Set(cut.map(([number]) => number))) {
      const on = cut.filter(([number]) => number === stick);
      const taken = on.reduce((sum, row) => sum + Number(row[4]), 0) + (on.length - 1) * 3;
      expect(taken).toBeLessThanOrEqual((on[0]?.[1] === "pine 4.2 m" ? 4200 : 3600) - 10);
    }
  });

  test("the notch takes skirt, reveal and lap with a millimetre of room", () => {
    // 18 + 6 + 1; 6 + 1.
    expect(rowsOf(job, "notch").flat()).toEqual([25, 7]);
  });

  test("what it takes is in metres, and the adhesive goes on from there", () => {
    const counted = Object.fromEntries(rowsOf(job, "takeoff").slice(1).map(([item, quantity, unit]) => [String(item), [quantity, unit]]));
    // 14 x (920 + 275) = 16,730; 14 x (3 x 250 + 920) = 23,380; (14 x 275 + 2750) x 920 = 6,072,000; over 1.22 x 2.44 = 2.9768 it is 2.04 sheets.
    expect(counted).toMatchObject({
      cove: [16.73, "m"], "adhesive bead": [23.38, "m"], "finish area": [6.072, "sq m"], "protection sheets": [3, "each"], screws: [56, "each"], nails: [90, "each"], notch: [14, "each"],
    });
    // pi / 4 x 6² = 28.2743; x 23,380 x 1.1 = 727,159 cubic mm, 727 ml; over 310 it is 2.35.
    expect([job.results.get("cartridges")].flat(2)).toEqual([3]);
  });
});
