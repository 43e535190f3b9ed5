import { readFile } from 'node:fs/promises';
import { join, normalize, sep } from 'node:path';
import { Hono } from 'hono';

const TYPES: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8', js: 'text/javascript; charset=utf-8', css: 'text/css; charset=utf-8', svg: 'image/svg+xml', woff2: 'font/woff2', woff: 'font/woff',
  png: 'image/png', json: 'application/json', webmanifest: 'application/manifest+json', map: 'application/json', wasm: 'application/wasm', ico: 'image/x-icon',
};

/** The built page; any address without a file of its own gets the page itself, which reads the address. */
export function pageRoutes(appFolder: string): Hono {
  const routes = new Hono();
  routes.get('*', async (context) => {
    const path = decoded(new URL(context.req.url).pathname);
    if (path === undefined) return context.text('This address cannot be read.\n', 400);
    // Browsers ask for it on their own for papers, which carry no mark; it is no mistake of anybody.
    if (path === '/favicon.ico') return context.body(null, 204);
    const wanted = normalize(join(appFolder, path));
    const inside = wanted.startsWith(normalize(appFolder) + sep);
    const ending = /\.([a-z0-9]+)$/i.exec(wanted)?.[1]?.toLowerCase();
    const file = inside && ending !== undefined ? await readFile(wanted).catch(() => undefined) : undefined;
    if (file !== undefined && ending !== undefined) {
      return new Response(new Uint8Array(file), { headers: { 'content-type': TYPES[ending] ?? 'application/octet-stream', 'cache-control': path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache' } });
    }
    if (ending !== undefined) return context.text(`There is no such file: ${path}\n`, 404);
    const page = await readFile(join(appFolder, 'index.html')).catch(() => undefined);
    if (page === undefined) return context.text('The page is not built yet; npm start builds it.\n', 503);
    return new Response(new Uint8Array(page), { headers: { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-cache' } });
  });
  return routes;
}

/** An address with its percent signs read; undefined where they spell no text. */
function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}
