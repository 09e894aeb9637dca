// What manifest.xml is written for, and `npm run excel` serves.
const OWN_MACHINE = "https://localhost:3000";

const inXml = (text: string): string => text.replace(/&/g, "&amp;").replace(/'/g, "&apos;");

/**
 * The manifest for an address, which ends without a slash. An app domain is the host alone (Office add-in manifest, AppDomain); id and
 * version stay, so that Excel takes it for the same add-in.
 */
export const hostedManifest = (manifest: string, address: string): string =>
  manifest
    .replaceAll(`<AppDomain>${OWN_MACHINE}</AppDomain>`, `<AppDomain>${inXml(new URL(address).origin)}</AppDomain>`)
    .replaceAll(`${OWN_MACHINE}/`, `${inXml(address)}/`);

/** The version that a manifest tells Excel. */
export const manifestVersion = (manifest: string): string => /<Version>([^<]*)<\/Version>/.exec(manifest)?.[1] ?? "none";
