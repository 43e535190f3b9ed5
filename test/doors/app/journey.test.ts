import { spawnSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startServer } from '../../../src/server/index.ts';
import { launchBrowser } from '../browser.ts';
import { temporaryFolder } from '../stores/temporary-folder.ts';
import { HOME } from './built-page.ts';
import { sharedPage } from './shared-page.ts';
import { keys, thumb, type Hands } from './hands.ts';
import { LAPTOP, PHONE, watchedPage } from './watched-page.ts';

const PDF_READER = '/usr/bin/pdftotext';
const folder = temporaryFolder();
let browser: Browser;
let built: string;
const start = () => startServer({ folder: join(folder.path, 'yard'), port: 0, appFolder: built, examplesFolder: join(HOME, 'examples'), say: () => undefined });
let server: Awaited<ReturnType<typeof start>>;

beforeAll(async () => {
  [browser, built] = await Promise.all([launchBrowser(), sharedPage()]);
  server = await start();
});
afterAll(async () => {
  await browser.close();
  await server.close();
  folder.remove();
});

/** The verdict as the title block says it. */
const verdict = (page: Page): Promise<string> => page.evaluate(() => [...document.querySelectorAll('footer .fold .verdict, footer .strong dd')].map((one) => one.textContent ?? '').find((words) => words !== '') ?? '');
const sheet = async (page: Page, hands: Hands, name: string, heading = name): Promise<void> => {
  const fold = page.locator('footer .fold');
  if (await fold.isVisible()) await hands.press(fold);
  await hands.press(page.getByRole('navigation', { name: 'Sheets' }).getByRole('link', { name }));
  await page.getByRole('heading', { level: 1, name: heading }).waitFor();
};
const opened = (page: Page, name: string, at = '') => page.locator('.place', { has: page.getByRole('button', { name: new RegExp(`^${name}${at} (not measured|\\d)`) }) });

async function enterReading(page: Page, hands: Hands, name: string, text: string, how?: string): Promise<string> {
  const place = opened(page, name);
  await hands.press(place.getByRole('button').first());
  if (how !== undefined) await hands.choose(page.getByLabel(how, { exact: true }));
  await hands.write(page.getByLabel(name, { exact: true }), text);
  const changes = await page.locator('.preview').textContent();
  await hands.press(page.getByRole('button', { name: 'Enter it' }));
  await page.locator('form').first().waitFor({ state: 'detached' });
  return changes ?? '';
}

/** Opens a paper as the page offers it, prints it, and reads the print. */
async function printed(page: Page, hands: Hands, name: string): Promise<{ readonly shown: string; readonly onPaper: string | undefined }> {
  const [paper] = await Promise.all([page.context().waitForEvent('page'), hands.press(page.getByRole('link', { name: `On screen: ${name}`, exact: true }))]);
  await paper.waitForLoadState();
  const shown = (await paper.locator('body').textContent()) ?? '';
  const pdf = await paper.pdf({ format: 'Letter', preferCSSPageSize: false });
  await paper.close();
  if (!existsSync(PDF_READER)) return { shown, onPaper: undefined };
  const file = join(folder.path, 'paper.pdf');
  writeFileSync(file, pdf);
  return { shown, onPaper: spawnSync(PDF_READER, ['-layout', file, '-'], { encoding: 'utf8' }).stdout };
}

test.each([
  ['by thumb on a phone', PHONE, thumb, 'J-PHONE'],
  ['by keys alone on a laptop', LAPTOP, keys, 'J-KEYS'],
] as const)('from an empty hammer to a printed report, %s', { timeout: 240_000 }, async (_words, device, handsOf, tag) => {
  const address = server.address.replace(/\/$/, '');
  const { page, context, problems } = await watchedPage(browser, address, device);
  const hands = handsOf(page);
  await page.goto(address);

  // Enrol, first with what cannot be right.
  await hands.press(page.getByRole('button', { name: 'Enrol a hammer' }));
  await hands.write(page.getByLabel('Who is entering?'), 'Ada Quill');
  await hands.write(page.getByLabel('Tag on the hammer'), tag);
  await hands.write(page.getByLabel('Ram weight class, as cast or told'), '50 furlongs');
  await hands.choose(page.getByRole('radio', { name: /^coil spring/i }));
  await hands.press(page.getByRole('button', { name: 'Enrol it' }));
  await expect.poll(() => page.getByRole('alert').textContent()).toContain('furlongs');
  expect(await page.getByLabel('Ram weight class, as cast or told').inputValue()).toBe('50 furlongs');
  await hands.write(page.getByLabel('Ram weight class, as cast or told'), '50 lb');
  await hands.press(page.getByRole('button', { name: 'Enrol it' }));
  await page.getByRole('heading', { level: 1, name: 'Survey round' }).waitFor();
  expect(await verdict(page)).toBe('Not known yet');

  // Every question that the verdict waits for, cold ones before the running one.
  const questions = page.locator('.gates .look');
  const count = await questions.count();
  expect(count).toBeGreaterThan(9);
  expect(await page.locator('.gates .stage').allTextContents()).toEqual([expect.stringContaining('Power off and locked'), expect.stringContaining('Then running')]);
  let asked = 0;
  for (let index = 0; index < count; index += 1) {
    const question = questions.nth(index);
    const before = await question.locator('h3').textContent();
    // The keys do not hold at first: the hammer must stand down for it.
    const answer = before === 'Are both dies and both keys tight?' ? question.getByRole('button', { name: /one stays loose/ }) : question.locator('.answers button').first();
    await hands.press(answer);
    // Once the keys are loose nothing is to be run: the answer is taken only as one of an earlier run.
    const earlier = question.getByRole('button', { name: 'Yes, an earlier run' });
    if (before !== 'Are both dies and both keys tight?' && (await verdict(page)) === 'Stand down' && (await earlier.count()) > 0) {
      expect(await question.locator('.stop').textContent()).toMatch(/Something stops this hammer: Hold of dies and keys/);
      expect(await answer.getAttribute('aria-pressed')).toBe('false');
      await hands.press(earlier);
      asked += 1;
    }
    await expect.poll(() => answer.getAttribute('aria-pressed')).toBe('true');
    // It stays where it was, and says at once what it changed.
    expect(await questions.nth(index).locator('h3').textContent()).toBe(before);
    expect(await questions.nth(index).locator('.after').textContent()).toMatch(/→/);
  }
  expect(asked).toBeGreaterThan(0);
  expect(await verdict(page)).toBe('Stand down');
  const loose = page.locator('.look', { hasText: 'Are both dies and both keys tight?' });
  await hands.press(loose.locator('.answers button').first());
  await expect.poll(() => loose.locator('.after').textContent()).toMatch(/Verdict: Stand down → Not known yet/);

  // The last gate is a reading: wrong ones are told beside the field, and what was typed stays.
  const gap = 'gap between the dies at bottom dead centre';
  await hands.press(opened(page, gap).getByRole('button').first());
  const field = page.getByLabel(gap, { exact: true });
  const said = page.locator('.said');
  for (const [wrong, words] of [['40 cubits', 'cubits'], ['40 in', 'at most'], ['-1/4 in', 'least'], ['about an inch', '']] as const) {
    await hands.write(field, wrong);
    await hands.press(page.getByRole('button', { name: 'Enter it' }));
    await expect.poll(() => said.textContent(), { message: wrong }).toContain(words === '' ? wrong : words);
    expect(await field.inputValue()).toBe(wrong);
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.preview').count()).toBe(0);
  }
  await hands.write(field, '7/8');
  // Nothing is taken before somebody says what it was read with; then that tool stays in the hand.
  await hands.press(page.getByRole('button', { name: 'Enter it' }));
  await expect.poll(() => page.getByRole('alert').textContent()).toContain('Choose the tool');
  await hands.choose(page.getByLabel('steel rule', { exact: true }));
  await expect.poll(() => said.textContent()).toContain('Taken as 7/8 ± 1/32 in.');
  expect(await page.locator('.preview').textContent()).toMatch(/Verdict: Not known yet → Fit/);
  await hands.press(page.getByRole('button', { name: 'Enter it' }));
  await expect.poll(() => verdict(page)).toMatch(/^Fit/);

  // Touch the lower die on the drawing and measure it, in shop notation of several kinds.
  await sheet(page, hands, 'Elevation', tag);
  await page.locator('.drawing .part[data-part="lower-die"]').first().waitFor();
  await hands.press(page.getByRole('region', { name: 'Parts' }).getByRole('link', { name: /lower die/ }));
  await page.getByRole('heading', { level: 1, name: 'lower die' }).waitFor();
  await enterReading(page, hands, 'lower die height', '3"', 'as it was made');
  const lower = await enterReading(page, hands, 'lower die height', '1 7/8');
  expect(lower).toContain('Nothing thinner than 3/8 in between the dies.');
  await hands.press(page.getByRole('link', { name: /upper die/ }).first());
  await page.getByRole('heading', { level: 1, name: 'upper die' }).waitFor();
  await enterReading(page, hands, 'upper die height', '3.000 in', 'as it was made');
  expect(await enterReading(page, hands, 'upper die height', '2-3/4"')).toContain('1 3/8');
  expect(await verdict(page)).toBe('Fit within limits');

  // Why? Down to the reading, who took it and with what, and to the source of the rule.
  await sheet(page, hands, 'Findings');
  const finding = page.locator('article', { has: page.getByRole('heading', { name: 'Height lost by the dies', exact: true }) });
  await hands.press(finding.getByRole('button', { name: 'Why?' }));
  const why = (await finding.locator('.why').textContent()) ?? '';
  for (const words of ['Rule:', 'lower die height: 1 7/8 in', 'by Ada Quill', 'Source:', 'common practice, no source', 'Not agreed in the trade.']) expect(why).toContain(words);
  expect(why).toMatch(/measured on \d{4}-\d\d-\d\d by Ada Quill with/);

  // A price, and a job done: what it cured wants measuring again.
  await sheet(page, hands, 'Worksheet');
  await hands.press(page.getByRole('button', { name: /Make or buy a new lower die/ }));
  await hands.write(page.getByLabel('Amount'), 'a lot');
  await hands.press(page.getByRole('button', { name: 'Enter the price' }));
  await expect.poll(() => page.locator('form:has(button:text("Enter the price")) [aria-live]').textContent()).toContain('not a number of money');
  expect(await page.getByLabel('Amount').inputValue()).toBe('a lot');
  await hands.write(page.getByLabel('Amount'), '240');
  await hands.press(page.getByRole('button', { name: 'Enter the price' }));
  await expect.poll(() => page.getByRole('button', { name: /Make or buy a new lower die/ }).textContent()).toContain('price heard');
  await hands.press(page.getByRole('button', { name: 'Done', exact: true }));
  await expect.poll(() => verdict(page)).not.toBe('Stand down');
  await sheet(page, hands, 'Findings');
  await hands.press(page.getByRole('button', { name: /^Not known yet/ }));
  expect((await page.locator('article', { has: page.getByRole('heading', { name: 'Height lost by the lower die' }) }).textContent()) ?? '').toMatch(/measure.* again/i);

  // Papers.
  await sheet(page, hands, 'Papers');
  const report = await printed(page, hands, 'Report');
  for (const text of [report.shown, report.onPaper]) {
    if (text === undefined) continue;
    for (const words of [tag, 'Ada Quill', 'lower die height', '1 7/8']) expect(text.replace(/\s+/g, ' ')).toContain(words);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  }
  const card = await printed(page, hands, 'Limits card');
  expect(card.onPaper ?? card.shown).toContain('Never die on die cold.');
  if (report.onPaper === undefined) console.log(`the print was not read: ${PDF_READER} is not on this machine`);
  expect(problems).toEqual([]);
  await context.close();
});

test('what was entered is there when the program is started again', async () => {
  await server.close();
  server = await start();
  const { page, context, problems } = await watchedPage(browser, server.address.replace(/\/$/, ''), LAPTOP);
  await page.goto(server.address);
  for (const tag of ['J-PHONE', 'J-KEYS']) await page.getByRole('heading', { name: tag }).waitFor();
  expect(problems).toEqual([]);
  await context.close();
});
