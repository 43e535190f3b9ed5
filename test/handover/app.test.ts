import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { thumb } from '../doors/app/hands.ts';
import { pageBench } from '../doors/app/page-bench.ts';
import { LAPTOP, PHONE, watchedPage } from '../doors/app/watched-page.ts';

const bench = pageBench();

const DEVICES = [['390 px', PHONE], ['1366 px', LAPTOP]] as const;

test.each(DEVICES)('money and time are drawn and said, a budget gives the best choice and the duty that it buys: %s', { timeout: 120_000 }, async (_name, device) => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, device);
  await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer('SF-40')}/work`);
  const figure = page.locator('figure svg');
  await figure.waitFor();
  const drawing = await figure.getAttribute('aria-label');
  expect(drawing).toMatch(/nine chances in ten that it is no more than [\d ]+ units/);
  expect(await figure.locator('rect.bar').count()).toBe(3);
  const smallest = await figure.locator('text').evaluateAll((all) => Math.min(...all.map((one) => one.getBoundingClientRect().height)));
  expect(smallest, 'letters of the drawing, px').toBeGreaterThan(10);

  const money = page.getByLabel(/^Money/);
  await money.fill('lots');
  await page.getByText('the money cannot be used; a plain figure such as 800: lots').waitFor();
  await money.fill('5');
  await page.getByText('Nothing can be chosen within this').waitFor();
  await money.fill('1 400');
  await page.getByText('Best use of 1 400 units').waitFor();
  const verdict = page.locator('section .verdict .words');
  expect(await verdict.innerText()).toBe('Stand down, then fit');
  // With isolator, guards, open oil ways and a die that is ground with its pair it takes 40 h to run at all, and 45 h to run without a limit.
  await page.getByLabel(/^Hours of work/).fill('42');
  await page.getByText('Best use of 1 400 units and 42 h of work').waitFor();
  expect(await verdict.innerText()).toBe('Stand down, then fit within limits');

  const ladder = page.locator('table', { hasText: 'Done up to' });
  expect(await ladder.locator('tbody tr').count()).toBeGreaterThan(3);
  expect(await page.getByText('Make and fit a filler plate: 60 units, heard from').count()).toBe(1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect(problems).toEqual([]);
  await context.close();
});

test.each(DEVICES)('every paper of the papers sheet opens, drawings are shown, hours are entered: %s', { timeout: 180_000 }, async (name, device) => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, device);
  await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer('SF-40')}/papers`);
  await page.getByRole('button', { name: 'A4' }).click();
  const links = await page.locator('main a[href^="/paper/"]').evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? ''));
  expect(links.length).toBeGreaterThan(35);
  expect(links.filter((one) => one.includes('.pdf')).every((one) => one.includes('paper=a4'))).toBe(true);
  if (name === '1366 px') {
    for (const link of links) {
      const answer = await fetch(`${bench.yard.address}${link}`);
      expect(answer.status, link).toBe(200);
      const bytes = Buffer.from(await answer.arrayBuffer());
      if (link.includes('.pdf')) expect(bytes.subarray(0, 5).toString(), link).toBe('%PDF-');
      else expect(bytes.length, link).toBeGreaterThan(400);
    }
  }
  const part = page.getByRole('button', { name: /Lower die blank/ });
  await (name === '390 px' ? thumb(page).press(part) : part.click());
  const drawing = page.locator('.drawn').first();
  await drawing.waitFor();
  expect(await drawing.evaluate((place) => [place.shadowRoot?.querySelectorAll('text').length ?? 0, place.shadowRoot?.textContent?.includes('CHECK BEFORE CUTTING')])).toEqual([expect.any(Number), true]);
  await page.getByText('Shim packs of the ram guide: not known yet').waitFor();

  const red = page.locator('tr', { hasText: 'Keys tight after the running' });
  expect(await red.innerText()).toContain('RED');
  expect(await red.innerText()).toContain('A die that cannot be made tight leaves the hammer.');
  await page.getByLabel('Run since the last entry').fill('a while');
  await page.getByRole('button', { name: 'Enter the hours' }).click();
  await page.locator('form p.chalk').waitFor();
  const before = Number(/with ([\d.]+) h run/.exec(await page.locator('table', { hasText: 'Look over' }).innerText())?.[1]);
  await page.getByLabel('Who is entering?').first().fill('Ada Quill');
  await page.getByLabel('Run since the last entry').fill('2.5');
  await page.getByRole('button', { name: 'Enter the hours' }).click();
  await page.getByText('kept: 2.5 h').waitFor();
  expect(Number(/with ([\d.]+) h run/.exec(await page.locator('table', { hasText: 'Look over' }).innerText())?.[1])).toBeCloseTo(before + 2.5, 6);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
  expect(problems).toEqual([]);
  await context.close();
});

test('the script of the elevation page stays under 150 kB as it is sent, without the code of making and upkeep', () => {
  const page = readFileSync(join(bench.built, 'index.html'), 'utf8');
  const first = [...page.matchAll(/(?:src|href)="(\/assets\/[^"]+\.js)"/g)].map(([, name = '']) => readFileSync(join(bench.built, name)));
  expect(first.length).toBeGreaterThan(0);
  const sent = first.reduce((sum, script) => sum + gzipSync(script).length, 0);
  console.log(`script of the elevation page: ${(sent / 1000).toFixed(1)} kB gzip`);
  expect(sent).toBeLessThan(150_000);
  const text = Buffer.concat(first).toString();
  const others = readdirSync(join(bench.built, 'assets')).filter((name) => name.startsWith('papers-sheet') && name.endsWith('.js')).map((name) => readFileSync(join(bench.built, 'assets', name), 'utf8')).join('');
  for (const words of ['CHECK BEFORE CUTTING', 'BEGIN:VCALENDAR']) {
    expect(text.includes(words), words).toBe(false);
  }
  expect(others.includes('CHECK BEFORE CUTTING')).toBe(true);
});
