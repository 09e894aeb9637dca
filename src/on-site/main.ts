// The worker of a host's live sheet: without a signal the sheet opens as it was last loaded. It answers for the sheet's page and for files
// named by their content, which are never stale; the pane, functions.js and every other page go to the host as if it were not there.

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
const pages = [folder, `${folder}index.html`];

const keep = async (): Promise<void> => {
  const cache = await caches.open(ofThisBuild);
  // All of them as they were built, or this build is not kept and the one before it stays.
  await cache.addAll(
    files.map(([name, integrity]) => {
      const address = new URL(name, folder).href;
      return new Request(address, { integrity, cache: address === folder ? "no-cache" : "default" });
    }),
  );
  // A page that is open has loaded all it needs.
  await self.skipWaiting();
};

const clear = async (): Promise<void> => {
  const others = (await caches.keys()).filter((name) => name.startsWith(ofThisFolder) && name !== ofThisBuild);
  await Promise.all(others.map((name) => caches.delete(name)));
};

const kept = async (address: string): Promise<Response | undefined> =>
  (await caches.open(ofThisBuild)).match(address, { ignoreVary: true });

const isOutOfOrder = (answer: Response): boolean => answer.status >= 500;

const page = async (request: Request): Promise<Response> => {
  const asked = fetch(request, { cache: "no-cache" });
  const late = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), LONGEST_WAIT));
  const answer = await Promise.race([asked.catch(() => undefined), late]);
  return answer === undefined || isOutOfOrder(answer) ? ((await kept(folder)) ?? asked) : answer;
};

const file = async (request: Request): Promise<Response> => (await kept(request.url)) ?? fetch(request);

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(clear()));
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const address = request.url.replace(/[?#].*$/s, "");
  if (request.method !== "GET") return;
  if (request.mode === "navigate") {
    if (pages.includes(address)) event.respondWith(page(request));
  } else if (request.url !== folder && addresses.has(request.url)) event.respondWith(file(request));
});
