import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entryIdTime, instantMs, isEntryId, makeEntryId } from '../../src/entries/index.ts';

const chance = fc.uint8Array({ minLength: 10, maxLength: 10 });
const time = fc.integer({ min: 0, max: 2 ** 48 - 1 });

describe('entry ids', () => {
  it('sort as their times do and give the time back', () => {
    fc.assert(fc.property(time, time, chance, chance, (one, other, first, second) => {
      const left = makeEntryId(one, first);
      const right = makeEntryId(other, second);
      if (one !== other) expect(left < right).toBe(one < other);
      expect(isEntryId(left)).toBe(true);
      expect(entryIdTime(left)).toBe(one);
    }));
  });

  it('differ whenever the chance differs, bit by bit', () => {
    fc.assert(fc.property(time, chance, fc.integer({ min: 0, max: 79 }), (ms, bytes, bit) => {
      const changed = Uint8Array.from(bytes);
      changed[bit >> 3]! ^= 1 << (bit & 7);
      expect(makeEntryId(ms, changed)).not.toBe(makeEntryId(ms, bytes));
    }));
  });

  it('spell the ends of the range as base 32 says', () => {
    expect(makeEntryId(0, new Uint8Array(10))).toBe('0'.repeat(26));
    expect(makeEntryId(2 ** 48 - 1, new Uint8Array(10).fill(255))).toBe(`7${'Z'.repeat(25)}`);
    expect(makeEntryId(1, new Uint8Array(10).fill(0, 0, 9).fill(1, 9))).toBe(`0000000001${'0'.repeat(15)}1`);
  });

  it('refuses what is out of range, with the number', () => {
    expect(() => makeEntryId(-1, new Uint8Array(10))).toThrow(/-1/);
    expect(() => makeEntryId(0.5, new Uint8Array(10))).toThrow(/0\.5/);
    expect(() => makeEntryId(0, new Uint8Array(9))).toThrow(/9/);
    for (const wrong of ['', '8' + '0'.repeat(25), 'I'.repeat(26), '0'.repeat(25)]) expect(isEntryId(wrong)).toBe(false);
  });
});

describe('instants', () => {
  it('agree with the calendar of the platform', () => {
    fc.assert(fc.property(fc.integer({ min: Date.UTC(1600, 0, 1), max: Date.UTC(2999, 11, 31) }), fc.integer({ min: -14 * 60, max: 14 * 60 }), (ms, zone) => {
      expect(instantMs(new Date(ms).toISOString())).toBe(ms);
      const local = new Date(ms + zone * 60_000).toISOString().slice(0, -1);
      const size = Math.abs(zone);
      const sign = `${zone < 0 ? '-' : '+'}${String(Math.floor(size / 60)).padStart(2, '0')}:${String(size % 60).padStart(2, '0')}`;
      if (/^\d{4}-/.test(local)) expect(instantMs(local + sign)).toBe(ms);
    }));
  });

  it('refuse days and hours that do not exist, and an instant without a zone', () => {
    for (const wrong of ['2026-02-30T10:00:00Z', '2025-02-29T10:00:00Z', '1900-02-29T10:00:00Z', '2026-13-01T10:00:00Z', '2026-04-31T10:00Z', '2026-01-01T24:00:00Z', '2026-01-01T10:60:00Z', '2026-01-01T10:00:00', '2026-01-01', 'yesterday', '2026-01-01T10:00:00+15:00', '2026-00-01T10:00Z', '2026-01-00T10:00Z']) {
      expect(instantMs(wrong), wrong).toBeUndefined();
    }
    expect(instantMs('2000-02-29T10:00Z')).toBe(Date.UTC(2000, 1, 29, 10));
  });
});
