import { analyseBeat } from '../../derived/sound/index.ts';
import type { SoundAnswer, SoundAsk } from './sound-ask.ts';

const scope = self as unknown as { onmessage: ((event: MessageEvent<SoundAsk>) => void) | null; postMessage(answer: SoundAnswer): void };

scope.onmessage = ({ data: { id, samples, rate, options } }) => {
  const started = performance.now();
  try {
    scope.postMessage({ kind: 'heard', id, result: analyseBeat(samples, rate, options), seconds: (performance.now() - started) / 1000 });
  } catch (failure) {
    scope.postMessage({ kind: 'failed', id, words: failure instanceof Error ? failure.message : String(failure) });
  }
};
