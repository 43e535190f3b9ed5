import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { KEPT } from './folders.mjs';
import { say, Sentence } from './plain-words.mjs';

/**
 * Runs the work while no other process sets up this folder: two at once would pull the packages from under each other.
 * @param {() => Promise<void>} work
 */
export async function oneAtATime(work) {
  mkdirSync(KEPT, { recursive: true });
  const claim = join(KEPT, 'setting-up');
  const told = Date.now();
  for (let waits = 0; !taken(claim); waits++) {
    if (waits === 0) say('another process is setting up this folder; waiting for it');
    if (Date.now() - told > 20 * 60_000) throw new Sentence(`another process has been setting up this folder for 20 minutes; stop it, or remove ${claim}`);
    await new Promise((resume) => setTimeout(resume, 500));
  }
  const release = () => rmSync(claim, { recursive: true, force: true });
  process.once('exit', release);
  try {
    await work();
  } finally {
    release();
  }
}

/** @param {string} claim */
function taken(claim) {
  try {
    mkdirSync(claim);
    writeFileSync(join(claim, 'pid'), String(process.pid));
    return true;
  } catch (failure) {
    if (/** @type {NodeJS.ErrnoException} */ (failure).code !== 'EEXIST') throw failure;
  }
  if (!holderLives(claim)) rmSync(claim, { recursive: true, force: true });
  return false;
}

/** @param {string} claim */
function holderLives(claim) {
  try {
    process.kill(Number(readFileSync(join(claim, 'pid'), 'utf8')), 0);
    return true;
  } catch (failure) {
    // ENOENT: it is between taking the claim and writing its number. It lives.
    return /** @type {NodeJS.ErrnoException} */ (failure).code !== 'ESRCH';
  }
}
