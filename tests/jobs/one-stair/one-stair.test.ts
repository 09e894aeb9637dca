import type { Job } from "./job";
import { oneStair } from "./one-stair";
import { cell, ran, rowsOf } from "./ran-job";

const job = ran(oneStair);

const withRun = (length: number): Job => ({
  ...oneStair,
  steps: oneStair.steps.map((step) => ({
    ...step,
    inputs: step.inputs.map((input) =>
      input.name === "stair" ? { ...input, rows: input.rows.map((row) => (row[0] === "run" ? ["run", length] : row)) } : input,
    ),
  })),
});

describe("one invented stair from tape to price, by hand beside every figure", () => {
  test("the first rise gains the tread and loses the floor, the last the other way round", () => {
    // 7 9/16 + 1 - 3/4 = 7 13/16; 7 9/16 + 3/4 - 1 = 7 5/16.
    const rises = rowsOf(job, "finished").flat();
    expect([rises[0], rises[1], rises[13]]).toEqual([7.8125, 7.5625, 7.3125]);
  });

  test("the total rise by fourteen", () => {
    // 106 1/8 / 14 = 849 / 112.
    expect(cell(job, "layout", "unit rise")).toBeCloseTo(849 / 112, 12);
    // As taped: 10 x 7 9/16 + 4 x 7 5/8 = 75 5/8 + 30 1/2 = 106 1/8, both floors built up alike.
    expect(rowsOf(job, "finished").flat().reduce<number>((sum, rise) => sum + Number(rise), 0)).toBe(106.125);
  });

  test("thirteen treads of 10 in, 11 1/4 deep", () => {
    expect([cell(job, "layout", "treads"), cell(job, "layout", "total run"), cell(job, "layout", "board depth")]).toEqual([13, 130, 11.25]);
  });

  test("the seventh mark of the pole is half way up", () => {
    // 106 1/8 / 2 = 53 1/16; the second is 15.1607, which lies nearer 15 3/16 than 15 1/8.
    expect([cell(job, "pole", 7, "mark"), cell(job, "pole", 2, "mark"), cell(job, "pole", 14, "mark")]).toEqual([
      53.0625, 15.1875, 106.125,
    ]);
  });

  test("the framing fails by 1/16 on the tallest rise and by 1/8 on how alike they are", () => {
    // IRC 2021 R311.7.5.1: 7 3/4 - 7 13/16 = -1/16; 3/8 - (7 13/16 - 7 5/16) = 3/8 - 1/2.
    expect([cell(job, "check", "riser height", "margin"), cell(job, "check", "riser height", "verdict")]).toEqual([-0.0625, "fail"]);
    expect([cell(job, "check", "riser uniformity", "margin"), cell(job, "check", "riser uniformity", "verdict")]).toEqual([-0.125, "fail"]);
    // IRC 2021 R311.7.2: 123 x (849 / 112) / 10 - 11 1/4 = 81.988 against 80.
    expect(cell(job, "check", "headroom", "margin")).toBeCloseTo(123 * (849 / 1120) - 11.25 - 80, 9);
  });

  test("a quarter inch is ripped off thirteen blanks", () => {
    // 11 1/2 - 11 1/4; 42 - (36 3/4 + 1 1/4); 13 x 54 = 702; 702 x 1/4 / 11 1/2 = 15.2609, 15.26 in cents.
    const row = rowsOf(job, "order")[1] ?? [];
    expect(row.slice(0, 8)).toEqual(["oak blank 42", 42, 11.5, 13, 54, 702, 0.25, 4]);
    expect(row[8]).toBe(15.26);
  });

  test("on a 9 in run the price of the blanks stays and an inch more is ripped off each", () => {
    // 11 1/2 - (9 + 1 1/4) = 1 1/4; 702 x 1 1/4 / 11 1/2 = 76.3043, 76.30 in cents; IRC 2021 R311.7.5.2 wants 10.
    const nine = ran(withRun(9));
    const row = rowsOf(nine, "order")[1] ?? [];
    expect([row[5], row[6]]).toEqual([702, 1.25]);
    expect(row[8]).toBe(76.3);
    expect([cell(nine, "check", "tread depth", "margin"), cell(nine, "check", "tread depth", "verdict")]).toEqual([-1, "fail"]);
  });

  test("the first tread, by the legs of its diagonals", () => {
    // sqrt(38 3/16² - 100) = 36.85492 and sqrt(37 7/8² - 100) = 36.53102; s = 0.22992 and 0.21898, mean 0.22445, closure 0.01094; left
    // angle -atan(0.022445) = -1.2858 deg; right edge (0.22445 + 36 5/8 - 36 3/4) / 10, so the blank is 36 3/4 + 0.11188 + 1 1/4 / cos
    // 0.5698 deg = 38.1119, and a quarter of the closure, 0.00273.
    expect(cell(job, "tread cuts", 1, "closure")).toBeCloseTo(0.01094, 4);
    expect(cell(job, "tread cuts", 1, "left angle")).toBeCloseTo(-1.2858, 3);
    expect(cell(job, "tread cuts", 1, "length")).toBeCloseTo(38.1146, 3);
    // The nose corner at the wall lies 11 1/4 x 0.022445 = 0.25251 in from the blank's end, and on the face tan 1.5 deg = 0.02619
    // further: toe 38.1146 - 0.2787; heel 1 1/4 x tan 45.2849 deg = 1.26249 less, and at the hook + 1 1/4 x 0.022445 = 0.02806, as the
    // end runs out behind the nose.
    expect(cell(job, "tread cuts", 1, "toe")).toBeCloseTo(37.8359, 3);
    expect(cell(job, "tread cuts", 1, "heel")).toBeCloseTo(36.5734, 3);
    expect(cell(job, "tread cuts", 1, "heel at the hook")).toBeCloseTo(36.6015, 3);
    expect(cell(job, "tread cuts", 1, "left set")).toBe("right 1.29°, underside longer 1.50°");
  });

  test("the notch takes skirt, reveal and lap with a 32nd of room", () => {
    // 3/4 + 1/4 + 1/32 and 1/4 + 1/32.
    expect(rowsOf(job, "notch")).toEqual([[1.03125, 0.28125]]);
  });

  test("every stick of the cut plan holds its pieces, their kerfs and its trims, and every riser is cut once", () => {
    const LENGTHS: Readonly<Record<string, number>> = { "rack 5 ft": 60, "poplar 8 ft": 96, "poplar 10 ft": 120, "poplar 16 ft": 192 };
    const cut = rowsOf(job, "cuts").slice(1);
    for (const stick of new Set(cut.map(([number]) => number))) {
      const on = cut.filter(([number]) => number === stick);
      const taken = on.reduce((sum, row) => sum + Number(row[4]), 0) + (on.length - 1) * 0.125;
      expect(taken).toBeLessThanOrEqual((LENGTHS[String(on[0]?.[1])] ?? 0) - 0.5);
    }
    expect(cut.map((row) => row[3]).sort()).toEqual(Array.from({ length: 14 }, (_, step) => step + 1).sort());
    // Two of 16 ft and one of 10 ft, one piece off the rack: 2 x 38 + 22.40.
    expect(cell(job, "plan", "cost")).toBeCloseTo(98.4, 9);
  });

  test("five cartridges", () => {
    // pi / 4 x (1/4)² x 1,433 1/4 x 1.1 = 77.39 cu in; a cartridge of 10.1 fl oz holds 10.1 x 1.8046875 = 18.227; 4.25 of them.
    expect([job.results.get("cartridges")].flat(2)).toEqual([5]);
  });

  test("the bid", () => {
    // 702 + 19.50 + 22.40 + 76 + 5 x 8.40 + 13 x 6.75 + (7.5 + 4 + 3.25) x 58 = 1,805.15; 12 % is 216.62; 2,021.77 / 0.85 = 2,378.55;
    // 6.5 % of that is 154.61.
    const bid = new Map(rowsOf(job, "bid").map(([label, ...cells]) => [label, cells]));
    expect(["direct", "overhead", "profit", "price", "tax", "total"].map((label) => bid.get(label)?.[0])).toEqual([
      1805.15, 216.62, 356.78, 2378.55, 154.61, 2533.16,
    ]);
    // (7.5 + 4 + 3.25) x 58.
    expect(bid.get("labour")?.[0]).toBe(855.5);
    // Returns and risers have no blank of their own in the order: the second row of the first table, and one below it.
    expect(bid.get("direct")?.[2]).toBe("cost is 0 or empty in row 3 (return) and 1 more");
  });

  test("a spare blank at the same margin", () => {
    // 54 / 0.85 = 63.529.
    expect([job.results.get("spare")].flat(2)).toEqual([63.53]);
  });
});

test("a result goes into the next function as it stands", () => {
  const answers = new Set(job.calls.map(({ answer }) => answer));
  const handedOn = job.calls.flatMap(({ id, args }) => args.filter((given) => Array.isArray(given) && answers.has(given)).map(() => id));
  // LAYOUT into CHECK, BLANK, ORDER; RISERFIT into CUTS, BUY, PLAN; ORDER and BUY into EXTEND, twice each; the marks and prices by PICK.
  for (const id of ["CHECK", "BLANK", "ORDER", "CUTS", "BUY", "PLAN", "EXTEND"]) expect(handedOn).toContain(id);
});

test("a reading that cannot be shows its sentence, and what does not need it still answers", () => {
  const wrong: Job = {
    ...oneStair,
    steps: oneStair.steps.map((step) => ({
      ...step,
      inputs: step.inputs.map((input) =>
        input.name === "tread readings"
          ? { ...input, rows: input.rows.map((row) => (row[0] === 3 ? [3, 10, "9' 14\"", ...row.slice(3)] : row)) }
          : input,
      ),
    })),
  };
  const run = ran(wrong);
  expect(cell(run, "tread cuts", 3, "note")).toBe(
    'back in step 3: read "9\' 14"", with 14 inches after the feet; inches after feet stay under 12',
  );
  expect(cell(run, "tread cuts", 4, "length")).toBe(cell(job, "tread cuts", 4, "length"));
  expect(cell(run, "bid", "total")).toBe(2533.16);
});
