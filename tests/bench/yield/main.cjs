require("../typescript-hook.cjs");
const { yieldBench } = require("./yield-bench.ts");

yieldBench(process.argv.slice(2)).then(
  (isSound) => process.exit(isSound ? 0 : 1),
  (error) => {
    console.error(error);
    process.exit(1);
  },
);
