import { licenceOf } from "./licence";
import { hasLicenceFile, type OwnText, type ShippedPackage } from "./shipped-package";
import { standardText } from "./standard-text";

const HEAD = [
  "Third-party notices",
  "",
  "Treadsheet is built with the packages below. Each stands here with its version, its licence and the texts that came with it.",
];

/** For the pages, which Excel shows. */
export const OF_THE_PLATFORM = "Excel itself loads office.js from Microsoft's own address; no copy of it is among these files.";

const RULE = "-".repeat(80);

const withoutFile = (shipped: ShippedPackage, packages: readonly ShippedPackage[]): readonly string[] => {
  const licence = licenceOf(shipped);
  const words = licence === undefined ? undefined : standardText(licence, packages);
  return hasLicenceFile(shipped) || licence === undefined || words === undefined
    ? []
    : [`It came without a file of its licence. ${licence} says:\n\n${words}`];
};

const textBlock = ({ file, text }: OwnText): string => `From its file ${file}:\n\n${text}`;

const notice = (shipped: ShippedPackage, packages: readonly ShippedPackage[]): string =>
  [
    RULE,
    `${shipped.name} ${shipped.version}`,
    `Licence: ${licenceOf(shipped) ?? "none named"}`,
    ...(shipped.author === undefined ? [] : [`Author: ${shipped.author}`]),
    ...(shipped.repository === undefined ? [] : [`Source: ${shipped.repository}`]),
    "",
    [...shipped.texts.map(textBlock), ...withoutFile(shipped, packages)].join("\n\n"),
    "",
  ].join("\n");

/** The text that goes with what is shipped: every package with its licence and the texts that came with it. */
export const notices = (packages: readonly ShippedPackage[], further: readonly string[] = []): string =>
  [...HEAD, ...further, "", ...packages.map((shipped) => notice(shipped, packages))].join("\n");

/** A line for each package: name, version, licence, bundles. */
export const listed = (packages: readonly ShippedPackage[]): string => {
  const width = (part: (shipped: ShippedPackage) => string): number => Math.max(0, ...packages.map((shipped) => part(shipped).length));
  const [names, versions, licences] = [
    width(({ name }) => name),
    width(({ version }) => version),
    width((shipped) => licenceOf(shipped) ?? "none"),
  ];
  return packages
    .map((shipped) =>
      [
        shipped.name.padEnd(names),
        shipped.version.padEnd(versions),
        (licenceOf(shipped) ?? "none").padEnd(licences),
        shipped.bundles.join(", "),
      ].join("  "),
    )
    .join("\n");
};
