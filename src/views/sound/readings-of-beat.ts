import type { BeatHeard, Estimate } from '../../derived/sound/index.ts';
import { rateNumber, shownRate, shownTime } from './shown.ts';

/** A reading that a recording offers for the survey, in the words that a person would write. */
export interface BeatReading {
  /** measuring place */
  readonly place: 'running.rate' | 'running.release-strokes' | 'running.release-time';
  readonly dimension: 'rotation' | 'count' | 'time';
  readonly asWritten: string;
  readonly words: string;
}

/** What the hammer was doing, as a recording says it. */
export type RunKind = 'idle' | 'light' | 'full' | 'release' | 'work';

/**
 * Readings that may be entered from a recording of this run: the rate at full tread, strokes and time after the release.
 * A rate at a light tread is no rate of the hammer.
 * @param rate of corrected marks, where somebody has put marks right
 */
export function readingsOfBeat(result: BeatHeard, run: RunKind, rate: Estimate = result.rate): readonly BeatReading[] {
  const runDown = [...result.runs].reverse().find((one) => one.runDown !== undefined)?.runDown;
  return [
    ...(run === 'full' || run === 'release' ? [{ place: 'running.rate' as const, dimension: 'rotation' as const, asWritten: `${rateNumber(rate).replace(/ ± .*/, '')} rpm`, words: `blows a minute at full tread: ${shownRate(rate)}` }] : []),
    ...(runDown === undefined || (run !== 'full' && run !== 'release') ? [] : [
      { place: 'running.release-strokes' as const, dimension: 'count' as const, asWritten: String(runDown.strokes), words: `strokes after the treadle is let go: ${runDown.strokes}` },
      { place: 'running.release-time' as const, dimension: 'time' as const, asWritten: `${runDown.seconds.toFixed(1)} s`, words: `time from release until it stops: ${shownTime(runDown.seconds)}` },
    ]),
  ];
}
