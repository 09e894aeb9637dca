import { type ICommandInfo, ICommandService, type Injector } from "@univerjs/core";
import {
  IDescriptionService, IEditorBridgeService, IEditorService, type IShortcutItem, IShortcutService, KeyCode,
} from "@univerjs/preset-sheets-core";

/** Names of the engine's shortcuts for a cell in edit, of which the list of function names has its own. */
const IN_EDIT = /^sheet\.(formula-embedding-editor|operation\.editor-)/;
const IN_LIST = "sheet.formula-embedding-editor.search_function.";
const ARROWS: readonly unknown[] = [KeyCode.ARROW_UP, KeyCode.ARROW_DOWN];

/** A list of function names: the letters it was made for, and what stood in the editor then. */
interface Asked {
  readonly letters: string;
  readonly text: string;
  readonly offset: number;
}

/**
 * Keys mean what they mean for the cell as it is when they are pressed. The engine draws the page anew before it takes back the shortcuts
 * of a cell in edit, and its list of function names stays as it was until a pause in typing: Enter after "=STAIR.RISERS(108)" typed at a
 * go would put in the first function that begins with STA. Here the list takes keys only while it is about what stands in the cell, and
 * Enter only once a name was chosen by arrow; Tab takes the first one.
 */
export const shortcutsInTime = (injector: Injector): void => {
  const shortcuts = injector.get(IShortcutService);
  const descriptions = injector.get(IDescriptionService);
  const editors = injector.get(IEditorService);
  const bridge = injector.get(IEditorBridgeService);
  let asked: Asked | undefined;
  let chosen: Asked | undefined;

  const inEditor = (): Omit<Asked, "letters"> => {
    const editor = editors.getFocusEditor();
    return { text: editor?.getDocumentData().body?.dataStream ?? "", offset: editor?.getSelectionRanges()[0]?.startOffset ?? 0 };
  };

  const search = descriptions.getSearchListByNameFirstLetter.bind(descriptions);
  descriptions.getSearchListByNameFirstLetter = (letters) => {
    asked = { letters, ...inEditor() };
    return search(letters);
  };

  const isAbout = (list: Asked | undefined): boolean => {
    if (list === undefined || list !== asked) return false;
    const { text, offset } = inEditor();
    const { letters } = list;
    const around = text.slice(Math.max(0, offset - letters.length), offset + letters.length);
    return list.text === text && list.offset === offset && around.toUpperCase().includes(letters.toUpperCase());
  };

  const guard = ({ id, binding }: IShortcutItem): (() => boolean) | undefined => {
    if (!IN_EDIT.test(id)) return undefined;
    const isInEdit = (): boolean => bridge.isVisible().visible;
    if (!id.startsWith(IN_LIST)) return isInEdit;
    const list = asked;
    return () => isInEdit() && isAbout(list) && (binding !== KeyCode.ENTER || chosen === list);
  };

  const register = shortcuts.registerShortcut.bind(shortcuts);
  shortcuts.registerShortcut = (item) => {
    const isInTime = guard(item);
    return register(
      isInTime === undefined ? item : { ...item, preconditions: (context) => isInTime() && (item.preconditions?.(context) ?? true) },
    );
  };

  injector.get(ICommandService).onCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    if (id.startsWith(IN_LIST) && ARROWS.includes((params as { readonly keyCode?: unknown } | undefined)?.keyCode)) chosen = asked;
  });
};
