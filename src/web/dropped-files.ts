const hasFiles = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes("Files") === true;

/** Takes files that are dropped anywhere on the page, before the sheet or the browser does something else with them. */
export const droppedFiles = (take: (files: readonly File[]) => void): void => {
  const over = (isOver: boolean): void => void document.documentElement.classList.toggle("dropping", isOver);
  document.addEventListener("dragover", (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    event.stopPropagation();
    over(true);
  }, { capture: true });
  document.addEventListener("dragleave", ({ relatedTarget }) => {
    if (relatedTarget === null) over(false);
  }, { capture: true });
  document.addEventListener("drop", (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    event.stopPropagation();
    over(false);
    take([...(event.dataTransfer?.files ?? [])]);
  }, { capture: true });
};
