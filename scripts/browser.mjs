// A browser for the tests: the machine's own Chromium where there is one, else the one that comes inside a registry package.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { HOME, KEPT } from './folders.mjs';
import { run, say, Sentence } from './plain-words.mjs';

/** Quiet and alone: no sandbox (tests run as root in containers), no graphics card, no calls home. */
export const BROWSER_FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const NOTE = join(KEPT, 'browser.json');
/** Where the package's browser is unpacked: a folder of its own, since it takes any file named chromium in it for itself. */
const UNPACKED = join(KEPT, 'browser');

/**
 * A browser that was seen to show a page on this machine; sets one up where there is none yet.
 * @param {{ packaged?: boolean }} [only] `packaged`: the registry package's, even where the machine has one
 * @returns {Promise<{ executablePath: string, env: Record<string, string> }>}
 */
export async function ensureBrowser(only = {}) {
  const named = process.env['TUPWISE_BROWSER'];
  if (named && !only.packaged) {
    if (await shows({ executablePath: named, env: {} })) return { executablePath: named, env: {} };
    throw new Sentence(`TUPWISE_BROWSER names a browser that shows no page; allowed is a Chromium: ${named}`);
  }
  if (!only.packaged) {
    const noted = readNote();
    if (noted) return noted;
    for (const executablePath of ['/usr/bin/chromium', '/usr/bin/google-chrome-stable'])
      if (existsSync(executablePath) && (await shows({ executablePath, env: {} }))) return note({ executablePath, env: {} });
  }
  const packaged = await unpack();
  if (await shows(packaged)) return only.packaged ? packaged : note(packaged);
  const missing = missingLibraries(packaged);
  if (only.packaged) throw new Sentence(`the packaged browser shows no page on this machine; it lacks: ${missing}`);
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    say(`the packaged browser lacks ${missing}; installing the system's Chromium`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    await run('reading the list of system packages', 'apt-get', ['update', '-q'], { env });
    await run('installing Chromium', 'apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-liberation'], { env });
    if (await shows({ executablePath: '/usr/bin/chromium', env: {} })) return note({ executablePath: '/usr/bin/chromium', env: {} });
  }
  throw new Sentence(`no browser for the tests shows a page on this machine (the packaged one lacks ${missing}). Install one with: sudo apt-get install -y chromium`);
}

/** Unpacks the registry package's browser with the system libraries and fonts that it brings. */
async function unpack() {
  const executablePath = join(UNPACKED, 'chromium');
  const libraries = join(UNPACKED, 'al2023', 'lib');
  const fonts = join(UNPACKED, 'fonts-here.conf');
  const whole = join(UNPACKED, 'whole');
  if (!existsSync(whole)) {
    say('unpacking a browser for the tests, about 200 MB; this happens once');
    rmSync(UNPACKED, { recursive: true, force: true });
    mkdirSync(UNPACKED, { recursive: true });
    // The package unpacks its libraries only where it is told that it runs on a bare cloud machine, and all of it into TMPDIR.
    const env = { ...process.env, TMPDIR: UNPACKED, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs22.x' };
    const script = `import('@sparticuz/chromium').then(({ default: chromium }) => chromium.executablePath())`;
    await run('unpacking the browser', process.execPath, ['-e', script], { cwd: HOME, env });
    writeFileSync(fonts, fontsAt([join(UNPACKED, 'fonts'), '/usr/share/fonts']));
    writeFileSync(whole, '');
  }
  return { executablePath, env: { LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: fonts } };
}

/**
 * The package's own list of font folders names folders of a cloud machine.
 * @param {readonly string[]} folders
 */
function fontsAt(folders) {
  const lines = folders.map((folder) => `  <dir>${folder}</dir>`).join('\n');
  return `<?xml version="1.0"?>\n<!DOCTYPE fontconfig SYSTEM "fonts.dtd">\n<fontconfig>\n${lines}\n  <cachedir>${join(UNPACKED, 'fonts-cache')}</cachedir>\n</fontconfig>\n`;
}

/**
 * Whether the browser really shows a page with letters on it: without any font the letters take no room.
 * @param {{ executablePath: string, env: Record<string, string> }} browser
 */
async function shows({ executablePath, env }) {
  // Not before it is wanted: the packages may just have been fetched.
  const { chromium } = await import('playwright-core');
  const variables = /** @type {Record<string, string>} */ ({ ...process.env, ...env });
  const browser = await chromium.launch({ executablePath, args: [...BROWSER_FLAGS], env: variables, timeout: 60_000 }).catch(() => undefined);
  if (browser === undefined) return false;
  try {
    const page = await browser.newPage();
    await page.setContent('<span>shown</span>');
    return ((await page.locator('span').boundingBox()) ?? { width: 0 }).width > 10;
  } catch {
    return false;
  } finally {
    await browser.close();
  }
}

/** @param {{ executablePath: string, env: Record<string, string> }} browser */
function missingLibraries({ executablePath, env }) {
  const { stdout } = spawnSync('ldd', [executablePath], { env: { ...process.env, ...env }, encoding: 'utf8' });
  const names = [...(stdout ?? '').matchAll(/^\s*(\S+) => not found/gm)].map((match) => match[1]);
  return names.length > 0 ? names.join(', ') : 'something that it does not name';
}

/** @returns {{ executablePath: string, env: Record<string, string> } | undefined} */
function readNote() {
  try {
    const noted = JSON.parse(readFileSync(NOTE, 'utf8'));
    return existsSync(noted.executablePath) ? noted : undefined;
  } catch {
    return undefined;
  }
}

/**
 * @param {{ executablePath: string, env: Record<string, string> }} browser
 */
function note(browser) {
  mkdirSync(KEPT, { recursive: true });
  writeFileSync(NOTE, JSON.stringify(browser));
  say(`the tests use the browser ${browser.executablePath}`);
  return browser;
}
