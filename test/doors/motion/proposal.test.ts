import { describe, expect, test } from 'vitest';
import { worthOf } from '../../../src/app/motion/proposal-words.ts';
import { runHammer, usualHammer, withSetting, type MotionRan } from '../../../src/derived/motion/index.ts';
import { pageBench } from '../app/page-bench.ts';
import { PHONE, watchedPage } from '../app/watched-page.ts';

const like = (run: MotionRan, change: Partial<MotionRan>): MotionRan => ({ ...run, ...change });

describe('what a proposal is worth', () => {
  const ran = runHammer(usualHammer(22.7).spec);
  if (ran.outcome !== 'ran') throw new Error('the usual hammer does not run');
  const { canDoEither: _either, ...plain } = ran;
  const clean = like(plain, { beatClass: 'clean', secondSounds: [] });
  const knock = (level: number): MotionRan => like(clean, { beatClass: 'upper-stop-knock', secondSounds: [{ kind: 'upper-stop-knock', delay: -0.05, level, share: 1 }] });

  test.each([
    [knock(-9), clean, 'helps', /^It helps: one clean blow a turn/],
    [knock(-9), knock(-9.4), 'no-help', /^No help: still the ram knocks/],
    [knock(-9), knock(-14), 'helps', /does not cure.* 5 dB fainter/],
    [knock(-9), knock(-4), 'worse', /^Worse: still .* 5 dB louder/],
    [knock(-9), like(clean, { beatClass: 'gallop' }), 'no-help', /^No help: instead of the ram knocks .* now gallop/],
    [clean, knock(-9), 'worse', /^Worse: clean before/],
    [clean, clean, 'no-help', /^Clean before and after; the blow is about as strong\.$/],
    [clean, like(clean, { blowEnergy: clean.blowEnergy * 0.8 }), 'worse', /the blow is 20 % weaker/],
    [knock(-9), like(clean, { canDoEither: { beatClass: 'gallop', blowEnergy: 100 } }), 'no-help', /only in part.*By how it is started/],
  ] as const)('%#', (found, tried, kind, words) => {
    expect(worthOf(found, tried)).toEqual({ kind, words: expect.stringMatching(words) });
  });

  test('by the motion itself: the same settings are no help, and say so', () => {
    const again = runHammer(withSetting(usualHammer(22.7).spec, 'lostMotion', usualHammer(22.7).spec.lostMotion));
    expect(again.outcome === 'ran' ? worthOf(ran, again).kind : again.outcome).toBe('no-help');
  });
});

describe('on a phone', () => {
  const bench = pageBench();
  test('the result stays in sight at the slider, and says where the proposal is no help', { timeout: 90_000 }, async () => {
    const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
    await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer('WH-65')}/motion`);
    await page.locator('section[aria-labelledby="as-found"]').getByText(/The ram knocks on what carries it/).first().waitFor();
    const slider = page.getByRole('slider', { name: 'Rest gap between the dies' });
    await slider.scrollIntoViewIfNeeded();
    await page.getByRole('button', { name: 'Rest gap between the dies: more' }).tap();
    const strip = page.locator('.strip');
    await expect.poll(() => strip.textContent()).toMatch(/As proposed: (No help|It helps|Worse)/);
    const [result, field] = [await strip.boundingBox(), await page.getByRole('button', { name: 'Rest gap between the dies: more' }).boundingBox()];
    expect(result!.y).toBeGreaterThanOrEqual(0);
    expect(result!.y + result!.height).toBeLessThanOrEqual(field!.y);
    expect(field!.y).toBeLessThan(PHONE.viewport.height);
    expect(result!.height).toBeLessThan(130);
    expect(problems).toEqual([]);
    await context.close();
  });
});
