import path from "node:path";
import { Worker } from "node:worker_threads";
import { brokenLimits, type ModelAnswer, type WholeModel } from "./whole-model";

type Told =
  | { readonly kind: "ready" }
  | { readonly kind: "better"; readonly values: Float64Array }
  | { readonly kind: "end"; readonly isProven: boolean; readonly values?: Float64Array };

/** HiGHS looks at its clock seldom, above all in large models: after this much more it is stopped from outside. */
const GRACE_MILLISECONDS = 500;

let ready: Promise<Worker> | undefined;

const started = (): Promise<Worker> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(path.join(__dirname, "model-worker.cjs"));
    worker.once("message", () => {
      worker.off("error", reject);
      // it need not be closed for the program to end; a model at work keeps the program by its own clock
      worker.unref();
      resolve(worker);
    });
    worker.once("error", reject);
  });

const threadOf = (): Promise<Worker> => (ready ??= started());

/** Starts the thread that models are solved in, so that its start does not count for the first model. */
export const readyModels = async (): Promise<void> => {
  await threadOf();
};

/** Ends the thread that models are solved in; the next model starts another. */
export const closeModels = async (): Promise<void> => {
  const closing = ready;
  ready = undefined;
  await (await closing)?.terminate();
};

/** The same model in the arrays that HiGHS reads, column after column. */
const inArrays = ({ columns, rows }: WholeModel) => {
  const entries = columns.flatMap((column) => column.entries);
  const starts = Int32Array.from({ length: columns.length + 1 }, () => 0);
  for (const [index, column] of columns.entries()) starts[index + 1] = starts[index]! + column.entries.length;
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, ({ cost }) => cost),
    colLower: new Float64Array(columns.length),
    colUpper: Float64Array.from(columns, ({ most }) => most),
    rowLower: Float64Array.from(rows, ({ least }) => least),
    rowUpper: Float64Array.from(rows, ({ most }) => most),
    integrality: new Int32Array(columns.length).fill(1),
    matrix: {
      format: "csc",
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices: Int32Array.from(entries, ([row]) => row),
      values: Float64Array.from(entries, ([, rate]) => rate),
    },
  };
};

/** The cost of whole values near the ones HiGHS found: its own are whole, and keep to the rows, only to about 1e-6. */
const costOf = (model: WholeModel, found: Float64Array): number => {
  const values = Array.from(found, (value) => Math.round(value));
  const broken = brokenLimits(model, values);
  if (broken.length > 0) throw new Error(`values found do not keep to the model: ${broken.slice(0, 3).join("; ")}`);
  return model.columns.reduce((sum, { cost }, index) => sum + cost * values[index]!, 0);
};

/** The least cost of a model by HiGHS, in a thread that is ended when the time is over: then the best found until then, not proven. */
export const solvedModel = async (model: WholeModel, seconds: number): Promise<ModelAnswer> => {
  const worker = await threadOf();
  return new Promise((resolve, reject) => {
    let best: Float64Array | undefined;
    const answered = (isProven: boolean, values: Float64Array | undefined): void => {
      clearTimeout(clock);
      worker.off("message", heard);
      worker.off("error", failed);
      try {
        resolve({ cost: values === undefined ? Infinity : costOf(model, values), isProven });
      } catch (error) {
        reject(error);
      }
    };
    const heard = (told: Told): void => {
      if (told.kind === "better") best = told.values;
      if (told.kind === "end") answered(told.isProven, told.values ?? (told.isProven ? undefined : best));
    };
    const failed = (error: unknown): void => {
      clearTimeout(clock);
      ready = undefined;
      reject(error);
    };
    const clock = setTimeout(() => {
      void closeModels();
      answered(false, best);
    }, seconds * 1000 + GRACE_MILLISECONDS);
    worker.on("message", heard);
    worker.once("error", failed);
    worker.postMessage({ model: inArrays(model), seconds });
  });
};
