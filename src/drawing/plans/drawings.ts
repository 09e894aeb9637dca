import { isFailed } from "../../functions/cells";
import { cuttingJobOf, type GivenCutting } from "../../functions/cutting";
import { isTally, plannedWood } from "../../functions/planned-wood";
import { type GivenRipping, rippingJobOf } from "../../functions/ripping";
import { type GivenSheets, sheetJobOf } from "../../functions/sheets";
import type { GivenStair } from "../../functions/read-stair";
import { givenGlueUp, type GivenGlueUp } from "../../functions/given-glue-up";
import { type Length, measure, type Unit } from "../../solver/length/length";
import { resolvedStair, type Stair } from "../../solver/layout/resolved-stair";
import { flight } from "../../solver/layout/stair-skirt";
import { stringer, type StringerGiven } from "../../solver/layout/stringer";
import type { FlightGiven } from "../../solver/layout/flights/flight-given";
import { balusterSpacing, repeatedSpacing } from "../../solver/layout/baluster-spacing";
import { flightStair } from "../../solver/layout/flights/flight-stair";
import { type Balusters, treadBalusters } from "../../solver/layout/tread-balusters";
import type { WinderTreadsGiven } from "../../solver/layout/winder-treads";
import type { WinderGiven } from "../../solver/layout/winder-turn";
import { isProblem, type Problem, problem } from "../../solver/problem";
import { sharedRipping } from "../../solver/yield/ripped/ripping-plan";
import { sharedPlan } from "../../solver/yield/shared-plan";
import { glueUpRows } from "../../solver/yield/glue-up/glue-up-list";
import { sharedSheets } from "../../solver/yield/sheets/shared-sheets";
import { sideBySide } from "../../solver/yield/sheets/side-by-side";
import { balustersDrawing, treadBalustersDrawing } from "./balusters-drawing";
import type { Draft } from "./draft";
import { flightsDrawing } from "./flights-drawing";
import { riserDrawings } from "./riser-drawing";
import { skirtDrawing } from "./skirt-drawing";
import { sticksDrawings } from "./sticks-drawing";
import { stairElevation } from "./stair-elevation";
import { stringerDrawing } from "./stringer-drawing";
import { winderTreadsDrawings } from "./winder-treads-drawing";
import { treadDrawings } from "./tread-drawing";
import { windersDrawing } from "./winders-drawing";
import { glueDrawings } from "./wood/glue-drawing";
import { gluedBoardsDrawings } from "./wood/glued-boards-drawing";
import { sheetsDrawings } from "./wood/sheets-drawing";
import { tallyDrawings } from "./wood/tally-drawing";

/** A drawing of a call with the name it is asked for by. */
export interface NamedDraft {
  readonly name: string;
  readonly draft: Draft;
}

/** Drawings, what the solver will not answer, or the sentence of why there is nothing to draw. */
export type Drawn = readonly NamedDraft[] | Problem | string;

const isThere = (drawn: Drawn): drawn is readonly NamedDraft[] => Array.isArray(drawn);

const named = (name: string, draft: Draft | Problem | string): Drawn =>
  typeof draft === "string" || isProblem(draft) ? draft : [{ name, draft }];

/** Those that can be drawn, or why the first cannot. */
const together = (first: Drawn, ...more: readonly Drawn[]): Drawn =>
  isThere(first) ? [...first, ...more.flatMap((one) => (isThere(one) ? one : []))] : first;

const ofTheStair = (given: unknown, draw: (stair: Stair, unit: Unit) => Drawn): Drawn => {
  const { given: facts, unit } = given as GivenStair;
  const stair = resolvedStair(facts);
  return isProblem(stair) ? stair : draw(stair, unit);
};

/** The stringer of a stair; with the top tread flush, one step more is cut than with the floor as the last tread. */
const stringerGiven = (stair: Stair, unit: Unit): StringerGiven | Problem => {
  const found = flight(stair, unit);
  if (isProblem(found)) return found;
  return {
    ...found,
    risers: (stair.treads ?? 1) + 1,
    boardWidth: measure(stair.stringerBoard, unit),
    treadThickness: measure(stair.treadThickness, unit),
    lowerBuildUp: measure(stair.lowerBuildUp, unit),
    upperBuildUp: measure(stair.upperBuildUp, unit),
  };
};

const stairStringer = (stair: Stair, unit: Unit): Drawn => {
  const given = stringerGiven(stair, unit);
  if (isProblem(given)) return given;
  const hang = stair.hang === undefined ? {} : { hang: measure(stair.hang, unit) };
  return named("stringer", stringerDrawing({ title: "Stringer", unit, given, ...hang }));
};

const stairSkirts = (stair: Stair, unit: Unit): Drawn => {
  const [found, given] = [flight(stair, unit), stringerGiven(stair, unit)];
  if (isProblem(found)) return found;
  if (isProblem(given)) return given;
  const size = (key: "nosing" | "skirtShows" | "skirtFoot" | "skirtHead"): number => measure(stair[key], unit);
  // As SKIRT has them, both run to the upper floor as the last tread.
  const open = { ...given, ...found };
  return together(
    named("closed skirt", skirtDrawing({
      ...open, nosing: size("nosing"), shows: size("skirtShows"), foot: size("skirtFoot"), head: size("skirtHead"),
    }, unit)),
    named("open skirt", stringerDrawing({ title: "Open skirt", unit, given: open })),
  );
};

type Given = Readonly<Record<string, unknown>>;

const cutPlan = (given: Given): Drawn => {
  const cutting = given as unknown as GivenCutting;
  if (isTally(cutting.stock as Parameters<typeof isTally>[0])) return problem("stock-is-a-tally");
  const job = cuttingJobOf(cutting);
  const plan = sideBySide(job) ?? sharedPlan(job);
  return isProblem(plan) ? plan : sticksDrawings(job, plan);
};

const tallyPlan = (given: Given): Drawn => {
  const job = rippingJobOf(given as unknown as GivenRipping);
  if (isFailed(job)) return job.says;
  const plan = sharedRipping(job);
  return isProblem(plan) ? plan : tallyDrawings(job, plan);
};

const sheetPlan = (given: Given): Drawn => {
  const job = sheetJobOf(given as unknown as GivenSheets);
  const plan = sharedSheets(job);
  return isProblem(plan) ? plan : sheetsDrawings(job, plan);
};

/** From the very rows that the table shows. */
const gluedPanels = (given: Given): Drawn => {
  const job = givenGlueUp(given as unknown as GivenGlueUp);
  if (isFailed(job)) return job.says;
  const found = glueUpRows(job.panels, job.boards, job.terms, job.unit);
  return isProblem(found) ? found : [...glueDrawings(found.rows, job.unit), ...gluedBoardsDrawings(found.boards, job.terms, job.unit)];
};

/** PLAN tells of sticks, of sheets or of measured boards. */
const plannedCuts = (given: Given): Drawn => {
  const wood = plannedWood(given as unknown as Parameters<typeof plannedWood>[0]);
  if (isFailed(wood)) return wood.says;
  if (isProblem(wood)) return wood;
  if (wood.of === "boards") return tallyDrawings(wood.job, wood.plan);
  return wood.of === "sheets" ? sheetsDrawings(wood.job, wood.plan) : sticksDrawings(wood.job, wood.plan);
};

const levelBalusters = (given: Given, unit: Unit): Drawn => {
  const { opening, width, maxGap, repeat } = given as {
    readonly opening: Length; readonly width: Length; readonly maxGap: Length; readonly repeat: boolean;
  };
  const found = repeat ? repeatedSpacing(opening, width, maxGap) : balusterSpacing(opening, width, maxGap);
  if (isProblem(found)) return found;
  return named("balusters", balustersDrawing({
    opening: measure(opening, unit), width: measure(width, unit), count: found.count, gap: measure(found.gap, unit), isRepeated: repeat,
    unit,
  }));
};

const balustersOnTread = (stair: Stair, asked: Balusters, unit: Unit): Drawn => {
  const [on, found] = [flight(stair, unit), treadBalusters(stair, asked, unit)];
  if (isProblem(on)) return on;
  if (isProblem(found)) return found;
  return named("balusters", treadBalustersDrawing({
    rise: on.rise, run: on.run, nosing: measure(stair.nosing, unit), tread: measure(stair.treadThickness, unit),
    width: measure(asked.width, unit), found, unit,
  }));
};

/** The drawings of each function that has some, from what its solver is given. */
export const DRAWINGS: Readonly<Record<string, (given: Given, unit: Unit) => Drawn>> = {
  LAYOUT: ({ stair }) => ofTheStair(stair, (found, unit) =>
    together(named("elevation", stairElevation(found, unit)), stairStringer(found, unit), stairSkirts(found, unit))),
  STRINGER: (given, unit) => {
    const asked = given as unknown as StringerGiven;
    return named("stringer", stringerDrawing({ title: "Stringer", unit, given: asked, hang: stringer(asked).hang }));
  },
  SKIRT: ({ stair }) => ofTheStair(stair, stairSkirts),
  FLIGHTS: ({ stair, flights }) => {
    const { given, assumed, unit } = stair as GivenStair;
    const found = flightStair(given, assumed, flights as readonly FlightGiven[]);
    return isProblem(found) ? found : named("plan", flightsDrawing(found, unit));
  },
  WINDERS: (given, unit) => named("winders", windersDrawing(given as unknown as WinderGiven, unit)),
  CUTS: cutPlan,
  PLAN: plannedCuts,
  TALLYCUTS: tallyPlan,
  SHEETCUTS: sheetPlan,
  GLUEUP: gluedPanels,
  BALUSTERS: levelBalusters,
  TREADBALUSTERS: ({ stair, ...asked }) => ofTheStair(stair, (found, unit) => balustersOnTread(found, asked as unknown as Balusters, unit)),
  TREADFIT: treadDrawings,
  MARKS: treadDrawings,
  RISERFIT: (given, unit) => riserDrawings(given, unit, false),
  RISERMARKS: (given, unit) => riserDrawings(given, unit, true),
  WINDERTREADS: (given, unit) => winderTreadsDrawings(given as unknown as WinderTreadsGiven, unit),
};
