import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { faults } from "./faults";
import { withHashedNames } from "./hashed-names";
import { headersOf } from "./headers";
import { withHelpAddresses } from "./help-addresses";
import { hostedManifest, manifestVersion } from "./hosted-manifest";
import { hostedNames } from "./hosted-names";
import { withHostedSheet } from "./hosted-sheet";
import { hostingText } from "./hosting-text";
import { WORKER, workerFile } from "./worker-file";

const HASH_LENGTH = 16;

const dist = path.resolve(__dirname, "..");

const namesIn = (folder: string, before = ""): readonly string[] =>
  readdirSync(path.join(folder, before), { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? namesIn(folder, `${before}${entry.name}/`) : [`${before}${entry.name}`],
  );

const hashOf = (content: Buffer): string => createHash("sha256").update(content).digest("hex").slice(0, HASH_LENGTH);

const hosted = (address: string): ReadonlyMap<string, Buffer> => {
  const copied = new Map(hostedNames(namesIn(dist)).map((name) => [name, readFileSync(path.join(dist, name))] as const));
  const manifest = hostedManifest(copied.get("manifest.xml")?.toString("utf8") ?? "", address);
  copied.set("manifest.xml", Buffer.from(manifest));
  const onSite = (name: string): Buffer => readFileSync(path.join(__dirname, "on-site", name));
  const files = new Map(withHashedNames(withHostedSheet(withHelpAddresses(copied, address), onSite("on-site.js")), hashOf));
  files.set(WORKER, workerFile(files, onSite(WORKER), hashOf));
  const sorted = new Map([...files].sort(([first], [second]) => (first < second ? -1 : 1)));
  const headers = [...sorted].map(([name, content]) => [name, headersOf(name, content.toString("utf8"))] as const);
  return sorted.set("hosting.txt", Buffer.from(hostingText({ address, version: manifestVersion(manifest), files: headers })));
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
