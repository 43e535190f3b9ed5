import { expect, test } from 'vitest';
import { makeBelt, makeCoilSpring, makeFillerPlate, makeGuideShims, makeLowerDie, makeLowerKey, makeRamProp, makeSoleTimbers, makeUpperDie, MAKERS, type Making } from '../../src/derived/making/index.ts';
import { notMadeWords } from '../../src/views/making/index.ts';
import { LogOf } from '../cases/log-of.ts';
import { pictureOf } from './figures-of.ts';
import { inchHammer } from './hammers.ts';

const problemOf = (part: Making): string => (part.state === 'cannot-be' ? part.problem : `${part.state} ${part.kind}`);
const after = (...readings: [string, string][]) => {
  const log = inchHammer();
  for (const [key, text] of readings) log.read(key, text);
  return pictureOf(log);
};

test.each([
  ['a die wider than its seat', makeLowerDie, [['lower-die.width', '3 1/4 in']], /wider at the seat than the seat floor; up to 3 in is allowed: 3 1\/4 in/],
  ['a plate for a die wider than its seat', makeFillerPlate, [['lower-die.width', '3 1/4 in']], /up to 3 in is allowed: 3 1\/4 in/],
  ['a blow that asks for more than the seat', makeLowerDie, [['seat.width', '1/2 in'], ['lower-die.width', '1/4 in'], ['keys.thickness@lower', '1/2 in']], /least width of a lower die for this seat is above the seat floor; up to 1\/2 in is allowed/],
  ['a belt wider than its pulley', makeBelt, [['pulley.face', '2 in']], /wider than the face of its pulley; up to 2 in is allowed: 2 1\/2 in/],
  ['pulleys that touch', makeBelt, [['belt.centre-distance', '7 in']], /above 8 in is allowed: 7 in/],
  ['coils that touch with no load', makeCoilSpring, [['coil-spring.coils', '10']], /above 6 1\/4 in is allowed: 6 in/],
  ['a key that tapers away', makeLowerKey, [['keys.thickness@lower', '1/16 in'], ['keys.taper@lower', '1 in']], /taper takes more/],
  ['packs too thin to take out', makeGuideShims, [['ram-guide.play-fore-aft@top', '1/8 in'], ['ram-guide.play-fore-aft@bottom', '1/8 in']], /up to 58 thou at each side is allowed/],
  ['a prop where there is no room', makeRamProp, [['upper-die.rest-gap', '0 in'], ['crank.throw', '3/32 in']], /room between the dies/],
  ['timber under a heavy ram', makeSoleTimbers, [['ram.mass', '110 lb']], /above what timber is known to carry/],
] as const)('said plainly: %s', (_what, make, readings, problem) => {
  const found = after(...(readings as unknown as [string, string][]));
  const part = make(found.values, found.known);
  expect(problemOf(part)).toMatch(problem);
  if (part.state === 'to-make') throw new Error('made all the same');
  expect(notMadeWords(part).join(' ')).toContain('cannot be made');
});

test('nothing sunk, nothing to fill', () => {
  const found = after(['seat.sunk', '0 in']);
  expect(makeFillerPlate(found.values, found.known).state).toBe('not-needed');
});

test('a hammer of which nothing was read has no drawing at all, and each part names what to measure', () => {
  const bare = pictureOf(new LogOf('50 lb', 'coil-and-toggle'));
  for (const make of Object.values(MAKERS)) {
    const part = make(bare.values, bare.known);
    expect(part.state).toBe('not-known');
    if (part.state !== 'not-known') continue;
    expect(part.missing.length).toBeGreaterThan(0);
    for (const one of part.missing) expect(one.how.length).toBeGreaterThan(10);
  }
});

test('a die without a seat reading is not known, and asks for the seat by its own words', () => {
  const bare = pictureOf(new LogOf('50 lb', 'coil-and-toggle').made('upper-die.height', '3 in').made('lower-die.height', '3 in').read('upper-die.height', '2 in').read('lower-die.length', '4 in'));
  const part = makeLowerDie(bare.values, bare.known);
  expect(part).toMatchObject({ state: 'not-known', missing: [{ key: 'seat.width', what: 'seat floor width' }] });
  expect(makeUpperDie(bare.values, bare.known).state).toBe('not-known');
});
