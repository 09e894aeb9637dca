import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";

/**
 * Hosts an address may name: the authority or a public library of texts, the spreadsheet platform, standards of the web, and this machine
 * or an example.
 */
const MAY_STAND: readonly (string | RegExp)[] = [
  // Authorities and their codes.
  "codes.iccsafe.org",
  "www.osha.gov",
  "www.4safenv.state.nv.us",
  "www.jeffco.us",
  "www.hse.gov.uk",
  "codemark.abcb.gov.au",
  "www.abcb.gov.au",
  "ncc.abcb.gov.au",
  // Public libraries of texts.
  "www.gutenberg.org",
  "archive.org",
  // The spreadsheet platform and its documentation.
  "learn.microsoft.com",
  "support.microsoft.com",
  "schemas.microsoft.com",
  "developer.microsoft.com",
  "appsforoffice.microsoft.com",
  "office.com",
  "*.office.com",
  "*.office.net",
  "*.officeapps.live.com",
  "excel.officeapps.live.com",
  // Standards, schemas and licences.
  "www.w3.org",
  "schemas.openxmlformats.org",
  "purl.oclc.org",
  "www.rfc-editor.org",
  "spdx.org",
  // The other spreadsheet platform: its documentation, and the names that its files have to bear.
  "api.libreoffice.org",
  "openoffice.org",
  // Examples (RFC 2606, RFC 5737) and this machine.
  /(^|\.)example(\.org|\.com)?$/,
  "192.0.2.7",
  "intranet",
  "localhost",
  "127.0.0.1",
  "[",
  "0x7f.1",
];

/** Repositories of the platform. */
const MAY_STAND_ON_GITHUB = /^OfficeDev\//;

const CITED = ["src", "tests", "docs", "README.md", "CHANGELOG.md", "DEVELOPERS.md", "manifest.xml", "package.json"];
const TEXT = /\.(?:ts|cjs|mjs|md|json|xml|xsd|html|css)$/;
/** What a test or a page builds an address from is no address. */
const ADDRESS = /https?:\/\/(?:[\w.:-]+@)?(\*?[\w\u0080-\uffff.-]+|\[)(?:\/([\w.-]+\/))?/g;

interface Named {
  readonly file: string;
  readonly host: string;
  readonly folder: string;
}

const named = (file: string, text: string): Named[] =>
  [...text.matchAll(ADDRESS)].flatMap(([, host, folder]) =>
    host === undefined || /^\.+$/.test(host) ? [] : [{ file, host, folder: folder ?? "" }],
  );

const mayStand = ({ host, folder }: Named): boolean =>
  MAY_STAND.some((one) => (typeof one === "string" ? one === host : one.test(host))) ||
  (host === "github.com" && MAY_STAND_ON_GITHUB.test(folder));

const tracked = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard", ...CITED], { encoding: "utf8" }).split("\n")
  .filter((file) => TEXT.test(file) && !file.endsWith("package-lock.json"));

test("every address names the authority, a public library of texts, the platform or an example", () => {
  const all = tracked.flatMap((file) => named(file, readFileSync(file, "utf8")));
  expect(all.length).toBeGreaterThan(100);
  expect(all.filter((one) => !mayStand(one)).map(({ file, host, folder }) => `${file}: ${host}/${folder}`)).toEqual([]);
});

test.each([
  ["a shop", `see ${"https"}://stairparts.invalid/codes`],
  ["a personal repository", `${"https"}://github.com/someone/stairs`],
  ["a forum", `quoted at ${"http"}://forum.invalid/t/12`],
])("%s is caught", (_, text) => {
  expect(named("planted.ts", text).filter((one) => !mayStand(one))).toHaveLength(1);
});

/** Case numbers of a private collection, such as two letters and a count behind an x. */
const PRIVATE_CASE = /\bx-[a-z]{2,3}-\d{2}\b|\bd-(?:irc|ibc|obc|ada|nbc)-[a-z0-9-]+/;

test("no case is cited by a number that only its collector knows", () => {
  const cited = tracked
    .filter((file) => /^(?:src|tests|docs)\//.test(file) && file !== "tests/architecture/addresses.test.ts")
    .flatMap((file) =>
      readFileSync(file, "utf8")
        .split("\n")
        .flatMap((line, index) => (PRIVATE_CASE.test(line) ? [`${file}:${index + 1}`] : [])),
    );
  expect(cited).toEqual([]);
});
