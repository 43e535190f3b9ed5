import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { launchBrowser } from '../browser.ts';
import { sharedPage } from './shared-page.ts';
import { YardServer } from './yard-server.ts';

/** A browser, and a server with the invented yard behind the built page; there while the tests of a file run. */
export interface PageBench {
  readonly browser: Browser;
  readonly yard: YardServer;
  /** Folder of the built page. */
  readonly built: string;
}

/** Sets the bench up before the tests of the file that calls it, and clears it away behind them. */
export function pageBench(): PageBench {
  let standing: PageBench | undefined;
  const now = (): PageBench => {
    if (standing === undefined) throw new Error('the bench stands only while tests run');
    return standing;
  };
  beforeAll(async () => {
    const [browser, built] = await Promise.all([launchBrowser(), sharedPage()]);
    standing = { browser, yard: await YardServer.start(built), built };
  });
  afterAll(async () => {
    await standing?.browser.close();
    await standing?.yard.die();
  });
  return { get browser() { return now().browser; }, get yard() { return now().yard; }, get built() { return now().built; } };
}
