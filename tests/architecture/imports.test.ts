import path from "node:path";
import { plantedTree } from "./planted-tree";

const cruiser = "dependency-cruiser/bin/dependency-cruise.mjs";
const args = ["--config", path.join(__dirname, "imports.cjs"), "--output-type", "json", "src"];

interface Cruised {
  readonly summary: {
    readonly violations: readonly { readonly from: string; readonly to: string; readonly rule: { readonly name: string } }[];
  };
}

const faultsOf = (output: string): readonly string[] =>
  (JSON.parse(output) as Cruised).summary.violations.map(({ from, rule }) => `${from}: ${rule.name}`);

const toolTime = 60_000;

// The project itself is cruised by the step "import rules" of npm test, by the same rules.
describe("a planted fault is caught:", () => {
  let faults: readonly string[];

  beforeAll(() => {
    const tree = plantedTree({
      "src/functions/main.ts": 'import { rise } from "../solver/rise";\nexport const told = rise;\n',
      "src/solver/rise.ts": "export const rise = 7;\n",
      "src/solver/outward.ts": 'import { told } from "../functions/told";\nexport const outward = told;\n',
      "src/functions/told.ts": 'import type { Rise } from "../solver/kind";\nexport const told: Rise = 7;\n',
      "src/solver/kind.ts": "export type Rise = number;\n",
      "src/solver/kind-outward.ts": 'import type { told } from "../functions/told";\nexport type Outward = typeof told;\n',
      "src/solver/chicken.ts": 'import { egg } from "./egg";\nexport const chicken = (): unknown => egg;\n',
      "src/solver/egg.ts": 'import { chicken } from "./chicken";\nexport const egg = (): unknown => chicken;\n',
      "src/solver/forgotten.ts": "export const forgotten = 1;\n",
      "src/taskpane/main.ts": 'import { rise } from "../solver/rise";\nexport const shown = rise;\n',
      "src/excel/layer.ts": 'import { told } from "../functions/told";\nexport const layer = told;\n',
      "src/package/layer.ts": 'import { rise } from "../solver/rise";\nexport const layer = rise;\n',
      "src/pane/number.ts": 'import Decimal from "decimal.js";\nexport const number = new Decimal(1);\n',
      "src/pane/near.ts": 'import { distance } from "fastest-levenshtein";\nexport const near = distance;\n',
      "src/solver/sign.ts":
        'import Decimal from "decimal.js";\nimport { distance } from "fastest-levenshtein";\nexport const sign = [Decimal, distance];\n',
      "src/solver/pages.ts": 'import { marked } from "marked";\nexport const pages = marked;\n',
      "src/workbook-file/job-file.ts": 'import { job } from "../sheets/job/job";\nexport const jobFile = job;\n',
      "src/sheets/job/job.ts": "export const job = 7;\n",
      "src/workbook-file/engine-file.ts": 'import { engine } from "../workbook/engine";\nexport const engineFile = engine;\n',
      "src/workbook/engine.ts": 'import { unzipSync } from "fflate";\nexport const engine = unzipSync;\n',
      "src/pane/disk.ts": 'import { readFileSync } from "node:fs";\nexport const disk = readFileSync;\n',
      "src/pane/entry.ts": 'import { shown } from "../taskpane/main";\nexport const entry = shown;\n',
      "src/drawing/tested.ts": 'import { tested } from "../../tests/tested";\nexport const drawn = tested;\n',
      "tests/tested.ts": "export const tested = 1;\n",
      "src/attic/box.ts": 'import { rise } from "../solver/rise";\nexport const box = rise;\n',
      "src/solver/code/check.ts": 'import { alder } from "./profiles/alder";\nexport const check = alder;\n',
      "src/solver/code/profiles/alder.ts":
        'import { figure } from "../record/figure";\nimport { margin } from "../margin";\nexport const alder = [figure, margin];\n',
      "src/solver/code/record/figure.ts": 'import { margin } from "../margin";\nexport const figure = margin;\n',
      "src/solver/code/margin.ts": "export const margin = 1;\n",
      "src/drawing/missing.ts": 'import { nothing } from "./nothing";\nexport const missing = nothing;\n',
    });
    try {
      faults = faultsOf(tree.run(cruiser, args).output);
    } finally {
      tree.remove();
    }
  }, toolTime);

  test.each([
    ["a solver imports the worksheet functions", "src/solver/outward.ts: solver-imports-only-itself"],
    ["a solver imports a mere type from the worksheet functions", "src/solver/kind-outward.ts: solver-imports-only-itself"],
    ["the task pane skips a layer", "src/taskpane/main.ts: taskpane-imports-only-pane-excel"],
    ["the Excel host skips a layer", "src/excel/layer.ts: excel-imports-only-pane-sheets"],
    ["what scripts get skips a layer", "src/package/layer.ts: package-imports-only-functions"],
    ["two files import each other", "src/solver/chicken.ts: no-cycles"],
    ["a file is forgotten", "src/solver/forgotten.ts: no-orphans"],
    ["the pane uses the number package of the solver", "src/pane/number.ts: decimal.js-only-in-solver-functions"],
    ["the pane compares spellings itself", "src/pane/near.ts: fastest-levenshtein-only-in-solver"],
    ["a solver uses a package of the pages", "src/solver/pages.ts: marked-only-in-generate"],
    ["a workbook file knows a sheet of a job", "src/workbook-file/job-file.ts: a-file-is-plain-data"],
    ["a workbook file knows the sheet engine", "src/workbook-file/engine-file.ts: workbook-file-imports-only-sheets"],
    ["the sheet engine unpacks a file itself", "src/workbook/engine.ts: fflate-only-in-workbook-file"],
    ["the pane reads the disk", "src/pane/disk.ts: node-modules-only-at-the-edge"],
    ["a file imports an entry point", "src/pane/entry.ts: nothing-imports-an-entry-point"],
    ["source imports a test", "src/drawing/tested.ts: drawing-imports-only-functions-solver"],
    ["a folder has no rules", "src/attic/box.ts: folders-are-listed"],
    ["a code imports what judges", "src/solver/code/profiles/alder.ts: codes-are-records-alone"],
    ["a builder of records imports what judges", "src/solver/code/record/figure.ts: records-know-no-check"],
    ["what judges imports one code", "src/solver/code/check.ts: codes-come-from-the-list"],
    ["an import leads nowhere", "src/drawing/missing.ts: imports-resolve"],
  ])("%s", (_, fault) => {
    expect(faults).toContain(fault);
  });

  test("and what goes the allowed way is left alone", () => {
    expect(faults.filter((fault) => /^src\/(functions\/(main|told)|solver\/(rise|kind|sign))[.]ts/.test(fault))).toEqual([]);
  });
});
