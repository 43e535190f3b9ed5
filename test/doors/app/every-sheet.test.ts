import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AxeResults } from 'axe-core';
import { describe, expect, test } from 'vitest';
import { HOME } from './built-page.ts';
import { pageBench } from './page-bench.ts';
import { LAPTOP, PHONE, watchedPage } from './watched-page.ts';

const AXE = readFileSync(join(HOME, 'node_modules/axe-core/axe.min.js'), 'utf8');
const AXE_RUN = `axe.run({ resultTypes: ['violations'] })`;
const bench = pageBench();

const SHEETS = ['elevation', 'round', 'findings', 'motion', 'work', 'outlook', 'papers', 'part/keys', 'part/lower-die', 'part/upper-die', 'part/main-bearings'];

describe.each(['day', 'night'])('by %s light', (light) => {
  test.each([['on a phone', PHONE], ['on a laptop', LAPTOP]] as const)('%s every sheet can be used by everybody, fits its width, and says nothing on the console', { timeout: 240_000 }, async (_words, device) => {
    const { page, context, problems } = await watchedPage(bench.browser, bench.yard.address, device);
    await page.addInitScript((wanted) => localStorage.setItem('tupwise.light', wanted), light);
    const against: string[] = [];
    const look = async (path: string): Promise<void> => {
      await page.goto(`${bench.yard.address}${path}`);
      await page.locator('h1').waitFor();
      await page.locator('footer nav').waitFor({ state: 'attached' });
      await open(path);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (wide > 0) against.push(`${path}: ${wide} px wider than the screen`);
      await page.evaluate(AXE);
      const { violations } = await page.evaluate<AxeResults>(AXE_RUN);
      for (const { id, impact, nodes } of violations) if (impact === 'serious' || impact === 'critical') against.push(`${path}: ${impact} ${id}: ${nodes.slice(0, 3).map((node) => `${node.target.join(' ')} ${node.failureSummary ?? ''}`).join(' | ')}`);
    };
    /** Opens what is folded, so that it is looked at too. */
    const open = async (path: string): Promise<void> => {
      if (path.includes('/part/')) for (const row of (await page.locator('.place .row').all()).slice(0, 2)) await row.click();
      if (path.endsWith('/findings')) await page.getByRole('button', { name: 'Why?' }).first().click();
      if (path.endsWith('/work')) await page.locator('ol .row').first().click();
      if (path === '/') await page.getByRole('button', { name: 'Enrol a hammer' }).click();
      const fold = page.locator('footer .fold');
      if (await fold.isVisible()) await fold.click();
    };
    await look('/');
    for (const tag of ['SF-40', 'TW-150']) {
      const hammer = await bench.yard.hammer(tag);
      for (const sheet of tag === 'SF-40' ? SHEETS : ['elevation', 'part/helve']) await look(`/hammer/${hammer}/${sheet}`);
    }
    for (const paper of ['report', 'card']) {
      await page.goto(`${bench.yard.address}/paper/${await bench.yard.hammer('SF-40')}/${paper}`);
      await page.evaluate(AXE);
      const { violations } = await page.evaluate<AxeResults>(AXE_RUN);
      for (const { id, impact, nodes } of violations) if (impact === 'serious' || impact === 'critical') against.push(`${paper}: ${impact} ${id}: ${nodes[0]?.target.join(' ')} ${nodes[0]?.failureSummary}`);
    }
    expect(against).toEqual([]);
    expect(problems).toEqual([]);
    await context.close();
  });
});
