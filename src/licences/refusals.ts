import satisfies from "spdx-satisfies";
import { licenceOf } from "./licence";
import { hasLicenceFile, type ShippedPackage } from "./shipped-package";
import { standardText } from "./standard-text";

/** Each lets anyone pass the package on, built into something else, as long as its notice goes with it. */
export const SHIPPABLE: readonly string[] = ["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD"];

const isShippable = (licence: string): boolean => {
  try {
    return satisfies(licence, SHIPPABLE);
  } catch {
    return false;
  }
};

const refusal = (shipped: ShippedPackage, packages: readonly ShippedPackage[]): string | undefined => {
  const licence = licenceOf(shipped);
  const named = `${shipped.name} ${shipped.version} (in ${shipped.bundles.join(", ")})`;
  if (licence === undefined) {
    return (
      `${named} names no licence in its package.json. Leave it out, or read its files and write down what they say in ` +
      `src/licences/read-by-hand.ts.`
    );
  }
  if (!isShippable(licence))
    return `${named} is under "${licence}", which is not among the licences that may be shipped: ${SHIPPABLE.join(", ")}.`;
  if (hasLicenceFile(shipped) || standardText(licence, packages) !== undefined) return undefined;
  return (
    `${named} is under ${licence}, whose text must go with it, and came without one. Write its words down in ` +
    `src/licences/standard-text.ts.`
  );
};

/** Why a package must not be shipped, a sentence for each that must not. */
export const refusals = (packages: readonly ShippedPackage[]): readonly string[] =>
  packages.flatMap((shipped) => refusal(shipped, packages) ?? []);
