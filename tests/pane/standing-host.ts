import { localHost } from "../../src/web/local-host";
import type { Workbook } from "../../src/workbook/workbook";

/** The local sheet's host on a workbook without a page, standing on one cell. */
export const standingHost = (workbook: Workbook, sheet: string, address: string): ReturnType<typeof localHost> =>
  localHost({
    ...workbook,
    onChange: () => undefined,
    onLoad: () => undefined,
    onExplain: () => undefined,
    select: async () => undefined,
    selected: () => ({ sheet, address, value: null, formula: undefined, error: undefined }),
    onSelection: (tell) => {
      tell({ sheet, address, value: null, formula: undefined, error: undefined });
      return () => undefined;
    },
  }, { job: "", name: "", type: "", says: "" });
