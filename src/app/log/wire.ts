import type { Entry, Problem } from '../../entries/index.ts';

const PATIENCE_MS = 10_000;

export interface News {
  readonly entries: readonly unknown[];
  readonly cursor: string;
  /** True where these are all entries that the server has, not only those since a place in its log. */
  readonly whole: boolean;
}

/** Entries that the server has and this page has not. Throws where there is no answer. */
export async function fetchSince(cursor: string): Promise<News> {
  const answer = await fetch(`/api/entries?since=${encodeURIComponent(cursor)}`, { signal: AbortSignal.timeout(PATIENCE_MS) });
  if (answer.status === 410 && cursor !== '0') return fetchSince('0');
  if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
  return { ...((await answer.json()) as { readonly entries: readonly unknown[]; readonly cursor: string }), whole: cursor === '0' };
}

/** Sends entries on. @returns what the server found wrong with them; throws where there is no answer */
export async function sendEntries(entries: readonly Entry[]): Promise<readonly Problem[]> {
  const answer = await fetch('/api/entries', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ entries }), signal: AbortSignal.timeout(PATIENCE_MS) });
  if (answer.ok) return [];
  if (answer.status >= 500) throw new Error(`the server answered ${answer.status}`);
  const body = (await answer.json().catch(() => ({}))) as { readonly problems?: readonly Problem[] };
  return body.problems ?? [{ field: 'entry', value: '', message: `the server answered ${answer.status}`, expected: 'an entry that it takes' }];
}

/** Sends a photograph or a recording. @returns its SHA-256; throws with a plain sentence where it is not kept */
export async function sendBlob(file: globalThis.Blob): Promise<string> {
  const answer = await fetch('/api/blobs', { method: 'POST', headers: { 'content-type': file.type }, body: file });
  const body = (await answer.json().catch(() => ({}))) as { readonly sha256?: string; readonly problems?: readonly Problem[] };
  const [problem] = body.problems ?? [];
  if (!answer.ok || body.sha256 === undefined) throw new Error(problem === undefined ? 'the file could not be kept; try again' : `${problem.message}; ${problem.expected}`);
  return body.sha256;
}
