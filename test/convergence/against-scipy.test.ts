import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { AnySizeStepper, ERROR_NORM, STEP, integrate } from '../../src/methods/integrate/index.ts';
import type { Slopes } from '../../src/methods/integrate/index.ts';

// Rows of SciPy (DOP853 at 1e-13, and its own Dormand-Prince step), made by rival/standard_problems.py. Set beforehand: a single step to
// 1e-14 of the state's size; ends to 1e-8 at a tolerance of 1e-12 (1e-6 for the chaotic one, which multiplies every error).
interface Row { readonly end: readonly number[]; readonly step: readonly number[]; readonly error: readonly number[] }
const file = (name: string): string => fileURLToPath(new URL(`./rival/${name}`, import.meta.url));
const rows = JSON.parse(readFileSync(file('standard-rows.json'), 'utf8')) as Readonly<Record<string, Row>>;

const problems: Readonly<Record<string, { slopes: Slopes; start: number[]; end: number; step: number; within: number }>> = {
  'van-der-pol': { slopes: (y, d) => { d[0] = y[1]!; d[1] = 2 * (1 - y[0]! ** 2) * y[1]! - y[0]!; }, start: [2, 0], end: 10, step: 0.1, within: 1e-8 },
  'predator-prey': { slopes: (y, d) => { d[0] = 1.5 * y[0]! - y[0]! * y[1]!; d[1] = -3 * y[1]! + y[0]! * y[1]!; }, start: [10, 5], end: 5, step: 0.02, within: 1e-8 },
  lorenz: { slopes: (y, d) => { d[0] = 10 * (y[1]! - y[0]!); d[1] = y[0]! * (28 - y[2]!) - y[1]!; d[2] = y[0]! * y[1]! - (8 / 3) * y[2]!; }, start: [1, 1, 1], end: 5, step: 0.02, within: 1e-6 },
  'rigid-body': { slopes: (y, d) => { d[0] = y[1]! * y[2]!; d[1] = -y[0]! * y[2]!; d[2] = -0.51 * y[0]! * y[1]!; }, start: [0, 1, 1], end: 20, step: 0.2, within: 1e-8 },
  forced: { slopes: (y, d, t) => { d[0] = y[1]!; d[1] = -0.2 * y[1]! - y[0]! ** 3 + 0.3 * Math.cos(1.2 * t); }, start: [1, 0], end: 15, step: 0.1, within: 1e-8 },
};

describe('against SciPy', () => {
  for (const [name, p] of Object.entries(problems)) {
    const row = rows[name]!;
    it(`${name}: one step is the same step, its estimate the same estimate`, () => {
      const relative = 1e-6;
      const s = new AnySizeStepper(p.start.length, p.slopes, { relative, absolute: relative });
      s.state.set(p.start);
      s.begin();
      s.clock[STEP] = p.step;
      s.attempt();
      row.step.forEach((v, i) => expect(Math.abs(s.trial[i]! - v)).toBeLessThan(1e-14 * (1 + Math.abs(v))));
      const scaled = row.error.map((e, i) => e / (relative + relative * Math.max(Math.abs(p.start[i]!), Math.abs(row.step[i]!))));
      const norm = Math.sqrt(scaled.reduce((sum, e) => sum + e * e, 0) / scaled.length);
      expect(Math.abs(s.clock[ERROR_NORM]! / norm - 1)).toBeLessThan(1e-6);
    });
    it(`${name}: arrives where another method of higher order arrives`, () => {
      const s = integrate({ slopes: p.slopes, state: p.start, from: 0, to: p.end }, { tolerance: { relative: 1e-12, absolute: 1e-12 } });
      expect(s.code).toBe('reached-end');
      const worst = Math.max(...row.end.map((v, i) => Math.abs(v - s.state[i]!)));
      console.log(`${name}: ${worst.toExponential(1)} apart after ${s.steps} steps`);
      expect(worst).toBeLessThan(p.within);
    });
  }
  it('SciPy itself, run now, gives the committed rows', ({ skip }) => {
    let here = true;
    try {
      execFileSync('/usr/bin/python3', ['-c', 'import scipy'], { stdio: 'ignore' });
    } catch {
      here = false;
    }
    if (!here) {
      console.log('skipped: /usr/bin/python3 with scipy is not here (Debian package python3-scipy)');
      skip();
    }
    const text = execFileSync('/usr/bin/python3', [file('standard_problems.py')], { encoding: 'utf8' });
    const live = JSON.parse(text) as Readonly<Record<string, Row>>;
    for (const [name, row] of Object.entries(rows)) row.end.forEach((v, i) => expect(Math.abs(live[name]!.end[i]! - v)).toBeLessThan(1e-9 * (1 + Math.abs(v))));
  });
});
