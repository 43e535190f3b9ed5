import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { outlook, picture } from '../../src/derived/index.ts';
import { OF_MOTION } from '../../src/derived/capacity/index.ts';
import { readSurveyFile } from '../../src/entries/index.ts';
import { knowledge } from '../../src/knowledge/index.ts';
import { formatQuantity, quantity, withPositiveInterval } from '../../src/methods/quantity/index.ts';
import { groundSheet } from '../../src/views/outlook/ground-sheet.ts';

const FOLDER = new URL('../../examples/', import.meta.url);
const ALL = readdirSync(FOLDER).filter((name) => name.endsWith('.yaml')).map((name) => {
  const found = picture(readSurveyFile(readFileSync(new URL(name, FOLDER), 'utf8')).entries, knowledge, '2027-06-01T00:00:00Z', 1);
  if (found === undefined) throw new Error(`${name} enrols no hammer`);
  return { name, found, further: outlook(found, 1) };
});

/** What cannot be negative, whatever is not known of it. */
const POSITIVE = ['mass', 'force', 'energy', 'power', 'pressure', 'velocity', 'stiffness'];
const ALSO = ['capacity.blow-power-share', 'capacity.strike-test-ratio', 'seat-pressure.cold-share', 'seat-pressure.hot-share', 'seat-pressure.least-width'];

test.each(ALL.map((one) => [one.name, one] as const))('%s: no figure that is positive by its nature is printed as one that may lie below nothing', (_name, { further }) => {
  let wide = 0;
  for (const value of Object.values(further.values)) {
    if (value.outcome.state !== 'known' || value.standing !== 'worked-out') continue;
    const { quantity: figure } = value.outcome;
    if (!POSITIVE.includes(figure.dimension) && !ALSO.includes(value.key)) continue;
    const low = figure.interval?.[0] ?? figure.value - 2 * figure.uncertainty;
    expect(low, value.key).toBeGreaterThanOrEqual(0);
    if (figure.interval !== undefined) {
      wide += 1;
      expect(formatQuantity(figure), value.key).not.toContain('±');
    }
  }
  expect(wide).toBeGreaterThan(0);
});

test('the interval of a wide doubt is the lognormal one: by factors either way', () => {
  // 200 with a standard uncertainty of half of it: 95 % within 200 x and / e^(2 x 0.5) = 2.718, so 73.6 to 543.7.
  const wide = withPositiveInterval(quantity(200, 'energy', 100));
  expect(wide.interval?.[0]).toBeCloseTo(73.58, 2);
  expect(wide.interval?.[1]).toBeCloseTo(543.66, 2);
  expect(withPositiveInterval(quantity(200, 'energy', 30)).interval).toBeUndefined();
  expect(withPositiveInterval(quantity(0.002, 'length', 0.002)).interval).toBeUndefined();
  expect(withPositiveInterval(quantity(0.3, 'ratio', 0.2)).interval).toBeUndefined();
  expect(withPositiveInterval(quantity(0.3, 'ratio', 0.2), true).interval?.[0]).toBeGreaterThan(0);
});

test.each(ALL.map((one) => [one.name, one] as const))('%s: the speed of the blow on ground, and its energy, are those of its motion, and the sheet says so', (_name, { found, further }) => {
  const speed = further.values['capacity.impact-speed'];
  const middle = further.motion.impactSpeed?.middle;
  expect(middle).toBeGreaterThan(0);
  expect(speed).toMatchObject({ formula: OF_MOTION, outcome: { state: 'known', quantity: { value: middle } } });
  // Nine in ten of the likenesses lie within 1.645 standard deviations, on the logarithms.
  const { low = Number.NaN, high = Number.NaN } = further.motion.impactSpeed ?? {};
  const doubt = speed?.outcome.state === 'known' ? speed.outcome.quantity.uncertainty : Number.NaN;
  expect(Math.exp((2 * 1.645 * doubt) / (middle ?? Number.NaN))).toBeCloseTo(high / low, 6);
  const said = groundSheet({ picture: found, outlook: further, knowledge }).doubt.join(' ');
  expect(said.includes('from the motion of this hammer as simulated') || said.includes('Codes for foundations')).toBe(true);
  const without = groundSheet({ picture: found, outlook: { ...further, values: { ...further.values, 'capacity.impact-speed': found.values['capacity.impact-speed']! } }, knowledge }).doubt.join(' ');
  if (said.includes('The dies meet')) expect(without).toContain('times the whip of a healthy hammer');
});
