const policy = (styles: string, images: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src ${styles}`,
    "connect-src 'self'",
    `img-src ${images}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/** What a page of text may load. */
export const pagePolicy = policy("'self'", "'self'");

/** What the live sheet may load: its engine writes its theme and its grid's pattern into the page as it starts. */
export const sheetPolicy = policy("'self' 'unsafe-inline'", "'self' data:");

/** To be added where a policy is sent with a page, since none in a page may say it. */
export const unframed = "; frame-ancestors 'none'";
