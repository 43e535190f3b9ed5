// `npm test`: every check in turn, stopping at the first that fails. Words after `--` go to the test runner.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { HOME, KEPT } from './folders.mjs';
import { say } from './plain-words.mjs';

const RESULTS = join(KEPT, 'test-results.json');
const tool = (/** @type {string} */ path) => join(HOME, 'node_modules', path);

/** @type {readonly (readonly [string, readonly string[]])[]} */
const STAGES = [
  ['types of the whole', [tool('typescript/bin/tsc'), '-p', 'tsconfig.json']],
  ['types of the core alone, without browser or Node', [tool('typescript/bin/tsc'), '-p', 'tsconfig.core.json']],
  ['types of the page', [tool('svelte-check/bin/svelte-check'), '--tsconfig', './tsconfig.json', '--output', 'human', '--fail-on-warnings']],
  ['habits of the language', [tool('oxlint/bin/oxlint'), '--deny-warnings', 'src', 'test', 'bench', 'scripts', 'examples']],
  ['tests', [tool('vitest/vitest.mjs'), 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${RESULTS}`, ...process.argv.slice(2)]],
];

mkdirSync(KEPT, { recursive: true });
rmSync(RESULTS, { force: true });
let failed;
for (const [name, parameters] of STAGES) {
  say(`checking: ${name}`);
  const started = Date.now();
  const { status } = spawnSync(process.execPath, parameters, { cwd: HOME, stdio: ['ignore', 'inherit', 'inherit'] });
  if (status !== 0) {
    failed = name;
    break;
  }
  say(`good: ${name}, ${((Date.now() - started) / 1000).toFixed(1)} s`);
}
if (existsSync(RESULTS)) {
  const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(RESULTS, 'utf8'));
  console.log(`\n${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
}
if (failed !== undefined) {
  say(`FAILED: ${failed}`);
  process.exitCode = 1;
}
