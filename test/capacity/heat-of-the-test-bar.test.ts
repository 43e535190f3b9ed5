import { expect, test } from 'vitest';
import { HEAT_COLOURS, heatOfTestBar } from '../../src/derived/capacity/index.ts';
import { outlook, picture } from '../../src/derived/index.ts';
import { lookOf } from '../../src/hammer/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { LogOf } from '../cases/log-of.ts';

const ANSWERS = lookOf('running.test-bar-heat')?.look.answers ?? [];

/** Energy read back from the same bar, the colour as seen; undefined where the laws of flow do not reach so far. */
function readBack(colour?: string): number | undefined {
  const log = new LogOf('50 lb', 'coil-and-toggle').read('running.rate', '300 rpm');
  for (const corner of ['front-left', 'front-right', 'rear-left', 'rear-right']) log.read(`running.test-bar-thickness@${corner}`, '13/16 in');
  if (colour !== undefined) log.look('running.test-bar-heat', colour);
  const found = picture(log.entries, knowledge, '2026-11-26T00:00:00Z', 1)!;
  const { outcome } = outlook(found, 1).values['capacity.strike-test-energy']!;
  if (outcome.state === 'outside-validity') expect(outcome.because).toMatch(/such a heat/);
  return outcome.state === 'known' ? outcome.quantity.value : undefined;
}

test('every colour that is offered has its heat, in the order of heats', () => {
  const heats = ANSWERS.map(({ id }) => HEAT_COLOURS.find((one) => one.id === id)?.temperature);
  expect(heats.length).toBeGreaterThan(4);
  expect(heats).toEqual([...heats].sort((a, b) => (a ?? 0) - (b ?? 0)));
  for (const { id, words } of ANSWERS) expect(HEAT_COLOURS.find((one) => one.id === id)?.words).toBe(words);
});

test('a bar struck colder to the same size took a stronger blow; bright orange is taken where nobody said', () => {
  expect(heatOfTestBar({})).toEqual(heatOfTestBar({ 'running.test-bar-heat': { answer: 'bright-orange' } }));
  const energies = ANSWERS.map(({ id }) => readBack(id)).filter((energy) => energy !== undefined);
  expect(energies.length).toBeGreaterThan(3);
  for (const [index, energy] of energies.entries()) if (index > 0) expect(energy).toBeLessThan(energies[index - 1]! * 0.95);
  expect(readBack()).toBe(readBack('bright-orange'));
});
