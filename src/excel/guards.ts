/** What keeps a workbook from being changed. */
export interface Guards {
  readonly protectedSheets: readonly string[];
  readonly isReadOnly: boolean;
}

export const NO_GUARDS: Guards = { protectedSheets: [], isReadOnly: false };

/** What of it Excel can tell; nothing where it tells nothing, such as an Excel too old to be asked. */
export const guards = async (names: readonly string[]): Promise<Guards> => {
  try {
    return await Excel.run(async (context) => {
      context.workbook.load("readOnly");
      const protections = [...new Set(names)].map((name) => ({ name, protection: context.workbook.worksheets.getItem(name).protection }));
      for (const { protection } of protections) protection.load("protected");
      await context.sync();
      return {
        protectedSheets: protections.flatMap(({ name, protection }) => (protection.protected ? [name] : [])),
        isReadOnly: context.workbook.readOnly,
      };
    });
  } catch {
    return NO_GUARDS;
  }
};
