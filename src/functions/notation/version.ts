import { version } from "../../../package.json";
import { declare } from "../declare";

export const VERSION = declare({
  id: "VERSION",
  group: "Notation",
  says: "Version of the add-in that calculates.",
  parameters: {},
  result: { kind: "text", says: "Version, major.minor.patch." },
  problems: {},
  examples: [{ given: {}, gives: version, from: "the version in package.json" }],
  source: "The version of the add-in that calculates.",
  solve: () => version,
});
