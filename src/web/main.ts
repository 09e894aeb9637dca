const line = (tag: string, text: string): HTMLElement => {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
};

const functions = (globalThis as { readonly treadsheetFunctions?: ReadonlyMap<string, unknown> }).treadsheetFunctions;
const ids = [...(functions?.keys() ?? [])];
const list = document.createElement("ul");
list.append(...ids.map((id) => line("li", `STAIR.${id}`)));
document
  .querySelector("#page")
  ?.replaceChildren(line("h1", "Treadsheet"), line("p", `${ids.length} worksheet functions are loaded.`), list);
