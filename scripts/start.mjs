// Loaded before the server by `npm start`: stops it with its parents, opens the page on a desktop, and puts failures into words.
import { openWhenReady } from './open-page.mjs';
import { reasonIn, say } from './plain-words.mjs';
import { stopWithParents } from './stop-with-parents.mjs';

process.on('uncaughtException', (failure) => {
  const { code, port } = /** @type {NodeJS.ErrnoException & { port?: number }} */ (failure);
  if (code === 'EADDRINUSE') say(`port ${port} is in use by another program, perhaps by another Tupwise; stop that one, or choose another port: npm start -- --port ${(port ?? 0) + 1}`);
  else say(`it had to stop. ${reasonIn(failure.stack ?? String(failure))}`);
  process.exit(1);
});

stopWithParents();
openWhenReady();
