import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { BeatLog } from '../../src/derived/motion/beat-log.ts';
import { hammerNumbers } from '../../src/derived/motion/hammer-numbers.ts';
import { hammerRun } from '../../src/derived/motion/hammer-run.ts';
import type { MotionSpec } from '../../src/derived/motion/index.ts';

interface Case { readonly name: string; readonly start: readonly number[]; readonly spec: MotionSpec }
const cases = JSON.parse(readFileSync(new URL('./rival/cases.json', import.meta.url), 'utf8')) as readonly Case[];

/** FNV-1a over the bits of the last state, the steps taken, and the time and kind of every beat. */
function fingerprint(c: Case): string {
  const log = new BeatLog(4000, 200);
  const end = hammerRun(hammerNumbers(c.spec), c.start, { duration: 10, relative: 1e-6, mostSteps: 1e6 }, log);
  const words = new BigUint64Array(Float64Array.from([...end.state, end.steps, end.refused, ...log.time.subarray(0, log.count), ...log.kind.subarray(0, log.count)]).buffer);
  let hash = 0xcbf29ce484222325n;
  for (const word of words) hash = BigInt.asUintN(64, (hash ^ word) * 0x100000001b3n);
  return hash.toString(16);
}

// The committed marks are our own and prove nothing about the mechanics; they show the day when a machine, an engine or a change of
// the code moves a single bit of ten seconds of blows. Only IEEE arithmetic and square roots are on the way, so no engine should.
const MARKS: Readonly<Record<string, string>> = JSON.parse(readFileSync(new URL('./rival/marks.json', import.meta.url), 'utf8'));

it('ten seconds of every case are the same to the last bit, here and wherever the marks were made', () => {
  for (const c of cases) {
    const once = fingerprint(c);
    expect(fingerprint(c)).toBe(once);
    expect(`${c.name}: ${once}`).toBe(`${c.name}: ${MARKS[c.name]}`);
  }
});
