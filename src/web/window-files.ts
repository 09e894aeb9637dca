const hasFiles = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes("Files") === true;

/** Takes files that are dropped while a dialog is open, before the page opens them as workbooks; answers what ends it. */
export const windowFiles = (take: (files: readonly File[]) => void): (() => void) => {
  const over = (event: DragEvent): void => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  const drop = (event: DragEvent): void => {
    if (!hasFiles(event)) return;
    over(event);
    take([...(event.dataTransfer?.files ?? [])]);
  };
  window.addEventListener("dragover", over, { capture: true });
  window.addEventListener("drop", drop, { capture: true });
  return () => {
    window.removeEventListener("dragover", over, { capture: true });
    window.removeEventListener("drop", drop, { capture: true });
  };
};
