import fc from 'fast-check';
import { makeEntryId, type Entry } from '../../src/entries/index.ts';

const HAMMER = makeEntryId(1_700_000_000_000, new Uint8Array(10).fill(7));
const inches = 0.0254;

const words = fc.string({ minLength: 1, maxLength: 30 }).filter((text) => text.trim() !== '');
const length = fc.integer({ min: 1, max: 6400 }).map((parts) => ({ quantity: { dimension: 'length', value: (parts / 1000) * inches, uncertainty: 1e-5 }, asWritten: `${parts} thou` }));

const body = fc.oneof(
  fc.record({ place: fc.constantFrom('upper-die.height', 'lower-die.height', 'filler-plate.thickness'), written: length, standing: fc.constantFrom('told', 'measured') })
    .map(({ place, written, standing }) => ({ kind: 'reading', body: { place, standing, ...written } })),
  fc.record({ look: fc.constantFrom('frame.crack', 'upper-key.state'), answer: fc.constantFrom('none', 'mushroomed', 'hairline'), standing: fc.constantFrom('told', 'seen') })
    .map((sighting) => ({ kind: 'sighting', body: sighting })),
  fc.record({ words, part: fc.constantFrom('frame', 'ram') }).map((statement) => ({ kind: 'statement', body: statement })),
  length.map((written) => ({ kind: 'as-made', body: { place: 'upper-die.height', ...written } })),
  fc.integer({ min: 0, max: 40 }).map((hours) => ({ kind: 'hours', body: { quantity: { dimension: 'time', value: hours * 3600, uncertainty: 0 }, asWritten: `${hours} h` } })),
  fc.record({ weather: words, more: fc.array(fc.integer()) }).map((unknown) => ({ kind: 'weather-seen', body: unknown })),
);

const stamp = fc.record({
  ms: fc.integer({ min: 1_700_000_000_000, max: 1_700_000_900_000 }),
  chance: fc.uint8Array({ minLength: 10, maxLength: 10 }),
  minute: fc.integer({ min: 0, max: 59 }),
  by: fc.constantFrom('Ada Quill', 'Bram Oake'),
});

const enrol: Entry = {
  id: HAMMER, hammer: HAMMER, at: '2026-01-01T08:00:00Z', by: 'Ada Quill', kind: 'enrol',
  body: { tag: 'T-1', family: 'coil-and-toggle', ramClass: { quantity: { dimension: 'mass', value: 22.7, uncertainty: 0 }, asWritten: '50 lb' } },
};

const entry = fc.tuple(body, stamp).map(([made, { ms, chance, minute, by }]): Entry => ({
  id: makeEntryId(ms, chance), hammer: HAMMER, at: `2026-01-02T09:${String(minute).padStart(2, '0')}:00Z`, by, ...made,
}));

/** A random history of one hammer: known kinds, one kind from a newer version, and corrections of entries in it. */
export const history: fc.Arbitrary<readonly Entry[]> = fc
  .tuple(fc.uniqueArray(entry, { maxLength: 30, selector: (each) => each.id }), fc.array(fc.tuple(fc.nat(), stamp), { maxLength: 4 }))
  .map(([entries, corrections]) => {
    const all = [enrol, ...entries];
    const struck = corrections.map(([pick, { ms, chance, minute, by }]): Entry => ({
      id: makeEntryId(ms, chance), hammer: HAMMER, at: `2026-01-03T09:${String(minute).padStart(2, '0')}:00Z`, by, kind: 'correction',
      body: { entry: all[pick % all.length]!.id, why: 'read from the wrong end of the rule' },
    }));
    const seen = new Set<string>();
    return [...all, ...struck].filter((each) => !seen.has(each.id) && seen.add(each.id));
  });

/** A history together with some other order of it. */
export const shuffledHistory: fc.Arbitrary<readonly [readonly Entry[], readonly Entry[]]> = history.chain((entries) =>
  fc.tuple(fc.constant(entries), fc.shuffledSubarray([...entries], { minLength: entries.length })));

/** Freezes a value to its depth, so that any attempt to write it throws. */
export function deepFreeze<T>(value: T): T {
  // Numbers in a row of bytes cannot be frozen.
  if (typeof value === 'object' && value !== null && !ArrayBuffer.isView(value) && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(deepFreeze);
  }
  return value;
}
