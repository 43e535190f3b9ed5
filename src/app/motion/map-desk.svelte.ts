import { emptyMap, layPatch, type MapAxis, type MotionMap, type MotionSpec } from '../../derived/motion/index.ts';
import type { LinePlace, MotionAnswer, MotionAsk } from './motion-ask.ts';
import { startWorker } from './motion-desk.svelte.ts';

const SHARES = 2;

/** Fills one map in two workers. Cancelling ends them; what was worked out stays. */
export class MapDesk {
  map = $state.raw<MotionMap | undefined>(undefined);
  /** grows with every part that has come, so that a page paints again */
  parts = $state(0);
  worked = $state(0);
  running = $state(false);
  finished = $state(false);
  seconds = $state(0);
  line = $state.raw<readonly LinePlace[] | undefined>(undefined);
  failure = $state('');
  #workers: Worker[] = [];
  #lines: Worker | undefined;
  #id = 0;

  start(spec: MotionSpec, x: MapAxis, y: MapAxis, size: number): void {
    this.cancel();
    const map = emptyMap(x, y, size);
    const began = performance.now();
    this.map = map;
    this.line = undefined;
    this.worked = 0;
    this.parts += 1;
    this.finished = false;
    this.running = true;
    this.failure = '';
    let left = SHARES;
    for (let share = 0; share < SHARES; share += 1) {
      const worker = startWorker();
      worker.onmessage = ({ data }: MessageEvent<MotionAnswer>) => {
        if (data.kind === 'failed') return this.#fail(data.words);
        if (data.kind !== 'patches') return;
        for (const patch of data.patches) layPatch(map, patch);
        this.worked += data.patches.length;
        this.parts += 1;
        this.seconds = (performance.now() - began) / 1000;
        if (!data.done) return;
        left -= 1;
        worker.terminate();
        if (left === 0) {
          this.running = false;
          this.finished = true;
        }
      };
      worker.onerror = (event) => {
        event.preventDefault();
        this.#fail('this device could not go on');
      };
      worker.postMessage({ kind: 'map', id: 0, spec, x, y, size, share, shares: SHARES } satisfies MotionAsk);
      this.#workers.push(worker);
    }
  }

  cancel(): void {
    for (const worker of this.#workers) worker.terminate();
    this.#workers = [];
    this.running = false;
  }

  /** Runs the settings along a straight line between two places of the map. */
  trace(spec: MotionSpec, x: MapAxis, y: MapAxis): void {
    this.#lines?.terminate();
    const worker = startWorker();
    const id = (this.#id += 1);
    this.#lines = worker;
    worker.onmessage = ({ data }: MessageEvent<MotionAnswer>) => {
      if (data.kind === 'line' && data.id === this.#id) this.line = data.places;
      if (data.kind === 'failed') this.#fail(data.words);
      worker.terminate();
    };
    worker.postMessage({ kind: 'line', id, spec, x, y, count: 33 } satisfies MotionAsk);
  }

  close(): void {
    this.cancel();
    this.#lines?.terminate();
  }

  #fail(words: string): void {
    this.failure = `The map could not be finished: ${words}.`;
    this.cancel();
  }
}
