import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HOME } from './folders.mjs';
import { run, say } from './plain-words.mjs';

/** Fetches the packages of the lock file where node_modules is not already just that. */
export async function ensureDependencies() {
  if (installed()) return;
  const count = Object.values(lockOf(join(HOME, 'package-lock.json')) ?? {}).filter(({ optional }) => !optional).length;
  say(`fetching ${count} packages from the npm registry, about 100 MB; this happens once`);
  const started = Date.now();
  const parameters = ['ci', '--ignore-scripts', '--include=dev', '--no-audit', '--no-fund', '--fetch-retries=2', '--fetch-retry-mintimeout=2000', '--fetch-retry-maxtimeout=5000'];
  const npm = process.env['npm_execpath'];
  // Inside `npm start` the npm that runs is known by its path; by name another might be found, or none.
  if (npm && /\.c?js$/.test(npm)) await run('fetching the packages', process.execPath, [npm, ...parameters], { cwd: HOME });
  else await run('fetching the packages', 'npm', parameters, { cwd: HOME });
  say(`packages are in place, ${Math.round((Date.now() - started) / 1000)} s`);
}

/** npm writes down what it installed, last of all; where that is what the lock file asks for, nothing is to be done. */
function installed() {
  const have = lockOf(join(HOME, 'node_modules', '.package-lock.json'));
  const want = lockOf(join(HOME, 'package-lock.json'));
  if (have === undefined || want === undefined) return false;
  const wanted = Object.entries(want).filter(([path]) => path !== '');
  return (
    wanted.every(([path, { version, integrity, optional }]) => {
      const there = have[path];
      if (there === undefined) return optional === true;
      return there.version === version && there.integrity === integrity && existsSync(join(HOME, path, 'package.json'));
    }) && Object.keys(have).every((path) => path in want)
  );
}

/**
 * @param {string} path
 * @returns {Record<string, { version?: string, integrity?: string, optional?: boolean }> | undefined}
 */
function lockOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages;
  } catch {
    return undefined;
  }
}
