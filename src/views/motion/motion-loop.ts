import type { MotionRan } from '../../derived/motion/index.ts';

/** The whole turns at the end of a trace, which can be shown round and round. */
export interface MotionLoop {
  /** samples, first and one past the last */
  readonly first: number;
  readonly end: number;
  readonly turns: number;
  /** s */
  readonly seconds: number;
}

/**
 * Finds the last whole turns of a run.
 * @param most turns wanted; two show a gallop
 */
export function motionLoop(run: MotionRan, most = 2): MotionLoop {
  const { angle, time } = run.trace;
  const tops: number[] = [];
  for (let i = 1; i < angle.length; i += 1) if ((angle[i] ?? 0) < (angle[i - 1] ?? 0) - Math.PI) tops.push(i);
  const turns = Math.min(most, tops.length - 1);
  const first = turns < 1 ? 0 : (tops[tops.length - 1 - turns] ?? 0);
  const end = turns < 1 ? angle.length : (tops[tops.length - 1] ?? angle.length);
  return { first, end, turns: Math.max(1, turns), seconds: Math.max(1e-3, (time[Math.min(end, time.length - 1)] ?? 0) - (time[first] ?? 0)) };
}

/** Beats of the loop with their time from its start, s, in order. */
export const loopBeats = (run: MotionRan, loop: MotionLoop): readonly { readonly after: number; readonly beat: MotionRan['beats'][number] }[] => {
  const from = run.trace.time[loop.first] ?? 0;
  return run.beats.filter((beat) => beat.time >= from && beat.time < from + loop.seconds).map((beat) => ({ after: beat.time - from, beat }));
};

/** Letter by which a beat is marked on strips and figures, and its words. */
export const beatMark = (beat: MotionRan['beats'][number]): { readonly letter: string; readonly words: string } =>
  beat.kind === 'joint' ? { letter: 'J', words: 'linkage on guide' } : beat.kind === 'upper' ? { letter: 'U', words: 'ram on what carries it' } : beat.blow ? { letter: 'B', words: 'blow' } : { letter: 'R', words: 'dies again' };

/** dB against the loudest below which a beat is not marked: nobody hears it. */
export const FAINT = -24;
