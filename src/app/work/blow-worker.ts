import { expectedBlow } from '../../derived/upkeep/index.ts';

/** What the motion lets expect of a blow: a population of likenesses, run beside the page. */
export interface BlowAsk {
  readonly id: number;
  readonly known: Parameters<typeof expectedBlow>[0];
  readonly values: Parameters<typeof expectedBlow>[1];
  readonly seed: number;
}

export interface BlowAnswer {
  readonly id: number;
  readonly expected: ReturnType<typeof expectedBlow>;
}

const scope = self as unknown as { onmessage: ((event: MessageEvent<BlowAsk>) => void) | null; postMessage(answer: BlowAnswer): void };

scope.onmessage = ({ data: { id, known, values, seed } }) => scope.postMessage({ id, expected: expectedBlow(known, values, seed) });
