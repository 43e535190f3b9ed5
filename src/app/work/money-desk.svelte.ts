import type { Crew, MoneyAndTime, Worksheet } from '../../derived/index.ts';
import type { MoneyAnswer, MoneyAsk } from './money-worker.ts';

/** Money and time of a worksheet, reckoned in a worker; only the newest question counts. */
export class MoneyDesk {
  money = $state.raw<MoneyAndTime | undefined>(undefined);
  failure = $state('');
  #worker: Worker | undefined;
  #newest = 0;

  ask(worksheet: Worksheet, seed: number, crew: Partial<Crew>): void {
    this.#worker ??= this.#start();
    this.#newest += 1;
    this.#worker.postMessage({ id: this.#newest, worksheet, seed, crew } satisfies MoneyAsk);
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
  }

  #start(): Worker {
    const worker = new Worker(new URL('./money-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<MoneyAnswer>) => {
      if (data.id !== this.#newest) return;
      if ('failure' in data) this.failure = `money and time could not be reckoned: ${data.failure}`;
      else this.money = data.money;
    };
    worker.onerror = () => (this.failure = 'money and time could not be reckoned on this device; the papers have them');
    return worker;
  }
}
