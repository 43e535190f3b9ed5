import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { BeatLog } from '../../src/derived/motion/beat-log.ts';
import { hammerNumbers } from '../../src/derived/motion/hammer-numbers.ts';
import { hammerRun } from '../../src/derived/motion/hammer-run.ts';
import type { MotionSpec } from '../../src/derived/motion/index.ts';

// SciPy's DOP853 (E. Hairer, S. P. Norsett and G. Wanner, Solving Ordinary Differential Equations I) at a relative tolerance of 1e-11, with the right-hand
// side written separately in rival/independent_hammer.py. Tolerance set beforehand: impact times within 1e-6 s at 1e-8.
interface Case { readonly name: string; readonly seconds: number; readonly start: readonly number[]; readonly spec: MotionSpec }
interface Row { readonly name: string; readonly beats: readonly (readonly [number, number, number])[]; readonly tops: readonly number[]; readonly end: readonly number[] }
const file = (name: string): string => fileURLToPath(new URL(`./rival/${name}`, import.meta.url));
const cases = JSON.parse(readFileSync(file('cases.json'), 'utf8')) as readonly Case[];
const rows = JSON.parse(readFileSync(file('reference-rows.json'), 'utf8')) as readonly Row[];

function ours(c: Case, relative: number, seconds = c.seconds, audit = false): BeatLog {
  const log = new BeatLog(2000, 200);
  const end = hammerRun(hammerNumbers(c.spec), c.start, { duration: seconds, relative, mostSteps: 1e6, audit }, log);
  expect(end.code).toBe('reached-end');
  return log;
}

/** Worst difference in time of beats and of top dead centres; beats must be the same in number and kind. */
function apart(log: BeatLog, row: Row): { beats: number; tops: number; speed: number } {
  expect([...log.kind.subarray(0, log.count)]).toEqual(row.beats.map((b) => b[1]));
  expect(log.turns).toBe(row.tops.length);
  let beats = 0;
  let speed = 0;
  row.beats.forEach((b, i) => {
    beats = Math.max(beats, Math.abs(b[0] - log.time[i]!));
    speed = Math.max(speed, Math.abs(b[2] - log.speed[i]!));
  });
  const tops = Math.max(...row.tops.map((t, i) => Math.abs(t - log.top[i]!)));
  return { beats, tops, speed };
}

describe('against SciPy with its own right-hand side', () => {
  cases.forEach((c, i) => {
    it(`${c.name}: beats within 1e-6 s`, () => {
      const row = rows[i]!;
      expect(row.beats.length).toBeGreaterThan(8);
      const a = apart(ours(c, 1e-8), row);
      console.log(`${c.name}: ${row.beats.length} beats within ${a.beats.toExponential(1)} s, tops ${a.tops.toExponential(1)} s, speeds ${a.speed.toExponential(1)} m/s`);
      expect(a.beats).toBeLessThan(1e-6);
      expect(a.tops).toBeLessThan(1e-6);
    });
  });

  it('the stepper of five and the one for any size see the same beats', () => {
    for (const c of cases) {
      const a = ours(c, 1e-9);
      const b = ours(c, 1e-9, c.seconds, true);
      expect(a.count).toBe(b.count);
      for (let i = 0; i < a.count; i++) expect(Math.abs(a.time[i]! - b.time[i]!)).toBeLessThan(1e-6);
    }
  });

  it('SciPy itself, run now, gives the committed rows', ({ skip }) => {
    const python = '/usr/bin/python3';
    const has = existsSync(python) && (() => {
      try {
        execFileSync(python, ['-c', 'import scipy'], { stdio: 'ignore' });
        return true;
      } catch {
        return false;
      }
    })();
    if (!has) {
      console.log('skipped: /usr/bin/python3 with scipy is not here (Debian package python3-scipy)');
      skip();
    }
    const fresh = JSON.parse(execFileSync(python, [file('independent_hammer.py'), file('cases.json'), '0,3', '1.0'], { encoding: 'utf8' })) as Row[];
    [0, 3].forEach((n, k) => {
      const live = fresh[k]!;
      expect(live.beats.length).toBeGreaterThan(3);
      live.beats.forEach((b, i) => expect(Math.abs(b[0] - rows[n]!.beats[i]![0])).toBeLessThan(1e-8));
      apart(ours(cases[n]!, 1e-8, 1), live);
    });
  });
});
