import type { ExpectedBlow, Picture } from '../../derived/index.ts';
import type { BlowAnswer, BlowAsk } from './blow-worker.ts';

/** What the motion of a hammer lets expect of its blow, reckoned in a worker where a strike test was made; only the newest question counts. */
export class BlowDesk {
  expected = $state.raw<ExpectedBlow | undefined>(undefined);
  #worker: Worker | undefined;
  #newest = 0;

  ask({ known, values, provenance }: Picture): void {
    this.#newest += 1;
    this.expected = undefined;
    if (!Object.keys(known.history).some((key) => key.startsWith('running.test-bar-thickness'))) return;
    this.#worker ??= this.#start();
    this.#worker.postMessage({ id: this.#newest, known, values, seed: provenance.seed } satisfies BlowAsk);
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #start(): Worker {
    const worker = new Worker(new URL('./blow-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<BlowAnswer>) => {
      if (data.id === this.#newest) this.expected = data.expected;
    };
    return worker;
  }
}
