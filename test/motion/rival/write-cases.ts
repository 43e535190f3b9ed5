// Writes the seven hammers that both solvers are given: npx tsx test/motion/rival/write-cases.ts
// The values are invented proportions. Run it only to change the cases; then make the reference rows again.
import { writeFileSync } from 'node:fs';
import { usualHammer } from '../../../src/derived/motion/index.ts';
import type { MotionSpec } from '../../../src/derived/motion/index.ts';

const b = usualHammer(25).spec;
const spring = (more: object): MotionSpec['suspension'] => ({ ...b.suspension, ...more }) as MotionSpec['suspension'];
const cases: { name: string; spec: MotionSpec }[] = [
  { name: 'middle size, hot work', spec: b },
  { name: 'small size, hot work', spec: usualHammer(12).spec },
  { name: 'large size, hot work, worn pins', spec: { ...usualHammer(50).spec, lostMotion: 0.003 } },
  { name: 'much throw: joint and upper stop', spec: { ...b, throw: b.throw + 0.02 } },
  { name: 'weak spring, fast: upper stop', spec: { ...b, driveSpeed: b.driveSpeed * 1.25, suspension: spring({ preCompression: 0.026 }) } },
  { name: 'slow over thick dead work: the die stays down', spec: { ...b, driveSpeed: b.driveSpeed * 0.75, workThickness: 0.045, contact: { kind: 'fixed', restitution: 0.05 } } },
  { name: 'yielding work, coil near solid', spec: { ...b, throw: b.throw + 0.008, suspension: spring({ travel: 0.08, sag: 0.006, crankOffset: 0.1 }), contact: { kind: 'yielding', flowStress: 9e7, area: 6e-4, structureStiffness: 4e8, cap: 0.4 } } },
];
const rows = cases.map(({ name, spec }) => {
  const turn = spec.driveSpeed;
  const start = [spec.frameHeight - (spec.rodLength - spec.throw) - 0.009, 0.5 * spec.throw * turn, 0, turn, turn];
  return { name, seconds: 3, start, spec };
});
writeFileSync(new URL('./cases.json', import.meta.url), `${JSON.stringify(rows, null, 1)}\n`);
