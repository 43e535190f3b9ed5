import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { picture } from '../../src/derived/index.ts';
import { mergeLogs, readSurveyFile, type Entry } from '../../src/entries/index.ts';
import { PARTS } from '../../src/hammer/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { formatQuantity } from '../../src/methods/quantity/index.ts';
import { LogOf } from './log-of.ts';

const AS_OF = '2027-01-01T00:00:00Z';
const EXAMPLES = new URL('../../examples/', import.meta.url);

const logs: readonly (readonly [string, readonly Entry[]])[] = readdirSync(EXAMPLES)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => [name, readSurveyFile(readFileSync(new URL(name, EXAMPLES), 'utf8')).entries]);

const shuffled = (entries: readonly Entry[], seed: number): readonly Entry[] => fc.sample(fc.shuffledSubarray([...entries], { minLength: entries.length }), { numRuns: 1, seed })[0] ?? [];

function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

describe.each(logs)('%s', (_name, entries) => {
  const first = picture(entries, knowledge, AS_OF, 1);

  test('has entries and a picture', () => {
    expect(entries.length).toBeGreaterThan(100);
    expect(first).toBeDefined();
  });

  test('any arrival order gives the same picture, and so do entries that arrive twice', () => {
    for (const seed of [1, 2, 3]) expect(picture(shuffled(entries, seed), knowledge, AS_OF, 1)).toEqual(first);
    expect(picture([...entries, ...entries], knowledge, AS_OF, 1)?.duty).toEqual(first?.duty);
    expect(picture(mergeLogs(shuffled(entries, 4), entries).entries, knowledge, AS_OF, 1)?.findings).toEqual(first?.findings);
  });

  test('replay is equal, and frozen inputs are never written', () => {
    expect(picture(frozen(JSON.parse(JSON.stringify(entries)) as Entry[]), frozen(JSON.parse(JSON.stringify(knowledge)) as typeof knowledge), AS_OF, 1)).toEqual(first);
  });

  test('an entry of a kind from a newer version changes nothing', () => {
    const [some] = entries;
    if (some === undefined) throw new Error('the survey is empty');
    const newer: Entry = { ...some, id: '01ZZZZZZZZ0000000000000000', kind: 'weighing-by-satellite', body: { anything: 1 } };
    const { provenance: before, ...rest } = first ?? { provenance: undefined };
    const { provenance: after, ...others } = picture([...entries, newer], knowledge, AS_OF, 1) ?? { provenance: undefined };
    expect(others).toEqual(rest);
    expect(after?.logHash).not.toBe(before?.logHash);
  });

  test('holds no number that is not finite', () => {
    expect(JSON.stringify(first, (_key, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? `NOT FINITE ${value}` : value))).not.toContain('NOT FINITE');
  });

  test('every finding gives its reasons: what was read, the rule, the source, how sure', () => {
    const known = new Set(knowledge.sources.map((source) => source.id));
    for (const finding of first?.findings ?? []) {
      expect(finding.reason, finding.criterion).not.toBe('');
      if (finding.grade === 'not-known') expect(finding.missing.length, finding.criterion).toBeGreaterThan(0);
      if (finding.grade === 'not-known' || finding.grade === 'does-not-apply') continue;
      expect(finding.evidence.length, finding.criterion).toBeGreaterThan(0);
      expect(finding.rule, finding.criterion).not.toBe('');
      expect(finding.sources.length, finding.criterion).toBeGreaterThan(0);
      expect(finding.sources.filter((source) => !known.has(source)), finding.criterion).toEqual([]);
      expect(finding.sureWords, finding.criterion).not.toBe('');
    }
  });

  test('every value that was worked out names a source that exists', () => {
    const known = new Set(knowledge.sources.map((source) => source.id));
    for (const value of Object.values(first?.values ?? {})) expect(value.sources.filter((source) => !known.has(source)), value.key).toEqual([]);
  });
});

test('absurd and hostile readings give answers, not numbers that are none', () => {
  const places = PARTS.flatMap((part) => part.places);
  fc.assert(
    fc.property(fc.array(fc.record({ place: fc.constantFrom(...places), share: fc.constantFrom(0, 1e-9, 0.5, 1) }), { minLength: 1, maxLength: 60 }), fc.constantFrom('coil-and-toggle' as const, 'bow-spring' as const, 'helve' as const), (readings, family) => {
      const log = new LogOf('50 lb', family);
      for (const { place, share } of readings) {
        const [least, most] = place.plausible;
        const value = least + (most - least) * share;
        const [at] = place.at;
        log.put('reading', { place: place.id, quantity: { dimension: place.dimension, value, uncertainty: Math.abs(value) / 10 }, asWritten: formatQuantity({ dimension: place.dimension, value, uncertainty: 0 }), standing: 'measured', ...(at === undefined ? {} : { at }) });
      }
      const found = picture(log.entries, knowledge, AS_OF, 1);
      const text = JSON.stringify(found, (_key, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value));
      expect(text).not.toContain('NOT FINITE');
      expect(found?.duty.verdict).not.toBe('fit');
    }),
    { numRuns: 150 },
  );
});
