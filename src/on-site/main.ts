// The worker of a host's live sheet and reading screen: without a signal they open as they were last loaded. It answers for their pages and
// for files named by their content, which are never stale; the pane, functions.js and every other page go to the host as if it were not
// there.

interface Kept {
  /** The name of the build, by the content of its files. */
  readonly build: string;
  readonly files: readonly (readonly [name: string, integrity: string])[];
}

declare const self: ServiceWorkerGlobalScope & { readonly treadsheetKept: Kept };

/** How long a weak signal is waited for before the sheet opens as it was last loaded, in milliseconds. */
const LONGEST_WAIT = 5000;

const { build, files } = self.treadsheetKept;
const folder = self.registration.scope;
// One address may have several such folders, and they share what is kept.
const ofThisFolder = `treadsheet ${folder} `;
const ofThisBuild = ofThisFolder + build;

const addresses = new Set(files.map(([name]) => new URL(name, folder).href));

/** The page kept for an address; some hosts send who asks for a page on to its name without .html. */
const pageAt = (address: string): string | undefined =>
  address === folder || address === `${folder}index.html`
    ? folder
    : [address, `${address}.html`].find((one) => one.endsWith(".html") && addresses.has(one));

const keep = async (): Promise<void> => {
  const cache = await caches.open(ofThisBuild);
  // All of them as they were built, or this build is not kept and the one before it stays.
  await cache.addAll(
    files.map(([name, integrity]) => {
      const address = new URL(name, folder).href;
      return new Request(address, { integrity, cache: pageAt(address) === undefined ? "default" : "no-cache" });
    }),
  );
  // A page that is open has loaded all it needs.
  await self.skipWaiting();
};

const clear = async (): Promise<void> => {
  const others = (await caches.keys()).filter((name) => name.startsWith(ofThisFolder) && name !== ofThisBuild);
  await Promise.all(others.map((name) => caches.delete(name)));
};

const kept = async (address: string): Promise<Response | undefined> => {
  const answer = await (await caches.open(ofThisBuild)).match(address, { ignoreVary: true });
  // An answer that was sent on opens no page.
  return answer?.redirected === true ? new Response(answer.body, answer) : answer;
};

const isOutOfOrder = (answer: Response): boolean => answer.status >= 500;

const page = async (request: Request, address: string): Promise<Response> => {
  const asked = fetch(request, { cache: "no-cache" });
  const late = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), LONGEST_WAIT));
  const answer = await Promise.race([asked.catch(() => undefined), late]);
  return answer === undefined || isOutOfOrder(answer) ? ((await kept(address)) ?? asked) : answer;
};

const file = async (request: Request): Promise<Response> => (await kept(request.url)) ?? fetch(request);

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(clear()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = request.url.replace(/[?#].*$/s, "");
  if (request.method !== "GET") return;
  if (request.mode === "navigate") {
    const known = pageAt(address);
    if (known !== undefined) event.respondWith(page(request, known));
  } else if (request.url !== folder && addresses.has(request.url)) event.respondWith(file(request));
});
