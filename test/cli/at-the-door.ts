import { run } from '../../src/cli/run.ts';

export interface Heard {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Types a line at the command line's door, on a fixed day, and hears what comes back. */
export async function typed(words: readonly string[], standardInput = ''): Promise<Heard> {
  let out = '';
  let err = '';
  const exit = await run(words, {
    out: (text) => { out += text; },
    err: (text) => { err += text; },
    standardInput: () => Promise.resolve(standardInput),
    now: () => '2026-01-15T12:00:00Z',
  });
  return { exit, out, err };
}

export const EXAMPLES = new URL('../../examples/', import.meta.url).pathname;
