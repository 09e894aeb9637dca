import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import { solvedModel } from "../../solver/yield/solved-model";
import { piecesIn, wholeJobs, type WholeJob } from "../../solver/yield/whole-job";
import { type Column, type ModelAnswer, type Row, together, type WholeModel } from "../../solver/yield/whole-model";

/** A piece of one kind, cut with its start at `from`. */
interface Arc {
  readonly from: number;
  readonly kind: number;
}

/** Every place a piece can start at when each stick is cut longest piece first, from its end on without gaps. */
const arcsOf = ({ pieces }: WholeJob, longest: number): Arc[] => {
  const arcs: Arc[] = [];
  const isReached = new Uint8Array(longest + 1);
  isReached[0] = 1;
  for (const [kind, { width, wanted }] of pieces.entries()) {
    // the fewest pieces of this kind that come to each place
    const copies = Float64Array.from(isReached, (reached) => (reached === 1 ? 0 : Infinity));
    for (let from = 0; from + width <= longest; from += 1) {
      if (copies[from]! >= wanted) continue;
      arcs.push({ from, kind });
      copies[from + width] = Math.min(copies[from + width]!, copies[from]! + 1);
      isReached[from + width] = 1;
    }
  }
  return arcs;
};

/**
 * A stick as a way along its length: over pieces and over what is lost, from 0 to what the stick holds (Valerio de Carvalho 1999,
 * Exact solution of bin-packing problems using column generation and branch-and-bound, from memory; several stick lengths as in his
 * paper of 2002). Columns: how often each piece is cut at each place, how many sticks are lost over each gap, how many of each row.
 */
export const arcFlowModel = (job: WholeJob): WholeModel => {
  const { pieces } = job;
  const count = piecesIn(job);
  const stock = job.stock.filter(({ holds }) => holds > 0);
  const arcs = arcsOf(job, Math.max(0, ...stock.map(({ holds }) => holds)));
  const places = [...new Set([0, ...arcs.map(({ from, kind }) => from + pieces[kind]!.width), ...stock.map(({ holds }) => holds)])].sort(
    (a, b) => a - b,
  );
  const rowOf = new Map(places.map((place, row) => [place, row]));
  const wantedRow = (kind: number): number => places.length + kind;
  const rows: Row[] = [...places.map(() => ({ least: 0, most: 0 })), ...pieces.map(({ wanted }) => ({ least: wanted, most: wanted }))];
  const columns: Column[] = [
    ...arcs.map(({ from, kind }): Column => {
      const { width, wanted } = pieces[kind]!;
      return {
        cost: 0,
        most: wanted,
        entries: [
          [rowOf.get(from)!, -1],
          [rowOf.get(from + width)!, 1],
          [wantedRow(kind), 1],
        ],
      };
    }),
    ...places.slice(2).map((_, gap): Column => ({
      cost: 0,
      most: count,
      entries: [
        [gap + 1, -1],
        [gap + 2, 1],
      ],
    })),
    ...stock.map(({ holds, cents, available }): Column => ({
      cost: cents,
      most: Math.min(count, available),
      entries: [
        [0, 1],
        [rowOf.get(holds)!, -1],
      ],
    })),
  ];
  return { columns, rows };
};

/** The least cost of a job in cents by the arc-flow model; Infinity where no plan exists. Each grade has so many seconds. */
export const arcFlowAnswer = async (job: CuttingJob, seconds: number): Promise<ModelAnswer> => {
  let answer: ModelAnswer = { cost: 0, isProven: true };
  for (const grade of wholeJobs(job)) answer = together(answer, await solvedModel(arcFlowModel(grade), seconds));
  return answer;
};
