import { Worker } from 'node:worker_threads';
import { BEAT_CLASSES, emptyMap, layPatch, usualHammer } from '../../src/derived/motion/index.ts';
import type { MapAxis, MapPatch } from '../../src/derived/motion/index.ts';

/** Times a 128 x 128 map of six-second runs at 1e-4 in two workers: when every cell first has some answer, and when all have their own. */
export async function timeMap(): Promise<void> {
  const size = 128;
  const base = usualHammer(25).spec;
  const x: MapAxis = { setting: 'throw', from: 0.04, to: 0.07 };
  const y: MapAxis = { setting: 'rodLength', from: 0.4, to: 0.45 };
  const map = emptyMap(x, y, size);
  const asked = performance.now();
  let from = 0;
  let covered = 0;
  let cpu = process.cpuUsage();
  await Promise.all(
    [0, 1].map(
      (share) =>
        new Promise<void>((done, fail) => {
          const worker = new Worker(new URL('./map-worker-entry.mjs', import.meta.url), { workerData: { base, x, y, size, share, shares: 2 } });
          worker.on('message', (batch: MapPatch[] | 'ready') => {
            if (batch === 'ready') {
              if (from === 0) {
                from = performance.now();
                cpu = process.cpuUsage();
              }
              return;
            }
            for (const patch of batch) layPatch(map, patch);
            if (covered === 0 && !map.code.includes(255)) covered = performance.now() - from;
          });
          worker.on('error', fail);
          worker.on('exit', () => done());
        }),
    ),
  );
  const finished = (performance.now() - from) / 1e3;
  const used = process.cpuUsage(cpu);
  const counts = new Map<string, number>();
  for (const code of map.code) counts.set(BEAT_CLASSES[code] ?? 'none', (counts.get(BEAT_CLASSES[code] ?? 'none') ?? 0) + 1);
  console.log(
    `map ${size} x ${size}, six seconds a cell, two workers (ready ${((from - asked) / 1e3).toFixed(2)} s after asking): first whole picture ${(covered / 1e3).toFixed(2)} s, finished ${finished.toFixed(2)} s, ${((used.user + used.system) / 1e6).toFixed(1)} s of CPU; ` +
      [...counts].map(([k, v]) => `${k} ${((100 * v) / size / size).toFixed(1)} %`).join(', '),
  );
}
