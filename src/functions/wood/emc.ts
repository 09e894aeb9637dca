import { celsius, moistureContent } from "../../solver/wood/moisture-content";
import { declare } from "../declare";

export const EMC = declare({
  id: "EMC",
  group: "Wood",
  says: "Moisture content wood comes to in air of a temperature and humidity.",
  parameters: {
    temperature: { kind: "number", sign: "any", least: -40, most: 250, each: true, says: "Temperature of the air, in the scale chosen." },
    humidity: { kind: "number", sign: "not negative", most: 98, each: true, says: "Relative humidity in percent, 0 to 98: 45 for 45 %." },
    scale: { kind: "choice", options: ["F", "C"], default: "F", says: "Fahrenheit or Celsius." },
  },
  result: { kind: "number", says: "Percent of the wood's dry weight." },
  problems: {},
  examples: [
    { given: { temperature: 20, humidity: 50, scale: "C" }, gives: 9.271140709879791, from: "Hailwood-Horrobin equation of FPL-RN-0268 with its Celsius constants, emc-02: 9.271 at 20 C and 50 %, the further digits by a pocket calculator" },
    { given: { temperature: 70, humidity: 0 }, gives: 0, from: "by hand: dry air leaves no moisture" },
    { given: { temperature: 70, humidity: 120 }, fails: "#VALUE!", says: "humidity: must be 98 or less, got 120", from: "by hand: air holds no more than 100 %, and the table ends at 98" },
  ],
  source: "Wood Handbook, FPL-GTR-190, equation 4-5 with the Celsius constants of FPL-RN-0268; within 0.06 of its Table 4-2. Stair parts are delivered at 6 to 8 % (chapter 13).",
  solve: ({ temperature, humidity, scale }) => moistureContent(scale === "F" ? celsius(temperature) : temperature, humidity / 100),
});
