import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { faults } from "./faults";
import { withHashedNames } from "./hashed-names";
import { headersOf } from "./headers";
import { hostedManifest, manifestVersion } from "./hosted-manifest";
import { hostedNames } from "./hosted-names";
import { hostingText } from "./hosting-text";

const HASH_LENGTH = 16;

const dist = path.resolve(__dirname, "..");

const namesIn = (folder: string, before = ""): readonly string[] =>
  readdirSync(path.join(folder, before), { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? namesIn(folder, `${before}${entry.name}/`) : [`${before}${entry.name}`],
  );

const hosted = (address: string): ReadonlyMap<string, Buffer> => {
  const hashOf = (content: Buffer): string => createHash("sha256").update(content).digest("hex").slice(0, HASH_LENGTH);
  const copied = new Map(hostedNames(namesIn(dist)).map((name) => [name, readFileSync(path.join(dist, name))] as const));
  const manifest = hostedManifest(copied.get("manifest.xml")?.toString("utf8") ?? "", address);
  copied.set("manifest.xml", Buffer.from(manifest));
  // Whoever opens the address itself reads how to put the add-in into Excel.
  copied.set("index.html", copied.get("install.html") ?? Buffer.alloc(0));
  const files = new Map([...withHashedNames(copied, hashOf)].sort(([first], [second]) => (first < second ? -1 : 1)));
  const headers = [...files].map(([name, content]) => [name, headersOf(name, content.toString("utf8"))] as const);
  return files.set("hosting.txt", Buffer.from(hostingText({ address, version: manifestVersion(manifest), files: headers })));
};

const [, , address = "", folder = "hosted"] = process.argv;
const files = hosted(address);
const found = faults(files);
if (found.length > 0) {
  console.error(found.join("\n"));
  process.exitCode = 1;
} else {
  rmSync(folder, { recursive: true, force: true });
  for (const [name, content] of files) {
    const file = path.join(folder, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, content);
  }
  console.log(`Wrote ${files.size} files for ${address}/ to ${folder}${path.sep}. Read ${path.join(folder, "hosting.txt")} first.`);
}
