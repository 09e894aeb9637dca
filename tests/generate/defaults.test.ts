import { catalogue } from "../../src/functions/catalogue";
import { call } from "../../src/functions/call";
import { stair } from "../../src/functions/tables";
import { functionsJson } from "../../src/generate/functions-json";
import { reference } from "../../src/generate/reference";

const { markdown } = reference(catalogue, { stair }, "0.1.0", "caution");
const help = JSON.stringify(functionsJson(catalogue));

// By hand: 1.25 x 25.4 = 31.75; 7.75 x 25.4 = 196.85; 0.25 x 25.4 = 6.35; 0.125 x 25.4 = 3.175; 3.9375 x 25.4 = 100.0125; 12 x 25.4 =
// 304.8.
test.each([
  "1 1/4 in (31.75 mm)",
  "7 3/4 in (196.85 mm)",
  "1/4 in (6.35 mm)",
  "1/8 in (3.175 mm)",
  "3 15/16 in (100.0125 mm)",
  "12 in (304.8 mm)",
])("a default length is printed in both units, in the help and in the reference: %s", (both) => {
  expect(help).toContain(`Left out: ${both}.`);
  expect(markdown).toContain(`| ${both} |`);
});

test("so are the defaults of the stair table, and why they are what they are", () => {
  // By hand: 11.25 x 25.4 = 285.75.
  expect(markdown).toContain("| stringer board | length | 11 1/4 in (285.75 mm): a dry 2x12, PS 20 |");
  expect(markdown).toContain("| nosing | length | 1 1/4 in (31.75 mm): common practice, no source |");
});

test("a default length is that length in a call in mm", () => {
  const TREADFIT = catalogue.find(({ id }) => id === "TREADFIT")!;
  const given: Readonly<Record<string, unknown>> = {
    readings: [
      ["run", "back", "front", "left offset"],
      [254, 914.4, 914.4, "square"],
    ],
    unit: "mm",
  };
  const fit = call(TREADFIT, Object.keys(TREADFIT.parameters).map((name) => given[name]));
  const [headings = [], row = []] = Array.isArray(fit) ? fit : [];
  // By hand: 254 + 31.75 = 285.75.
  expect(row[headings.indexOf("depth")]).toBeCloseTo(285.75, 9);
});
