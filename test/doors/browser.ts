import { chromium, type Browser } from 'playwright-core';
import { BROWSER_FLAGS, ensureBrowser } from '../../scripts/browser.mjs';

/**
 * Starts a headless browser for a test; close it afterwards.
 * @param only `packaged`: the one that comes inside the registry package, even where the machine has its own
 */
export async function launchBrowser(only: { readonly packaged?: boolean } = {}): Promise<Browser> {
  const { executablePath, env } = await ensureBrowser(only);
  return chromium.launch({ executablePath, args: [...BROWSER_FLAGS], env: { ...(process.env as Record<string, string>), ...env } });
}
