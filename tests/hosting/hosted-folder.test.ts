import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import Ajv from "ajv";
import { version } from "../../package.json";
import { readyFileName, readyWorkbooks } from "../../src/sheets/ready-workbooks";
import { manifestFaults } from "../manifest/manifest-faults";
import metadataSchema from "../functions/metadata-schema.json";
import { hostedFolder, type HostedFolder } from "./hosted-folder";

const project = path.resolve(__dirname, "../..");
const addresses = ["https://example.org/path", "https://example.org", "https://intranet:8443/a%20b&c/it's"] as const;
const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/'/g, "&apos;");

const made = new Map<string, HostedFolder>();
const at = (address: string): HostedFolder => made.get(address) ?? hostedFolder(address);

beforeAll(() => {
  for (const address of addresses) made.set(address, hostedFolder(address));
});

afterAll(() => {
  for (const hosted of made.values()) hosted.remove();
});

describe.each(addresses)("the folder for %s", (address) => {
  test("has a manifest without fault, by the schema and by what no schema sees", () => {
    expect(manifestFaults([at(address).text("manifest.xml")], { version, icons: path.join(project, "src/taskpane/icons") })).toEqual([[]]);
  });

  test("names itself in every address of the manifest, and there is such a file for each", () => {
    const manifest = at(address).text("manifest.xml");
    const named = [...manifest.matchAll(/DefaultValue="(https:[^"]*)"/g)].map(([, url = ""]) => url);
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((url) => !url.startsWith(`${escaped(address)}/`))).toEqual([]);
    expect(named.map((url) => url.slice(escaped(address).length + 1)).filter((name) => !at(address).names.includes(name))).toEqual([]);
    expect(/<AppDomain>([^<]*)</.exec(manifest)?.[1]).toBe(new URL(address).origin);
  });

  test("keeps the id and the version of the manifest of this project", () => {
    const own = readFileSync(path.join(project, "manifest.xml"), "utf8");
    for (const part of [/<Id>.*<\/Id>/, /<Version>.*<\/Version>/]) expect(at(address).text("manifest.xml")).toContain(part.exec(own)?.[0]);
  });

  test("names this machine in no file but where the page asks whether it is on it, and the engine knows a link by it", () => {
    const naming = at(address).names.filter((name) => /localhost|127\.0\.0\.1/i.test(at(address).text(name)));
    expect(naming.filter((name) => !/^(on-site|web)[.][0-9a-f]{16}[.]js$/.test(name))).toEqual([]);
  });

  test("leads from each function of functions.json to its place in the reference", () => {
    const described = JSON.parse(at(address).text("functions.json")) as { readonly functions: readonly { readonly helpUrl: string }[] };
    const reference = at(address).text("reference.html");
    expect(described.functions.length).toBeGreaterThan(50);
    const lost = described.functions.filter(({ helpUrl }) => {
      const [page, anchor] = helpUrl.split("#");
      return page !== `${address}/reference.html` || !reference.includes(` id="${anchor}"`);
    });
    expect(lost).toEqual([]);
    expect(new Ajv({ strict: false }).compile(metadataSchema)(described)).toBe(true);
  });

  test("is told of, with the file to read first", () => {
    expect(at(address).output).toMatch(new RegExp(`^Wrote ${at(address).names.length} files for .*Read .*hosting\\.txt first\\.\n$`, "s"));
    expect(at(address).text("hosting.txt")).toContain(`${address}/`);
  });
});

describe("in the folder for a host", () => {
  const hosted = (): HostedFolder => at(addresses[0]);
  const pages = (): readonly string[] => hosted().names.filter((name) => name.endsWith(".html"));

  test("there are no tools of ours", () => {
    expect(hosted().names.filter((name) => /^tools|serve|hosting[.]js|generate|sideload|licences/.test(name))).toEqual([]);
    expect(hosted().names).toEqual(
      expect.arrayContaining([
        "functions.js",
        "functions.json",
        "hosting.txt",
        "index.html",
        "install.html",
        "manifest.xml",
        "reference.html",
        "taskpane.html",
        "third-party-notices.txt",
        "worker.js",
      ]),
    );
  });

  test("there are the ready workbooks as they were built, asked for anew each time, and the pane leads to each", () => {
    const names = readyWorkbooks.flatMap((ready) => [readyFileName(ready, "formulas"), readyFileName(ready, "values")]);
    expect(hosted().names.filter((name) => name.startsWith("workbooks/"))).toEqual(names.map((name) => `workbooks/${name}`).sort());
    const pane = hosted().names.find((name) => /^taskpane[.].*js$/.test(name)) ?? "";
    expect(hosted().text(pane)).toContain("workbooks/");
    for (const name of names) {
      const [there, built] = [hosted().folder, path.join(project, "dist")].map((at) => readFileSync(path.join(at, "workbooks", name)));
      expect([name, there?.equals(built ?? Buffer.alloc(0))]).toEqual([name, true]);
      expect(told().get(`workbooks/${name}`)).toEqual({
        "Content-Type": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", "Cache-Control": "no-cache",
        "X-Content-Type-Options": "nosniff",
      });
    }
  });

  test("the live sheet loads nothing but files named by their content, and leads to the reading screen", () => {
    const page = hosted().text("index.html");
    expect(page).toContain('<a href="at-stair.html">Reading screen</a>');
    const loaded = [...page.matchAll(/\s(?:src|href|data-functions)="([^"]+)"/g)].map(([, name = ""]) => name);
    expect(loaded.map((name) => name.replace(/[0-9a-f]{16}/, "…")).sort()).toEqual([
      "assets/icon-32.png",
      "at-stair.html",
      "engine.….css",
      "on-site.….js",
      "pane.….css",
      "print.….css",
      "sheet-functions.….js",
      "sheet-functions.….json",
      "stand-in.….js",
      "web.….css",
      "web.….js",
    ]);
    for (const kind of ["js", "json"]) {
      const copy = loaded.find((name) => name.startsWith("sheet-functions") && name.endsWith(`.${kind}`)) ?? "";
      expect(hosted().text(copy)).toBe(hosted().text(`functions.${kind}`));
    }
  });

  test("the reading screen loads nothing but files named by their content", () => {
    const loaded = [...hosted().text("at-stair.html").matchAll(/\s(?:src|href)="([^"]+)"/g)].map(([, name = ""]) => name);
    expect(loaded.map((name) => name.replace(/[0-9a-f]{16}/, "…")).sort()).toEqual([
      "assets/icon-32.png", "at-stair.….css", "at-stair.….js", "on-site.….js",
    ]);
  });

  test("the worker is told each file of the live sheet and the reading screen with its content, and nothing of the pane", () => {
    const told = /^self[.]treadsheetKept = (.*);\n/.exec(hosted().text("worker.js"))?.[1] ?? "";
    const { files } = JSON.parse(told) as { readonly files: readonly (readonly [string, string])[] };
    const content = (name: string): Buffer => readFileSync(path.join(hosted().folder, name === "./" ? "index.html" : name));
    expect(files.filter(([name, sum]) => sum !== `sha256-${createHash("sha256").update(content(name)).digest("base64")}`)).toEqual([]);
    const pages = hosted().text("index.html") + hosted().text("at-stair.html");
    const others = files.map(([name]) => name).filter((name) => name !== "./" && name !== "at-stair.html");
    expect(others.filter((name) => !pages.includes(`"${name}"`))).toEqual([]);
    // The sheet's page with its nine scripts, styles and lists, and the reading screen's with the two that are its own.
    expect(files.length).toBe(13);
  });

  test("dist itself, which loopback hands out, has no worker and none is asked for", () => {
    const dist = path.join(project, "dist");
    expect(readdirSync(dist).filter((name) => /worker|on-site/.test(name))).toEqual([]);
    expect(readFileSync(path.join(dist, "index.html"), "utf8")).not.toMatch(/worker|on-site/);
    expect(readFileSync(path.join(dist, "taskpane.html"), "utf8")).not.toMatch(/worker|on-site/);
    expect(readFileSync(path.join(dist, "web.js"), "utf8")).not.toContain("serviceWorker");
  });

  test("every file that a page or a style loads or leads to is there", () => {
    const asked = (name: string): readonly string[] =>
      [
        ...hosted()
          .text(name)
          .matchAll(/\b(?:src|href)="([^"#:]+)(?:#[^"]*)?"|@import url\("([^"]+)"\)/g),
      ].map(([, page, style]) => page ?? style ?? "");
    const styles = hosted().names.filter((name) => name.endsWith(".css"));
    expect(
      [...pages(), ...styles].flatMap((name) =>
        asked(name)
          .filter((file) => !hosted().names.includes(file))
          .map((file) => `${name}: ${file}`),
      ),
    ).toEqual([]);
  });

  test("a name with a hash is the hash of what is in the file, and every script and style has one but functions.js and the worker", () => {
    const built = hosted().names.filter((name) => /[.](js|css)$/.test(name) && !["functions.js", "worker.js"].includes(name));
    expect(built.length).toBeGreaterThan(2);
    expect(
      built.filter((name) => {
        const content = readFileSync(path.join(hosted().folder, name));
        return !name.includes(`.${createHash("sha256").update(content).digest("hex").slice(0, 16)}.`);
      }),
    ).toEqual([]);
  });

  /** What hosting.txt says of each file: names at the left, their headers indented below. */
  const told = (): ReadonlyMap<string, Readonly<Record<string, string>>> => {
    const blocks = hosted().text("hosting.txt").split("\n\n").map((block) => block.split("\n"));
    return new Map(
      blocks
        .filter((lines) => lines.some((line) => line.startsWith("    Content-Type: ")))
        .flatMap((lines) => {
          const headers = Object.fromEntries(
            lines
              .filter((line) => line.startsWith("    "))
              .map((line) =>
                line
                  .trim()
                  .split(/: (.*)/s)
                  .slice(0, 2),
              ) as [string, string][],
          );
          return lines.filter((line) => line !== "" && !line.startsWith(" ")).map((name) => [name, headers] as const);
        }),
    );
  };

  test("the text for the host tells the headers of every other file, once", () => {
    expect([...told().keys()].sort()).toEqual(hosted().names.filter((name) => name !== "hosting.txt"));
  });

  test.each([
    ["manifest.xml", "no-cache"],
    ["taskpane.html", "no-cache"],
    ["index.html", "no-cache"],
    ["at-stair.html", "no-cache"],
    ["worker.js", "no-cache"],
    ["functions.js", "no-cache"],
    ["functions.json", "no-cache"],
    ["reference.html", "no-cache"],
    ["assets/icon-32.png", "public, max-age=3600"],
  ])("%s is kept as Excel wants it: %s", (name, cache) => {
    expect(told().get(name)?.["Cache-Control"]).toBe(cache);
  });

  test("names with a hash are kept for a year, and no others", () => {
    const forYears = [...told()].filter(([, headers]) => headers["Cache-Control"]?.includes("immutable")).map(([name]) => name);
    expect(forYears.sort()).toEqual(hosted().names.filter((name) => /[.][0-9a-f]{16}[.]/.test(name)));
  });

  test("Excel on the web may read functions.js, functions.json and the icons from its own page", () => {
    for (const name of ["functions.js", "functions.json", "assets/icon-80.png"])
      expect(told().get(name)?.["Access-Control-Allow-Origin"]).toBe("*");
  });

  test("every page has a Content-Security-Policy that begins by forbidding everything, and the text for the host has the same", () => {
    expect(pages().length).toBeGreaterThan(2);
    for (const name of pages()) {
      const policy = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(hosted().text(name))?.[1];
      expect(policy).toMatch(/^default-src 'none';/);
      expect(told().get(name)?.["Content-Security-Policy"]).toBe(policy);
    }
  });

  test("the text for the host says that the header for the web is needed, and the command to check it names the address", () => {
    const text = hosted().text("hosting.txt");
    expect(text).toContain(`curl -sI -H "Origin: https://excel.officeapps.live.com" "${addresses[0]}/functions.json"`);
    expect(text).toContain("Access-Control-Allow-Origin is no option");
    expect(text).toContain("The manifest stays XML.");
  });

  test("the pane's policy allows the frame that the platform's script asks in whom to trust, from the script's own address", () => {
    // Its place there: the base path of the script and this name, in an iframe that is added to the page.
    const platform = readFileSync(path.join(project, "node_modules/@microsoft/office-js/dist/excel-web-16.00.debug.js"), "utf8");
    expect(platform).toMatch(/getOfficeJsBasePath\(\) \+ 'AgaveErrorUX\/index\.html#'/);
    expect(platform).toContain("hostUserTrustIframe.setAttribute('src', agaveErrorUXPath");
    const page = hosted().text("taskpane.html");
    const [, origin = ""] = /<script[^>]* src="(https:\/\/[^/]+)\//.exec(page) ?? [];
    expect(origin).toMatch(/^https:/);
    expect(page).toContain(`frame-src ${origin};`);
  });

  test("the version rules name this version and the places to raise it", () => {
    const text = hosted().text("hosting.txt");
    expect(text).toContain(`This folder is version ${version}.0`);
    expect(text).toMatch(/raise version in package\.json and Version in manifest\.xml/);
    const pages = [...text.matchAll(/\b([\w-]+[.]html)\b/g)].map(([name]) => name);
    expect(pages).toContain("changelog.html");
    expect(pages.filter((name) => !hosted().names.includes(name))).toEqual([]);
  });
});
