import { faults } from "../../src/hosting/faults";
import { withHashedNames } from "../../src/hosting/hashed-names";
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

test("tools and the live sheet stay at home", () => {
  expect(
    hostedNames(["tools/serve.js", "index.html", "web.js", "engine.css", "assets/icon-16.png", "taskpane.html", "reference.html"]),
  ).toEqual(["assets/icon-16.png", "taskpane.html", "reference.html"]);
});
