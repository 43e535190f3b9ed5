import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { START } from '../../../src/stores/index.ts';
import { launchBrowser } from '../browser.ts';
import { sharedPage } from './shared-page.ts';
import { PHONE, watchedPage } from './watched-page.ts';
import { YardServer } from './yard-server.ts';

/** What the browser itself notes for each request to a server that is not there. */
const AWAY = /ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET|status of 503|ERR_FAILED/;

let browser: Browser;
let built: string;
beforeAll(async () => {
  [browser, built] = await Promise.all([launchBrowser(), sharedPage()]);
});
afterAll(async () => {
  await browser.close();
});

const status = (page: Page) => page.evaluate(() => document.querySelector('footer .kept dd')?.textContent ?? '');
/** The page and the yard are kept on the device. */
async function kept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (;;) {
      const [name] = await caches.keys();
      if (name !== undefined && (await (await caches.open(name)).keys()).length > 10 && navigator.serviceWorker.controller !== null) return;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  });
}
async function enter(page: Page, name: string, text: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${name} (not measured|\\d)`) }).tap();
  await page.getByLabel(name, { exact: true }).fill(text);
  await page.locator('[data-tools] input').first().check();
  await page.getByRole('button', { name: 'Enter it' }).tap();
  await page.locator('.after').first().waitFor();
}

test('a server that dies while readings are entered loses none of them, and the page opens again without it', { timeout: 120_000 }, async () => {
  const yard = await YardServer.start(built);
  const { page, context, problems } = await watchedPage(browser, yard.address, PHONE, AWAY);
  const hammer = await yard.hammer('WH-65');
  const before = (await yard.store.readSince(START)).entries.length;
  await page.goto(`${yard.address}/hammer/${hammer}/part/lower-die`);
  await page.getByRole('button', { name: /^lower die height (not measured|\d)/ }).tap();
  await page.getByLabel('lower die height', { exact: true }).fill('2 11/16 in');
  await page.locator('[data-tools] input').first().check();
  await page.getByRole('button', { name: 'Enter it' }).tap();
  // Nobody has said who they are: asked once, before the first entry; going back enters nothing and loses nothing.
  await page.getByRole('dialog', { name: 'Who is entering this?' }).getByRole('button', { name: 'go back' }).tap();
  await page.getByText('It was not entered; a name, or an entry without one').waitFor();
  expect(await page.getByLabel('lower die height', { exact: true }).inputValue()).toBe('2 11/16 in');
  await page.getByRole('button', { name: 'Enter it' }).tap();
  await page.getByLabel('Name, as it shall stand on the report').fill('Ada Quill');
  await page.getByRole('button', { name: 'Enter it under this name' }).tap();
  await page.locator('.after').first().waitFor();
  await expect.poll(() => status(page)).toBe('kept');
  await kept(page);

  // The form is open and the figure half typed when the server dies.
  await page.getByRole('button', { name: /^lower die width at the seat/ }).tap();
  await page.getByLabel('lower die width at the seat', { exact: true }).fill('3 3/3');
  await yard.die();
  await page.getByLabel('lower die width at the seat', { exact: true }).fill('3 3/32');
  await page.getByRole('button', { name: 'Enter it' }).tap();
  await expect.poll(() => status(page)).toBe('1 waiting on this device');
  expect(await page.getByRole('button', { name: /^lower die width at the seat/ }).textContent()).toContain('3 3/32 in');
  expect(await page.locator('footer .fold').textContent()).toContain('1 waiting');

  // Reloaded while apart: page, yard and reading are there.
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'lower die' }).waitFor();
  expect(await page.getByRole('button', { name: /^lower die width at the seat/ }).textContent()).toContain('3 3/32 in');
  expect(await page.getByRole('button', { name: /^lower die height \d/ }).textContent()).toContain('2 11/16 in');
  await expect.poll(() => status(page)).toBe('1 waiting on this device');
  await enter(page, 'lower die face hollow', '12 thou');
  await expect.poll(() => status(page)).toBe('2 waiting on this device');
  // Another sheet, one whose file was never opened before, and another hammer of the yard.
  await page.goto(`${yard.address}/hammer/${hammer}/work`);
  await page.getByRole('heading', { level: 1, name: 'Worksheet' }).waitFor();
  await page.goto(yard.address);
  await page.getByRole('heading', { name: /^KB-50/ }).waitFor();
  // A paper says in plain words that it needs the server.
  await page.goto(`${yard.address}/paper/${hammer}/report`);
  expect(await page.locator('body').textContent()).toContain('Papers are made by the server, and it does not answer.');
  await page.goto(`${yard.address}/hammer/${hammer}/part/lower-die`);
  expect((await yard.store.readSince(START)).entries).toHaveLength(before + 1);

  // It comes back: everything is sent, once.
  await yard.live();
  await expect.poll(() => status(page), { timeout: 20_000 }).toBe('kept');
  const { entries } = await yard.store.readSince(START);
  expect(entries.slice(before).map((entry) => (entry.body as { asWritten: string }).asWritten)).toEqual(['2 11/16 in', '3 3/32 in', '12 thou']);
  // The name was asked once, and kept through the reload without a server.
  expect(entries.slice(before).map((entry) => entry.by)).toEqual(['Ada Quill', 'Ada Quill', 'Ada Quill']);
  expect(await page.evaluate(() => localStorage.getItem('tupwise.waiting'))).toBe('[]');
  expect(problems).toEqual([]);
  await context.close();
  await yard.die();
});

test('one entry that the server refuses does not hold up the others, and is not lost', { timeout: 60_000 }, async () => {
  const yard = await YardServer.start(built);
  const { page, context, problems } = await watchedPage(browser, yard.address, PHONE, /409/);
  const hammer = await yard.hammer('WH-65');
  const { entries } = await yard.store.readSince(START);
  const mine = entries.filter((entry) => entry.hammer === hammer && entry.kind === 'reading');
  const clash = { ...mine[0], by: 'somebody else' };
  const good = { ...mine[0], id: `01ZZZZZZZZ${mine[0]?.id.slice(10)}` };
  await page.addInitScript((waiting) => localStorage.setItem('tupwise.waiting', waiting), JSON.stringify([clash, good]));
  await page.goto(`${yard.address}/hammer/${hammer}/papers`);
  await expect.poll(() => status(page)).toBe('1 refused by the server');
  expect((await yard.store.readSince(START)).entries.at(-1)).toEqual(good);
  expect(JSON.parse((await page.evaluate(() => localStorage.getItem('tupwise.waiting'))) ?? '')).toEqual([clash]);
  await expect.poll(() => page.locator('main .chalk').first().textContent()).toContain('The server refuses:');
  expect(problems).toEqual([]);
  await context.close();
  await yard.die();
});

test('a yard that was begun anew does not mix with what the device kept of the old one', { timeout: 60_000 }, async () => {
  const yard = await YardServer.start(built);
  const { page, context, problems } = await watchedPage(browser, yard.address, PHONE, AWAY);
  await page.goto(yard.address);
  await page.getByRole('heading', { name: /^KB-50/ }).waitFor();
  await kept(page);
  await yard.die();
  const empty = new YardServer(built, Number(new URL(yard.address).port));
  await empty.live();
  await page.reload();
  await page.getByText('No hammer is enrolled yet.').waitFor();
  await page.reload();
  await page.getByText('No hammer is enrolled yet.').waitFor();
  expect(problems).toEqual([]);
  await context.close();
  await empty.die();
});
