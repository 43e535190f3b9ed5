import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, decodeEntries, decodeEntry, isKnownEntry, logHash, mergeLogs, orderEntries, understoodEntries, type Entry } from '../../src/entries/index.ts';
import { deepFreeze, history, shuffledHistory } from './histories.ts';

const text = (value: unknown): string => canonicalJson(value);

describe('laws of the log', () => {
  it('gives the same order and the same fingerprint whatever the order of arrival', () => {
    fc.assert(fc.property(shuffledHistory, ([one, other]) => {
      expect(text(orderEntries(other))).toBe(text(orderEntries(one)));
      expect(logHash(other)).toBe(logHash(one));
    }));
  });

  it('gives another fingerprint as soon as one entry differs', () => {
    fc.assert(fc.property(history, (entries) => {
      const changed = entries.map((entry, index) => (index === 0 ? { ...entry, by: `${entry.by} the younger` } : entry));
      expect(logHash(changed)).not.toBe(logHash(entries));
      expect(logHash(entries.slice(1))).not.toBe(logHash(entries));
    }));
  });

  it('merges commutatively, associatively and idempotently, problems included', () => {
    fc.assert(fc.property(history, history, history, (one, other, third) => {
      expect(text(mergeLogs(one, other))).toBe(text(mergeLogs(other, one)));
      expect(text(mergeLogs(mergeLogs(one, other).entries, third))).toBe(text(mergeLogs(one, mergeLogs(other, third).entries)));
      expect(text(mergeLogs(one, one))).toBe(text(mergeLogs(one, [])));
      const merged = mergeLogs(one, other);
      expect(text(mergeLogs(merged.entries, other))).toBe(text(merged));
    }));
  });

  it('reports one id with two contents from either side, keeps both, and takes the same one everywhere', () => {
    fc.assert(fc.property(history, fc.nat(), (entries, pick) => {
      const chosen = entries[pick % entries.length]!;
      const changed: Entry = { ...chosen, by: `${chosen.by} the younger` };
      const there = entries.map((entry) => (entry.id === chosen.id ? changed : entry));
      const merged = mergeLogs(entries, there);
      expect(merged.problems.map((problem) => problem.value)).toEqual([JSON.stringify(chosen.id)]);
      expect(merged.entries.filter((entry) => entry.id === chosen.id)).toHaveLength(2);
      expect(orderEntries(merged.entries)).toHaveLength(entries.length);
      expect(text(orderEntries([...entries, ...there]))).toBe(text(orderEntries([...there, ...entries])));
      expect(text(mergeLogs(there, entries))).toBe(text(merged));
    }));
  });

  it('replays from its own stored text to the same log', () => {
    fc.assert(fc.property(history, (entries) => {
      const again = decodeEntries(JSON.parse(JSON.stringify(entries)) as unknown[]);
      expect(again.problems).toEqual([]);
      expect(text(again.entries)).toBe(text(entries));
      expect(logHash(again.entries)).toBe(logHash(entries));
      expect(text(orderEntries(orderEntries(entries)))).toBe(text(orderEntries(entries)));
    }));
  });

  it('never writes what it is given, and gives entries that nobody can write', () => {
    fc.assert(fc.property(history, (entries) => {
      deepFreeze(entries);
      const before = text(entries);
      orderEntries(entries);
      mergeLogs(entries, entries);
      logHash(entries);
      understoodEntries(entries);
      for (const entry of entries) {
        const decoded = decodeEntry(entry);
        expect(decoded.ok).toBe(true);
        if (decoded.ok) {
          expect(Object.isFrozen(decoded.entry)).toBe(true);
          expect(Object.isFrozen(decoded.entry.body)).toBe(true);
        }
      }
      expect(text(entries)).toBe(before);
    }));
  });

  it('keeps entries of an unknown kind through decoding, order and merge, and passes over them when reading', () => {
    let unknown = 0;
    fc.assert(fc.property(history, (entries) => {
      const strange = entries.filter((entry) => entry.kind === 'weather-seen');
      unknown += strange.length;
      const kept = mergeLogs(decodeEntries(entries).entries, []).entries;
      expect(text(kept.filter((entry) => entry.kind === 'weather-seen'))).toBe(text(orderEntries(strange)));
      expect(kept.filter(isKnownEntry)).toHaveLength(entries.length - strange.length);
      expect(understoodEntries(kept).some((entry) => (entry.kind as string) === 'weather-seen')).toBe(false);
    }));
    expect(unknown).toBeGreaterThan(50);
  });
});
