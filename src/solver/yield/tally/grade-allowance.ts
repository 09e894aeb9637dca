import { goodsKey } from "../../goods/goods-key";
import { Exact } from "../../length/exact";

/**
 * What the least clear faces of a hardwood grade leave, NHLA as Purdue University prints it (Cassens 2016): FAS, F1F and Selects 83 1/3 %,
 * No. 1 Common 66 2/3 %, No. 2A Common 50 %. The allowance on the net is what is missing over what is left.
 */
interface LeastClear {
  readonly names: readonly string[];
  readonly clear: string;
  readonly allowance: Exact;
}

const GRADES: readonly LeastClear[] = [
  {
    names: ["fas", "firsts and seconds", "f1f", "fas one face", "fas 1 face", "fas1f", "select", "selects"],
    clear: "83 1/3 %",
    allowance: new Exact("0.2"),
  },
  {
    names: ["no. 1 common", "no 1 common", "no. 1c", "no 1c", "1c", "1 common", "#1 common", "#1c", "number 1 common"],
    clear: "66 2/3 %",
    allowance: new Exact("0.5"),
  },
  {
    names: ["no. 2a common", "no 2a common", "no. 2a", "no 2a", "2a", "2a common", "2ac", "#2a common", "#2a", "number 2a common"],
    clear: "50 %",
    allowance: new Exact(1),
  },
];

const BY_NAME: ReadonlyMap<string, LeastClear> = new Map(
  GRADES.flatMap((grade) => grade.names.map((name) => [goodsKey(name), grade] as const)),
);

/** The allowance of a grade whose least clear face is known. */
export const gradeAllowance = (grade: string): Pick<LeastClear, "clear" | "allowance"> | undefined => BY_NAME.get(goodsKey(grade));
