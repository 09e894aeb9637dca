import { guards, NO_GUARDS } from "./guards";
import { mayBeGuarded, refusal } from "./refusal";

/** Sheets that something is asked of, with the words for it. */
export interface Asked {
  readonly asked: string;
  readonly sheets: readonly string[];
}

/** Does something with the workbook; what Excel refuses comes out as an Error with a plain sentence. */
export const run = async <Result>({ asked, sheets }: Asked, work: (context: Excel.RequestContext) => Promise<Result>): Promise<Result> => {
  try {
    return await Excel.run(work);
  } catch (error) {
    const found = mayBeGuarded(error) ? await guards(sheets) : NO_GUARDS;
    throw new Error(refusal(error, { asked, ...found }), { cause: error });
  }
};
