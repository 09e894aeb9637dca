import { faults } from "../../src/hosting/faults";
import { loadedBy, withHashedNames } from "../../src/hosting/hashed-names";
import { hostedNames } from "../../src/hosting/hosted-names";

const files = (texts: Readonly<Record<string, string>>): ReadonlyMap<string, Buffer> =>
  new Map(Object.entries(texts).map(([name, text]) => [name, Buffer.from(text)]));

const policy = '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'">';

test("a planted address of this machine is found in any text file", () => {
  expect(
    faults(files({ "a.js": 'x("https://localhost:3000/")', "b.xml": "https://127.0.0.1/", "c.png": "localhost", "d.md": "local host" })),
  ).toEqual([
    "a.js names localhost, which is another machine for everyone who opens it.",
    "b.xml names 127.0.0.1, which is another machine for everyone who opens it.",
  ]);
});

test("a planted page without a policy is found", () => {
  expect(faults(files({ "a.html": "<title>x</title>", "b.html": policy }))).toEqual(["a.html has no Content-Security-Policy."]);
});

test("names get the hash of what stands in the file in the end, down to the styles that styles load", () => {
  const given = files({
    "page.html": '<link href="outer.css"><script src="page.js"></script><script src="functions.js"></script><a href="other.html">',
    "outer.css": '@import url("inner.css");',
    "inner.css": "a{}",
    "page.js": "1",
    "functions.js": "2",
    "alone.js": "3",
  });
  const named = withHashedNames(given, (content) => String(content.length));
  expect(Object.fromEntries([...named].map(([name, content]) => [name, content.toString()]))).toEqual({
    "page.html": '<link href="outer.27.css"><script src="page.1.js"></script><script src="functions.js"></script><a href="other.html">',
    "outer.27.css": '@import url("inner.3.css");',
    "inner.3.css": "a{}",
    "page.1.js": "1",
    "functions.js": "2",
    "alone.js": "3",
  });
});

test("the live sheet names its copies of the functions by their content, and Excel's own keep their names", () => {
  const named = withHashedNames(
    files({
      "index.html": '<html data-functions="mine.json"><script src="mine.js"></script><script src="functions.js"></script>',
      "mine.json": "1",
      "mine.js": "22",
      "functions.js": "333",
      "functions.json": "4444",
    }),
    (content) => String(content.length),
  );
  expect([...named.keys()]).toEqual(["index.html", "mine.1.json", "mine.2.js", "functions.js", "functions.json"]);
  expect(named.get("index.html")?.toString()).toBe(
    '<html data-functions="mine.1.json"><script src="mine.2.js"></script><script src="functions.js"></script>',
  );
});

test("what a page loads is told down to the styles that styles load, and pages it leads to are not", () => {
  const given = files({
    "page.html": '<link href="outer.css"><script src="page.js"></script><a href="other.html">',
    "outer.css": '@import url("inner.css");',
    "inner.css": "a{}",
    "page.js": 'x = " src=\"no.js\""',
  });
  expect(loadedBy(given, "page.html")).toEqual(["outer.css", "inner.css", "page.js"]);
});

test("tools stay at home", () => {
  expect(
    hostedNames(["tools/serve.js", "tools/on-site/worker.js", "index.html", "web.js", "assets/icon-16.png", "taskpane.html"]),
  ).toEqual(["index.html", "web.js", "assets/icon-16.png", "taskpane.html"]);
});

test("the sheet engine knows a link to this machine when it is typed, and the page asks whether it is on it: no fault", () => {
  expect(faults(files({ "web.0123456789abcdef.js": "localhost", "on-site.js": "localhost", "webb.js": "localhost" }))).toEqual([
    "webb.js names localhost, which is another machine for everyone who opens it.",
  ]);
});
