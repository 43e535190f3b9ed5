// Keeps the page's own files on the device, so that a reload opens the sheets while the server is away. Entries are kept elsewhere.
import { answerTo, NAME_OF_KEPT } from './answer-to.ts';

/** Written in by the build: every file of the page, and a name that changes when any of them does. */
declare const PAGE_FILES: readonly string[];
declare const PAGE_VERSION: string;

const worker = self as unknown as ServiceWorkerGlobalScope;
const kept = `${NAME_OF_KEPT}${PAGE_VERSION}`;

worker.addEventListener('install', (event) => {
  const keep = async (): Promise<void> => {
    const cache = await caches.open(kept);
    await cache.addAll(PAGE_FILES.map((path) => new Request(path, { cache: 'no-cache' })));
    await worker.skipWaiting();
  };
  event.waitUntil(keep());
});

worker.addEventListener('activate', (event) => {
  const clear = async (): Promise<void> => {
    for (const name of await caches.keys()) if (name.startsWith(NAME_OF_KEPT) && name !== kept) await caches.delete(name);
    await worker.clients.claim();
  };
  event.waitUntil(clear());
});

worker.addEventListener('fetch', (event) => {
  const answer = answerTo(event.request, worker.location.origin, kept);
  if (answer !== undefined) event.respondWith(answer);
});
