import { goodsKey } from "../../goods/goods-key";
import type { Length } from "../../length/length";
import { type Problem, problem } from "../../problem";
import { ROUGH_THICKNESSES } from "../tally/rough-thickness";
import type { TallyBoard } from "../tally/tally-board";
import { type GluePanel, panelName } from "./glue-panel";

export type UnsuitableBoards =
  | "panel-without-width" | "panel-without-thickness" | "panel-without-grade" | "panel-without-species"
  | "no-board-of-grade" | "no-board-of-species" | "panel-too-thick";

/** What a board is thick once both faces are planed; undefined of rough wood thinner than 4/4. */
export const dressed = ({ thickness, surfaced }: Pick<TallyBoard, "thickness" | "surfaced">): Length | undefined =>
  surfaced ? thickness : [...ROUGH_THICKNESSES].reverse().find(({ rough }) => thickness.gte(rough))?.dressed;

const ANY = "any";

/** Grades that will do for a panel; undefined for all. */
const gradesFor = ({ grade, alsoFrom }: GluePanel): ReadonlySet<string> | undefined => {
  const names = [grade, ...alsoFrom.split(/[,;]/)].map((name) => goodsKey(name.trim())).filter((name) => name !== "");
  return names.length === 0 || names.includes(ANY) ? undefined : new Set(names);
};

const distinct = (names: readonly string[]): readonly string[] => [...new Map(names.map((name) => [goodsKey(name), name])).values()];

/** What a panel leaves unsaid goes without saying only where all boards are alike in it. */
const unsaid = (panel: GluePanel, boards: readonly TallyBoard[]): Problem<UnsuitableBoards> | undefined => {
  const facts = (names: readonly string[]) => ({ panel: panelName(panel), there: names.map((name) => name || "none").join(", ") });
  const grades = distinct(boards.map(({ grade }) => grade));
  if (panel.grade === "" && panel.alsoFrom === "" && grades.length > 1) return problem("panel-without-grade", facts(grades));
  const species = distinct(boards.map((board) => board.species));
  if (panel.species === "" && species.length > 1) return problem("panel-without-species", facts(species));
  const thicknesses = new Map(boards.map(({ thickness, surfaced, written }) => [`${thickness.toString()} ${surfaced}`, String(written)]));
  return panel.thickness === undefined && thicknesses.size > 1
    ? problem("panel-without-thickness", facts([...thicknesses.values()]))
    : undefined;
};

/** The boards, by their place, that a panel may be made of: grade, species and thickness. */
export const suitableBoards = (
  panel: GluePanel, boards: readonly TallyBoard[], plane: Length,
): ReadonlySet<number> | Problem<UnsuitableBoards> => {
  const name = panelName(panel);
  if (panel.width === undefined) return problem("panel-without-width", { panel: name });
  const fault = unsaid(panel, boards);
  if (fault !== undefined) return fault;
  const places = boards.map((_, place) => place);
  const ofSpecies = places.filter((place) => panel.species === "" || goodsKey(boards[place]!.species) === goodsKey(panel.species));
  if (ofSpecies.length === 0) return problem("no-board-of-species", { panel: name, species: panel.species });
  const grades = gradesFor(panel);
  const ofGrade = ofSpecies.filter((place) => grades?.has(goodsKey(boards[place]!.grade)) ?? true);
  const wanted = [panel.grade, panel.alsoFrom].filter((one) => one !== "").map((one) => `"${one}"`).join(" or ");
  if (ofGrade.length === 0) return problem("no-board-of-grade", { panel: name, grades: wanted });
  if (panel.thickness === undefined) return new Set(ofGrade);
  const rough = panel.thickness.plus(plane);
  const thickEnough = ofGrade.filter((place) => dressed(boards[place]!)?.gte(rough) ?? false);
  if (thickEnough.length > 0) return new Set(thickEnough);
  const thickest = ofGrade.reduce((one, other) => (boards[other]!.thickness.gt(boards[one]!.thickness) ? other : one));
  const { written, thickness } = boards[thickest]!;
  return problem("panel-too-thick", {
    panel: name, thickness: rough, written: String(written), dressed: dressed(boards[thickest]!) ?? thickness.minus(thickness),
  });
};
