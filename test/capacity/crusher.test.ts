import { expect, test } from 'vitest';
import { crusherEnergy, type Crusher } from '../../src/derived/capacity/index.ts';
import { outlook } from '../../src/derived/index.ts';
import { CRUSHER_METALS, knowledge } from '../../src/knowledge/index.ts';
import { coldUpsetWork, forceByMeanPressure } from '../../src/methods/forming/index.ts';
import { capacitySheet } from '../../src/views/outlook/capacity-sheet.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf } from '../worksheet/worn-hammer.ts';

const INCH = 0.0254;
const [copper, lead] = CRUSHER_METALS;
if (copper === undefined || lead === undefined) throw new Error('two metals are known');

test('the work of a cold squeeze: by the closed form, by a published figure, and as the area under the published force', () => {
  // An inch cube to half its height at an even 100 MPa takes 1136 J (E = V s ln(h0/h1)): a round of the same section and height.
  const cube = { diameter: 2 * INCH / Math.sqrt(Math.PI), height: INCH, strength: 100e6, hardening: 0, friction: 0 };
  expect(coldUpsetWork(cube, INCH / 2)).toBeCloseTo(1135.9, 0);
  // K strain^(n + 1)/(n + 1) of each cubic metre, for annealed copper.
  const round = { diameter: 0.02, height: 0.03, strength: 315e6, hardening: 0.54, friction: 0 };
  const strain = Math.log(0.03 / 0.024);
  expect(coldUpsetWork(round, 0.024)).toBeCloseTo((Math.PI / 4) * 0.02 ** 2 * 0.03 * 315e6 * (strain ** 1.54 / 1.54), 6);
  // Kalpakjian and Schmid's mean pressure, force by force along the way, by trapezoids.
  const rough = { ...round, friction: 0.2 };
  let area = 0;
  const force = (h: number): number => forceByMeanPressure({ flowStress: 315e6 * Math.log(0.03 / h) ** 0.54, radius: 0.01 * Math.sqrt(0.03 / h), height: h, friction: 0.2 });
  for (let step = 0; step < 20_000; step++) area += ((force(0.03 - step * 3e-7) + force(0.03 - (step + 1) * 3e-7)) / 2) * 3e-7;
  expect(coldUpsetWork(rough, 0.024) / area).toBeCloseTo(1, 4);
  expect(() => coldUpsetWork(round, 0.031)).toThrow(RangeError);
});

const exact = (value: number) => ({ value, uncertainty: 0 });
const struck: Crusher = { metal: copper, diameter: exact(INCH), height: exact(1.5 * INCH), after: exact(1.25 * INCH), blows: 1, anvilRatio: exact(15) };

test('copper tells the energy of a blow within about half of it either way, lead far less; more blows share it', () => {
  const read = crusherEnergy(struck, 3, 2000);
  if (read.state !== 'known' || read.blowEnergy.state !== 'known') throw new Error('it can be read');
  // By pencil, likeliest values: strain ln(1.5/1.25) = 0.1823; V = 19.31 cm³; 315 x 1.15 MPa x 0.1823^1.54/1.54 = 17.1 MJ/m³, so 331 J;
  // friction adds about 3 %; over (1 - 0.25²) 15/16 that is some 390 J.
  expect(read.blowEnergy.value).toBeGreaterThan(350);
  expect(read.blowEnergy.value).toBeLessThan(440);
  expect(read.blowEnergy.high / read.blowEnergy.low).toBeGreaterThan(1.3);
  expect(read.blowEnergy.high / read.blowEnergy.low).toBeLessThan(2.2);
  const soft = crusherEnergy({ ...struck, metal: lead }, 3, 2000);
  if (soft.state !== 'known' || soft.blowEnergy.state !== 'known') throw new Error('it can be read');
  expect(soft.blowEnergy.high / soft.blowEnergy.low).toBeGreaterThan(4);
  const two = crusherEnergy({ ...struck, blows: 2 }, 3, 2000);
  expect(two.state === 'known' && two.blowEnergy.state === 'known' ? two.blowEnergy.value * 2 : Number.NaN).toBeCloseTo(read.blowEnergy.value, 9);
  expect(crusherEnergy(struck, 3, 2000)).toEqual(read);
});

test.each([
  ['higher than it may be', { height: exact(2.6 * INCH), after: exact(2.4 * INCH) }, /height cannot be so/],
  ['squeezed further than the law is read', { after: exact(0.5 * INCH) }, /after cannot be so/],
  ['not squeezed at all', { after: exact(1.5 * INCH) }, /after cannot be so/],
  ['half a blow', { blows: 1.5 }, /whole number from 1 to 20/],
] as const)('a crusher that is %s is refused with a sentence', (_words, change, sentence) => {
  const answer = crusherEnergy({ ...struck, ...change }, 1, 200);
  expect(answer.state === 'refused' ? answer.problems.map((one) => one.sentence).join('; ') : '').toMatch(sentence);
});

test('it is put in as readings, and stands on the forging sheet with what its flow rests on', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').read('ram.mass', '52 lb').read('anvil.mass', '600 lb').read('crank.throw', '2 in').read('running.rate', '300 rpm');
  const sheetOf = (made: LogOf): string => {
    const found = pictureOf(made);
    return JSON.stringify(capacitySheet({ picture: found, outlook: outlook(found, 1), knowledge }).body());
  };
  expect(sheetOf(log)).toContain('Without a fire: one full blow on a round of annealed copper');
  log.read('running.crusher-diameter', '0.75 in').read('running.crusher-height', '1 in').read('running.copper-crusher', '0.85 in');
  const further = outlook(pictureOf(log), 1);
  expect(further.values['capacity.copper-crusher-energy']?.outcome.state).toBe('known');
  expect(further.values['capacity.lead-crusher-energy']?.outcome.state).toBe('not-known');
  // 315 MPa is 45.7 ksi: a sheet speaks in one system of units.
  expect(sheetOf(log)).toMatch(/Energy by a crusher of annealed copper.*K 45\.7 ksi, n 0\.54, from memory/);
});

test('the hot bar is read on the forging sheet by the length that was written down, as at the acceptance', () => {
  const log = new LogOf('50 lb', 'coil-and-toggle').read('ram.mass', '52 lb').read('anvil.mass', '600 lb').read('crank.throw', '2 in').read('running.rate', '300 rpm');
  for (const corner of ['front-left', 'front-right', 'rear-left', 'rear-right']) log.read(`running.test-bar-thickness@${corner}`, '0.75 in');
  const energy = (made: LogOf): number => {
    const outcome = outlook(pictureOf(made), 1).values['capacity.strike-test-energy']?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : Number.NaN;
  };
  const usual = energy(log);
  const short = energy(log.read('running.test-bar-length', '1 in'));
  expect(short / usual).toBeGreaterThan(0.4);
  expect(short / usual).toBeLessThan(0.65);
});
