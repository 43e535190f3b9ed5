import { expect, test } from 'vitest';
import { pageBench } from './page-bench.ts';
import { LAPTOP, PHONE, watchedPage } from './watched-page.ts';

const bench = pageBench();

const CONDITION = /: (not checked|not known yet|sound|(sound so far|worth watching|limited|stand down), \d+ matters? not known yet|worth watching|limited|stand down)$/;

test.each([['coil spring and toggles', 'SF-40'], ['bow spring', 'DT-90'], ['helve', 'TW-150']])('every part of the drawing is reached by Tab, names its condition, and opens by Enter: %s', { timeout: 120_000 }, async (_family, tag) => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, LAPTOP);
  const address = `${bench.yard.address}/hammer/${await bench.yard.hammer(tag)}/elevation`;
  await page.goto(address);
  const parts = page.locator('.drawing .part');
  await parts.first().waitFor();
  const drawn = await parts.evaluateAll((all) => all.map((one) => (one as SVGElement).dataset['part'] ?? ''));
  const labels = await parts.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''));
  expect(new Set(drawn).size).toBeGreaterThan(tag === 'TW-150' ? 13 : 22);
  for (const label of labels) expect(label).toMatch(CONDITION);
  expect(new Set(labels.map((label) => CONDITION.exec(label)?.[1])).size).toBeGreaterThan(1);

  const reached: string[] = [];
  for (let step = 0; step < drawn.length + 5; step += 1) {
    await page.keyboard.press('Tab');
    const now = await page.evaluate(() => {
      const element = document.activeElement;
      if (!(element instanceof SVGElement)) return undefined;
      const edge = element.querySelector('.edge, .hidden');
      return { part: element.dataset['part'] ?? '', stroke: edge === null ? '' : getComputedStyle(edge).stroke, pencil: getComputedStyle(document.documentElement).getPropertyValue('--pencil') };
    });
    if (now === undefined) continue;
    reached.push(now.part);
    expect(now.stroke, `the focus shows on ${now.part}`).toBe(rgbOf(now.pencil));
  }
  expect(reached).toEqual(drawn);

  // Each drawn part leads to its own sheet.
  for (const part of new Set(drawn)) {
    await page.locator(`.drawing .part[data-part="${part}"]`).first().focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(`**/part/${part}`);
    await page.locator('h1 .number').waitFor();
    await page.goBack();
    await parts.first().waitFor();
  }
  expect(problems).toEqual([]);
  await context.close();
});

const rgbOf = (hex: string): string => `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.trim().slice(at, at + 2), 16)).join(', ')})`;

test('on a phone a thumb beside a small part still means it, and both faces of the hammer are there', async () => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer('WH-65')}/elevation`);
  const pin = page.locator('.drawing .part[data-part="hold-down-bolts"] .edge').first();
  await pin.scrollIntoViewIfNeeded();
  const box = await pin.boundingBox();
  if (box === null) throw new Error('the hold-down bolts are not drawn');
  expect(box.width).toBeLessThan(30);
  await page.touchscreen.tap(box.x + box.width / 2, box.y - 9);
  await page.waitForURL('**/part/hold-down-bolts');
  await page.goBack();
  await page.getByRole('button', { name: 'From the side' }).tap();
  await page.locator('.drawing .part[data-part="clutch-pulley"]').waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  expect(problems).toEqual([]);
  await context.close();
});
