/** A whole and its fraction stay on one line. */
const unbroken = (text: string): string => text.replace(/(\d) (\d+\/\d)/g, "$1\u00a0$2");

export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** Elements of a screen: text goes in as text, never as markup. */
export const part = <Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag, className: string, ...inside: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] => {
  const made = document.createElement(tag);
  if (className !== "") made.className = className;
  made.append(...inside.map((one) => (typeof one === "string" ? unbroken(one) : one)));
  return made;
};

export interface KeyLooks {
  readonly className?: string;
  /** What a screen reader says, where the key itself says less. */
  readonly name?: string;
  readonly isLit?: boolean;
  readonly isDead?: boolean;
}

/** A key. One that is lit says so to a screen reader too. */
export const key = (says: string, onTouch: () => void, { className = "", name, isLit, isDead }: KeyLooks = {}): HTMLButtonElement => {
  const made = part("button", className, says);
  made.type = "button";
  if (name !== undefined) made.setAttribute("aria-label", name);
  if (isLit !== undefined) made.setAttribute("aria-pressed", String(isLit));
  made.disabled = isDead === true;
  made.addEventListener("click", onTouch);
  return made;
};
