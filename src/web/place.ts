/** The page's place for something, by its id. */
export const place = <Kind extends HTMLElement>(id: string): Kind => {
  const found = document.querySelector<Kind>(`#${id}`);
  if (found === null) throw new Error(`The page has no place for ${id}.`);
  return found;
};
