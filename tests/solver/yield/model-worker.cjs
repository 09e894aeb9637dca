// Solves the models it is sent with HiGHS, one at a time. Better values are told as they are found, because whoever asked may not wait for
// the end.
const { parentPort } = require("node:worker_threads");
const loadHighs = require("highs");

const solve = (highs, { model, seconds }) => {
  const improved = (event) => {
    parentPort.postMessage({ kind: "better", values: event.data.mip_solution });
  };
  return highs.withModel(model, (held) => {
    held.options.set({ output_flag: false, time_limit: seconds, random_seed: 1, mip_rel_gap: 0, mip_abs_gap: 1e-6 });
    const { modelStatus } = held.run({ [highs.constants.callbackType.mipImprovingSolution]: improved });
    const { optimal, infeasible, unboundedOrInfeasible } = highs.constants.modelStatus;
    // costs and columns are not negative, so that no model is unbounded
    if (modelStatus === infeasible || modelStatus === unboundedOrInfeasible) return { kind: "end", isProven: true };
    return modelStatus === optimal
      ? { kind: "end", isProven: true, values: held.getSolution().colValue }
      : { kind: "end", isProven: false };
  });
};

loadHighs().then((highs) => {
  parentPort.on("message", (asked) => parentPort.postMessage(solve(highs, asked)));
  parentPort.postMessage({ kind: "ready" });
});
