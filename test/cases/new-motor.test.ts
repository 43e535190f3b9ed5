import { describe, expect, it, test } from 'vitest';
import { outlook, picture } from '../../src/derived/index.ts';
import { partsToMake } from '../../src/derived/making/index.ts';
import { motorToFit } from '../../src/derived/power/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { powerSheet } from '../../src/views/outlook/power-sheet.ts';
import { EXAMPLE_PICTURES } from './example-pictures.ts';
import { LogOf } from './log-of.ts';

const POUND = 0.45359237;
const HP = 745.69987;

// The trade's table: 2 hp for 50 lb, 3 to 5 hp for 100 lb, 5 to 7.5 hp for 250 lb. Middle of 150 lb: 4 + (6.25 - 4) / 3 = 4.75 hp.
test.each([[25, '1.5 hp'], [50, '2 hp'], [100, '5 hp'], [150, '5 hp'], [250, '7.5 hp'], [500, '10 hp']])('a %d lb hammer wants a motor of %s as motors are sold', (pounds, words) => {
  expect(motorToFit(pounds * POUND).words).toBe(words);
});

test('4.75 hp are 3.54 kW: 4 kW where motors are sold by the kilowatt', () => {
  expect(motorToFit(150 * POUND, 'metric').words).toBe('4 kW');
});

describe.each(EXAMPLE_PICTURES)('$tag', ({ found }) => {
  const job = found.worksheet.jobs.find((one) => one.job === 'motor.renew');
  const wanted = found.values['class.motor-power']?.outcome;

  it('orders a larger motor that reaches what its class wants', () => {
    if (job === undefined || wanted?.state !== 'known') return;
    const power = /motor, ([\d.]+) hp/u.exec(job.parts.map((part) => part.words).join())?.[1];
    expect(Number(power) * HP).toBeGreaterThanOrEqual(wanted.quantity.value);
  });

  it('reckons belt, wire and breaker for the motor that will be there', () => {
    const sheet = JSON.stringify(powerSheet({ picture: found, outlook: outlook(found, 1), knowledge }).body());
    expect(sheet.includes('The new motor')).toBe(job !== undefined);
    const belt = partsToMake(found).find((part) => part.state === 'to-make' && part.kind === 'belt');
    if (job === undefined || belt?.state !== 'to-make') return;
    expect(belt.notes.join(' ')).toContain('For the new motor');
    expect(belt.notes.join(' ')).not.toContain('too little for either');
  });

  it('does not call an overload sound that lets far more than the plate through', () => {
    const load = found.values['drive.running-share']?.outcome;
    const overload = found.findings.find((one) => one.criterion === 'starter.overload');
    if (load?.state === 'known' && load.quantity.value >= 1.25) expect(overload?.grade).not.toBe('sound');
  });
});

// 5 hp on one phase at 230 V: 28 A by the US code's table 430.248; 1.25 x 28 = 35 A; 2.5 x 28 = 70 A.
test('the beam of 150 lb: 28 A, conductors from 35 A, breaker to 70 A, and a belt of 3 3/4 in for it', () => {
  const beam = EXAMPLE_PICTURES.find((one) => one.tag === 'TW-150');
  if (beam === undefined) throw new Error('no beam');
  const sheet = JSON.stringify(powerSheet({ picture: beam.found, outlook: outlook(beam.found, 1), knowledge }).body());
  for (const figure of ['28 A', '35 A', '70 A']) expect(sheet).toContain(figure);
  const belt = partsToMake(beam.found).find((part) => part.state === 'to-make' && part.kind === 'belt');
  // One inch of single belt for each horsepower at 1000 ft/min: 3 in carry 4.13 hp here, so 5 hp want 5 / 4.13 x 3 = 3.63 in.
  expect(belt?.state === 'to-make' ? belt.dimensions.find((one) => one.name === 'width')?.quantity.value : undefined).toBeCloseTo(3.75 * 0.0254, 6);
});

// An overload may be set to 125 % of the plate at the most: 12.5 A of 10 A.
test.each([['12.4 A', 'sound'], ['12.5 A', 'limited'], ['16 A', 'limited']])('an overload that was seen set, and %s of 10 A: %s', (amperes, grade) => {
  const log = new LogOf('50 lb', 'coil-and-toggle').look('starter.overload', 'set').read('motor.current', '10 A').read('motor.running-current@a', amperes);
  const finding = picture(log.entries, knowledge, '2027-01-01T00:00:00Z', 1)?.findings.find((one) => one.criterion === 'starter.overload');
  expect(finding?.grade).toBe(grade);
  if (grade === 'limited') expect(finding?.reason).toContain('One of the two is wrong');
});
