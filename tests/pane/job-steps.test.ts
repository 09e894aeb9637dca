import { catalogue } from "../../src/functions/catalogue";
import { signature } from "../../src/functions/describe";
import { jobSteps } from "../../src/pane/job-steps";
import { shownFunctions } from "../../src/pane/shown-functions";
import { version } from "../../package.json";

const listed = (id: string, group: string) => ({ id, group, says: `${id} says` });

test("functions are gathered under their step, in the order they are listed", () => {
  const steps = jobSteps([listed("RISERS", "Layout"), listed("PLUMB", "Survey"), listed("PITCH", "Layout")]);
  expect(steps.map(({ name, functions }) => [name, functions.map(({ id }) => id)])).toEqual([
    ["Layout", ["RISERS", "PITCH"]],
    ["Survey", ["PLUMB"]],
  ]);
});

test("without functions there are no steps", () => {
  expect(jobSteps([])).toEqual([]);
});

test("the pane shows every function of the catalogue once, with its arguments as typed after the namespace", () => {
  const { functions } = shownFunctions();
  expect(functions.map(({ formula }) => formula)).toEqual(catalogue.map((declaration) => `=STAIR.${signature(declaration)}`));
  expect(jobSteps(functions).flatMap((step) => step.functions)).toHaveLength(catalogue.length);
});

test("the pane shows the version of the package", () => {
  expect(shownFunctions().version).toBe(version);
});
