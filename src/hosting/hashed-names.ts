export type Files = ReadonlyMap<string, Buffer>;

// The manifest gives Excel these names, and the pane loads the same file.
const NAMED_BY_MANIFEST: readonly string[] = ["functions.js", "functions.json"];

const IN_PAGE = /(?<=\s)(src|href|data-functions)="([\w./-]+[.](?:js|css|json))"/g;
const IN_STYLES = /(@import url)\("([\w./-]+[.]css)"\)/g;

const named = (name: string, hash: string): string => name.replace(/([.][^.]+)$/, `.${hash}$1`);

/**
 * The same files with the hash of their content in the names of scripts and styles that pages load, so that a browser may keep them: a page
 * never meets a script of another build.
 */
export const withHashedNames = (files: Files, hashOf: (content: Buffer) => string): Files => {
  const done = new Map<string, readonly [name: string, content: Buffer]>();

  const newName = (name: string): string => (files.has(name) && !NAMED_BY_MANIFEST.includes(name) ? renamed(name)[0] : name);

  const rewritten = (name: string, content: Buffer): Buffer => {
    if (name.endsWith(".html"))
      return Buffer.from(content.toString("utf8").replace(IN_PAGE, (_, attribute: string, to: string) => `${attribute}="${newName(to)}"`));
    if (name.endsWith(".css"))
      return Buffer.from(content.toString("utf8").replace(IN_STYLES, (_, rule: string, to: string) => `${rule}("${newName(to)}")`));
    return content;
  };

  const renamed = (name: string): readonly [name: string, content: Buffer] => {
    const known = done.get(name);
    if (known !== undefined) return known;
    const content = rewritten(name, files.get(name) ?? Buffer.alloc(0));
    const entry = [named(name, hashOf(content)), content] as const;
    done.set(name, entry);
    return entry;
  };

  const others = [...files].map(([name, content]) => [name, rewritten(name, content)] as const);
  const replaced = new Map(done);
  return new Map(others.map(([name, content]) => replaced.get(name) ?? ([name, content] as const)));
};

/** What a page loads, and the styles that its styles load. */
export const loadedBy = (files: Files, page: string): readonly string[] => {
  const names = (name: string): readonly string[] =>
    [...(files.get(name)?.toString("utf8") ?? "").matchAll(name.endsWith(".html") ? IN_PAGE : IN_STYLES)].map(([, , to = ""]) => to);
  const within = (name: string): readonly string[] => (/[.](html|css)$/.test(name) ? names(name).flatMap((to) => [to, ...within(to)]) : []);
  return [...new Set(within(page))];
};
