/** A text that came with a package: its licence, or the notice that its licence says to pass on. */
export interface OwnText {
  readonly kind: "licence" | "notice" | "part of the readme";
  readonly file: string;
  readonly text: string;
}

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** What its package.json says, nothing where it says nothing. */
  readonly declared: string | undefined;
  readonly author: string | undefined;
  readonly repository: string | undefined;
  readonly texts: readonly OwnText[];
  /** The bundles it is in, by the names that webpack.config.js gives them. */
  readonly bundles: readonly string[];
}

export const hasLicenceFile = ({ texts }: ShippedPackage): boolean => texts.some(({ kind }) => kind === "licence");
