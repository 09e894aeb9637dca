const PACKAGE_FOLDER = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//;

/** The folders of the packages that files are of, once each: a package inside another counts for itself. */
export const packageFolders = (files: readonly string[]): readonly string[] =>
  [...new Set(files.flatMap((file) => PACKAGE_FOLDER.exec(file)?.[1] ?? []))].sort();
