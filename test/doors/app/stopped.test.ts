import { expect, test } from 'vitest';
import { needsRun, partsFor } from '../../../src/hammer/index.ts';
import { pageBench } from './page-bench.ts';
import { PHONE, watchedPage } from './watched-page.ts';

const bench = pageBench();
/** Words that send somebody to a running hammer. */
const INVITES = /run (it (?!through)|light|for|five|idle)|full tread|light tread|motor running|a few blows|idle five|bump the motor/i;

test('no sheet of a hammer that something stops asks anybody to run it', { timeout: 180_000 }, async () => {
  const hammer = await bench.yard.hammer('SF-40');
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  let closed = 0;
  for (const part of partsFor('coil-and-toggle').filter((one) => [...one.looks, ...one.places].some(({ id }) => needsRun(id)))) {
    await page.goto(`${bench.yard.address}/hammer/${hammer}/part/${part.id}`);
    await page.getByRole('heading', { level: 1, name: part.name.us }).waitFor();
    for (const row of await page.locator('.place .row').all()) await row.dispatchEvent('click');
    const how = await page.locator('.look > p:first-of-type, .place form > p:first-of-type').allTextContents();
    closed += how.filter((words) => words.startsWith('Only a running hammer answers this')).length;
    for (const words of how) expect(words, part.id).not.toMatch(INVITES);
  }
  expect(closed).toBeGreaterThan(30);
  await page.goto(`${bench.yard.address}/hammer/${hammer}/sound`);
  await page.getByText('only a recording of an earlier run is taken').waitFor();
  expect(await page.getByRole('button', { name: /^Record/ }).count()).toBe(0);
  expect(await page.locator('main').innerText()).not.toMatch(/seconds of steady running/);
  expect(problems).toEqual([]);
  await context.close();
});

test('what is seen of a cold part at work is asked for once nothing cold stops the hammer', { timeout: 60_000 }, async () => {
  const { page, context } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await page.goto(`${bench.yard.address}/hammer/${await bench.yard.hammer('WH-65')}/part/coil-spring`);
  await page.getByText('run for a minute').waitFor();
  await context.close();
});

test('a trial is not marked as run while something stops the hammer, and the reason is said', { timeout: 60_000 }, async () => {
  const hammer = await bench.yard.hammer('SF-40');
  const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, PHONE);
  await page.addInitScript(() => localStorage.setItem('tupwise.by', 'Ada Quill'));
  await page.goto(`${bench.yard.address}/hammer/${hammer}/work`);
  await page.getByRole('button', { name: /Run the trial/ }).tap();
  for (const state of ['Started', 'Done']) {
    await page.getByRole('button', { name: state, exact: true }).tap();
    await expect.poll(() => page.getByRole('alert').textContent()).toMatch(new RegExp(`It cannot be ${state.toLowerCase()} today: something stops this hammer.*Hold of dies and keys`));
    expect(await page.getByRole('button', { name: state, exact: true }).getAttribute('aria-pressed')).toBe('false');
  }
  await page.getByRole('button', { name: 'Planned', exact: true }).tap();
  await expect.poll(() => page.getByRole('button', { name: 'Planned', exact: true }).getAttribute('aria-pressed')).toBe('true');
  expect(problems).toEqual([]);
  await context.close();
});
