import type { MiddlewareHandler } from 'hono';

const LOOPBACK = /^(localhost|127(\.\d{1,3}){3}|\[::1\])(:\d{1,5})?$/;

/** Our own scripts and nobody else's. WebAssembly is allowed to them: a decoder of old phones' recordings is written in it. */
const POLICY = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; img-src 'self' blob: data:; font-src 'self' data:; media-src 'self' blob:; style-src 'self' 'unsafe-inline'; connect-src 'self'; worker-src 'self' blob:; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

/**
 * Answers only to this machine's own names, so that a page elsewhere cannot reach the yard through a name of its own that
 * points here; and lets only our own pages write.
 */
export const onlyThisMachine: MiddlewareHandler = async (context, next) => {
  const host = context.req.header('host') ?? new URL(context.req.url).host;
  if (!LOOPBACK.test(host)) return context.text('Tupwise answers on this machine only, as localhost.\n', 403);
  const origin = context.req.header('origin');
  if (context.req.method !== 'GET' && context.req.method !== 'HEAD' && origin !== undefined && hostOf(origin) !== host) {
    return context.text('Only the pages of this Tupwise may write to it.\n', 403);
  }
  await next();
  context.header('Content-Security-Policy', POLICY);
  context.header('X-Content-Type-Options', 'nosniff');
  context.header('Referrer-Policy', 'no-referrer');
  return undefined;
};

/** The host of an origin; undefined for `null`, which a page without a home of its own sends, and for what is none. */
const hostOf = (origin: string): string | undefined => (URL.canParse(origin) ? new URL(origin).host : undefined);
