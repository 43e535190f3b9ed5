import type { MotionRan } from '../../derived/motion/index.ts';

const COLUMNS = ['time', 'angle', 'gap', 'speed', 'carrier', 'hang', 'force', 'rod', 'energy', 'crankSpeed'] as const;
const HEADS = 'time s,crank angle deg,die gap mm,ram speed m/s,carrier height mm,ram below link level mm,suspension N,rod N,ram energy J,crank rpm';

/** The trace as comma separated values with units in the heading. */
export function motionCsv(run: MotionRan): string {
  const scale: Readonly<Record<(typeof COLUMNS)[number], number>> = { time: 1, angle: 180 / Math.PI, gap: 1000, speed: 1, carrier: 1000, hang: 1000, force: 1, rod: 1, energy: 1, crankSpeed: 30 / Math.PI };
  const lines = Array.from(run.trace.time, (_, i) => COLUMNS.map((name) => Number(((run.trace[name][i] ?? 0) * scale[name]).toPrecision(8))).join(','));
  return `${HEADS}\n${lines.join('\n')}\n`;
}
