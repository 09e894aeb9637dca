/** Whether the theme chosen in Excel is dark; undefined where it does not say. */
export const isDarkInExcel = (): boolean | undefined => {
  // Older versions have no theme, or one without this property, whatever the types say.
  const theme = Office.context.officeTheme as Partial<Office.OfficeTheme> | undefined;
  return theme?.isDarkTheme;
};

/** Whether this Excel has a requirement set in a version. */
export const isSetSupported = (set: string, version: string): boolean => Office.context.requirements.isSetSupported(set, version);

/** Calls once the platform says that the page is open in Excel; never anywhere else. */
export const whenInExcel = (go: () => void): void => {
  // The platform's script may be out of reach.
  if (typeof Office === "undefined") return;
  void Office.onReady(({ host }) => {
    if (host === Office.HostType.Excel) go();
  });
};
