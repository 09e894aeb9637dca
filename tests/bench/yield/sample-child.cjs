// A process of its own for one sample, so that its peak of memory is its own.
require("../typescript-hook.cjs");
const { measuredHere } = require("./measured-here.ts");

// a listener that stays keeps the process until it has told everything
process.on("message", (asked) => {
  measuredHere(asked, (measured) => process.send({ measured })).then(
    // in kilobytes, on every platform
    () => process.send({ peak: process.resourceUsage().maxRSS / 1024 }, () => process.exit(0)),
    (error) => {
      console.error(error);
      process.exit(1);
    },
  );
});

process.on("disconnect", () => process.exit(1));
