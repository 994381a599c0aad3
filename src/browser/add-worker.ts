/**
 * Keeps the tile form for where there is no connection. All of it is kept together, under the sum of
 * what it holds, so that no page of one build meets a script of another; a browser that finds this file
 * changed fetches the new form whole, and shows it from the next visit on.
 *
 * What to keep is written before this script where a site is published: `self.tilebookKeeps`.
 */

interface Keeps {
  /** The sum of all that is kept. */
  readonly sum: string;
  /** Addresses, from this script's own. */
  readonly files: readonly string[];
}

/** As much of a worker as is used here; its types and those of a page cannot be had together. */
interface Worker {
  readonly tilebookKeeps: Keeps;
  readonly registration: { readonly scope: string };
  readonly skipWaiting: () => Promise<void>;
  readonly clients: { readonly claim: () => Promise<void> };
  addEventListener(type: "activate" | "install", act: (event: Lasting) => void): void;
  addEventListener(type: "fetch", act: (event: Fetching) => void): void;
}

interface Lasting {
  readonly waitUntil: (work: Promise<unknown>) => void;
}

interface Fetching {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}

const worker = self as unknown as Worker;
const { sum, files } = worker.tilebookKeeps;

/** Other sites may share the host: only caches of this form are its own. */
const own = `tilebook-form ${worker.registration.scope} `;
const name = own + sum;

worker.addEventListener("install", (event) => {
  event.waitUntil(fetchAll().then(() => worker.skipWaiting()));
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(forgetOthers().then(() => worker.clients.claim()));
});

worker.addEventListener("fetch", (event) => {
  if (event.request.method === "GET") event.respondWith(answer(event.request));
});

/** Past every cache on the way, which may still hold the last build. */
async function fetchAll(): Promise<void> {
  const cache = await caches.open(name);
  await cache.addAll(files.map((file) => new Request(file, { cache: "reload" })));
}

async function forgetOthers(): Promise<void> {
  const names = await caches.keys();
  const others = names.filter((each) => each.startsWith(own) && each !== name);
  await Promise.all(others.map((each) => caches.delete(each)));
}

/** What is kept, else what the site has: the layers of tiles, say, which are kept once they were asked for. */
async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(name);
  const kept = await cache.match(request, { ignoreSearch: true });
  if (kept) return kept;
  const fetched = await fetch(request);
  if (fetched.ok && new URL(request.url).pathname.includes("/data/add/"))
    await cache.put(request, fetched.clone());
  return fetched;
}
