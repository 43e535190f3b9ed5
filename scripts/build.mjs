import { createHash } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { HOME } from './folders.mjs';
import { run, say } from './plain-words.mjs';

const SOURCES = ['src', 'examples', 'package.json', 'package-lock.json', 'tsconfig.json', 'vite.config.ts', 'vite.node.config.ts'];
const PRODUCTS = ['app/index.html', 'node/tupwise.mjs'];

/** Builds the page and the program where the sources are others than those of the last build. */
export async function ensureBuilt() {
  const dist = join(HOME, 'dist');
  const stamp = join(dist, 'built-from');
  const sources = sourcesHash();
  const last = existsSync(stamp) ? readFileSync(stamp, 'utf8') : undefined;
  if (last === sources && PRODUCTS.every((product) => existsSync(join(dist, product)))) return;
  say(last === undefined ? 'building the program' : 'the sources have changed; building the program again');
  const started = Date.now();
  const vite = join(HOME, 'node_modules', 'vite', 'bin', 'vite.js');
  mkdirSync(dist, { recursive: true });
  // Aside, then swapped: a server that is running keeps a whole page to give, and a failed build spoils nothing.
  const aside = join(dist, 'in-the-making');
  rmSync(aside, { recursive: true, force: true });
  const build = (/** @type {string} */ config, /** @type {string} */ part) =>
    run(`building the ${part === 'app' ? 'page' : 'program'}`, process.execPath, [vite, 'build', '--config', config, '--outDir', join(aside, part)], { cwd: HOME });
  await build('vite.config.ts', 'app');
  await build('vite.node.config.ts', 'node');
  rmSync(stamp, { force: true });
  for (const part of ['app', 'node']) {
    rmSync(join(dist, part), { recursive: true, force: true });
    renameSync(join(aside, part), join(dist, part));
  }
  rmSync(aside, { recursive: true, force: true });
  // npx starts the file itself, and the build does not make it startable.
  if (existsSync(join(dist, 'node', 'tupwise.mjs'))) chmodSync(join(dist, 'node', 'tupwise.mjs'), 0o755);
  writeFileSync(stamp, sources);
  say(`built, ${Math.round((Date.now() - started) / 1000)} s`);
}

/** SHA-256 over the names and contents of everything that the build reads. */
export function sourcesHash() {
  const hash = createHash('sha256');
  const add = (/** @type {string} */ path) => {
    const full = join(HOME, path);
    if (!existsSync(full)) return;
    const names = namesIn(full);
    if (names === undefined) hash.update(`${path}\0`).update(readFileSync(full)).update('\0');
    else for (const name of names) add(`${path}/${name}`);
  };
  SOURCES.forEach(add);
  return hash.digest('hex');
}

/**
 * Names in a folder in a fixed order; undefined for a file.
 * @param {string} path
 */
function namesIn(path) {
  try {
    return readdirSync(path).sort();
  } catch (failure) {
    if (/** @type {NodeJS.ErrnoException} */ (failure).code === 'ENOTDIR') return undefined;
    throw failure;
  }
}
