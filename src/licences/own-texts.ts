import type { OwnText } from "./shipped-package";

const LICENCE_FILE = /^(licen[cs]e|copying|unlicense)/i;
// Apache License 2.0, 4(d): what a NOTICE file says is passed on.
const NOTICE_FILE = /^notice/i;
const README = /^readme([.]|$)/i;
const HEADING = /^#{1,6}\s*licen[cs]e\b/im;

const headingLevel = (heading: string): number => /^#+/.exec(heading)?.[0].length ?? 0;

const licencePart = (readme: string): string | undefined => {
  const found = HEADING.exec(readme);
  if (found === null) return undefined;
  const level = headingLevel(found[0]);
  const rest = readme.slice(found.index + found[0].length);
  const next = new RegExp(`^#{1,${level}}\\s`, "m").exec(rest);
  const text = rest.slice(0, next?.index).replace(/^.*\n/, "").trim();
  return text === "" ? undefined : text;
};

const kindOf = (name: string): OwnText["kind"] | undefined =>
  LICENCE_FILE.test(name) ? "licence" : NOTICE_FILE.test(name) ? "notice" : undefined;

/** The licence and the notice of a package, from its files; where it has no licence file, what its README says under "License". */
export const ownTexts = (names: readonly string[], read: (name: string) => string): readonly OwnText[] => {
  const textOf = (file: string): string => read(file).replace(/\r\n/g, "\n").trim();
  const texts = [...names].sort().flatMap((file): readonly OwnText[] => {
    const kind = kindOf(file);
    const text = kind === undefined ? "" : textOf(file);
    return kind === undefined || text === "" ? [] : [{ kind, file, text }];
  });
  const readme = names.find((name) => README.test(name));
  if (readme === undefined || texts.some(({ kind }) => kind === "licence")) return texts;
  const text = licencePart(textOf(readme));
  return text === undefined ? texts : [...texts, { kind: "part of the readme", file: readme, text }];
};
