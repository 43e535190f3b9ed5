import { describe, expect, test } from 'vitest';
import { quantity } from '../../src/methods/quantity/index.ts';
import type { Value } from '../../src/derived/index.ts';
import { motionWithDoubt, runHammer, specOfSurvey, weighAssumed } from '../../src/derived/motion/index.ts';
import { placeOf, type LinkageFamily } from '../../src/hammer/index.ts';
import { motionSentences, restsOn } from '../../src/views/motion/index.ts';
import { INVENTED, invented } from './invented-hammers.ts';

/** Nothing of these hammers was read but their class. */
const THIN = INVENTED.map(({ tag, picture }) => {
  const { family, ramClass } = picture.known.identity;
  const survey = specOfSurvey({}, family, ramClass.quantity.value);
  return { tag, family, survey };
});

const numbers = (words: string): number[] => [...words.matchAll(/([\d.,]+) (?:ft·lbf|J)/g)].map((one) => Number(one[1]!.replaceAll(',', '')));

describe('the blow is told by the middle of the likenesses, with its interval', () => {
  test.each([...THIN.map((one) => [`${one.tag}, only its class`, one.survey] as const), ...INVENTED.map((one) => [one.tag, one.survey] as const)])('%s', (_tag, survey) => {
    const run = runHammer(survey.spec);
    if (run.outcome !== 'ran') throw new Error('it runs');
    for (const seed of [1, 2, 3]) {
      const doubt = motionWithDoubt(survey, { seed });
      const told = motionSentences(run, survey.spec, 'metric', doubt);
      const headline = told.find((one) => one.kind === 'headline' && one.words.startsWith('Blow energy'))!.words;
      const [middle = 0, low = 0, high = 0] = numbers(headline);
      expect(low).toBeLessThanOrEqual(middle);
      expect(middle).toBeLessThanOrEqual(high);
      const one = told.find((sentence) => sentence.words.startsWith('The one likeness drawn here: blow energy'))!.words;
      const { low: least, high: most } = doubt.blowEnergy!;
      expect(/(above|below) nine in ten of the likenesses/.test(one)).toBe(run.blowEnergy > most || run.blowEnergy < least);
    }
  });

  test('the beat is told by what most likenesses do, and where the one drawn differs it says so', () => {
    const { survey, run } = invented('KB-50');
    const told = motionSentences(run, survey.spec, 'inch', { drawn: 24, ran: 24, classes: [{ beatClass: 'joint-knock', share: 0.75 }, { beatClass: 'clean', share: 0.25 }] });
    expect(told[0]!.words).toBe('Most likely: the linkage knocks on its guide. Within the doubt of its readings 75 in 100 do this; the one likeness drawn here does not: one clean blow a turn.');
  });
});

describe('what the reckoning rests on', () => {
  test.each(THIN.map((one) => [one.tag, one] as const))('%s with its class alone: all is assumed, and something that this family has is named to read next', (_tag, { survey, family }) => {
    const basis = restsOn(survey, family, weighAssumed(survey));
    const [assumed, all] = /^(\d+) of the (\d+)/.exec(basis.words)!.slice(1).map(Number) as [number, number];
    expect(assumed).toBeGreaterThan(all - 3);
    expect(placeOf(basis.next!.place)!.part.families).toContain(family);
    expect(basis.next!.words).toMatch(/matters most: by itself it can/);
  });

  test('a value that was read is neither counted as assumed nor asked for again', () => {
    for (const { tag, survey, picture } of INVENTED) {
      const family: LinkageFamily = picture.known.identity.family;
      const { next, words } = restsOn(survey, family, weighAssumed(survey));
      const [assumed] = /^(\d+) of/.exec(words)!.slice(1).map(Number) as [number];
      expect(assumed, tag).toBeLessThanOrEqual(survey.assumed.length);
      if (next !== undefined) expect(survey.used.map((one) => one.from.split(/[@#]/)[0]), tag).not.toContain(next.place);
    }
  });

  test.each([
    ['coil-and-toggle', 'toggle-arms.upper-length@left', 'suspension.upperLimb', 0.11], ['bow-spring', 'bow-spring.strap-length@left', 'suspension.strap', 0.13], ['helve', 'helve.cushion-length', 'suspension.cushionRadius', 0.5],
  ] as const)('%s: %s, once read, is used as read and no longer assumed', (family, key, name, value) => {
    const read: Value = { key, title: key, outcome: { state: 'known', quantity: quantity(value, 'length', 0.0004) }, standing: 'measured', rests: 'measured', sources: [], evidence: [], from: [] };
    const survey = specOfSurvey({ [key]: read }, family, 30);
    expect(survey.used).toContainEqual({ name, from: key, value, uncertainty: expect.closeTo(0.0004, 9) as number });
    expect(survey.assumed).not.toContain(name);
    expect((survey.spec.suspension as unknown as Record<string, number>)[name.slice('suspension.'.length)]).toBe(value);
    expect(runHammer(survey.spec, { duration: 3 }).outcome).toBe('ran');
  });

  test('without weights it counts and asks nothing', () => expect(restsOn(invented('KB-50').survey, 'coil-and-toggle').next).toBeUndefined());
});

test('a spring whose coils were seen to stay clear does not go solid by the reckoning either, and keeps a sixth of its travel', () => {
  for (const { tag, picture, survey, run } of INVENTED) {
    if (survey.spec.suspension.kind !== 'coil-toggle' || picture.known.looks['coil-spring.clash']?.answer !== 'clear') continue;
    console.log(`${tag}: ${(run.left.spring * 1000).toFixed(1)} mm left of ${(survey.spec.suspension.travel * 1000).toFixed(1)} mm`);
    if (run.beatClass === 'clean') expect(run.left.spring, tag).toBeGreaterThan(0.15 * survey.spec.suspension.travel);
  }
});
