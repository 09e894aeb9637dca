import type { Highs } from "highs";
import { type LinearAnswer, type MasterMaker, shortagePrice } from "../solver/yield/shelf/master";
import type { Pattern } from "../solver/yield/shelf/pattern";
import { piecesWanted } from "../solver/yield/shelf/shelf";

const TIMES_DUST = 1e-9;

/** The linear program of the patterns in HiGHS: kept between rounds, so that each starts from the last one's basis. */
export const highsMaster =
  (highs: Highs): MasterMaker =>
  (shelf, limits) => {
    const { kinds, sticks } = shelf;
    const pieces = piecesWanted(shelf);
    const size = kinds.length;
    const limited = sticks.flatMap((_, stick) => (limits.most[stick]! < pieces || limits.least[stick]! > 0 ? [stick] : []));
    const rows = size + limited.length;
    const shortage = shortagePrice(shelf);
    const least = [...kinds.map((kind) => kind.wanted), ...limited.map((stick) => limits.least[stick]!)];
    const model = highs.createModel({
      numCols: rows,
      numRows: rows,
      // a shortage of each row, so that there always is an answer; where a limit is only a most, its shortage is 0
      colCost: Array.from({ length: rows }, () => shortage),
      colLower: Array.from({ length: rows }, () => 0),
      colUpper: Array.from({ length: rows }, (_, row) => (least[row]! > 0 ? highs.infinity : 0)),
      rowLower: least,
      rowUpper: [...kinds.map(() => highs.infinity), ...limited.map((stick) => limits.most[stick]!)],
      matrix: {
        format: "csc",
        numCols: rows,
        numRows: rows,
        starts: Array.from({ length: rows + 1 }, (_, row) => row),
        indices: Array.from({ length: rows }, (_, row) => row),
        values: Array.from({ length: rows }, () => 1),
      },
    });
    model.options.set({ output_flag: false, presolve: "off", random_seed: 1 });
    const patterns: Pattern[] = [];
    const solve = (): LinearAnswer => {
      model.run();
      const { colValue, rowDual } = model.getSolution();
      const stickWorth = new Float64Array(sticks.length);
      for (const [place, stick] of limited.entries()) stickWorth[stick] = rowDual[size + place]!;
      return {
        cost: model.getObjectiveValue(),
        worth: rowDual.slice(0, size),
        stickWorth,
        uses: patterns.flatMap((pattern, place) =>
          colValue[rows + place]! > TIMES_DUST ? [{ pattern, times: colValue[rows + place]! }] : [],
        ),
        shortage: colValue.slice(0, rows).reduce((sum, value) => sum + value, 0),
      };
    };
    return {
      add: (pattern) => {
        const row = limited.indexOf(pattern.stick);
        patterns.push(pattern);
        model.addCol(sticks[pattern.stick]!.price, 0, highs.infinity, {
          indices: row < 0 ? pattern.kinds : [...pattern.kinds, size + row],
          values: row < 0 ? pattern.counts : [...pattern.counts, 1],
        });
      },
      solve,
      close: () => model.dispose(),
    };
  };
