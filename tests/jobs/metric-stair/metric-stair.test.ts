import { type ActCell, tickets } from "../../../src/sheets/tickets";
import type { Job } from "../one-stair/job";
import { cell, ran, rowsOf } from "../one-stair/ran-job";
import { metricStair } from "./metric-stair";

const job = ran(metricStair);

/**
 * Rise over run is 2750 / 15 / 250 = 11 / 15, so the slope of a step is 250 x sqrt(225 + 121) / 15 = 250 x 18.6010752 / 15 = 310.017921.
 */
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
    expect([
      cell(job, "alike", "largest"),
      cell(job, "alike", "smallest"),
      cell(job, "alike", "spread"),
      cell(job, "alike", "verdict"),
    ]).toEqual([189, 175, 14, "fail"]);
  });

  test("5 mm under the low sub-tread brings the rises within 5 mm", () => {
    // 175 and 189 become 180 and 184, the tallest is then the seventh, 185; with 4 mm they are 179 and 185, 6 apart. No other is packed.
    expect(rowsOf(job, "packing").slice(1).map((row) => row[2])).toEqual([0, 0, 0, 0, 0, 5, 0, 0, 0, 0, 0, 0, 0, 0, 0, "", 0, 5]);
    expect([cell(job, "packing", 5, "rise"), cell(job, "packing", 6, "rise")]).toEqual([180, 184]);
    expect(["as found", "packing", "rise", "unit", "note"].map((heading) => cell(job, "packing", "total and spread", heading))).toEqual([
      14, 5, 5, "mm", "within 5 mm",
    ]);
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
    expect(["length", "width", "thickness", "quantity"].map((heading) => cell(job, "blanks", "tread", heading))).toEqual([
      945, 275, 27, 14,
    ]);
    expect([cell(job, "blanks", "return"), cell(job, "blanks", "landing nosing", "width"), cell(job, "blanks", "riser")]).toEqual([
      300, 43, 926,
    ]);
    expect(cell(job, "blanks", "riser", "width")).toBeCloseTo(487 / 3, 9);
    // 14 x 41; 280 - 275; 1000 - 945; 574 x 5 / 280.
    expect(
      ["quantity", "price", "cost", "ripped off", "cut off", "rip cost"].map((heading) => cell(job, "order", "oak blank 1000", heading)),
    ).toEqual([14, 41, 574, 5, 55, 10.25]);
    expect(cell(job, "order", "oak nosing 1000", "cost")).toBe(14.5);
  });

  test("riser heights follow the rises once packed", () => {
    // 183 - 27; 183, 182, 184, 180, 184, 185, 184, 184, 184, 183, 183, 184, 183, 184, each less 27 and with a lap of 6.
    const heights = [156, 162, 161, 163, 159, 163, 164, 163, 163, 163, 162, 162, 163, 162, 163];
    expect(rowsOf(job, "riser heights").flat()).toEqual(heights);
    expect(rowsOf(job, "riser cuts").slice(1).map((row) => row[rowsOf(job, "riser cuts")[0]?.indexOf("height") ?? 0])).toEqual(heights);
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

  test("the first riser, by the legs of its diagonals", () => {
    // sqrt(938² - 176²) = 921.34033 and sqrt(940² - 176²) = 923.37641; s = -1.65967 and -2.37641, mean -2.01804, closure 0.71674, under
    // 2.38 (3/32 in).
    // Left angle atan(2.01804 / 176) = 0.6569 deg; right edge -2.01804 + 923 - 921 = -0.01804 over 176. Top 921 + a quarter of 0.71674 + 6
    // past the skirt.
    expect(cell(job, "riser cuts", 1, "closure")).toBeCloseTo(0.71674, 4);
    expect(cell(job, "riser cuts", 1, "left angle")).toBeCloseTo(0.6569, 3);
    expect(cell(job, "riser cuts", 1, "right angle")).toBeCloseTo(-0.0059, 3);
    expect(cell(job, "riser cuts", 1, "top")).toBeCloseTo(927.1792, 3);
    expect(cell(job, "riser cuts", 1, "left set")).toBe("left 0.66°, upright");
    expect(rowsOf(job, "riser cuts").slice(1).map((row) => row[row.length - 1])).toEqual(Array.from({ length: 15 }, () => ""));
  });

  test("the first tread, by the legs of its diagonals", () => {
    const first = (heading: string): unknown => cell(job, "tread cuts", 1, heading);
    // sqrt(953² - 250²) = 919.62438 and sqrt(957² - 250²) = 923.76891; s = -3.37562 and -2.76891, mean -3.07227, closure -0.60671; a
    // quarter of it is -0.15168.
    expect(first("closure")).toBeCloseTo(-0.60671, 4);
    // atan(3.07227 / 250); atan((-3.07227 + 923 - 921) / 250).
    expect(first("left angle")).toBeCloseTo(0.70408, 4);
    expect(first("right angle")).toBeCloseTo(-0.24574, 4);
    // Lean: 27 x tan -1 deg = -0.47129 at the face. Back 921 - 0.15168 - 0.47129; front at 275: 921 + 2 x 275 / 250 - 0.15168 - 0.47129.
    expect(first("back")).toBeCloseTo(920.37704, 4);
    expect(first("front")).toBeCloseTo(922.57704, 4);
    expect(first("depth")).toBe(275);
    // Toe 922.57704 + 25 / cos 0.24574 deg; heel less 25 x tan(45 - 0.12287 deg) = 24.89300; at the hook less 25 x tan 0.70408 deg =
    // 0.30723.
    expect(first("toe")).toBeCloseTo(947.57727, 4);
    expect(first("heel")).toBeCloseTo(922.68426, 4);
    expect(first("heel at the hook")).toBeCloseTo(922.37704, 4);
    // (90 + 0.24574) / 2; (275 + 25) / cos 0.24574 deg.
    expect(first("mitre")).toBeCloseTo(45.12287, 4);
    expect(first("return length")).toBeCloseTo(300.00276, 4);
    // The underside is the longer: from -3.07227 x 275 / 250 = -3.37949 at the nose to 921 - 0.15168 - 1.07227 x 275 / 250 + 25.00023 =
    // 944.66906.
    expect(first("length")).toBeCloseTo(948.04855, 4);
    // Both ends swing to the left: the wall end's nose is longer, the open end's back. Tilt atan(tan 1 deg x cos 0.70408 deg) = 0.99992.
    expect(first("left set")).toBe("left 0.70°, underside longer 1.00°");
    expect(first("right set")).toBe("left 0.25°, upright");
  });

  test("the ticket says millimetres, to the half, with 100 burnt where the hook would stand off", () => {
    const [page, ...others] = tickets("Fit", "treads", rowsOf(job, "tread acts") as readonly (readonly ActCell[])[]);
    expect(others).toEqual([]);
    const line = (act: string) => page?.acts.find((one) => one.act === act);
    const figure = (act: string): string | undefined => line(act)?.cells[0]?.figure;
    expect(page?.measure).toBe("Millimetres, to the nearest half.");
    // Of the first tread, above: toe 947.6, heel at the hook 922.4; the wall end's underside is the longer, so 100 is burnt; 250 + 25 deep.
    expect(["RIP", "GAUGE", "MARK RIGHT TOE", "MARK RIGHT HEEL", "SAW RIGHT RETURN"].map(figure)).toEqual([
      "275", "25", "1047.5", "1022.5", "300",
    ]);
    expect(line("MARK RIGHT TOE")?.says).toContain("burn 100 at the left nose corner, along the nose");
    // 0.70408 to the left and a tilt of 0.99992, above; 275 x tan 0.70408 is 3.38, 3.5 on a rule to the half.
    expect(figure("SAW LEFT END")).toBe("0.7°");
    expect(line("SAW LEFT END")?.cells[0]?.under).toContain("back in by 3.5");
    expect(line("SAW LEFT END")?.says).toEqual(expect.arrayContaining(["tilt 1.0°", "near end of the cut to the left"]));
    // The mitre is 45.1 from the nose: 44.9 on a saw's scale.
    expect(figure("MITRE RIGHT END")).toBe("44.9°");
    expect(JSON.stringify([page?.acts, page?.always])).not.toMatch(/\d in\b|inch/);
  });

  test("the notch takes skirt, reveal and lap with a millimetre of room", () => {
    // 18 + 6 + 1; 6 + 1.
    expect(rowsOf(job, "notch").flat()).toEqual([25, 7]);
  });

  test("what it takes is in metres, and the adhesive goes on from there", () => {
    const counted = Object.fromEntries(rowsOf(job, "takeoff").slice(1).map(([item, quantity, unit]) => [String(item), [quantity, unit]]));
    // 14 x (920 + 275) = 16,730; 14 x (3 x 250 + 920) = 23,380; (14 x 275 + 2750) x 920 = 6,072,000; over 1.22 x 2.44 = 2.9768 it is 2.04
    // sheets.
    expect(counted).toMatchObject({
      cove: [16.73, "m"],
      "adhesive bead": [23.38, "m"],
      "finish area": [6.072, "sq m"],
      "protection sheets": [3, "each"],
      screws: [56, "each"],
      nails: [90, "each"],
      notch: [14, "each"],
    });
    // pi / 4 x 6² = 28.2743; x 23,380 x 1.1 = 727,159 cubic mm, 727 ml; over 310 it is 2.35.
    expect([job.results.get("cartridges")].flat(2)).toEqual([3]);
  });

  test("rates and prices by the foot count for what is in metres", () => {
    // 16.73 / 0.3048 = 54.88845 ft x 0.02; 6.072 / 0.09290304 = 65.35846 sq ft x 0.01.
    expect(cell(job, "hours", "cove")).toBeCloseTo(1.097769, 6);
    expect(cell(job, "hours", "finish area")).toBeCloseTo(0.6535846, 6);
    expect(cell(job, "hours", "riser")).toBe(3.75);
    // 54.88845 x 1.15 = 63.12; 1.097769 x 45 = 49.40.
    expect([cell(job, "goods", "cove", "cost"), cell(job, "labour", "cove", "cost")]).toEqual([63.12, 49.4]);
  });

  test("the bid", () => {
    // Labour 283.50 + 18 + 168.75 + 67.50 + 90 + 157.50 + 33.75 + 63 + 94.50 + 49.40 + 29.41 + 13.50 = 1,068.81; goods 63.12 + 6.16 + 2.70
    // + 42 + 94.50 = 208.48;
    // adhesive 3 x 8.40; blanks 574 + 14.50; boards 83.70. Overhead 12 % of 1,974.69 is 236.96; 2,211.65 / 0.85 = 2,601.94; 20 % of that
    // 520.39.
    const bid = new Map(rowsOf(job, "bid").map(([label, amount]) => [label, amount]));
    expect(["direct", "overhead", "profit", "price", "tax", "total"].map((label) => bid.get(label))).toEqual([
      1974.69, 236.96, 390.29, 2601.94, 520.39, 3122.33,
    ]);
    // Labour by its hours, and what is left of 1,974.69.
    expect([bid.get("labour"), bid.get("materials")]).toEqual([1068.81, 905.88]);
  });
});

test("a bead length without its unit is refused beside millimetres, not taken for inches", () => {
  const bare: Job = {
    ...metricStair,
    steps: metricStair.steps.map((step) => ({
      ...step,
      calls: step.calls.map((call) =>
        call.name === "cartridges"
          ? { ...call, args: [{ id: "PICK", args: [{ result: "takeoff" }, "adhesive bead", "quantity"] }, ...call.args.slice(1)] }
          : call,
      ),
    })),
  };
  const refused = ran(bare).results.get("cartridges");
  expect(refused).toMatchObject({ code: "#VALUE!" });
  expect(String((refused as { message?: unknown }).message)).toMatch(/beadLength.*beadDiameter|beadDiameter.*beadLength/);
});
