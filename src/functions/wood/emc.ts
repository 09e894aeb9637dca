import { problem } from "../../solver/problem";
import { celsius, moistureContent } from "../../solver/wood/moisture-content";
import { declare } from "../declare";

/** Temperatures of the table the formula was compared with, in either scale. */
const TABLE = { F: { least: 30, most: 200 }, C: { least: -1.1, most: 93.3 } } as const;
const PERCENT = 100;

export const EMC = declare({
  id: "EMC",
  group: "Wood",
  says: "Moisture content wood comes to in air of a temperature and humidity.",
  parameters: {
    temperature: {
      kind: "number",
      sign: "any",
      each: true,
      says: "Temperature of the air, in the scale chosen: 30 to 200 F, -1.1 to 93.3 C.",
    },
    humidity: {
      kind: "number",
      sign: "not negative",
      most: 98,
      each: true,
      says: "Relative humidity in percent, 1 to 98, or 0: 45 for 45 %.",
    },
    scale: { kind: "choice", options: ["F", "C"], default: "F", says: "Fahrenheit or Celsius." },
  },
  result: { kind: "number", says: "Percent of the wood's dry weight." },
  problems: {
    "temperature-outside": {
      cell: "#VALUE!",
      says:
        "temperature: {temperature} {scale} is outside {least} to {most} {scale}, where the table of moisture contents runs; give " +
        "a temperature between, or the other scale",
    },
    "humidity-as-share": { cell: "#VALUE!", says: "humidity: {humidity} is {humidity} %; write {percent} for {percent} %" },
  },
  examples: [
    {
      given: { temperature: 20, humidity: 50, scale: "C" },
      gives: 9.27114071,
      from:
        "Hailwood-Horrobin equation of FPL-RN-0268 with its Celsius constants: 9.271 at 20 C and 50 %; 9.27114071 by arithmetic " +
        "with 30 digits",
    },
    { given: { temperature: 70, humidity: 0 }, gives: 0, from: "by hand: dry air leaves no moisture" },
    {
      given: { temperature: 70, humidity: 120 },
      fails: "#VALUE!",
      says: "humidity: must be 98 or less, got 120",
      from: "by hand: air holds no more than 100 %, and the table ends at 98",
    },
    {
      given: { temperature: 70, humidity: "45%" },
      fails: "#VALUE!",
      says: "humidity: 0.45 is 0.45 %; write 45 for 45 %",
      from: "by hand: a cell that shows 45 % holds 0.45",
    },
    {
      given: { temperature: 120, humidity: 40, scale: "C" },
      fails: "#VALUE!",
      says:
        "temperature: 120 C is outside -1.1 to 93.3 C, where the table of moisture contents runs; give a temperature between, or " +
        "the other scale",
      from: "Wood Handbook, FPL-GTR-190, Table 4-2: rows from 30 to 200 F are on file, -1.1 to 93.3 C",
    },
  ],
  source:
    "Wood Handbook, FPL-GTR-190, equation 4-5 with the Celsius constants of FPL-RN-0268; within 0.06 of its Table 4-2. Stair " +
    "parts are delivered at 6 to 8 % (chapter 13).",
  solve: ({ temperature, humidity, scale }) => {
    const { least, most } = TABLE[scale];
    if (temperature < least || temperature > most) return problem("temperature-outside", { temperature, scale, least, most });
    if (humidity > 0 && humidity < 1) return problem("humidity-as-share", { humidity, percent: humidity * PERCENT });
    return moistureContent(scale === "F" ? celsius(temperature) : temperature, humidity / PERCENT);
  },
});
