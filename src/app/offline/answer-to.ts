export const NAME_OF_KEPT = 'tupwise-page-';

const PATIENCE_MS = 4000;

/**
 * The answer to a request where the worker gives one: the page itself from the server while it answers, else as kept;
 * files of the page as kept, else from the server. Readings and papers are the server's own business.
 * @param kept name of the cache with this version's files
 * @returns undefined where the request goes its usual way
 */
export function answerTo(request: Request, origin: string, kept: string): Promise<Response> | undefined {
  const { origin: asked, pathname } = new URL(request.url);
  if (request.method !== 'GET' || asked !== origin || pathname.startsWith('/api/')) return undefined;
  if (pathname.startsWith('/paper/')) return request.mode === 'navigate' ? fetch(request).catch(noPapers) : undefined;
  return request.mode === 'navigate' ? freshPage(request, kept) : keptFile(request, kept);
}

async function freshPage(request: Request, kept: string): Promise<Response> {
  try {
    const fresh = await fetch(request, { signal: AbortSignal.timeout(PATIENCE_MS) });
    if (fresh.ok) return fresh;
  } catch {
    // The server is away: the kept page opens.
  }
  return (await (await caches.open(kept)).match('/')) ?? Response.error();
}

async function keptFile(request: Request, kept: string): Promise<Response> {
  return (await (await caches.open(kept)).match(request)) ?? fetch(request);
}

const noPapers = (): Response =>
  new Response('<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>No server</title><p>Papers are made by the server, and it does not answer. What was entered is kept on this device. Start the server, then open the paper again.', {
    status: 503, headers: { 'content-type': 'text/html; charset=utf-8' },
  });
