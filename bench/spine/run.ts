// One command: npx tsx bench/spine/run.ts
// The picture of a full hammer from its log, the script that a hammer's page carries, and the wait after `npm start`.
import { pageScripts } from './page-scripts.ts';
import { median, pictureTime } from './picture-time.ts';
import { startTimes } from './start-time.ts';

const KILO = 1000;
const fixed = (value: number, places: number): string => value.toFixed(places);
const row = (words: string, figure: string, wanted: string, good: boolean): void => console.log(`${good ? 'good' : 'OVER'}  ${words.padEnd(58)} ${figure.padStart(12)}   wanted ${wanted}`);

const time = pictureTime(300, 200);
row(`picture of ${time.entries} entries, median`, `${fixed(time.picture, 2)} ms`, 'under 30 ms', time.picture < 30);
console.log(`      the same log through JSON and back, median: ${fixed(time.reference, 2)} ms; ratio ${fixed(time.picture / time.reference, 1)}`);

const scripts = await pageScripts();
const sum = (of: 'bytes' | 'gzip' | 'brotli'): number => scripts.reduce((total, script) => total + script[of], 0);
for (const script of scripts) console.log(`      ${script.name.padEnd(52)} ${fixed(script.bytes / KILO, 1).padStart(8)} kB  gzip ${fixed(script.gzip / KILO, 1).padStart(6)}  brotli ${fixed(script.brotli / KILO, 1).padStart(6)}`);
row(`script of a hammer's page, ${scripts.length} files, gzip`, `${fixed(sum('gzip') / KILO, 1)} kB`, 'under 150 kB', sum('gzip') < 150 * KILO);
row(`script of a hammer's page, ${scripts.length} files, brotli`, `${fixed(sum('brotli') / KILO, 1)} kB`, 'under 150 kB', sum('brotli') < 150 * KILO);

const start = await startTimes(3);
row('npm start to the first answer, set up, median of 3', `${fixed(median(start.again), 2)} s`, 'within 5 s', median(start.again) <= 5);
console.log(`      the first start, with whatever was to be built and a new yard: ${fixed(start.first, 2)} s`);
