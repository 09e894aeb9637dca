import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { solvedModel } from "./solved-model";
import { piecesIn, wholeJobs, type WholeJob } from "./whole-job";
import { type Column, type ModelAnswer, type Row, together, type WholeModel } from "./whole-model";

/**
 * The model anyone writes first: which row of the stock each stick is of, if any, and how many pieces of each kind are cut from it. As
 * many sticks as there are pieces, because the cheapest plan may use more and shorter sticks than one made by hand.
 */
export const assignmentModel = (job: WholeJob): WholeModel => {
  const { pieces, stock } = job;
  const sticks = piecesIn(job);
  const wantedRow = (kind: number): number => kind;
  const roomRow = (stick: number): number => pieces.length + stick;
  const oneRow = (stick: number): number => pieces.length + sticks + stick;
  const availableRow = (row: number): number => pieces.length + 2 * sticks + row;
  const each = Array.from({ length: sticks }, (_, stick) => stick);
  const rows: Row[] = [
    ...pieces.map(({ wanted }) => ({ least: wanted, most: wanted })),
    ...each.map(() => ({ least: -Infinity, most: 0 })),
    ...each.map(() => ({ least: 0, most: 1 })),
    ...stock.map(({ available }) => ({ least: 0, most: available })),
  ];
  const columns = each.flatMap((stick): Column[] => [
    ...stock.map(({ holds, cents }, row): Column => ({
      cost: cents,
      most: holds > 0 ? 1 : 0,
      entries: [
        [roomRow(stick), -holds],
        [oneRow(stick), 1],
        [availableRow(row), 1],
      ],
    })),
    ...pieces.map(({ width, wanted }, kind): Column => ({
      cost: 0,
      most: wanted,
      entries: [
        [wantedRow(kind), 1],
        [roomRow(stick), width],
      ],
    })),
  ]);
  return { columns, rows };
};

/** The least cost of a job in cents by the assignment model; Infinity where no plan exists. Each grade has so many seconds. */
export const assignmentAnswer = async (job: CuttingJob, seconds: number): Promise<ModelAnswer> => {
  let answer: ModelAnswer = { cost: 0, isProven: true };
  for (const grade of wholeJobs(job)) answer = together(answer, await solvedModel(assignmentModel(grade), seconds));
  return answer;
};
