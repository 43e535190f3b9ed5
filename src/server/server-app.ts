import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { blobRoutes } from './blob-routes.ts';
import { entryRoutes } from './entry-routes.ts';
import { onlyThisMachine } from './only-this-machine.ts';
import { pageRoutes } from './page-routes.ts';
import { paperRoutes } from './paper-routes.ts';
import type { ServerSettings } from './server-settings.ts';

const GREATEST_BODY = 64 * 1024 * 1024;

/** The whole server as a function from request to answer; nothing listens yet, so tests call it without a socket. */
export function serverApp(settings: ServerSettings): Hono {
  const app = new Hono();
  app.use(onlyThisMachine);
  app.use('/api/*', bodyLimit({ maxSize: GREATEST_BODY, onError: (context) => context.json({ problems: [{ field: 'body', value: '', message: 'what was sent is too large', expected: '64 MB at most' }] }, 413) }));
  app.route('/api/entries', entryRoutes(settings.store));
  app.route('/api/blobs', blobRoutes(settings.store));
  app.route('/paper', paperRoutes(settings));
  app.route('/', pageRoutes(settings.appFolder));
  app.onError((failure, context) => {
    console.error(`tupwise: ${failure.message}`);
    return context.json({ problems: [{ field: 'server', value: '', message: 'the server could not do this', expected: 'try again; what was typed is kept on the page' }] }, 500);
  });
  return app;
}
