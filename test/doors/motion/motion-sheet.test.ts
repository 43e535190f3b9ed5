import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { pageBench } from '../app/page-bench.ts';
import { LAPTOP, PHONE, watchedPage } from '../app/watched-page.ts';
import { START } from '../../../src/stores/index.ts';

const bench = pageBench();

const GONE = /NaN|Infinity|undefined|\bnull\b|\[object/;

async function openMotion(page: Page, tag: string): Promise<void> {
  await page.addInitScript(() => localStorage.setItem('tupwise.by', 'Ada Quill'));
  await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer(tag)}/motion`);
  await page.locator('.moving-figure').waitFor();
}

/** Frames a second that the page's own clock gives while the hammer moves; a figure to report, not to hold a shared machine to. */
const frameRate = (page: Page): Promise<number> =>
  page.evaluate('new Promise((done) => { let n = 0; const from = performance.now(); requestAnimationFrame(function next(now) { n += 1; if (now - from > 2000) done((n * 1000) / (now - from)); else requestAnimationFrame(next); }); })');

describe.each([['a phone', PHONE], ['a laptop', LAPTOP]] as const)('the motion sheet on %s', (name, device) => {
  test('names the knock, moves, follows the nut, fills a map, and leads to a clean setting', { timeout: 180_000 }, async () => {
    const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, device);
    await openMotion(page, 'WH-65');
    const found = page.locator('section[aria-labelledby="as-found"]');
    await found.getByText(/The ram knocks on what carries it \d+ ms before every blow/).waitFor();
    await page.getByText(/A tenth slower: the knock is gone/).waitFor();
    await page.getByText(/The spring is due, not the nut/).waitFor();

    // It moves: the rod is somewhere else a little later.
    const rod = page.locator('[data-moving="connecting-rod"]');
    const before = await rod.getAttribute('d');
    await expect.poll(() => rod.getAttribute('d')).not.toBe(before);
    console.log(`${name}: ${(await frameRate(page)).toFixed(1)} frames a second`);

    // The nut, tighter by half turns: the proposal stands beside what was found, and the knock goes.
    const proposed = page.locator('section[aria-labelledby="as-proposed"]');
    const tighter = page.getByRole('button', { name: 'Spring nut: length of the spring: less' });
    for (let turn = 0; turn < 5; turn += 1) await tighter.click();
    await proposed.getByText(/One clean blow a turn/).waitFor();
    await page.getByText(/2 1\/2 turns tighter/).first().waitFor();
    await expect.poll(() => found.textContent()).toContain('The ram knocks on what carries it');

    // The same by typing, and what cannot be is said beside the field.
    const entry = page.getByRole('textbox', { name: /Spring nut/ });
    await entry.fill('seven and a bit');
    await entry.press('Enter');
    await page.locator('#try-nut-said').getByText(/seven and a bit/).waitFor();
    await entry.fill('9 in');
    await entry.press('Enter');
    await page.locator('#try-nut-said').getByText(/The spring is slack with the links level/).waitFor();
    await entry.fill('7 1/16 in');
    await entry.press('Enter');
    await expect.poll(() => proposed.count()).toBe(0);

    // A small map to its end; a field of it becomes the proposal.
    await page.getByLabel('Fields a side').selectOption('24');
    await page.getByRole('button', { name: 'Draw the map' }).click();
    await page.getByText(/Map complete: 24 by 24/).waitFor({ timeout: 120_000 });
    await page.getByText(/Nearest clean setting:/).waitFor();
    await page.getByRole('button', { name: 'Propose it' }).click();
    await proposed.getByText(/One clean blow a turn/).waitFor();
    const map = page.getByRole('application', { name: /Map/ });
    await map.focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('Enter');
    await page.locator('figure figcaption').waitFor();

    expect(await page.locator('main').innerText()).not.toMatch(GONE);
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wider).toBeLessThanOrEqual(0);
    expect(problems).toEqual([]);
    await context.close();
  });

  test.each(['DT-90', 'TW-150', 'SF-40', 'KB-50'])('%s is drawn, moves and is told without a number that is none', { timeout: 90_000 }, async (tag) => {
    const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, device);
    await openMotion(page, tag);
    await page.getByText(/Blow energy (about )?\d/).first().waitFor();
    await page.getByRole('heading', { name: 'Beside what was read' }).waitFor();
    expect(await page.locator('main').innerText()).not.toMatch(GONE);
    expect(await page.locator('main').innerHTML()).not.toMatch(/NaN|Infinity/);
    expect(problems).toEqual([]);
    await context.close();
  });
});

test('says how much was assumed, and leads to what is best read next; a reason leads to its readings', { timeout: 90_000 }, async () => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await openMotion(page, 'WH-65');
  await page.getByText(/\d+ of the \d+ values that this rests on were not read on this hammer/).waitFor();
  await page.getByText(/Blow energy about \d+ ft·lbf: half of \d+ likenesses lie above it, nine in ten between/).waitFor();
  await page.getByText('Drawn is one likeness of this hammer').waitFor();
  await page.getByRole('link', { name: /^Measure it: arm length, pivot to spring/ }).tap();
  await page.getByRole('heading', { level: 1, name: 'toggle arms' }).waitFor();
  const open = page.locator('.place.open');
  await open.first().getByText('Measure from the centre of the pivot pin up to where the spring').waitFor();
  expect(await open.first().evaluate((form) => form.getBoundingClientRect().top < innerHeight)).toBe(true);

  await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer('WH-65')}/findings`);
  const finding = page.locator('article', { has: page.getByRole('heading', { name: 'Spring travel left' }) });
  await finding.getByRole('button', { name: 'Why?' }).tap();
  expect(await finding.locator('.why').innerText()).not.toMatch(/coil-spring\.|spring\.travel/);
  await finding.getByRole('link', { name: 'shortest length seen running' }).tap();
  await page.getByRole('heading', { level: 1, name: 'coil spring' }).waitFor();
  await page.locator('.place.open').getByText('Film from the side').waitFor();
  expect(problems).toEqual([]);
  await context.close();
});

test('where motion is not wanted nothing moves by itself, and it can be turned by hand', { timeout: 60_000 }, async () => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, { ...LAPTOP, reducedMotion: 'reduce' });
  await openMotion(page, 'KB-50');
  const ram = page.locator('[data-moving="ram"]');
  const still = await ram.getAttribute('d');
  await page.waitForTimeout(700);
  expect(await ram.getAttribute('d')).toBe(still);
  const hand = page.getByRole('slider', { name: /Turn it by hand/ });
  await hand.focus();
  for (let press = 0; press < 12; press += 1) await page.keyboard.press('ArrowRight');
  expect(await ram.getAttribute('d')).not.toBe(still);
  expect(problems).toEqual([]);
  await context.close();
});

test('sliding through absurd settings never hangs the page, and stale answers do not stay', { timeout: 90_000 }, async () => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, LAPTOP);
  await openMotion(page, 'WH-65');
  const speed = page.getByRole('slider', { name: 'Speed without slip' });
  await speed.focus();
  for (let press = 0; press < 60; press += 1) await page.keyboard.press(press % 20 < 10 ? 'ArrowRight' : 'ArrowLeft');
  await page.keyboard.press('Home');
  const entry = page.getByRole('textbox', { name: /Rod length/ });
  await entry.fill('2 in');
  await entry.press('Enter');
  await page.locator('#try-rod-said').getByText(/The rod cannot pass the crank/).waitFor();
  await page.locator('section[aria-labelledby="as-proposed"] .refused').first().waitFor();
  // The page still answers at once.
  const began = Date.now();
  await page.getByRole('button', { name: 'Back to as found' }).click();
  expect(Date.now() - began).toBeLessThan(3000);
  await expect.poll(() => page.locator('section[aria-labelledby="as-proposed"]').count()).toBe(0);
  expect(await page.locator('main').innerText()).not.toMatch(GONE);
  expect(problems).toEqual([]);
  await context.close();
});

test('what was set at the machine is entered as a setting, and the sheet follows', { timeout: 60_000 }, async () => {
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, LAPTOP);
  await openMotion(page, 'WH-65');
  const entry = page.getByRole('textbox', { name: /Rest gap/ });
  await entry.fill('1 in');
  await entry.press('Enter');
  await page.getByRole('button', { name: 'Enter as set' }).click();
  await expect.poll(() => page.locator('section[aria-labelledby="as-proposed"]').count()).toBe(0);
  await expect.poll(() => entry.inputValue()).toBe('1 in');
  const kept = (await bench.yard.store.readSince(START)).entries.filter((one) => one.kind === 'setting' && (one.body as { place: string }).place === 'upper-die.rest-gap');
  expect(kept.at(-1)?.body).toMatchObject({ asWritten: '1 in', before: { asWritten: '7/8 in' } });
  expect(problems).toEqual([]);
  await context.close();
});
