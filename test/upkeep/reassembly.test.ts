import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { acceptance, expectedBlow, looksOverTime, settingSheet, type ExpectedBlow } from '../../src/derived/upkeep/index.ts';
import { SETTINGS, TRIAL_POINTS, UPKEEP_TASKS, knowledge } from '../../src/knowledge/index.ts';
import { picture } from '../../src/derived/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { lookOf } from '../../src/hammer/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { gatesSound, pictureOf, wornHammer } from '../worksheet/worn-hammer.ts';

const INCH = 0.0254;
const sheetOf = (log: LogOf, work?: number) => {
  const { known, values } = pictureOf(log);
  return settingSheet({ known, values, ...(work === undefined ? {} : { work: { dimension: 'length', value: work, uncertainty: 0 } }) });
};
const line = (log: LogOf, id: string, work?: number) => sheetOf(log, work).find((one) => one.id === id);

test('the sheet goes hold-down, speed, die heights, gap, spring, throw, clutch, brake', () => {
  const order = sheetOf(new LogOf('50 lb', 'coil-and-toggle')).map((one) => one.id);
  expect(order.filter((id) => !['arms', 'treadle', 'spring-set'].includes(id))).toEqual(['hold-down', 'speed', 'upper-die', 'lower-die', 'gap', 'spring', 'throw', 'clutch', 'brake']);
  expect(sheetOf(wornHammer()).some((one) => one.id === 'brake')).toBe(false);
  expect(sheetOf(new LogOf('50 lb', 'helve')).map((one) => one.id)).not.toContain('spring');
});

test('dies are wanted as the open jobs leave them, the new one as its drawing has it', () => {
  const { known, values } = pictureOf(wornHammer());
  const height = (key: string): number => {
    const outcome = values[key]?.outcome;
    if (outcome?.state !== 'known') throw new Error(`not known: ${key}`);
    return outcome.quantity.value;
  };
  const of = (id: string, ...jobs: readonly string[]) => settingSheet({ known, values, jobs: new Set(jobs) }).find((one) => one.id === id);
  const total = height('upper-die.height#as-made') + height('lower-die.height#as-made');
  expect(of('lower-die', 'dies.new-lower')?.target?.to?.value).toBeCloseTo(total - height('stack.upper-net'), 12);
  expect(of('lower-die', 'dies.new-lower', 'dies.new-upper')?.target?.to?.value).toBeCloseTo(height('lower-die.height#as-made'), 12);
  expect(of('upper-die')).toMatchObject({ state: 'set', target: { sentence: expect.stringContaining('No open job replaces it') } });
  expect(of('lower-die', 'seat.fit-filler-plate')?.change?.value).toBeCloseTo(height('stack.filler-plate'), 12);
});

test('targets come from the hammer where it gives them, and say where they come from', () => {
  const log = wornHammer().made('running.rate', '325 rpm').read('running.rate', '380 rpm').read('pulley.diameter', '14 in').read('motor.speed', '1740 rpm');
  const speed = line(log, 'speed');
  expect(speed).toMatchObject({ state: 'off', target: { basis: 'as-made' } });
  expect((speed?.change?.value ?? 0) * 60).toBeCloseTo(-55, 6);
  // 14 in x 325 / (1740 x 0.97) = 2.696 in, rounded down to a sixteenth.
  expect(speed?.target?.sentence).toContain('2 11/16 in');
  expect(line(log, 'lower-die')).toMatchObject({ state: 'off', target: { basis: 'as-made', sentence: expect.stringContaining('filler plate of 1/4 in') } });
  expect((line(log, 'lower-die')?.change?.value ?? 0) / INCH).toBeCloseTo(1.125, 9);
  expect(line(log, 'gap')).toMatchObject({ state: 'set', target: { basis: 'usual' } });
  expect(line(log, 'gap', INCH)).toMatchObject({ state: 'off', target: { basis: 'worked-out' } });
  expect(line(log, 'gap')?.target?.sentence).toContain('nothing thinner than the limits card says');
});

test('a speed that nobody knows starts 15 to 20 % under the usual', () => {
  const speed = line(new LogOf('50 lb', 'coil-and-toggle'), 'speed');
  expect(speed?.state).toBe('not-known');
  expect([(speed?.target?.from?.value ?? 0) * 60, (speed?.target?.to?.value ?? 0) * 60]).toEqual([expect.closeTo(280, 6), expect.closeTo(297.5, 6)]);
  expect(speed?.missing).toContain('running.rate');
});

test('the spring keeps a fifth of its travel', () => {
  // Stress at solid of this one is 85 % of what its wire stands, so that the travel decides.
  const log = new LogOf('50 lb', 'coil-and-toggle').read('coil-spring.wire', '5/8 in').read('coil-spring.coils', '7').read('coil-spring.inside-diameter', '3 in').read('coil-spring.free-length', '6 in').look('coil-spring.ends', 'closed-and-ground');
  const solid = pictureOf(log).values['spring.solid-length']?.outcome;
  const length = solid?.state === 'known' ? solid.quantity.value : Number.NaN;
  expect(line(log, 'spring')?.target?.from?.value).toBeCloseTo(length + 0.2 * (6 * INCH - length), 12);
  expect(line(log.read('coil-spring.shortest-length', '4.5 in'), 'spring')?.state).toBe('off');
  expect(line(log.read('coil-spring.shortest-length', '5 in'), 'spring')?.state).toBe('set');
});

test.each([['9 thou', 'off'], ['10 thou', 'set'], ['15 thou', 'set'], ['16 thou', 'off']])('clutch play of %s is %s', (play, state) => {
  expect(line(new LogOf('50 lb', 'coil-and-toggle').read('clutch-pulley.play', play), 'clutch')?.state).toBe(state);
});

/** A trial in which everything is as it should be. */
function goodTrial(log = gatesSound(new LogOf('50 lb', 'coil-and-toggle'))): LogOf {
  log.look('running.creep', 'still').look('running.clank', 'no').look('running.sound', 'clean').read('running.release-strokes', '3').look('running.chatter', 'smooth')
    .read('running.bearing-temperature@front', '35 °C').read('running.bearing-temperature@rear', '38 °C').read('running.bearing-temperature@clutch-pulley', '40 °C')
    .look('running.die-shift@upper', 'no').look('running.die-shift@lower', 'no').look('running.walks', 'no').look('running.oil', 'flings').read('upper-die.rest-gap', '3/4 in');
  for (const corner of ['front-left', 'front-right', 'rear-left', 'rear-right']) log.read(`running.test-bar-thickness@${corner}`, '0.583 in');
  return log.look('keys.secure', 'tight').look('hold-down-bolts.state', 'tight');
}

/** What the motion lets expect, as if it had been reckoned: the middle of what a bar of 0.583 in reads back as. */
const EXPECTED: ExpectedBlow = { low: 700, middle: 850, high: 1_000 };
const accept = (log: LogOf, expected: ExpectedBlow = EXPECTED) => acceptance({ ...pictureOf(log), expected });
const point = (log: LogOf, id: string) => accept(log).points.find((one) => one.id === id);

test('a good trial is accepted, point by point', () => {
  const good = accept(goodTrial());
  expect(good.points.filter((one) => one.state !== 'green')).toEqual([]);
  expect(good).toMatchObject({ verdict: 'accepted', sentence: 'Right again: every point of the trial is green.' });
});

test.each([
  ['running.creep', 'creeps', 'creep'], ['running.clank', 'yes', 'clank'], ['running.sound', 'double', 'beat'], ['running.chatter', 'grabs', 'take-up'],
  ['running.die-shift@lower', 'yes', 'die-shift'], ['running.walks', 'yes', 'walks'], ['running.oil', 'dry', 'oil'], ['keys.secure', 'loose', 'keys'], ['frame.crack', 'present', 'stand-down'],
])('%s answered %s refuses it', (look, answer, id) => {
  const log = goodTrial().look(look, answer);
  expect(accept(log).verdict).toBe('refused');
  expect(point(log, id)?.state).toBe('red');
});

test.each([['4', 'green'], ['9', 'amber'], ['10', 'red'], ['30', 'red']])('%s strokes after the release are %s', (strokes, state) => {
  expect(point(goodTrial().read('running.release-strokes', strokes), 'release')?.state).toBe(state);
});

test.each([['49 °C', 'green'], ['59 °C', 'amber'], ['60 °C', 'red']])('a bearing at %s is %s', (temperature, state) => {
  expect(point(goodTrial().read('running.bearing-temperature@rear', temperature), 'temperature')?.state).toBe(state);
});

test.each([['0.583 in', 'green'], ['0.614 in', 'green'], ['0.616 in', 'red']])('one corner of the bar at %s is %s', (corner, state) => {
  expect(point(goodTrial().read('running.test-bar-thickness@rear-left', corner), 'strike-test')?.state).toBe(state);
});

test('a bar thicker than before the repair is red', () => {
  const worse = goodTrial();
  worse.put('job-progress', { job: 'spring.renew', state: 'done' });
  for (const corner of ['front-left', 'front-right', 'rear-left', 'rear-right']) worse.read(`running.test-bar-thickness@${corner}`, '0.66 in');
  expect(point(worse, 'strike-test')).toMatchObject({ state: 'red', reason: 'The bar is thicker than before the repair, 0.583 in: it hits more weakly.' });
});

test('the strike test is read back as energy: red where it is weaker than the motion lets expect, grey where it was not tried', () => {
  const energy = (log: LogOf, expected?: ExpectedBlow) => accept(log, expected).points.find((one) => one.id === 'strike-energy');
  expect(energy(goodTrial())).toMatchObject({ state: 'green' });
  expect(energy(goodTrial())?.shown).toMatch(/^6\d\d ft·lbf a blow, 95 % between /);
  expect(energy(goodTrial(), { low: 2_000, middle: 2_200, high: 2_400 })).toMatchObject({ state: 'red', reason: expect.stringContaining('Weaker than its motion as set lets expect') });
  expect(accept(goodTrial(), { low: 2_000, middle: 2_200, high: 2_400 })).toMatchObject({ verdict: 'refused', sentence: 'Not right yet. Failed: blow as strong as its motion lets expect.' });
  expect(energy(goodTrial(), { low: 90, middle: 100, high: 110 })).toMatchObject({ state: 'green', reason: expect.stringContaining('rather was the test not as said') });
  expect(energy(gatesSound(new LogOf('50 lb', 'coil-and-toggle')))).toMatchObject({ state: 'not-done', missing: expect.arrayContaining(['running.test-bar-thickness@front-left']) });
  // Half the length under the dies is about half the energy; one blow on a bar needs its count.
  const value = (log: LogOf): number => Number(/^(\d+)/.exec(energy(log)?.shown ?? '')?.[1]);
  expect(value(goodTrial().read('running.test-bar-length', '1 in')) / value(goodTrial())).toBeLessThan(0.65);
  expect(value(goodTrial().read('running.test-bar-blows', '10')) / value(goodTrial())).toBeLessThan(0.65);
});

test('the invented hammer whose trial is complete delivers what its motion lets expect', () => {
  const file = readFileSync(new URL('../../examples/kettlebrae-50-simply-good.yaml', import.meta.url), 'utf8');
  const found = picture(readSurveyFile(file).entries, knowledge, '2026-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error('the example enrols no hammer');
  const expected = expectedBlow(found.known, found.values, 1);
  expect(expected?.middle).toBeGreaterThan(150);
  expect(acceptance({ ...found, ...(expected === undefined ? {} : { expected }) }).verdict).toBe('accepted');
});

test('looks over time: every answer with its day, those that changed first, corrections obeyed', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').look('belt.state', 'sound').look('keys.secure', 'tight');
  for (const [look, answer] of [['belt.state', 'glazed'], ['keys.secure', 'tight']] as const) Object.assign(log.put('sighting', { look, answer, standing: 'seen' }), { at: '2026-09-01T09:00:00.000Z' });
  const all = looksOverTime(log.entries, '2027-01-01T00:00:00Z');
  expect(all.map((one) => [one.look, one.changed, one.answers.map((answer) => answer.answer)])).toEqual([['belt.state', true, ['sound', 'glazed']], ['keys.secure', false, ['tight', 'tight']]]);
  const wrong = log.entries.find((entry) => entry.kind === 'sighting' && entry.at.startsWith('2026-09'));
  if (wrong === undefined) throw new Error('no second look');
  Object.assign(log.put('correction', { entry: wrong.id, why: 'the other belt' }), { at: '2026-09-02T09:00:00.000Z' });
  expect(looksOverTime(log.entries, '2027-01-01T00:00:00Z').map((one) => one.look)).toEqual(['keys.secure']);
  expect(looksOverTime(log.entries, '2026-06-01T00:00:00Z')).toEqual([]);
});

test('the clutch is adjusted after everything that must be clean or tight before it is tried', () => {
  const oily = pictureOf(gatesSound(new LogOf('50 lb', 'coil-and-toggle')).look('running.oil', 'on-dies').look('running.creep', 'drifts').look('clutch-facing.state', 'flooded').look('keys.secure', 'loose'));
  const order = oily.worksheet.jobs.map((job) => job.job);
  expect(order).toEqual(expect.arrayContaining(['keys.dry', 'keys.renew', 'clutch.wash', 'clutch.adjust']));
  for (const before of ['keys.dry', 'keys.renew', 'clutch.wash']) expect(order.indexOf(before)).toBeLessThan(order.indexOf('clutch.adjust'));
  expect(oily.worksheet.problems).toEqual([]);
});

test('what was looked at before the repair, or before the running, does not count', () => {
  const repaired = goodTrial();
  repaired.put('job-progress', { job: 'clutch.adjust', state: 'done' });
  const found = accept(repaired);
  expect(found.verdict).toBe('not-finished');
  expect(found.points.find((one) => one.id === 'beat')).toMatchObject({ state: 'not-done', reason: 'Not looked at since the repair.' });
  const early = goodTrial().look('running.oil', 'flings');
  expect(point(early, 'keys')).toMatchObject({ state: 'not-done', reason: 'Looked at before the running, not after it.', missing: ['keys.secure'] });
});

test('what is good enough is amber and not green, and is accepted with what to watch; keys and bolts are green only after a running of that day that somebody saw', () => {
  const slips = accept(goodTrial().look('running.chatter', 'slips'));
  expect(slips.points.find((one) => one.id === 'take-up')).toMatchObject({ state: 'amber', reason: expect.stringContaining('Good enough, and to be watched') });
  // The look came after keys and bolts, which have to be tried again for it.
  expect(slips.points.filter((one) => one.state === 'not-done').map((one) => one.id)).toEqual(['keys', 'bolts']);
  const again = accept(goodTrial().look('running.chatter', 'slips').look('keys.secure', 'tight').look('hold-down-bolts.state', 'tight'));
  expect(again).toMatchObject({ verdict: 'accepted', sentence: 'Right again, and to be watched: clutch takes up smoothly. Every other point of the trial is green.' });
  const still = gatesSound(new LogOf('50 lb', 'coil-and-toggle')).read('upper-die.rest-gap', '3/4 in').look('hold-down-bolts.state', 'loosened-once');
  still.entries.splice(0, still.entries.length, ...still.entries.filter((entry) => !(entry.kind === 'sighting' && (entry.body as { look: string }).look.startsWith('running.'))));
  expect(point(still, 'bolts')).toMatchObject({ state: 'not-done', reason: 'Looked at, and nobody has seen it run.', missing: ['hold-down-bolts.state'] });
  still.put('reading', { place: 'running.rate', quantity: { dimension: 'rotation', value: 5, uncertainty: 0.1 }, asWritten: '300 blows/min', standing: 'told', saidBy: 'the last owner' }, -60);
  expect(point(still, 'bolts')?.reason).toBe('Looked at, and nobody has seen it run.');
  // Seen running a day before: what was tight the day after has had another day.
  still.put('sighting', { look: 'running.walks', answer: 'no', standing: 'seen' }, -24 * 60);
  expect(point(still, 'bolts')).toMatchObject({ state: 'not-done', reason: 'Looked at on another day than it ran.' });
});

test('settings, points and tasks name what exists', () => {
  const sources = new Set(knowledge.sources.map((source) => source.id));
  for (const one of [...SETTINGS, ...TRIAL_POINTS, ...UPKEEP_TASKS]) expect(sources.has(one.source), one.id).toBe(true);
  for (const one of TRIAL_POINTS) expect(knowledge.criteria.some((criterion) => criterion.id === one.criterion), one.criterion).toBe(true);
  for (const task of UPKEEP_TASKS) {
    for (const look of task.doneBy.looks ?? []) expect(lookOf(look), look).toBeDefined();
    for (const job of task.doneBy.jobs ?? []) expect(knowledge.jobs.some((one) => one.id === job), job).toBe(true);
  }
});
