import type { BeatResult, Estimate } from '../../src/derived/sound/index.ts';
import { score, type Score } from './score.ts';
import { steadyRate, type Truth } from './synthesiser/index.ts';

/** What became of one recording: figures to be put into tables. */
export interface Judged {
  readonly group: string;
  readonly signalToNoise: number;
  readonly level?: number;
  readonly heard: boolean;
  readonly trusted: boolean;
  readonly blows: Score;
  /** relative error of the rate, and whether the stated interval holds the truth */
  readonly rate?: { readonly error: number; readonly covered: boolean };
  readonly drift?: { readonly error: number; readonly covered: boolean };
  readonly second: 'right' | 'wrong place' | 'possible, right place' | 'false' | 'possible, none there' | 'missed' | 'none, rightly';
  readonly delay?: { readonly error: number; readonly covered: boolean };
  readonly levelError?: { readonly error: number; readonly covered: boolean };
  /** the true level stood above the stated limit at its delay, and it was noticed */
  readonly limit?: boolean;
  readonly cpu: number;
  readonly seconds: number;
}

/** s; a second sound is at its place within this */
const PLACE = 0.008;

export function judge(result: BeatResult, truth: Truth, about: { group: string; signalToNoise: number; level?: number; seconds: number; cpu: number }): Judged {
  if (result.state !== 'heard') {
    const second = truth.delay === undefined ? 'none, rightly' : 'missed';
    return { ...about, heard: false, trusted: false, blows: score([], truth.blows), second };
  }
  const blows = score(result.strokes.map((s) => s.time), truth.blows);
  const { second } = result;
  const near = truth.delay !== undefined && second.delay !== undefined && Math.abs(second.delay.value - truth.delay) < PLACE;
  const verdict = truth.delay !== undefined
    ? second.verdict === 'double' ? (near ? 'right' : 'wrong place') : second.verdict === 'possible' && near ? 'possible, right place' : 'missed'
    : second.verdict === 'double' ? 'false' : second.verdict === 'possible' ? 'possible, none there' : 'none, rightly';
  const steady = spanTruth(result, truth, blows.offset);
  const limit = truth.delay === undefined ? undefined : [...second.limit].sort((a, b) => Math.abs(a.delay - truth.delay!) - Math.abs(b.delay - truth.delay!))[0];
  const above = limit !== undefined && Math.abs(limit.delay - truth.delay!) < 0.006 && (truth.level ?? -99) > limit.levelDecibels;
  return {
    ...about, heard: true, trusted: result.trust === 'good', blows, second: verdict,
    ...(steady && { rate: held(result.rate, steady.strokes / 60, true) }),
    ...(steady && result.drift && { drift: held(result.drift, steady.drift / 60, false) }),
    ...(verdict === 'right' && { delay: held(second.delay!, truth.delay!, false) }),
    ...(verdict === 'right' && second.levelDecibels && { levelError: held(second.levelDecibels, truth.level!, false) }),
    ...(above && { limit: verdict === 'right' || verdict === 'possible, right place' }),
  };
}

function held(estimate: Estimate, truth: number, relative: boolean): { error: number; covered: boolean } {
  return { error: relative ? estimate.value / truth - 1 : estimate.value - truth, covered: estimate.low <= truth && truth <= estimate.high };
}

/** Rate and drift of the undisturbed schedule over the span of the longest run that was reported: the same span for both. */
function spanTruth(result: BeatResult & { state: 'heard' }, truth: Truth, offset: number): { strokes: number; drift: number } | undefined {
  const longest = [...result.runs].sort((a, b) => b.strokes - (b.runDown?.strokes ?? 0) - (a.strokes - (a.runDown?.strokes ?? 0)))[0];
  if (!longest || truth.blows.length === 0) return undefined;
  const half = 0.5 / result.rate.value;
  const last = longest.last - (longest.runDown?.seconds ?? 0);
  return steadyRate(truth.planned.flat().filter((t) => t > longest.first - offset - half && t < last - offset + half));
}
