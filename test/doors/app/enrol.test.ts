import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { START } from '../../../src/stores/index.ts';
import { pageBench } from './page-bench.ts';
import { PHONE, watchedPage } from './watched-page.ts';

const bench = pageBench();

const enrolled = async (tag: string): Promise<readonly { ramClass: { quantity: { value: number }; asWritten: string }; family: string }[]> =>
  (await bench.yard.store.readSince(START)).entries.flatMap((entry) => (entry.kind === 'enrol' && (entry.body as { tag: string }).tag === tag ? [entry.body as never] : []));

async function opened(): Promise<{ page: Page; close: () => Promise<void> }> {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await page.addInitScript(() => localStorage.setItem('tupwise.by', 'Ada Quill'));
  await page.goto(bench.yard.address);
  await page.getByRole('button', { name: 'Enrol a hammer' }).tap();
  return { page, close: async () => {
    expect(problems).toEqual([]);
    await context.close();
  } };
}
const put = (page: Page) => page.getByRole('button', { name: 'Enrol it' }).tap();
const ram = (page: Page) => page.getByLabel('Ram weight class, as cast or told');

test('what is wrong is told beside its field and by its name, and the family is chosen, not given', { timeout: 60_000 }, async () => {
  const { page, close } = await opened();
  expect(await page.getByRole('radio', { checked: true }).count()).toBe(0);
  await put(page);
  expect(await page.getByRole('alert').allTextContents()).toEqual([expect.stringMatching(/^Tag: /), expect.stringMatching(/^Ram weight class: /), expect.stringMatching(/^What drives the ram: /)]);
  await page.getByLabel('Tag on the hammer').fill('E-1');
  await ram(page).fill('fifty');
  await page.getByRole('radio', { name: /^coil spring/i }).tap();
  await put(page);
  expect(await page.getByRole('alert').allTextContents()).toEqual([expect.stringMatching(/^Ram weight class: .*fifty/)]);
  expect(await ram(page).evaluate((field) => field === document.activeElement)).toBe(true);
  expect(await enrolled('E-1')).toEqual([]);
  await close();
});

test('a weight without a unit is said as it is read, and can be the other one', { timeout: 60_000 }, async () => {
  const { page, close } = await opened();
  await page.getByLabel('Tag on the hammer').fill('E-2');
  await ram(page).fill('50');
  await page.getByText('Read as 50 lb: no unit is written.').waitFor();
  await page.getByRole('button', { name: 'No, 50 kg' }).tap();
  expect(await ram(page).inputValue()).toBe('50 kg');
  expect(await page.getByText('no unit is written').count()).toBe(0);
  await page.getByRole('radio', { name: /^helve/i }).tap();
  await put(page);
  await page.getByRole('heading', { level: 1, name: 'Survey round' }).waitFor();
  await expect.poll(async () => (await enrolled('E-2'))[0]).toMatchObject({ ramClass: { quantity: { value: 50 }, asWritten: '50 kg' }, family: 'helve' });
  await close();
});

test('a tag that a hammer of the yard has is not enrolled again without a word', { timeout: 60_000 }, async () => {
  const { page, close } = await opened();
  await page.getByLabel('Tag on the hammer').fill('sf 40');
  await ram(page).fill('40 lb');
  await page.getByRole('radio', { name: /^coil spring/i }).tap();
  await put(page);
  expect(await page.getByRole('alert').textContent()).toMatch(/SF-40 is in the yard already: 40 lb/);
  expect(await enrolled('sf 40')).toEqual([]);
  await page.getByRole('button', { name: 'It is another hammer' }).tap();
  await put(page);
  await page.getByRole('heading', { level: 1, name: 'Survey round' }).waitFor();
  await expect.poll(async () => (await enrolled('sf 40')).length).toBe(1);
  await page.goto(bench.yard.address);
  await page.getByRole('button', { name: 'Enrol a hammer' }).tap();
  await page.getByLabel('Tag on the hammer').fill('WH-65');
  await page.getByRole('button', { name: 'Open that one' }).tap();
  await page.getByRole('heading', { level: 1, name: 'WH-65' }).waitFor();
  await close();
});
