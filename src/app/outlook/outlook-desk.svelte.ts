import type { Picture } from '../../derived/index.ts';
import type { Block } from '../../views/index.ts';
import type { MovingAsked, NumberedPoint, OutlookId } from '../../views/outlook/index.ts';
import type { OutlookAnswer, OutlookAsk } from './outlook-ask.ts';

/** The sheets of the outlook as they come out of the worker; only the newest question counts. */
export class OutlookDesk {
  sheets = $state.raw<Partial<Record<OutlookId, readonly Block[]>>>({});
  points = $state.raw<readonly NumberedPoint[]>([]);
  failure = $state('');
  #worker: Worker | undefined;
  #newest = 0;

  ask(picture: Picture, width: 'sheet' | 'phone', first: OutlookId, moving?: MovingAsked): void {
    this.#worker ??= this.#start();
    this.#newest += 1;
    this.#worker.postMessage({ id: this.#newest, picture, width, first, ...(moving === undefined ? {} : { moving }) } satisfies OutlookAsk);
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #start(): Worker {
    const worker = new Worker(new URL('./outlook-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<OutlookAnswer>) => {
      if (data.id !== this.#newest) return;
      if ('failure' in data) {
        this.failure = `this could not be worked out: ${data.failure}`;
        return;
      }
      this.failure = '';
      this.sheets = { ...this.sheets, [data.sheet]: data.blocks };
      if (data.sheet === 'oiling') this.points = data.points;
    };
    worker.onerror = () => (this.failure = 'this could not be worked out on this device; the papers have it');
    return worker;
  }
}
