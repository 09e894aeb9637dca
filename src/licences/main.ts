import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { listed, notices, OF_THE_PLATFORM } from "./notices";
import { ownTexts } from "./own-texts";
import { packageFolders } from "./package-folder";
import { authorOf, declaredLicence, type PackageJson, repositoryOf } from "./package-json";
import { refusals } from "./refusals";
import type { ShippedPackage } from "./shipped-package";

const dist = path.resolve(__dirname, "..");
const project = path.resolve(dist, "..");
const lists = path.join(__dirname, "modules");

/** What the package of npm holds; the other bundles stay here or go to a host. */
const IN_THE_PACKAGE: readonly string[] = ["functions", "command", "library", "long-search"];

const bundles = readdirSync(lists).sort().map((file) => ({
  bundle: path.basename(file, ".json"),
  folders: packageFolders(JSON.parse(readFileSync(path.join(lists, file), "utf8")) as string[]),
}));

const shippedPackage = (folder: string): ShippedPackage => {
  const at = path.join(project, folder);
  const json = JSON.parse(readFileSync(path.join(at, "package.json"), "utf8")) as PackageJson;
  const files = readdirSync(at, { withFileTypes: true }).filter((entry) => entry.isFile()).map(({ name }) => name);
  return {
    name: json.name ?? folder,
    version: json.version ?? "without a version",
    declared: declaredLicence(json),
    author: authorOf(json),
    repository: repositoryOf(json),
    texts: ownTexts(files, (name) => readFileSync(path.join(at, name), "utf8")),
    bundles: bundles.filter(({ folders }) => folders.includes(folder)).map(({ bundle }) => bundle),
  };
};

const packages = [...new Set(bundles.flatMap(({ folders }) => folders))].sort().map(shippedPackage);
const refused = refusals(packages);

if (process.argv.includes("--list")) console.log(listed(packages));
if (refused.length === 0) {
  writeFileSync(path.join(dist, "third-party-notices.txt"), notices(packages, [OF_THE_PLATFORM]));
  const isPackaged = ({ bundles: of }: ShippedPackage): boolean => of.some((bundle) => IN_THE_PACKAGE.includes(bundle));
  if (IN_THE_PACKAGE.every((name) => bundles.some(({ bundle }) => bundle === name)))
    writeFileSync(path.join(dist, "tools", "package", "third-party-notices.txt"), notices(packages.filter(isPackaged)));
} else {
  console.error(refused.join("\n"));
  process.exitCode = 1;
}
