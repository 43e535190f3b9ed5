// Loaded before the server by `npm start`: stops it with its parents, opens the page on a desktop, and puts failures into words.
import { openWhenReady } from './open-page.mjs';
import { reasonIn, say } from './plain-words.mjs';
import { stopWithParents } from './stop-with-parents.mjs';

/** Failures whose message is already a sentence for the person at the keyboard. */
const SAID_IN_WORDS = new Set(['FolderInUse', 'NewerSchema']);

process.on('uncaughtException', (failure) => {
  const { code, port, name } = /** @type {NodeJS.ErrnoException & { port?: number }} */ (failure);
  if (code === 'EADDRINUSE') say(`port ${port} is in use by another program, perhaps by another Tupwise; stop that one, or choose another port: npm start -- --port ${(port ?? 0) + 1}`);
  else if (SAID_IN_WORDS.has(name)) say(failure.message);
  else say(`it had to stop. ${reasonIn(failure.stack ?? String(failure))}`);
  process.exit(1);
});

stopWithParents();
openWhenReady();
