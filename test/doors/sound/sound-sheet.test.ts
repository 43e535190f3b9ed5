import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { randomBytes } from 'node:crypto';
import type { AxeResults } from 'axe-core';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BROWSER_FLAGS, ensureBrowser } from '../../../scripts/browser.mjs';
import { START } from '../../../src/stores/index.ts';
import { HOME } from '../app/built-page.ts';
import { sharedPage } from '../app/shared-page.ts';
import { LAPTOP, PHONE, watchedPage } from '../app/watched-page.ts';
import { YardServer } from '../app/yard-server.ts';
import type { BeatClass } from '../../../src/derived/motion/index.ts';
import { HAMMERS } from '../../sound-views/model-hammers.ts';
import { FFMPEG, MadeRecordings } from './made-recordings.ts';

const AXE = readFileSync(join(HOME, 'node_modules/axe-core/axe.min.js'), 'utf8');
const PATIENCE = 60_000;
const made = new MadeRecordings();
let browser: Browser;
let built: string;
let yard: YardServer;
let hammer: string;
let knocking: ReturnType<MadeRecordings['hammer']>;
let clean: ReturnType<MadeRecordings['hammer']>;
beforeAll(async () => {
  const { executablePath, env } = await ensureBrowser();
  // A microphone that hums and beeps, and is always allowed.
  const args = [...BROWSER_FLAGS, '--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];
  [browser, built] = await Promise.all([chromium.launch({ executablePath, args, env: { ...(process.env as Record<string, string>), ...env } }), sharedPage()]);
  yard = await YardServer.start(built);
  hammer = await yard.hammer('WH-65');
  knocking = made.hammer('die-re-strike');
  clean = made.hammer('clean');
}, 180_000);
afterAll(async () => {
  await browser.close();
  await yard.die();
  made.remove();
});

const chooser = (page: Page) => page.locator('section:has(#take-title) input[type="file"]');
async function sheetOn(device: object, light = 'day'): ReturnType<typeof watchedPage> {
  const watched = await watchedPage(browser, yard.address, device);
  await watched.page.addInitScript((wanted) => localStorage.setItem('tupwise.light', wanted), light);
  await watched.page.goto(`${yard.address}/hammer/${hammer}/sound`);
  await watched.page.getByRole('heading', { name: 'Sound of WH-65' }).waitFor();
  return watched;
}
async function listen(page: Page, path: string): Promise<string> {
  await chooser(page).setInputFiles(path);
  await page.locator('div.heard .headline').waitFor({ timeout: PATIENCE });
  return page.locator('div.heard').innerText();
}
const numbersIn = (text: string, pattern: RegExp): number[] => (pattern.exec(text) ?? []).slice(1).map(Number);

describe.each([['on a phone', PHONE], ['on a laptop', LAPTOP]] as const)('%s', (_words, device) => {
  it('judges the program’s own hammer through a noisy room rightly: rate, place and delay of the second sound', { timeout: 180_000 }, async () => {
    const { page, context, problems } = await sheetOn(device);
    const said = await listen(page, knocking.path);
    const [rate] = numbersIn(said, /Regular blows, ([\d.]+) ± [\d.]+ a minute/);
    expect(Math.abs(rate! - knocking.run.blowsPerSecond * 60)).toBeLessThan(0.2);
    const [delay] = numbersIn(said, /Second sound: ([\d.]+) ± [\d.]+ ms after the blow/);
    expect(Math.abs(delay! / 1000 - knocking.run.secondSounds[0]!.delay)).toBeLessThan(0.0025);
    expect(said).toMatch(/Candidate: the dies strike the work a second time/);
    expect(said).toMatch(/lost between motor and crank/);
    expect(said).toMatch(/176 to 340 a minute, by its pulleys/);

    const again = await listen(page, clean.path);
    await page.getByText(/no second sound is heard/).first().waitFor({ timeout: PATIENCE });
    expect(again).toBeDefined();
    expect(await page.locator('div.heard').innerText()).toMatch(/One would have been noticed/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    expect(problems).toEqual([]);
    await context.close();
  });

  it.each(['day', 'night'])('can be used by everybody, by %s', { timeout: 180_000 }, async (light) => {
    const { page, context, problems } = await sheetOn(device, light);
    const look = async (): Promise<readonly string[]> => {
      await page.evaluate(AXE);
      const { violations } = await page.evaluate<AxeResults>('axe.run()');
      return violations.filter(({ impact }) => impact === 'serious' || impact === 'critical').map(({ id, nodes }) => `${id}: ${nodes.slice(0, 3).map((node) => `${node.target.join(' ')} ${node.failureSummary ?? ''}`).join(' | ')}`);
    };
    expect(await look()).toEqual([]);
    await listen(page, knocking.path);
    await page.getByRole('button', { name: 'Yes, this is the hammer' }).click();
    await page.locator('section:has(#cure-title) input[type="file"]').setInputFiles(clean.path);
    await page.locator('.cure').waitFor({ timeout: PATIENCE });
    await page.getByRole('button', { name: 'next blow' }).click();
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await look()).toEqual([]);
    const small = await page.locator('main button, main label:has(input[type="radio"]), main label:has(input[type="checkbox"]), main .pick').evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 47.5).map((one) => one.textContent ?? ''));
    expect(small.filter((words) => words.trim() !== 'somebody else')).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    expect(problems).toEqual([]);
    await context.close();
  });
});

/** What must be read on the phone's page of each of the model's hammers, besides its rate. */
const JUDGED: readonly (readonly [BeatClass, readonly RegExp[]])[] = [
  ['clean', [/no second sound is heard/, /One would have been noticed/]],
  ['die-re-strike', [/Second sound: 7[4-6](\.\d)? ± [\d.]+ ms after the blow/, /Candidate: the dies strike the work a second time/]],
  // Its two sounds are equally loud here: which is the blow cannot be heard, and both readings are said.
  ['joint-knock', [/Second sound: 10[1-4](\.\d)? ± [\d.]+ ms (after|before) a blow/, /each with a second sound 10[1-4] ms after it or before the next/, /which of them is the blow cannot be told/, /Candidate: the linkage knocks on its guide/]],
  ['upper-stop-knock', [/4[3-6](\.\d)?( ± [\d.]+)? ms before/, /Candidate: the ram knocks on what carries it/]],
  ['gallop', [/hard and soft by turns/, /no second sound is heard/]],
];

it.each(JUDGED)('on a phone’s width the program’s own hammer is judged rightly: %s', { timeout: 120_000 }, async (beatClass, words) => {
  const { page, context, problems } = await sheetOn(PHONE);
  const { path, run } = made.hammer(beatClass, 30, 2);
  const drive = HAMMERS.find((one) => one.beatClass === beatClass)!.spec.driveSpeed / (2 * Math.PI);
  await page.getByLabel(/^Rate to look for/).fill(String(Math.round(drive * 60)));
  const said = await listen(page, path);
  expect(Math.abs(numbersIn(said, /Regular blows, ([\d.]+) ± [\d.]+ a minute/)[0]! - run.blowsPerSecond * 60)).toBeLessThan(0.2);
  for (const one of words) expect(said).toMatch(one);
  if (beatClass !== 'gallop') expect(said).not.toMatch(/hard and soft/);
  expect(problems).toEqual([]);
  await context.close();
});

describe('what a person does with it', () => {
  it('hears, adds, moves and takes out marks, and the rate follows the marks', { timeout: 180_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    await listen(page, knocking.path);
    const canvas = page.locator('canvas');
    await canvas.scrollIntoViewIfNeeded();
    // A touch on the wave, on a mark, plays that blow.
    const [seen, from] = await page.getByRole('img', { name: /^Wave and pitch/ }).getAttribute('aria-label').then((label) => [/, ([\d.]+) s long/, /from ([\d.]+) s/].map((one) => Number(one.exec(label ?? '')?.[1])) as [number, number]);
    const wave = (await canvas.boundingBox())!;
    await page.evaluate(() => {
      const counted = window as unknown as { played: number };
      counted.played = 0;
      const start = AudioBufferSourceNode.prototype.start;
      AudioBufferSourceNode.prototype.start = function (...when: Parameters<typeof start>): void {
        counted.played += 1;
        start.apply(this, when);
      };
    });
    await page.getByRole('button', { name: 'next blow' }).tap();
    const heardAt = Number(/at ([\d.]+) s/.exec((await page.locator('.about p').first().textContent()) ?? '')?.[1]);
    await page.touchscreen.tap(wave.x + ((heardAt - from) / seen) * wave.width, wave.y + 60);
    await expect.poll(() => page.evaluate(() => (window as unknown as { played: number }).played)).toBe(2);
    await page.getByRole('button', { name: 'blow before' }).tap();
    await page.getByRole('button', { name: 'next blow' }).tap();
    await page.getByText(/^Blow \d+ of 124/).waitFor();
    await page.getByRole('button', { name: 'no blow: take it out' }).tap();
    await page.getByText(/From your marks: 252\.\d ± 0\.1 a minute/).waitFor();
    expect(await page.locator('.own').innerText()).toMatch(/123 blows, 1 missed.*Worked out again from the marks as you put them/s);
    // The worker reads the whole recording again from the marks, and the page says so.
    await page.getByText(/The second sound, the folded turn and the figures here are worked out from your marks/).waitFor({ timeout: PATIENCE });
    expect(await page.locator('div.heard').innerText()).toMatch(/123 blows heard, 1 (stroke )?missed/);
    await page.getByRole('button', { name: 'mark a blow here' }).tap();
    await page.getByText(/^Blow \d+ of 124/).waitFor();
    // Put back where it was: the marks are the program's own again.
    await page.locator('.own').waitFor({ state: 'detached' });

    // A foot dragged by half a turn: one mark is wrong now, and the scatter shows it.
    await page.getByRole('button', { name: 'closer' }).tap();
    const box = (await canvas.boundingBox())!;
    const span = Number(/, ([\d.]+) s long/.exec((await page.getByRole('img', { name: /^Wave and pitch/ }).getAttribute('aria-label')) ?? '')?.[1]);
    const start = Number(/from ([\d.]+) s/.exec((await page.getByRole('img', { name: /^Wave and pitch/ }).getAttribute('aria-label')) ?? '')?.[1]);
    await page.getByRole('button', { name: 'next blow' }).tap();
    const at = Number(/at ([\d.]+) s/.exec((await page.locator('.about p').first().textContent()) ?? '')?.[1]);
    const x = box.x + (box.width * (at - start)) / span;
    const foot = (await canvas.boundingBox())!;
    await page.mouse.move(x, foot.y + 240);
    await page.mouse.down();
    await page.mouse.move(x + 15, foot.y + 240, { steps: 3 });
    await page.mouse.move(x + 30, foot.y + 240, { steps: 3 });
    await page.mouse.up();
    await page.getByText(/From your marks/).waitFor();
    const moved = Number(/at ([\d.]+) s/.exec((await page.locator('.about p').first().textContent()) ?? '')?.[1]);
    expect(Math.abs(moved - at - (30 * span) / box.width)).toBeLessThan(0.03);
    await page.getByRole('button', { name: '2 ms later' }).tap();
    expect(Number(/at ([\d.]+) s/.exec((await page.locator('.about p').first().textContent()) ?? '')?.[1]) - moved).toBeCloseTo(0.002, 3);
    await page.getByRole('button', { name: 'back to the program’s marks' }).tap();
    await page.locator('.own').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'whole' }).tap();
    expect(await page.getByRole('img', { name: /^Wave and pitch/ }).getAttribute('aria-label')).toMatch(/from 0.0 s, 30.0 s long/);
    expect(problems).toEqual([]);
    await context.close();
  });

  it('enters rate and recording only once the hammer is known again, and lays a later one over the kept one', { timeout: 180_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    const before = (await yard.store.readSince(START)).entries.length;
    await listen(page, knocking.path);
    expect(await page.getByRole('button', { name: 'Enter it' }).count()).toBe(0);
    await page.getByRole('button', { name: 'No', exact: true }).tap();
    await page.getByText('Then nothing is entered.').waitFor();
    await page.getByRole('button', { name: 'Yes, this is the hammer' }).tap();
    await page.getByLabel('light tread').tap();
    await page.getByText('enters no reading').waitFor();
    await page.getByLabel('full tread on wood').tap();
    await page.getByLabel('Who is entering?').fill('Ada Quill');
    await page.getByRole('button', { name: 'Enter it' }).tap();
    await page.getByText(/Entered: blows a minute at full tread.*; the recording\./).waitFor({ timeout: PATIENCE });
    await expect.poll(async () => (await yard.store.readSince(START)).entries.length).toBe(before + 2);
    const entries = (await yard.store.readSince(START)).entries.slice(-2);
    const reading = entries.find((one) => one.kind === 'reading')!.body as { place: string; tool: string; asWritten: string; standing: string; quantity: { value: number } };
    expect(reading).toMatchObject({ place: 'running.rate', tool: 'recording', standing: 'measured' });
    expect(Math.abs(reading.quantity.value - knocking.run.blowsPerSecond)).toBeLessThan(0.005);
    const recording = entries.find((one) => one.kind === 'recording')!.body as { sha256: string; mediaType: string; run: string };
    expect(recording).toMatchObject({ mediaType: 'audio/wav', run: 'full' });
    expect(Buffer.from((await yard.store.getBlob(recording.sha256))!.bytes).equals(readFileSync(knocking.path))).toBe(true);

    await listen(page, clean.path);
    await page.getByText(/no second sound is heard/).first().waitFor({ timeout: PATIENCE });
    await page.getByRole('button', { name: 'lay over' }).first().tap();
    await page.locator('.cure').waitFor({ timeout: PATIENCE });
    expect(await page.locator('.cure').innerText()).toMatch(/second sound 75 ms after the blow is not heard now|^Gone/m);
    expect(problems).toEqual([]);
    await context.close();
  });

  it('records from the microphone with a countdown and a meter, and says when it is too loud', { timeout: 120_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    await page.getByRole('button', { name: 'Record 20 s' }).tap();
    await page.getByText(/Recording in [321]/).waitFor();
    await page.getByText(/s left/).waitFor({ timeout: 10_000 });
    await page.waitForTimeout(2500);
    expect(await page.locator('.running svg').getAttribute('aria-label')).toMatch(/^Level/);
    await page.getByRole('button', { name: 'Stop now' }).tap();
    await page.locator('div.heard .headline').waitFor({ timeout: PATIENCE });
    expect(await page.locator('div.heard').innerText()).toMatch(/A WAV recording, \d(\.\d)? s read/);
    expect(await page.getByRole('link', { name: 'Save this recording' }).getAttribute('download')).toBe('WH-65 sound.wav');
    await page.getByRole('button', { name: 'Record 20 s' }).tap();
    await page.getByRole('button', { name: 'Leave it' }).tap();
    await page.getByRole('button', { name: 'Record 20 s' }).waitFor();
    expect(problems).toEqual([]);
    await context.close();
  });

  it('without a microphone says so and leaves the file button', async () => {
    const watched = await watchedPage(browser, yard.address, PHONE);
    await watched.page.addInitScript(() => Object.defineProperty(navigator, 'mediaDevices', { value: undefined }));
    await watched.page.goto(`${yard.address}/hammer/${hammer}/sound`);
    await watched.page.getByText('gives no microphone to a page').waitFor();
    await watched.page.getByText('Choose a recording').waitFor();
    expect(watched.problems).toEqual([]);
    await watched.context.close();
  });

  it('on a device that starts no sound, or while the browser still asks, says so and can be left', { timeout: 60_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    await page.evaluate(() => (AudioContext.prototype.resume = () => new Promise<void>(() => undefined)));
    await page.getByRole('button', { name: 'Record 20 s' }).tap();
    await page.getByText('This device starts no sound for a page. Record with the phone’s own recorder and choose the file.').waitFor({ timeout: 10_000 });
    await page.evaluate(() => (navigator.mediaDevices.getUserMedia = () => new Promise<MediaStream>(() => undefined)));
    await page.getByRole('button', { name: 'Record 20 s' }).tap();
    await page.getByText('The browser asks whether this page may use the microphone').waitFor();
    await page.getByRole('button', { name: 'leave it' }).tap();
    expect(await page.getByRole('button', { name: 'Record 20 s' }).isEnabled()).toBe(true);
    expect(problems).toEqual([]);
    await context.close();
  });

  it('can be stopped while it listens', { timeout: 120_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    const long = made.hammer('clean', 240);
    await chooser(page).setInputFiles(long.path);
    await page.getByText('Listening').waitFor({ timeout: PATIENCE });
    await page.getByRole('button', { name: 'stop', exact: true }).tap();
    await page.getByText('Stopped.').waitFor();
    expect(await page.locator('div.heard').count()).toBe(0);
    await listen(page, clean.path);
    expect(problems).toEqual([]);
    await context.close();
  });
});

describe('what it is given', () => {
  it('answers what is no recording with a sentence', { timeout: 180_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    const wav = readFileSync(clean.path);
    const given: readonly (readonly [string, RegExp])[] = [
      [made.write('text.wav', 'A list: bolts, oil, belts and files.\n'.repeat(60)), /This file is a text, whatever its name says/],
      [made.write('empty.wav', ''), /This file is empty/],
      [made.write('noise.mp3', randomBytes(50_000)), /cannot read its sound/],
      [made.write('head-only.wav', wav.subarray(0, 44)), /holds no sound/],
      [made.write('cut.m4a', Buffer.concat([Buffer.from('\0\0\0\x20ftypM4A \0\0\0\0M4A mp42isom', 'latin1'), randomBytes(20_000)])), /MPEG-4 file .*cannot read its sound/],
      [made.write('picture.wav', Buffer.from('\x89PNG\r\n\x1a\n', 'latin1')), /a picture/],
    ];
    for (const [path, words] of given) {
      await chooser(page).setInputFiles(path);
      await page.locator('.refusal').filter({ hasText: words }).waitFor({ timeout: PATIENCE });
    }
    // Cut in the middle: what there is is read, and it is said.
    expect(await listen(page, made.write('cut.wav', wav.subarray(0, 1_200_000)))).toMatch(/cut short/);
    await chooser(page).setInputFiles(made.hours('silence.wav', 0.01));
    await page.locator('div.heard').filter({ hasText: /blows|beat/i }).waitFor({ timeout: PATIENCE });
    expect(problems).toEqual([]);
    await context.close();
  });

  it('reads the beginning of three hours and no more', { timeout: 180_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    const said = await listen(page, made.hours('three-hours.wav', 3));
    expect(said).toMatch(/lasts 180 minutes; only its first 5 were read/);
    expect(said).toMatch(/Regular blows, 240\.\d/);
    expect(problems).toEqual([]);
    await context.close();
  });

  it.runIf(FFMPEG)('opens what phones make, old ones too, and the beginning of hours', { timeout: 240_000 }, async () => {
    const { page, context, problems } = await sheetOn(PHONE);
    const files = [
      made.as(knocking.path, 'voice.m4a', ['-c:a', 'aac', '-b:a', '64k']), made.as(knocking.path, 'note.webm', ['-c:a', 'libopus', '-b:a', '32k', '-ar', '48000']),
      made.as(knocking.path, 'song.mp3', ['-c:a', 'libmp3lame', '-b:a', '64k']), made.as(knocking.path, 'quick.mov', ['-c:a', 'aac']), made.as(knocking.path, 'whole.flac', []), made.as(knocking.path, 'old.3gp', ['-c:a', 'aac', '-ar', '16000']),
    ];
    for (const path of files) {
      await chooser(page).setInputFiles(path);
      await page.locator('div.heard .headline').waitFor({ timeout: PATIENCE });
      const said = await page.locator('div.heard').innerText();
      expect(Math.abs(numbersIn(said, /Regular blows, ([\d.]+)/)[0]! - knocking.run.blowsPerSecond * 60), path).toBeLessThan(0.3);
      expect(said, path).toMatch(/Second sound: 7[3-7](\.\d)? ± [\d.]+ ms after/);
      await page.goto(`${yard.address}/hammer/${hammer}/sound`);
      await page.getByRole('heading', { name: 'Sound of WH-65' }).waitFor();
    }
    const amr = join(HOME, 'test/sound/hammer-260-a-minute.amr');
    const others: readonly (readonly [string, RegExp])[] = [[amr, /An AMR recording/], [made.as(amr, 'old-phone.3gp', ['-c:a', 'copy']), /A 3GP file/], [made.as(amr, 'studio.aiff', []), /An AIFF recording/], [made.as(amr, 'tablet.caf', ['-c:a', 'adpcm_ima_qt']), /A CAF recording/]];
    for (const [path, kind] of others) {
      await page.getByLabel(/^Rate to look for/).fill('');
      const said = await listen(page, path);
      expect(said, path).toMatch(kind);
      expect(Math.abs(numbersIn(said, /Regular blows, ([\d.]+)/)[0]! - 260), path).toBeLessThan(0.5);
      await page.goto(`${yard.address}/hammer/${hammer}/sound`);
      await page.getByRole('heading', { name: 'Sound of WH-65' }).waitFor();
    }
    const hour = made.as(made.hours('an-hour.wav', 1), 'an-hour.m4a', ['-c:a', 'aac', '-b:a', '16k']);
    expect(await listen(page, hour)).toMatch(/An MPEG-4 file .*lasts 60 minutes; only its first 5 were read/s);
    expect(await page.locator('div.heard').innerText()).toMatch(/Regular blows, 240\.\d/);
    await page.goto(`${yard.address}/hammer/${hammer}/sound`);
    await page.getByRole('heading', { name: 'Sound of WH-65' }).waitFor();
    const packed = made.as(made.path('an-hour.wav'), 'an-hour.mp3', ['-c:a', 'libmp3lame', '-b:a', '16k']);
    expect(await listen(page, packed)).toMatch(/lasts 60 minutes; only its first 5 were read/);
    expect(problems).toEqual([]);
    await context.close();
  });
});

it('how long a minute takes on a phone’s width (reported only)', { timeout: 120_000 }, async () => {
  const { page, context } = await sheetOn(PHONE);
  const minute = made.hammer('die-re-strike', 60);
  const took: number[] = [];
  for (let round = 0; round < 3; round += 1) {
    const started = performance.now();
    await listen(page, minute.path);
    took.push((performance.now() - started) / 1000);
    await page.goto(`${yard.address}/hammer/${hammer}/sound`);
    await page.getByRole('heading', { name: 'Sound of WH-65' }).waitFor();
  }
  console.log(`60 s of recording answered on the page in ${took.map((one) => one.toFixed(2)).join(', ')} s`);
  expect(took.every((one) => one < 60)).toBe(true);
  await context.close();
});
