import { lineOfSettings, mapSettings, motionTrials, motionWithDoubt, runHammer, smallestAdjustments, weighAssumed, withSetting, type MapPatch, type MotionSpec } from '../../derived/motion/index.ts';
import type { MotionAnswer, MotionAsk } from './motion-ask.ts';

/** Answers are sent this often while a map fills, ms. */
const EVERY = 60;
const scope = self as unknown as { onmessage: ((event: MessageEvent<MotionAsk>) => void) | null; postMessage(answer: MotionAnswer): void };

scope.onmessage = ({ data }) => {
  try {
    answer(data);
  } catch (failure) {
    scope.postMessage({ kind: 'failed', id: data.id, words: failure instanceof Error ? failure.message : String(failure) });
  }
};

function answer(ask: MotionAsk): void {
  const { id } = ask;
  switch (ask.kind) {
    case 'run':
      return scope.postMessage({ kind: 'run', id, result: runHammer(ask.spec, { assumed: ask.assumed, traceSeconds: Math.min(3, (5 * 2 * Math.PI) / Math.max(1, ask.spec.driveSpeed)) }) });
    case 'advice': {
      const lay = (spec: MotionSpec): MotionSpec => ask.changes.reduce((made, [name, value]) => withSetting(made, name, value), spec);
      scope.postMessage({ kind: 'doubt', id, doubt: motionWithDoubt(ask.survey, { seed: ask.seed }, lay) });
      if (ask.changes.length === 0) scope.postMessage({ kind: 'weights', id, weights: weighAssumed(ask.survey) });
      scope.postMessage({ kind: 'trials', id, trials: motionTrials(ask.spec, ask.leaves) });
      return scope.postMessage({ kind: 'adjustments', id, adjustments: smallestAdjustments(ask.spec, ask.reaches, { duration: 4, relative: 1e-4 }) });
    }
    case 'line':
      return scope.postMessage({ kind: 'line', id, places: [...lineOfSettings(ask.spec, ask.x, ask.y, ask.count, { either: true, duration: 5 })] });
    case 'map': {
      let patches: MapPatch[] = [];
      let last = performance.now();
      for (const patch of mapSettings(ask.spec, ask.x, ask.y, ask.size, { either: true, duration: 4, share: ask.share, shares: ask.shares })) {
        patches.push(patch);
        const now = performance.now();
        if (now - last < EVERY) continue;
        scope.postMessage({ kind: 'patches', id, patches, done: false });
        patches = [];
        last = now;
      }
      return scope.postMessage({ kind: 'patches', id, patches, done: true });
    }
  }
}
