import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { explain, picture, valueKey } from '../../src/derived/index.ts';
import { makeEntryId, readSurveyFile, type Entry } from '../../src/entries/index.ts';
import { lookOf, placeOf } from '../../src/hammer/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { readQuantity } from '../../src/methods/quantity/index.ts';

const AS_OF = '2027-01-01T00:00:00Z';
const good = readSurveyFile(readFileSync(new URL('../../examples/kettlebrae-50-simply-good.yaml', import.meta.url), 'utf8')).entries;
const [first] = good;
if (first === undefined) throw new Error('the survey of the good hammer is empty');

let count = 0;
const later = (kind: string, body: object): Entry => {
  count += 1;
  const at = `2026-12-01T10:${String(count % 60).padStart(2, '0')}:00Z`;
  return { id: makeEntryId(Date.parse(at), new Uint8Array([0, 0, 0, 0, 0, 0, 0, 0, Math.floor(count / 256), count % 256])), hammer: first.hammer, at, by: 'A. Quill', kind, body };
};
const gates = knowledge.criteria.filter((criterion) => criterion.gate && criterion.families.includes('coil-and-toggle'));

test('the good hammer is fit', () => {
  expect(picture(good, knowledge, AS_OF, 1)?.duty.verdict).toBe('fit');
});

describe.each(gates.map((gate) => [gate.id, gate] as const))('gate %s', (_id, gate) => {
  test('stands the hammer down whatever else is good', () => {
    const entry = worst(gate);
    const found = picture([...good, ...entry], knowledge, AS_OF, 1);
    expect(found?.duty.verdict).toBe('stand-down');
    expect(found?.duty.reasons.some((reason) => reason.finding.startsWith(gate.id))).toBe(true);
    expect(found?.worksheet.jobs.length).toBeGreaterThan(0);
  });

  test('makes the verdict not known yet where nobody checked, and says what would settle it', () => {
    const key = gate.rule.kind === 'seen' ? gate.rule.look : gate.rule.value;
    const reads = key === 'stack.rest-gap' ? 'upper-die.rest-gap' : key;
    const without = good.filter((entry) => {
      const body = entry.body as { readonly place?: string; readonly look?: string };
      return body.place !== reads && body.look !== reads;
    });
    expect(without.length).toBeLessThan(good.length);
    const duty = picture(without, knowledge, AS_OF, 1)?.duty;
    if (gate.onlyWhere !== undefined && picture(good, knowledge, AS_OF, 1)?.findings.find((finding) => finding.criterion === gate.id)?.grade === 'does-not-apply') return;
    expect(duty?.verdict).toBe('not-known-yet');
    expect(duty?.missing.map((one) => one.criterion.split('@')[0])).toContain(gate.id);
    expect(duty?.missing.every((one) => one.how !== '' && one.minutes > 0)).toBe(true);
  });
});

/** The entries that bring a gate to its strictest grade. */
function worst(gate: (typeof gates)[number]): readonly Entry[] {
  const only = gate.onlyWhere === undefined ? [] : [later('sighting', { look: gate.onlyWhere.look, answer: gate.onlyWhere.answers[0], standing: 'seen' })];
  const example = gate.examples.find((one) => one.grade === 'stand-down');
  if (example === undefined) throw new Error(`gate ${gate.id} has no example that stands a hammer down`);
  if (gate.rule.kind === 'seen') {
    const [at] = lookOf(gate.rule.look)?.look.at ?? [];
    return [...only, later('sighting', { look: gate.rule.look, answer: example.given, standing: 'seen', ...(at === undefined ? {} : { at }) })];
  }
  const place = gate.rule.value === 'stack.rest-gap' ? 'upper-die.rest-gap' : gate.rule.value;
  const reading = readQuantity(example.given, { dimension: placeOf(place)?.place.dimension ?? 'length' });
  if (!reading.ok) throw new Error(reading.problem.message);
  return [...only, later('reading', { place, quantity: reading.quantity, asWritten: example.given, standing: 'measured' })];
}

test('a repair makes what was found before it a thing of the past, and a new look proves it', () => {
  const cracked = [...good, later('sighting', { look: 'coil-spring.crack', answer: 'present', standing: 'seen' })];
  expect(picture(cracked, knowledge, AS_OF, 1)?.duty.verdict).toBe('stand-down');
  const renewed = [...cracked, later('job-progress', { job: 'spring.renew', state: 'done' })];
  const after = picture(renewed, knowledge, AS_OF, 1);
  expect(after?.duty.verdict).toBe('not-known-yet');
  expect(after?.findings.find((finding) => finding.criterion === 'spring.crack')?.reason).toContain('Repaired on');
  const proven = [...renewed, later('sighting', { look: 'coil-spring.crack', answer: 'none', standing: 'seen' })];
  expect(picture(proven, knowledge, AS_OF, 1)?.findings.find((finding) => finding.criterion === 'spring.crack')?.grade).toBe('sound');
});

test('a correction takes an entry back, and a corrected correction brings it again', () => {
  const wrong = later('sighting', { look: 'frame.crack', answer: 'present', standing: 'seen' });
  const correction = later('correction', { entry: wrong.id, why: 'that was another hammer' });
  const back = later('correction', { entry: correction.id, why: 'no, it was this one' });
  expect(picture([...good, wrong], knowledge, AS_OF, 1)?.duty.verdict).toBe('stand-down');
  expect(picture([...good, wrong, correction], knowledge, AS_OF, 1)?.duty.verdict).toBe('fit');
  expect(picture([...good, wrong, correction, back], knowledge, AS_OF, 1)?.duty.verdict).toBe('stand-down');
});

test('an owner may set a limit of their own, and its default stays visible; matters of safety keep theirs', () => {
  const loose = later('reading', { place: 'ram-guide.play-fore-aft', at: 'top', quantity: { dimension: 'length', value: 0.035 * 0.0254, uncertainty: 0 }, asWritten: '35 thou', standing: 'measured' });
  const found = (entries: readonly Entry[]) => picture(entries, knowledge, AS_OF, 1)?.findings.find((finding) => finding.criterion === 'guide.play-fore-aft' && finding.at === 'top');
  expect(found([...good, loose])?.grade).toBe('limited');
  const own = later('override', { criterion: 'guide.play-fore-aft', step: { grade: 'limited', asWritten: '50 thou', quantity: { dimension: 'length', value: 0.05 * 0.0254, uncertainty: 0 } }, author: 'the owner', reason: 'it has run so for years' });
  const changed = found([...good, loose, own]);
  expect(changed?.grade).toBe('watch');
  expect(changed?.override?.author).toBe('the owner');
  expect(changed?.override?.defaultRule).toContain('0.030 in');
  const unsafe = later('override', { criterion: 'stack.rest-gap', step: { grade: 'stand-down', asWritten: '0 in', quantity: { dimension: 'length', value: 0, uncertainty: 0 } }, author: 'the owner', reason: 'x' });
  expect(picture([...good, unsafe], knowledge, AS_OF, 1)?.problems.join(' ')).toContain('matter of safety');
});

test('why: every finding explains itself down to entries or to what is missing', () => {
  const found = picture(good, knowledge, AS_OF, 1);
  if (found === undefined) throw new Error('no picture');
  for (const finding of found.findings) {
    const explanation = explain(found, knowledge, good, valueKey(finding.criterion, finding.at));
    expect(explanation?.title, finding.criterion).toBe(finding.title);
    if (finding.grade !== 'does-not-apply') expect(explanation?.children.length, finding.criterion).toBeGreaterThan(0);
  }
});

test('near a limit the verdict says so', () => {
  const near = later('reading', { place: 'ram-guide.play-fore-aft', at: 'top', quantity: { dimension: 'length', value: 0.0295 * 0.0254, uncertainty: 0.0005 * 0.0254 }, asWritten: '0.0295 in', standing: 'measured' });
  const finding = picture([...good, near], knowledge, AS_OF, 1)?.findings.find((one) => one.criterion === 'guide.play-fore-aft' && one.at === 'top');
  expect(finding?.grade).toBe('watch');
  expect(finding?.sureWords).toContain('probably, 84 %');
  expect(finding?.reason).toContain('chance of 16 %');
});

test('a job that only looks mends nothing: the stop stands until somebody enters what it showed', () => {
  const suspected = [...good, later('sighting', { look: 'toggle-arms.crack', answer: 'suspected', standing: 'seen' })];
  expect(picture(suspected, knowledge, AS_OF, 1)?.duty.verdict).toBe('stand-down');
  const dyed = [...suspected, later('job-progress', { job: 'frame.dye-test', state: 'done' })];
  const found = picture(dyed, knowledge, AS_OF, 1);
  expect(found?.duty.verdict).toBe('stand-down');
  expect(found?.findings.find((finding) => finding.criterion === 'toggles.crack')?.reason).toContain('enter what it showed');
  expect(picture([...dyed, later('sighting', { look: 'toggle-arms.crack', answer: 'none', standing: 'seen' })], knowledge, AS_OF, 1)?.duty.verdict).toBe('fit');
});

test('readings at odds and names that nobody knows are said, and count nowhere', () => {
  const odd = [
    ...good,
    later('reading', { place: 'coil-spring.shortest-length', quantity: { dimension: 'length', value: 0.4, uncertainty: 0.001 }, asWritten: '400 mm', standing: 'measured' }),
    later('price', { of: 'coil-spring.renew', price: { amount: 95, currency: 'unit' }, sourceKind: 'quoted', quantity: 1 }),
    later('job-progress', { job: 'lower-dye.buy', state: 'done' }),
  ];
  const found = picture(odd, knowledge, AS_OF, 1);
  expect(found?.findings.find((finding) => finding.criterion === 'spring.travel-left')?.grade).toBe('not-known');
  expect(found?.problems.join('\n')).toContain('at odds');
  expect(found?.problems.join('\n')).toContain('coil-spring.renew');
  expect(found?.problems.join('\n')).toContain('lower-dye.buy');
});

test('what was only told clears no matter of safety, and may still stop the hammer', () => {
  const toldAgain = (answer: string): readonly Entry[] => good.map((entry) => {
    const body = entry.body as { readonly look?: string };
    return body.look === 'frame.crack' ? { ...entry, body: { ...body, answer, standing: 'told' } } as Entry : entry;
  });
  const whole = picture(toldAgain('none'), knowledge, AS_OF, 1);
  expect(whole?.duty.verdict).toBe('not-known-yet');
  expect(whole?.findings.find((one) => one.criterion === 'frame.crack')).toMatchObject({ grade: 'not-known', reason: expect.stringContaining('Told, not seen'), missing: ['frame.crack'] });
  expect(picture(toldAgain('present'), knowledge, AS_OF, 1)?.duty.verdict).toBe('stand-down');
});
