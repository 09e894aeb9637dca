import { mediaType } from "../serve/media-type";

export type Headers = Readonly<Record<string, string>>;

const POLICY = /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/;
const HASHED = /[.][0-9a-f]{16}[.](js|css|json)$/;

const ONE_HOUR = 3600;
const ONE_YEAR = 31_536_000;

/** The policy that a page brings with it. */
export const policyOf = (html: string): string | undefined => POLICY.exec(html)?.[1];

const cache = (name: string): string => {
  if (HASHED.test(name)) return `public, max-age=${ONE_YEAR}, immutable`;
  // Excel does not show an icon that must not be kept (Office add-in XML manifest overview, image requirements).
  return name.endsWith(".png") ? `public, max-age=${ONE_HOUR}` : "no-cache";
};

// Excel on the web reads these from a page of its own address (Office.js samples send this header too).
const readFromElsewhere = (name: string): boolean => /^functions[.](js|json)$/.test(name) || name.endsWith(".png");

/** What the host sends with a file. */
export const headersOf = (name: string, text: string): Headers => {
  const policy = name.endsWith(".html") ? policyOf(text) : undefined;
  return {
    "Content-Type": mediaType(name),
    "Cache-Control": cache(name),
    "X-Content-Type-Options": "nosniff",
    ...(readFromElsewhere(name) ? { "Access-Control-Allow-Origin": "*" } : {}),
    ...(policy === undefined ? {} : { "Content-Security-Policy": policy }),
  };
};
