import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchBrowser } from './browser.ts';

const server = createServer((_request, response) => {
  response.setHeader('content-type', 'text/html; charset=utf-8');
  response.end(`<!doctype html><meta name="viewport" content="width=device-width"><title>bench</title>
    <button onclick="this.textContent = 'pressed 3⁄8 in'">press</button>`);
});
let address = '';
beforeAll(async () => {
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});
afterAll(() => {
  server.close();
});

test.each([
  ['the one found for the tests', false],
  ['the one inside the registry package, with its own libraries and fonts', true],
])('a browser shows a page, is pressed, and takes a picture: %s', async (_which, packaged) => {
  if (packaged && process.arch !== 'x64') return console.log(`skipped: the packaged browser is for x64 processors, this is ${process.arch}`);
  const browser = await launchBrowser({ packaged });
  try {
    console.log(`${packaged ? 'packaged' : 'found'}: Chromium ${browser.version()}`);
    const page = await browser.newPage({ viewport: { width: 390, height: 700 } });
    await page.goto(address);
    await page.getByRole('button', { name: 'press' }).click();
    expect(await page.getByRole('button').textContent()).toBe('pressed 3⁄8 in');
    const picture = await page.screenshot();
    expect(picture.subarray(1, 4).toString()).toBe('PNG');
    expect(picture.readUInt32BE(16)).toBe(390);
    // Without fonts a PDF is a few hundred bytes with nothing on it.
    expect((await page.pdf()).length).toBeGreaterThan(4000);
  } finally {
    await browser.close();
  }
});
