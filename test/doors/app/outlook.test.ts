import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from '../browser.ts';
import { sharedPage } from './shared-page.ts';
import { PHONE, watchedPage } from './watched-page.ts';
import { YardServer } from './yard-server.ts';

/** What the browser itself notes for each request to a server that is not there. */
const AWAY = /ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET|status of 503|ERR_FAILED/;
const SHEETS = [['What it forges', /Largest bar|None today/], ['Oiling round', /Not before the oil way|Not started yet|Oil these/], ['Power', /Current not known|Full load|About .* A at full load/], ['Ground and neighbours', /moves .* under a full blow|not known yet/], ['Moving it', /It weighs .* goes over at a lean of/]] as const;

let browser: Browser;
let built: string;
beforeAll(async () => {
  [browser, built] = await Promise.all([launchBrowser(), sharedPage()]);
});
afterAll(async () => {
  await browser.close();
});

async function lookThrough(page: Page): Promise<void> {
  for (const [name, answer] of SHEETS) {
    await page.getByRole('button', { name }).tap();
    await page.getByText(answer).first().waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), name).toBeLessThanOrEqual(0);
  }
}

test('under a thumb every sheet of the outlook answers first, and oil points are ticked off', { timeout: 120_000 }, async () => {
  const yard = await YardServer.start(built);
  const { page, context, problems } = await watchedPage(browser, yard.address, PHONE);
  await page.goto(`${yard.address}/hammer/${await yard.hammer('SF-40')}/outlook`);
  await page.getByText('Tick them off').waitFor();
  await lookThrough(page);
  await page.getByRole('button', { name: 'Oiling round' }).tap();
  const points = page.locator('li button');
  const boxes = await Promise.all((await points.all()).map((one) => one.boundingBox()));
  expect(boxes.length).toBeGreaterThan(8);
  for (const box of boxes) expect(box?.height ?? 0).toBeGreaterThanOrEqual(48);
  await points.nth(0).tap();
  await points.nth(1).tap();
  await page.getByText(`2 of ${boxes.length} oiled`).waitFor();
  await points.nth(1).tap();
  await page.getByText(`1 of ${boxes.length} oiled`).waitFor();
  await page.getByRole('button', { name: 'Begin the round anew' }).tap();
  await page.getByText(`0 of ${boxes.length} oiled`).waitFor();
  for (const paper of ['capacity', 'oiling', 'power', 'ground', 'moving', 'report', 'card']) {
    await page.goto(`${yard.address}/paper/${await yard.hammer('SF-40')}/${paper}?units=metric`);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), paper).toBeLessThanOrEqual(0);
  }
  expect(problems).toEqual([]);
  await context.close();
  await yard.die();
});

test('door and floor on the way are asked on the sheet of the move, reckoned with, and printed with it', { timeout: 120_000 }, async () => {
  const yard = await YardServer.start(built);
  const { page, context, problems } = await watchedPage(browser, yard.address, PHONE);
  await page.goto(`${yard.address}/hammer/${await yard.hammer('SF-40')}/outlook`);
  await page.getByRole('button', { name: 'Moving it' }).tap();
  await page.getByText('The door was not measured.').waitFor();
  const reckon = page.getByRole('button', { name: 'Reckon with these' });
  await page.getByLabel('Door, width in the clear').fill('30');
  await reckon.tap();
  await page.getByText('Door: its height is missing; both are wanted.').waitFor();
  await page.getByLabel('Door, height in the clear').fill('80 in');
  await page.getByLabel('What the floor carries').fill('strong');
  await reckon.tap();
  await page.getByText(/^Floor: .*strong/).waitFor();
  await page.getByLabel('What the floor carries').fill('150 psf');
  await reckon.tap();
  await page.getByText(/the door/).filter({ hasText: /goes through|too wide/ }).first().waitFor();
  await page.getByText(/of the rating stated/).first().waitFor();
  expect(await page.getByRole('link', { name: 'Print this sheet: PDF' }).getAttribute('href')).toMatch(/&door=0\.762x2\.032&floor=71\d\d/);
  await page.reload();
  await page.getByRole('button', { name: 'Moving it' }).tap();
  expect(await page.getByLabel('What the floor carries').inputValue()).toBe('150 psf');
  await page.getByText(/of the rating stated/).first().waitFor();
  expect(problems).toEqual([]);
  await context.close();
  await yard.die();
});

test('without its server the outlook still answers', { timeout: 120_000 }, async () => {
  const yard = await YardServer.start(built);
  const { page, context, problems } = await watchedPage(browser, yard.address, PHONE, AWAY);
  const hammer = await yard.hammer('WH-65');
  await page.goto(`${yard.address}/hammer/${hammer}/elevation`);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (;;) {
      const [name] = await caches.keys();
      if (name !== undefined && (await (await caches.open(name)).keys()).some(({ url }) => url.includes('outlook-worker')) && navigator.serviceWorker.controller !== null) return;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  });
  await yard.die();
  await page.goto(`${yard.address}/hammer/${hammer}/outlook`);
  await page.getByText('Tick them off').waitFor();
  await lookThrough(page);
  expect(problems).toEqual([]);
  await context.close();
});
