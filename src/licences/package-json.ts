interface Named {
  readonly name?: unknown;
  readonly url?: unknown;
  readonly type?: unknown;
}

/** What a package.json says; every part may be missing or of another form. */
export interface PackageJson {
  readonly name?: string;
  readonly version?: string;
  readonly license?: unknown;
  readonly licenses?: unknown;
  readonly author?: unknown;
  readonly repository?: unknown;
}

const textOr = (value: unknown, part: keyof Named): string | undefined => {
  if (typeof value === "string" && value.trim() !== "") return value.trim();
  const inside = typeof value === "object" && value !== null ? (value as Named)[part] : undefined;
  return typeof inside === "string" && inside.trim() !== "" ? inside.trim() : undefined;
};

/** The licence as an SPDX expression; a list of licences, as old packages have it, is a choice. */
export const declaredLicence = ({ license, licenses }: PackageJson): string | undefined => {
  if (!Array.isArray(licenses)) return textOr(license ?? licenses, "type");
  const choice = licenses.flatMap((one: unknown) => textOr(one, "type") ?? []);
  return textOr(license, "type") ?? (choice.length === 0 ? undefined : choice.length === 1 ? choice[0] : `(${choice.join(" OR ")})`);
};

export const authorOf = ({ author }: PackageJson): string | undefined => textOr(author, "name");

export const repositoryOf = ({ repository }: PackageJson): string | undefined => textOr(repository, "url");
