import { READ_BY_HAND } from "./read-by-hand";
import type { ShippedPackage } from "./shipped-package";

/** The licence a package is under: what it declares, or what a person read in its files. */
export const licenceOf = ({ name, version, declared }: Pick<ShippedPackage, "name" | "version" | "declared">): string | undefined =>
  declared ?? READ_BY_HAND.find((read) => read.name === name && read.version === version)?.licence;
