import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { scripts } from "../../package.json";

const project = path.resolve(__dirname, "../..");
const text = (file: string): string => readFileSync(path.join(project, file), "utf8");
const tracked = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], { cwd: project, encoding: "utf8" })
  .split("\n").filter((file) => file !== "" && existsSync(path.join(project, file)));
const documents = tracked.filter((file) => /^(?:docs\/)?[\w-]+[.]md$/.test(file));
const built = readdirSync(path.join(project, "dist")).filter((file) => file.endsWith(".html"));

const ids = (html: string): readonly string[] => [...html.matchAll(/\sid="([^"]+)"/g)].map(([, id = ""]) => id);

/** The anchor that a heading of Markdown gets where projects are read: small letters, hyphens for spaces, no other signs. */
const anchors = (markdown: string): readonly string[] =>
  [...markdown.matchAll(/^#+ (.+)$/gm)].map(([, heading = ""]) => heading.toLowerCase().replace(/[^\w\- ]/g, "").replace(/ /g, "-"));

test.each(documents)("every file and heading that %s leads to is in the project", (document) => {
  const lost = [...text(document).matchAll(/\]\(([^)\s]+)\)/g)].map(([, to = ""]) => to).filter((to) => {
    if (/^https?:/.test(to)) return false;
    const [file = "", anchor] = to.split("#");
    const place = file === "" ? document : path.posix.join(path.posix.dirname(document), file);
    return !tracked.includes(place) || (anchor !== undefined && !anchors(text(place)).includes(anchor));
  });
  expect(lost).toEqual([]);
});

test.each(documents.filter((file) => file !== "CHANGELOG.md"))("every npm script that %s names is there", (document) => {
  const named = [...text(document).matchAll(/\bnpm (?:run ([\w:]+)|(start|test)\b)/g)].map(([, run, own]) => run ?? own ?? "");
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});

test.each(["README.md", "DEVELOPERS.md"])("every source file that %s names is in the project, and what is built is there", (document) => {
  const named = [...text(document).matchAll(/`([\w./*-]+[.](?:ts|cjs|mjs|py|md|xml)|(?:src|tests|docs)\/[\w./-]*)`/g)]
    .map(([, name = ""]) => name);
  expect(named.length).toBeGreaterThan(1);
  const isThere = (name: string): boolean => {
    if (name.startsWith("dist/")) return existsSync(path.join(project, name));
    const pattern = new RegExp(`(?:^|/)${name.replace(/[.]/g, "[.]").replace(/\*/g, "[^/]*")}${name.endsWith("/") ? "" : "(?:$|/)"}`);
    return tracked.some((file) => pattern.test(file));
  };
  expect(named.filter((name) => !isThere(name))).toEqual([]);
});

test.each(built)("in %s no place has the name of another, and every link within the built pages has its file and place", (file) => {
  const html = text(`dist/${file}`);
  expect(ids(html).filter((id, at) => ids(html).indexOf(id) !== at)).toEqual([]);
  const lost = [...html.matchAll(/\shref="([^"]+)"/g)].map(([, to = ""]) => to).filter((to) => {
    if (/^https?:/.test(to)) return false;
    const [page, place] = to.split("#");
    const at = `dist/${page === "" || page === undefined ? file : page}`;
    return !existsSync(path.join(project, at)) || (place !== undefined && !ids(text(at)).includes(place));
  });
  expect(lost).toEqual([]);
});
