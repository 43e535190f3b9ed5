import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { START } from '../../../src/stores/index.ts';
import { pageBench } from './page-bench.ts';
import { PHONE, watchedPage } from './watched-page.ts';

const bench = pageBench();
/** The smallest picture there is: one white point, PNG. */
const PNG = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAG7buVgAAAABJRU5ErkJggg==', 'base64');

async function part(tag: string, id: string): Promise<{ page: Page; hammer: string; close: () => Promise<void> }> {
  const hammer = await bench.yard.hammer(tag);
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await page.addInitScript(() => localStorage.setItem('tupwise.by', 'Ada Quill'));
  await page.goto(`${bench.yard.address}/hammer/${hammer}/part/${id}`);
  return { page, hammer, close: async () => {
    expect(problems).toEqual([]);
    await context.close();
  } };
}
const newest = async (hammer: string, kind: string): Promise<Record<string, unknown> | undefined> =>
  (await bench.yard.store.readSince(START)).entries.filter((entry) => entry.hammer === hammer && entry.kind === kind).at(-1)?.body as Record<string, unknown> | undefined;

test('a crack is asked after there and then: where it is, with a photograph; and may be left open', { timeout: 60_000 }, async () => {
  const { page, hammer, close } = await part('KB-50', 'frame');
  const look = page.locator('.look', { hasText: 'Is there a crack in the load path' });
  const finding = page.locator('article', { has: page.getByRole('heading', { name: /crack/i }) }).first();
  await look.getByRole('button', { name: 'a crack is there' }).tap();
  await look.getByRole('form', { name: 'Where is it?' }).getByRole('button', { name: 'Not now' }).tap();
  expect(await look.getByRole('form').count()).toBe(0);
  expect(await finding.textContent()).toContain('Where it is was not said, and there is no photograph of it.');
  await look.getByRole('button', { name: 'say where it is, or add a photograph' }).tap();
  await look.getByLabel('Where is it, and how far does it reach?').fill('left side of the throat, 3 in long');
  // A telephone that is told to take a photograph may keep its gallery shut: both ways are there.
  expect(await look.locator('input[type=file]').evaluateAll((inputs) => inputs.map((input) => input.getAttribute('capture')))).toEqual(['environment', null]);
  await look.locator('input[type=file]').nth(1).setInputFiles({ name: 'throat.png', mimeType: 'image/png', buffer: PNG });
  await look.getByRole('img').waitFor();
  await look.getByRole('button', { name: 'Enter where it is' }).tap();
  await look.getByRole('form').waitFor({ state: 'detached' });
  expect(await finding.textContent()).toContain('a crack is there (left side of the throat, 3 in long)');
  expect(await finding.textContent()).not.toMatch(/not said|no photograph/);
  await expect.poll(() => newest(hammer, 'sighting')).toMatchObject({ look: 'frame.crack', answer: 'present', words: 'left side of the throat, 3 in long', photographs: [expect.stringMatching(/^[0-9a-f]{64}$/)] });
  expect(await newest(hammer, 'photograph')).toMatchObject({ part: 'frame', mediaType: 'image/png' });
  // A clean answer asks nothing more.
  await look.getByRole('button', { name: 'looked at clean, none found' }).tap();
  await expect.poll(() => look.getByRole('button', { name: 'looked at clean, none found' }).getAttribute('aria-pressed')).toBe('true');
  expect(await look.getByRole('form').count()).toBe(0);
  await close();
});

test('no tool is given: it is chosen, and the next reading has it and says so', { timeout: 60_000 }, async () => {
  const { page, hammer, close } = await part('WH-65', 'lower-die');
  const place = (name: string) => page.locator('.place', { has: page.getByRole('button', { name: new RegExp(`^${name} (not measured|\\d)`) }) });
  const height = place('lower die height');
  await height.getByRole('button').first().tap();
  const tools = height.getByRole('group', { name: /^With what\?/ });
  expect(await tools.getByRole('radio', { checked: true }).count()).toBe(0);
  await height.getByLabel('lower die height', { exact: true }).fill('2 11/16 in');
  await height.getByText('Read as 2 11/16 in; how far it may be off follows from the tool.').waitFor();
  await height.getByRole('button', { name: 'Enter it' }).tap();
  expect(await height.getByRole('alert').textContent()).toContain('Choose the tool');
  await tools.getByLabel('steel rule').tap();
  await height.getByText('Taken as 2 11/16 ± 1/32 in.').waitFor();
  await height.getByRole('button', { name: 'Enter it' }).tap();
  await height.locator('form').waitFor({ state: 'detached' });
  await expect.poll(() => newest(hammer, 'reading')).toMatchObject({ place: 'lower-die.height', tool: 'rule' });
  const width = place('lower die width at the seat');
  await width.getByRole('button').first().tap();
  expect(await width.getByRole('group', { name: /The same as the reading before/ }).getByRole('radio', { checked: true }).count()).toBe(1);
  expect(await width.getByLabel('steel rule').isChecked()).toBe(true);
  await close();
});
