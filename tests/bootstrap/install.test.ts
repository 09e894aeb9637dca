import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const { whyInstall } = jest.requireActual<{ whyInstall: (folder: string) => string | undefined }>("../../src/bootstrap/install.cjs");
const { whyNoExcel } = jest.requireActual<{ whyNoExcel: (platform: string) => string | undefined }>(
  "../../src/bootstrap/desktop-excel.cjs",
);

let folder: string;

const written = (name: string, at: number): void => {
  const file = path.join(folder, name);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, "{}");
  utimesSync(file, at, at);
};

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-install-"));
  written("package-lock.json", 1000);
});

afterEach(() => rmSync(folder, { recursive: true }));

test("a fresh copy of the project is installed first", () => {
  expect(whyInstall(folder)).toBe("nothing is installed yet");
});

test("an install that was broken off is done again", () => {
  written("node_modules/left-over/package.json", 2000);
  expect(whyInstall(folder)).toBe("nothing is installed yet");
});

test("a changed lock file is installed anew", () => {
  written("node_modules/.package-lock.json", 999);
  expect(whyInstall(folder)).toBe("package-lock.json is newer than what is installed");
});

test("what is installed and current is left alone", () => {
  written("node_modules/.package-lock.json", 1001);
  expect(whyInstall(folder)).toBeUndefined();
});

test.each(["win32", "darwin"])("on %s the add-in can be opened in Excel", (platform) => {
  expect(whyNoExcel(platform)).toBeUndefined();
});

test("on Linux the way into Excel says why there is none, and what works instead", () => {
  expect(whyNoExcel("linux")).toMatch(/Windows and Mac only.*npm start/);
});
