import { Hono } from 'hono';
import { decodeEntries } from '../entries/index.ts';
import { ConflictingEntry, START, UnknownCursor, type Store } from '../stores/index.ts';

/** The log over the wire: read since a cursor, append. All of what is sent is kept, or none of it. */
export function entryRoutes(store: Store): Hono {
  const routes = new Hono();
  routes.get('/', async (context) => {
    try {
      return context.json(await store.readSince(context.req.query('since') ?? START));
    } catch (failure) {
      if (failure instanceof UnknownCursor) return context.json({ problems: [problem('since', failure.cursor, 'this place in the log is not known', 'start again from the beginning')] }, 410);
      throw failure;
    }
  });
  routes.post('/', async (context) => {
    const body: unknown = await context.req.json().catch(() => undefined);
    const sent = body !== null && typeof body === 'object' && 'entries' in body ? body.entries : undefined;
    if (!Array.isArray(sent)) return context.json({ problems: [problem('entries', '', 'no entries were sent', 'a JSON object with a list called entries')] }, 400);
    const decoded = decodeEntries(sent);
    if (decoded.problems.length > 0) return context.json({ problems: decoded.problems }, 422);
    try {
      await store.append(decoded.entries);
    } catch (failure) {
      if (failure instanceof ConflictingEntry) return context.json({ problems: [problem('id', failure.id, failure.message, 'an id of its own for each entry')] }, 409);
      throw failure;
    }
    return context.json({ kept: decoded.entries.length });
  });
  return routes;
}

const problem = (field: string, value: string, message: string, expected: string) => ({ field, value, message, expected });
