import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { knowledge } from '../../../src/knowledge/index.ts';
import { START } from '../../../src/stores/index.ts';
import { pageBench } from './page-bench.ts';
import { PHONE, watchedPage } from './watched-page.ts';

const bench = pageBench();

async function opened(tag: string, sheet: string): Promise<{ page: Page; hammer: string; close: () => Promise<void> }> {
  const hammer = await bench.yard.hammer(tag);
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await page.addInitScript(() => localStorage.setItem('tupwise.by', 'Ada Quill'));
  await page.goto(`${bench.yard.address}/hammer/${hammer}/${sheet}`);
  await page.locator('h1').waitFor();
  return { page, hammer, close: async () => {
    expect(problems).toEqual([]);
    await context.close();
  } };
}
const inSight = (page: Page, selector: string): Promise<boolean> => page.locator(selector).evaluate((element) => {
  const { top } = element.getBoundingClientRect();
  return top >= -1 && top < innerHeight / 2;
});

test('the worksheet begins with the job that comes now and why; money comes after the jobs', { timeout: 60_000 }, async () => {
  const { page, close } = await opened('SF-40', 'work');
  const next = (await page.locator('footer .next span').textContent()) ?? '';
  const section = page.locator('section.next');
  expect(next.startsWith((await section.locator('h2').textContent()) ?? '?')).toBe(true);
  expect(await section.textContent()).toMatch(/Why: ./);
  expect(await inSight(page, 'section.next')).toBe(true);
  await page.getByText('Parts and outside work').first().waitFor();
  expect(await page.evaluate(() => {
    const [job, money] = [document.querySelector('ol [data-job]'), document.querySelector('#money')];
    return job !== null && money !== null && (job.compareDocumentPosition(money) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  })).toBe(true);
  await close();
});

test('"Next" leads to its job, opened, from another sheet, from the worksheet itself, and on a reload', { timeout: 60_000 }, async () => {
  const { page, close } = await opened('SF-40', 'findings');
  const arrived = async (): Promise<void> => {
    await page.locator('[data-job] .inside').waitFor();
    expect(await page.locator('[data-job]:has(.inside) .title b').textContent()).toBe((await page.locator('footer .next span').textContent())?.split(', about')[0]);
    await expect.poll(() => inSight(page, '[data-job]:has(.inside)')).toBe(true);
  };
  await page.locator('footer .next').tap();
  await arrived();
  // What is done comes with the sheet, not with the first page: on what is next, and first in the opened job.
  const done = knowledge.jobs.find((one) => one.title === 'Fit a lockable isolator and no-volt starter')?.words ?? 'no such job';
  expect(await page.locator('section.next').textContent()).toContain(done);
  expect(await page.locator('[data-job] .inside > p').first().textContent()).toBe(done);
  await page.locator('[data-job]:has(.inside) .row').tap();
  expect(await page.locator('[data-job] .inside').count()).toBe(0);
  await page.evaluate(() => scrollTo(0, 0));
  await page.locator('footer .next').tap();
  await arrived();
  await page.reload();
  await arrived();
  await close();
});

test('where "Next" is a look, it leads to that look', { timeout: 60_000 }, async () => {
  const { page, close } = await opened('WH-65', 'elevation');
  const { page: fresh } = { page };
  await fresh.goto(bench.yard.address);
  await fresh.getByRole('button', { name: 'Enrol a hammer' }).tap();
  await fresh.getByLabel('Tag on the hammer').fill('W-NEXT');
  await fresh.getByLabel('Ram weight class, as cast or told').fill('50 lb');
  await fresh.getByRole('radio', { name: /^coil spring/i }).tap();
  await fresh.getByRole('button', { name: 'Enrol it' }).tap();
  await fresh.getByRole('heading', { level: 1, name: 'Survey round' }).waitFor();
  await fresh.locator('footer .next').tap();
  await fresh.locator('.look, .place').first().waitFor();
  const key = await fresh.evaluate(() => decodeURIComponent(location.hash.slice(1)));
  expect(key).toMatch(/^[a-z-]+\.[a-z-]+/);
  await expect.poll(() => fresh.evaluate(() => {
    const section = document.activeElement?.closest('.look, .place');
    return section === null || section === undefined ? -1 : section.getBoundingClientRect().top;
  })).toBeGreaterThanOrEqual(-1);
  await close();
});

test('a price in another money asks for its rate, and both are kept', { timeout: 60_000 }, async () => {
  const { page, hammer, close } = await opened('SF-40', 'work');
  const prices = async () => (await bench.yard.store.readSince(START)).entries.filter((entry) => entry.hammer === hammer && entry.kind === 'price').map((entry) => entry.body);
  await page.getByRole('button', { name: /Fit a brake/ }).tap();
  const rate = page.getByLabel(/^One EUR is worth/);
  expect(await rate.count()).toBe(0);
  await page.getByLabel('Amount').fill('180');
  await page.getByLabel('Money', { exact: true }).fill('EUR');
  await rate.fill('none');
  await page.getByRole('button', { name: 'Enter the price' }).tap();
  await page.getByText('the rate cannot be used; a figure above 0: none').waitFor();
  await rate.fill('1.09');
  await page.getByRole('button', { name: 'Enter the price' }).tap();
  await expect.poll(prices).toEqual(expect.arrayContaining([
    expect.objectContaining({ of: 'money.eur', price: { amount: 1.09, currency: 'unit' } }), expect.objectContaining({ of: 'brake.fit', price: { amount: 180, currency: 'EUR' } }),
  ]));
  await page.getByText(/One EUR is reckoned at 1.09 unit/).first().waitFor();
  expect(await rate.count()).toBe(0);
  await close();
});
