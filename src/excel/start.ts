import type { PaneVisibility } from "./selection";

/** Whether the theme chosen in Excel is dark; undefined where it does not say. */
export const isDarkInExcel = (): boolean | undefined => {
  // Older versions have no theme, or one without this property, whatever the types say.
  const theme = Office.context.officeTheme as Partial<Office.OfficeTheme> | undefined;
  return theme?.isDarkTheme;
};

/** Whether this Excel has a requirement set in a version. */
export const isSetSupported = (set: string, version: string): boolean => Office.context.requirements.isSetSupported(set, version);

/**
 * Whether a link in the pane that is followed by a click of ours saves a file: in the browsers that hold it on Windows and on the web; not
 * on a Mac, where it does nothing and window.print does neither (github.com/OfficeDev/office-js, issues 2700 and 3385).
 */
export const savesFiles = (): boolean =>
  [Office.PlatformType.PC, Office.PlatformType.OfficeOnline].includes(Office.context.platform);

/** Calls once the platform says that the page is open in Excel; never anywhere else. */
export const whenInExcel = (go: () => void): void => {
  // The platform's script may be out of reach.
  if (typeof Office === "undefined") return;
  void Office.onReady(({ host }) => {
    if (host === Office.HostType.Excel) go();
  });
};

/** Whether the pane is seen: with a shared runtime this page lives on behind a closed pane, and before one was ever opened. */
export const paneVisibility = (): PaneVisibility => {
  let isVisible = !document.hidden;
  const told: (() => void)[] = [];
  const becomes = (now: boolean): void => {
    if (now === isVisible) return;
    isVisible = now;
    for (const tell of told) tell();
  };
  document.addEventListener("visibilitychange", () => becomes(!document.hidden));
  // Part of SharedRuntime 1.1, which the manifest asks for; a page beside Excel may have no add-in, whatever the types say.
  const addin = Office.addin as Office.Addin | undefined;
  void addin?.onVisibilityModeChanged(({ visibilityMode }) => becomes(visibilityMode === Office.VisibilityMode.taskpane))
    .catch(() => undefined);
  return { isVisible: () => isVisible, onChange: (tell) => void told.push(tell) };
};
