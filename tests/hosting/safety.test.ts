import { readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { hostedFolder, type HostedFolder } from "./hosted-folder";

const project = path.resolve(__dirname, "../..");
const platformScript = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

let hosted: HostedFolder;

beforeAll(() => {
  hosted = hostedFolder("https://example.org/stairs");
});

afterAll(() => hosted?.remove());

// What a script in a page can ask another machine with (Fetch, XMLHttpRequest, WebSocket, WebRTC, Beacon, Server-Sent Events and HTML
// standards).
const asking = [
  "fetch",
  "XMLHttpRequest",
  "WebSocket",
  "WebTransport",
  "EventSource",
  "RTCPeerConnection",
  "sendBeacon",
  "importScripts",
  "serviceWorker",
  "Worker",
  "SharedWorker",
];

const everyNode = (node: ts.Node): ts.Node[] => {
  const nodes: ts.Node[] = [node];
  node.forEachChild((child) => {
    for (const inside of everyNode(child)) nodes.push(inside);
  });
  return nodes;
};

/** Names used as code, whether written a.fetch or a["fetch"], calls of import(), and text run as code. */
const requestsIn = (script: string): readonly string[] =>
  everyNode(ts.createSourceFile("script.js", script, ts.ScriptTarget.ES2022)).flatMap((node) => {
    if (ts.isIdentifier(node) && [...asking, "eval"].includes(node.text)) return [node.text];
    if (
      ts.isElementAccessExpression(node) &&
      ts.isStringLiteralLike(node.argumentExpression) &&
      asking.includes(node.argumentExpression.text)
    )
      return [node.argumentExpression.text];
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return ["import()"];
    return [];
  });

test.each([
  ["fetch('https://elsewhere.example')", ["fetch"]],
  ["window['fetch']('/x')", ["fetch"]],
  ["const x = new XMLHttpRequest()", ["XMLHttpRequest"]],
  ["navigator.sendBeacon('/x', y)", ["sendBeacon"]],
  ["import('/x.js')", ["import()"]],
  ["eval('1')", ["eval"]],
  ["const text = 'we fetch the eval'", []],
])("planted, %s is seen to ask: %j", (script, found) => {
  expect(requestsIn(script)).toEqual(found);
});

test("no script for Excel asks any machine for anything, or runs text as code", () => {
  const scripts = hosted.names.filter((name) => /^(functions|taskpane[.][0-9a-f]{16})[.]js$/.test(name));
  expect(scripts.length).toBe(2);
  expect(scripts.flatMap((name) => requestsIn(hosted.text(name)).map((found) => `${name}: ${found}`))).toEqual([]);
});

test("the worker, where there is one, loads no other script and runs no text as code", () => {
  expect([...new Set(requestsIn(hosted.text("worker.js")))]).toEqual(["fetch"]);
});

test("pages and styles load nothing from elsewhere but the platform's script in the pane", () => {
  const loaded = hosted.names
    .filter((name) => /[.](html|css)$/.test(name))
    .flatMap((name) =>
      [
        ...hosted
          .text(name)
          .matchAll(
            /<(?:script|link|img|iframe|object|embed|video|audio|source|form)\b[^>]*?(?:src|href|data|action)="([^"]*)"|url\("?([^")]*)/g,
          ),
      ].map(([, tag, style]) => tag ?? style ?? ""),
    )
    .filter((address) => /^([a-z]+:)?\/\//i.test(address));
  expect(loaded).toEqual([platformScript]);
});

test("no page sends a form, runs a script of its own inside it or sends itself elsewhere", () => {
  for (const name of hosted.names.filter((file) => file.endsWith(".html"))) {
    expect(/<form\b|<script(?![^>]*\bsrc=)|\son[a-z]+="|http-equiv="refresh"/i.exec(hosted.text(name))?.[0]).toBeUndefined();
  }
});

describe("what the manifest asks for", () => {
  const manifest = readFileSync(path.join(project, "manifest.xml"), "utf8");

  test("is the permission to read and write the workbook, with the reason above it", () => {
    expect([...manifest.matchAll(/<Permissions>([^<]*)</g)].map(([, level]) => level)).toEqual(["ReadWriteDocument"]);
    expect(manifest).toMatch(/<!--[^>]*WriteDocument alone[^>]*issues\/2394[^>]*-->\s*<Permissions>/s);
  });

  test("is no sign-in, no other host program and no address of anyone else", () => {
    expect(/<WebApplicationInfo|<Scope>|<EquivalentAddins|<ExtendedPermissions/.exec(manifest)?.[0]).toBeUndefined();
    expect([...manifest.matchAll(/<Host Name="([^"]*)"/g)].map(([, host]) => host)).toEqual(["Workbook"]);
    expect(
      [...manifest.matchAll(/"(https?:\/\/[^"]*)"|<AppDomain>([^<]*)</g)]
        .map(([, named, domain]) => named ?? domain ?? "")
        .filter((address) => !/^https:\/\/localhost:3000(\/|$)|^http:\/\/(www\.w3\.org|schemas\.microsoft\.com)\//.test(address)),
    ).toEqual([]);
  });
});
