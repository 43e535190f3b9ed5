import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import { launchBrowser } from '../../test/doors/browser.ts';
import { builtPage } from '../../test/doors/app/built-page.ts';
import { YardServer } from '../../test/doors/app/yard-server.ts';

export interface PageScript {
  readonly name: string;
  readonly bytes: number;
  readonly gzip: number;
  readonly brotli: number;
}

/** Every script that a browser asks for when it opens a hammer's elevation, the one that keeps the page included. */
export async function pageScripts(): Promise<readonly PageScript[]> {
  const [browser, built] = await Promise.all([launchBrowser(), builtPage()]);
  const yard = await YardServer.start(built.path);
  try {
    const names = new Set<string>(['/service-worker.js']);
    const page = await browser.newPage();
    page.on('request', (request) => {
      if (request.resourceType() === 'script') names.add(new URL(request.url()).pathname);
    });
    await page.goto(`${yard.address}/hammer/${await yard.hammer('WH-65')}/elevation`);
    await page.locator('.drawing .part').first().waitFor();
    await page.waitForLoadState('networkidle');
    return await Promise.all([...names].map(async (name) => {
      const body = Buffer.from(await (await fetch(yard.address + name)).arrayBuffer());
      return { name, bytes: body.length, gzip: gzipSync(body, { level: 9 }).length, brotli: brotliCompressSync(body, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } }).length };
    }));
  } finally {
    await browser.close();
    await yard.die();
    built.remove();
  }
}
