import { describe, expect, it } from 'vitest';
import { decodeEntries, decodeEntry, ENTRY_KINDS, isKnownEntry, makeEntryId, newestVersion, understoodEntries, upgradeEntry, type Entry, type EntryKind, type UpgradeSteps } from '../../src/entries/index.ts';

const id = makeEntryId(1_750_000_000_000, new Uint8Array(10).fill(3));
const hammer = makeEntryId(1_740_000_000_000, new Uint8Array(10).fill(9));
const length = { quantity: { dimension: 'length', value: 0.0762, uncertainty: 0.0002 }, asWritten: '3 in' };
const hash = 'a'.repeat(64);

/** A right body of each kind, and for each a field with a value that must be refused. */
const CASES: Readonly<Record<EntryKind, { readonly right: Record<string, unknown>; readonly wrong: readonly (readonly [field: string, value: unknown])[] }>> = {
  enrol: { right: { tag: 'HB-1', family: 'helve', ramClass: { quantity: { dimension: 'mass', value: 68, uncertainty: 0 }, asWritten: '150 lb' } }, wrong: [['tag', ''], ['family', 'steam'], ['ramClass', '150 lb'], ['invented', 'yes'], ['maker', 7]] },
  'as-made': { right: { place: 'upper-die.height', ...length }, wrong: [['place', 'Upper Die'], ['quantity', { dimension: 'length', value: 'three', uncertainty: 0 }], ['asWritten', undefined]] },
  reading: { right: { place: 'upper-die.height', at: 'front-left', tool: 'caliper', way: 'whole-die', standing: 'measured', ...length }, wrong: [['standing', 'seen'], ['quantity', { dimension: 'length', value: 1, uncertainty: -1 }], ['quantity', { dimension: 'furlongs', value: 1, uncertainty: 0 }], ['at', 'Front Left'], ['place', undefined]] },
  sighting: { right: { look: 'frame.crack', answer: 'none', standing: 'seen', photographs: [hash] }, wrong: [['answer', ''], ['standing', 'measured'], ['photographs', ['abc']], ['photographs', 'none']] },
  statement: { right: { words: 'never welded', saidBy: 'the owner', part: 'frame' }, wrong: [['words', '  '], ['part', 'The Frame']] },
  recording: { right: { sha256: hash, mediaType: 'audio/wav', run: 'idle' }, wrong: [['sha256', 'A'.repeat(64)], ['run', 'fast'], ['mediaType', 'wav']] },
  photograph: { right: { sha256: hash, mediaType: 'image/jpeg', words: 'rear of the column' }, wrong: [['words', undefined], ['mediaType', '']] },
  setting: { right: { place: 'coil-spring.installed-length', before: length, ...length }, wrong: [['before', '3 in'], ['place', '']] },
  price: { right: { of: 'upper-die', price: { amount: 120, currency: 'USD' }, sourceKind: 'quoted', quantity: 1 }, wrong: [['price', { amount: -1, currency: 'USD' }], ['price', { amount: 1, currency: 'dollars' }], ['sourceKind', 'guessed'], ['quantity', 0], ['leadDays', -2]] },
  'job-progress': { right: { job: 'clutch-reline', state: 'done', hours: 6 }, wrong: [['state', 'finished'], ['hours', -1]] },
  hours: { right: { quantity: { dimension: 'time', value: 3600, uncertainty: 0 }, asWritten: '1 h' }, wrong: [['quantity', { dimension: 'time', value: -3600, uncertainty: 0 }], ['quantity', { dimension: 'length', value: 1, uncertainty: 0 }]] },
  override: { right: { criterion: 'guide.play', author: 'owner', reason: 'light work only', step: { grade: 'limited', ...length } }, wrong: [['author', undefined], ['reason', ''], ['step', { grade: 'sound', ...length }]] },
  correction: { right: { entry: hammer, why: 'wrong end of the rule' }, wrong: [['entry', 'the first one'], ['why', undefined]] },
};

const entryOf = (kind: string, body: unknown): Record<string, unknown> => ({ id: kind === 'enrol' ? hammer : id, hammer, at: '2026-04-11T09:30:00Z', by: 'Ada Quill', kind, body });

describe('decoding an entry', () => {
  it('has a case for every kind', () => {
    expect(Object.keys(CASES).sort()).toEqual([...ENTRY_KINDS].sort());
  });

  for (const kind of ENTRY_KINDS) {
    const { right, wrong } = CASES[kind];
    it(`takes a right ${kind}, bare and full`, () => {
      const decoded = decodeEntry(entryOf(kind, right));
      expect(decoded).toEqual({ ok: true, entry: entryOf(kind, right) });
    });
    it.each(wrong.map(([field, value]) => ({ field, value })))(`refuses a ${kind} with $field = $value, naming the field, the value and what would be right`, ({ field, value }) => {
      const decoded = decodeEntry(entryOf(kind, { ...right, [field]: value }));
      expect(decoded.ok).toBe(false);
      if (decoded.ok) return;
      expect(decoded.problems.length).toBeGreaterThan(0);
      for (const problem of decoded.problems) {
        expect(problem.field.startsWith(`body.${field}`)).toBe(true);
        expect(problem.expected.length).toBeGreaterThan(5);
        expect(problem.message).toMatch(/^.+; .+: .+$/);
      }
    });
  }

  it('lists every problem of one entry, not the first alone', () => {
    const decoded = decodeEntry({ id: 'x', hammer: 7, at: '2026-02-30T10:00:00Z', by: '', kind: 'reading', body: {} });
    expect(decoded.ok).toBe(false);
    if (!decoded.ok) expect(decoded.problems.map((problem) => problem.field)).toEqual(['id', 'hammer', 'at', 'by']);
    const inner = decodeEntry(entryOf('reading', { place: 'A B', standing: 'guessed' }));
    if (!inner.ok) expect(inner.problems.map((problem) => problem.field)).toEqual(['body.quantity', 'body.asWritten', 'body.place', 'body.standing']);
    expect(inner.ok).toBe(false);
  });

  it('refuses hostile and endless values without falling over', () => {
    const circle: Record<string, unknown> = {};
    circle['self'] = circle;
    const polluting = JSON.parse('{"__proto__": {"polluted": true}, "words": "x"}') as unknown;
    for (const body of [circle, polluting, () => 1, Number.NaN, { deep: nested(5000) }, { wide: Array.from({ length: 100_000 }, () => 1) }]) {
      const decoded = decodeEntry(entryOf('weather-seen', body));
      expect(decoded.ok).toBe(false);
      if (!decoded.ok) for (const problem of decoded.problems) expect(problem.message.length).toBeLessThan(400);
    }
    for (const input of [undefined, null, 7, 'entry', [], {}]) expect(decodeEntry(input).ok).toBe(false);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('keeps a field from a newer version, and an entry of a newer version whole and unread', () => {
    const more = decodeEntry(entryOf('statement', { words: 'quiet', mood: 'calm' }));
    expect(more.ok && (more.entry.body as Record<string, unknown>)['mood']).toBe('calm');
    const newer = decodeEntry({ ...entryOf('statement', { phrase: 'quiet' }), version: 9 });
    expect(newer.ok).toBe(true);
    if (newer.ok) {
      expect(isKnownEntry(newer.entry)).toBe(false);
      expect(understoodEntries([newer.entry])).toEqual([]);
      expect(newer.entry.body).toEqual({ phrase: 'quiet' });
    }
    expect(decodeEntry({ ...entryOf('statement', { words: 'quiet' }), version: 1.5 }).ok).toBe(false);
  });

  it('demands that an enrol entry is its own hammer', () => {
    const decoded = decodeEntry({ ...entryOf('enrol', CASES.enrol.right), id });
    expect(decoded.ok).toBe(false);
  });

  it('keeps the right ones of many and numbers the problems', () => {
    const { entries, problems } = decodeEntries([entryOf('statement', { words: 'a' }), 7, entryOf('statement', { words: 'b' }), entryOf('hours', {})]);
    expect(entries).toHaveLength(2);
    expect(problems.map((problem) => problem.field.slice(0, 3))).toEqual(['[1]', '[3]', '[3]']);
  });
});

describe('upgrading', () => {
  const steps: UpgradeSteps = { statement: [(body) => ({ phrase: (body as { words: string }).words }), (body) => ({ ...(body as object), loud: false })] };
  it('takes a body through every step from its own version on and leaves the stored entry alone', () => {
    const old = Object.freeze({ ...entryOf('statement', Object.freeze({ words: 'quiet' })) }) as unknown as Entry;
    expect(upgradeEntry(old, steps)).toEqual({ ...old, version: 3, body: { phrase: 'quiet', loud: false } });
    expect(upgradeEntry({ ...old, version: 2, body: { phrase: 'x' } }, steps).body).toEqual({ phrase: 'x', loud: false });
    expect(upgradeEntry({ ...old, version: 3 }, steps)).toEqual({ ...old, version: 3 });
    expect(old.body).toEqual({ words: 'quiet' });
    expect(newestVersion('statement', steps)).toBe(3);
    expect(newestVersion('constructor', steps)).toBe(1);
  });
});

function nested(depth: number): unknown {
  let value: unknown = 1;
  for (let level = 0; level < depth; level += 1) value = [value];
  return value;
}
