// Saying what is done while it is done, and why it cannot be done, without a dependency.
import { spawn } from 'node:child_process';

/** A sentence for the person at the keyboard; shown without a stack trace. */
export class Sentence extends Error {}

/** @param {string} words */
export function say(words) {
  process.stdout.write(`Tupwise: ${words}\n`);
}

/**
 * Runs a command out of sight, says that it still runs every 15 s, and gives its output; a failure becomes a sentence.
 * @param {string} doing what the command is for, as in "fetching the packages"
 * @param {string} command
 * @param {readonly string[]} parameters
 * @param {import('node:child_process').SpawnOptions} [options]
 * @returns {Promise<string>}
 */
export function run(doing, command, parameters, options = {}) {
  const started = Date.now();
  const seconds = () => Math.round((Date.now() - started) / 1000);
  return new Promise((resolve, reject) => {
    const child = spawn(command, parameters, { stdio: ['ignore', 'pipe', 'pipe'], ...options });
    const patience = setInterval(() => say(`still ${doing}, ${seconds()} s`), 15_000);
    let output = '';
    const keep = (/** @type {Buffer} */ data) => (output += data);
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    const fail = (/** @type {string} */ text) => {
      clearInterval(patience);
      reject(new Sentence(`${doing} failed. ${reasonIn(text)}`));
    };
    child.on('error', (failure) => fail(String(failure)));
    child.on('close', (code, signal) => {
      clearInterval(patience);
      if (code === 0) resolve(output);
      else fail(signal ? `${output}\n${command} was stopped by ${signal}` : output);
    });
  });
}

/** @type {readonly (readonly [RegExp, string])[]} */
const REASONS = [
  [/ENOSPC|no space left/i, 'The disk is full; about 700 MB are needed.'],
  [
    /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH|ECONNRESET|ERR_SOCKET_TIMEOUT|network request|Temporary failure resolving/i,
    'The package registry cannot be reached; connect to the network and try again. It is needed only the first time.',
  ],
  [/EINTEGRITY/, 'A package arrived other than it was published; try again, and if it happens again, do not trust this network.'],
  [/E40[134]\b/, 'The package registry refused a package.'],
  [/EACCES|EPERM|EROFS|Permission denied/i, 'A file or folder may not be written; check who owns this folder.'],
  [/ENOMEM|heap out of memory/i, 'The memory is full; about 1 GB is needed.'],
];

/**
 * The likely reason in a command's output, in plain words; its own last words where none is known.
 * @param {string} output
 */
export function reasonIn(output) {
  const known = REASONS.find(([pattern]) => pattern.test(output));
  const last = output.trim().split('\n').slice(known ? -3 : -25).join('\n  ');
  return `${known ? known[1] : 'It said:'}\n  ${last}`;
}
