import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readSurveyFile, type Entry } from '../../../src/entries/index.ts';
import { serverApp } from '../../../src/server/index.ts';
import { openMemoryStore, type Store } from '../../../src/stores/index.ts';

const EXAMPLES = join(import.meta.dirname, '../../../examples');
export const HOST = 'localhost:4700';
/** The instant that the server under test takes for now. */
export const NOW = '2026-06-01T12:00:00Z';

/** The entries of one invented hammer. */
export function inventedEntries(name = 'kettlebrae-50-simply-good'): readonly Entry[] {
  return readSurveyFile(readFileSync(join(EXAMPLES, `${name}.yaml`), 'utf8')).entries;
}

/** The server as a function, without a socket: asks it as this machine would. */
export function asked(appFolder: string, store: Store = openMemoryStore()) {
  const app = serverApp({ store, appFolder, now: () => NOW });
  const ask = (path: string, init: RequestInit = {}): Promise<Response> =>
    Promise.resolve(app.request(`http://${HOST}${path}`, { ...init, headers: { host: HOST, ...(init.headers as Record<string, string>) } }));
  const send = (path: string, body: unknown, headers: Record<string, string> = {}): Promise<Response> =>
    ask(path, { method: 'POST', body: typeof body === 'string' ? body : JSON.stringify(body), headers: { 'content-type': 'application/json', ...headers } });
  return { ask, send, store };
}

/** What no answer may hold: places in our sources, or a trace of calls. */
export const TRACE = /\bat .+:\d+:\d+|node_modules|\.ts:\d+|\/src\//;
