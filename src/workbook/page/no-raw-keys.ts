import type { LocaleService } from "@univerjs/core";
import { pageWords } from "./page-words";

/** How the engine names a word: its package, and in it a path. */
const NAME = /^([a-z][a-z-]*)\.(?:[\w-]+\.)*([\w-]+)$/;
/** For these it takes the name itself as the sign that there is none. */
const ASKED_FOR_NONE = /\.aliasFunctionName$/;

/** Where the engine has no word for what it names, the last part of the name stands for it, in words, and never the name. */
export const noRawKeys = (service: Pick<LocaleService, "t">): void => {
  const found = service.t;
  service.t = (name, ...given) => {
    const word = found(name, ...given);
    if (word !== name || ASKED_FOR_NONE.test(name)) return word;
    const [, of = "", last = ""] = NAME.exec(name) ?? [];
    if (!Object.hasOwn(pageWords, of)) return word;
    return last.replace(/([a-z])([A-Z])/g, "$1 $2").replace(/-/g, " ").toLowerCase();
  };
};
