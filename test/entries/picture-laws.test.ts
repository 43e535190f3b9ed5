import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { canonicalJson, mergeLogs, readSurveyFile, type Entry } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { deepFreeze, history } from './histories.ts';

const FOLDER = new URL('../../examples/', import.meta.url).pathname;
const AS_OF = '2026-01-15T12:00:00Z';
const seen = (entries: readonly Entry[]): string => JSON.stringify(picture(entries, knowledge, AS_OF, 1));
const shuffles = (entries: readonly Entry[]): fc.Arbitrary<Entry[]> => fc.shuffledSubarray([...entries], { minLength: entries.length });

/** Another order of a long log, named by a number so that a failure prints the number and not the log. */
function shuffled(entries: readonly Entry[], seed: number): readonly Entry[] {
  const rank = (id: string): number => [...id].reduce((hash, letter) => Math.imul(hash ^ letter.charCodeAt(0), 16_777_619), seed) >>> 0;
  return [...entries].sort((one, other) => rank(one.id) - rank(other.id));
}

describe.each(readdirSync(FOLDER).filter((name) => name.endsWith('.yaml')))('the picture of %s', (name) => {
  const { entries } = readSurveyFile(readFileSync(join(FOLDER, name), 'utf8'));
  deepFreeze(entries);
  const whole = seen(entries);

  it('is the same whatever the order of arrival', () => {
    fc.assert(fc.property(fc.integer(), (seed) => {
      expect(seen(shuffled(entries, seed)) === whole).toBe(true);
    }), { numRuns: 8 });
  });

  it('is the same when the log comes from two devices that each saw a part of it, some entries both', () => {
    fc.assert(fc.property(fc.integer(), fc.nat(entries.length), fc.nat(entries.length), (seed, one, other) => {
      const log = shuffled(entries, seed);
      const merged = mergeLogs(log.slice(Math.min(one, other)), log.slice(0, Math.max(one, other))).entries;
      expect(seen(merged) === whole).toBe(true);
    }), { numRuns: 8 });
  });

  it('is the same but for its fingerprint when a kind from a newer version is among the entries', () => {
    const strange: Entry = { id: '01KNXY0WE0ZTDZN3Y8MKVYD36B', hammer: entries[0]!.hammer, at: '2025-01-01T12:00:00Z', by: 'x', kind: 'weather-seen', body: { sky: 'grey' } };
    const apart = (text: string): unknown => ({ ...(JSON.parse(text) as object), provenance: undefined });
    expect(canonicalJson(apart(seen([...entries, strange])))).toBe(canonicalJson(apart(whole)));
    expect(seen([...entries, strange])).not.toBe(whole);
  });

  it('is the same when it is computed again', () => {
    expect(seen(JSON.parse(JSON.stringify(entries)) as Entry[])).toBe(whole);
  });
});

describe('the picture of a random history', () => {
  it('is the same in any order, and nothing handed in is written', () => {
    fc.assert(fc.property(history.chain((entries) => fc.tuple(fc.constant(entries), shuffles(entries))), ([one, other]) => {
      deepFreeze(one);
      expect(seen(other)).toBe(seen(one));
    }), { numRuns: 40 });
  });
});
