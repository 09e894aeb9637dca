/** An element with text in it as text, never as markup. */
export const element = <Tag extends keyof HTMLElementTagNameMap>(
  page: Document, tag: Tag, content?: string | readonly (Node | string)[], className?: string,
): HTMLElementTagNameMap[Tag] => {
  const made = page.createElement(tag);
  if (typeof content === "string") made.textContent = content;
  else if (content !== undefined) made.append(...content);
  if (className !== undefined) made.className = className;
  return made;
};
