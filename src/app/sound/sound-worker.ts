import { analyseBeat, analyseFrom } from '../../derived/sound/index.ts';
import type { SoundAnswer, SoundAsk } from './sound-ask.ts';

const scope = self as unknown as { onmessage: ((event: MessageEvent<SoundAsk>) => void) | null; postMessage(answer: SoundAnswer): void };

scope.onmessage = ({ data: { id, samples, rate, options, times } }) => {
  const started = performance.now();
  const done = (share: number): void => scope.postMessage({ kind: 'under way', id, share });
  try {
    const result = times === undefined ? analyseBeat(samples, rate, options, done) : analyseFrom(samples, rate, times, options, done);
    scope.postMessage({ kind: 'heard', id, result, seconds: (performance.now() - started) / 1000 });
  } catch (failure) {
    scope.postMessage({ kind: 'failed', id, words: failure instanceof Error ? failure.message : String(failure) });
  }
};
