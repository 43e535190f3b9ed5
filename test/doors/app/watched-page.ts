import type { Browser, BrowserContext, Page } from 'playwright-core';

/** Devices that the page is used on: a phone in one hand, and a laptop worked by its keys. */
export const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };
export const LAPTOP = { viewport: { width: 1366, height: 900 } };

export interface WatchedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors on the console or in the page, and requests to anywhere but the yard's own server. */
  readonly problems: string[];
}

/**
 * A page that may reach the yard's own server and nothing else; whatever else it tries is stopped and noted.
 * @param whileAway errors of the console that are passed over: a browser itself reports each request to a dead server
 */
export async function watchedPage(browser: Browser, address: string, device: object, whileAway?: RegExp): Promise<WatchedPage> {
  const context = await browser.newContext({ ...device, serviceWorkers: 'allow' });
  const problems: string[] = [];
  await context.route('**/*', (route) => {
    const url = route.request().url();
    if (url.startsWith(`${address}/`) || /^(blob|data):/.test(url)) return route.continue();
    problems.push(`the page asked for something that is not its own: ${url}`);
    return route.abort();
  });
  const page = await context.newPage();
  const watch = (one: Page): void => {
    one.on('console', (message) => {
      if (message.type() === 'error' && !(whileAway?.test(message.text()) ?? false)) problems.push(`console: ${message.text()}`);
    });
    one.on('pageerror', (failure) => problems.push(`page: ${failure.message}`));
  };
  watch(page);
  context.on('page', watch);
  return { page, context, problems };
}
