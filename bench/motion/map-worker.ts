// A worker's share of a map: gets the question, posts patches in batches.
import { parentPort, workerData } from 'node:worker_threads';
import { mapSettings } from '../../src/derived/motion/index.ts';
import type { MapAxis, MapPatch, MotionSpec } from '../../src/derived/motion/index.ts';

const { base, x, y, size, share, shares } = workerData as { base: MotionSpec; x: MapAxis; y: MapAxis; size: number; share: number; shares: number };
parentPort!.postMessage('ready');
let batch: MapPatch[] = [];
let last = performance.now();
for (const patch of mapSettings(base, x, y, size, { share, shares })) {
  batch.push(patch);
  if (performance.now() - last > 50) {
    parentPort!.postMessage(batch);
    batch = [];
    last = performance.now();
  }
}
parentPort!.postMessage(batch);
