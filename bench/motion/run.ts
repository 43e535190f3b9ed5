// One command: npx tsx bench/motion/run.ts [rounds]
// Seven hammers, three seconds each, relative tolerance 1e-6, one core, CPU time: this program against the same algorithm in C at
// -O3 and against SUNDIALS ARKODE's Dormand-Prince 5(4), in interleaved rounds; then a 128 x 128 map of six-second runs on two cores.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { BeatLog } from '../../src/derived/motion/beat-log.ts';
import { hammerNumbers } from '../../src/derived/motion/hammer-numbers.ts';
import { hammerRun } from '../../src/derived/motion/hammer-run.ts';
import type { MotionSpec } from '../../src/derived/motion/index.ts';
import { timeMap } from './map-timing.ts';

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const RELATIVE = 1e-6;
const SECONDS = 3;
const rounds = Number(process.argv[2] ?? 9);
const cases = JSON.parse(readFileSync(here('../../test/motion/rival/cases.json'), 'utf8')) as { name: string; start: number[]; spec: MotionSpec }[];
const folder = mkdtempSync(join(tmpdir(), 'tupwise-bench-'));
const numbers = cases.map((c) => hammerNumbers(c.spec));
const caseFile = join(folder, 'cases.txt');
const text = (v: number): string => (v === Infinity ? 'inf' : String(v));
writeFileSync(caseFile, [cases.length, ...cases.map((c, i) => [...numbers[i]!, ...c.start].map(text).join(' '))].join('\n'));

interface Outcome { readonly seconds: number; readonly beats: number; readonly tops: number; readonly steps: number; readonly lastDie: number }

function compile(source: string, libraries: readonly string[], flags: readonly string[] = []): string | undefined {
  const out = join(folder, source.replace('.c', flags.join('')));
  try {
    execFileSync('gcc', ['-O3', ...flags, '-o', out, here(source), ...libraries, '-lm'], { stdio: ['ignore', 'ignore', 'pipe'] });
    return out;
  } catch (error) {
    console.log(`${source} was not compiled: ${String((error as { stderr?: Buffer }).stderr ?? error).split('\n')[0]}`);
    return undefined;
  }
}

const own = compile('same-algorithm.c', []);
const native = compile('same-algorithm.c', [], ['-march=native', '-fno-math-errno']);
if (!existsSync('/usr/include/arkode/arkode_erkstep.h')) console.log('SUNDIALS is not here: no ARKODE column (Debian package libsundials-dev)');
const arkode = existsSync('/usr/include/arkode/arkode_erkstep.h') ? compile('arkode-hammer.c', ['-lsundials_arkode', '-lsundials_nvecserial']) : undefined;

function runC(program: string, repeats: number): Outcome[] {
  return execFileSync(program, [caseFile, String(RELATIVE), String(SECONDS), String(repeats)], { encoding: 'utf8' }).trim().split('\n').map((line) => {
    const [, seconds, beats, tops, steps, lastDie] = line.split(' ').map(Number) as [number, number, number, number, number, number];
    return { seconds, beats, tops, steps, lastDie };
  });
}

const log = new BeatLog(4000, 200);
function runOurs(repeats: number): Outcome[] {
  return cases.map((c, i) => {
    let steps = 0;
    const from = process.cpuUsage();
    for (let n = 0; n < repeats; n++) steps = hammerRun(numbers[i]!, c.start, { duration: SECONDS, relative: RELATIVE, mostSteps: 1e6 }, log).steps;
    const used = process.cpuUsage(from);
    let lastDie = 0;
    for (let k = 0; k < log.count; k++) if (log.kind[k] === 0) lastDie = log.time[k]!;
    return { seconds: (used.user + used.system) / 1e6 / repeats, beats: log.count, tops: log.turns, steps, lastDie };
  });
}

const REPEATS = 40;
runOurs(100);
const columns: Record<string, Outcome[][]> = { ours: [] };
if (own !== undefined) columns['C -O3'] = [];
if (native !== undefined) columns['C -O3 -march=native -fno-math-errno'] = [];
if (arkode !== undefined) columns['ARKODE'] = [];
for (let round = 0; round < rounds; round++) {
  columns['ours']!.push(runOurs(REPEATS));
  if (own !== undefined) columns['C -O3']!.push(runC(own, REPEATS));
  if (native !== undefined) columns['C -O3 -march=native -fno-math-errno']!.push(runC(native, REPEATS));
  if (arkode !== undefined) columns['ARKODE']!.push(runC(arkode, REPEATS));
}
const median = (v: number[]): number => v.sort((a, b) => a - b)[v.length >> 1]!;
console.log(`${cpus()[0]?.model ?? 'unknown processor'}, node ${process.version}; ${rounds} interleaved rounds, ${REPEATS} runs each, medians of CPU time`);
const totals: Record<string, number[]> = {};
for (const [name, all] of Object.entries(columns)) totals[name] = all.map((round) => round.reduce((s, c) => s + c.seconds, 0));
cases.forEach((c, i) => {
  const parts = Object.entries(columns).map(([name, all]) => {
    const last = all[0]![i]!;
    return `${name} ${(median(all.map((r) => r[i]!.seconds)) * 1e3).toFixed(3)} ms, ${last.steps} steps, ${last.beats} beats, last blow ${last.lastDie.toFixed(5)} s`;
  });
  console.log(`  ${c.name}: ${parts.join(' | ')}`);
});
for (const [name, sums] of Object.entries(totals)) {
  const ratio = median(sums.map((s, k) => s / totals['ours']![k]!));
  console.log(`${name}: ${(median([...sums]) * 1e3).toFixed(2)} ms for the seven; ${ratio.toFixed(2)} times ours`);
}
if (!process.argv.includes("--no-map")) await timeMap();
