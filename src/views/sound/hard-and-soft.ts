import { mean } from './mean.ts';

/** Strokes that come by turns: early and late, hard and soft. */
export interface HardAndSoft {
  /** difference of the two intervals, share of a turn, above 0 */
  readonly unevenness: number;
  /** dB between the hard blow and the soft one, 0 or more */
  readonly levelDecibels: number;
}

interface Stroke {
  readonly sinceLast?: number;
  readonly levelDecibels: number;
  readonly run: number;
  readonly runningDown: boolean;
}

const FEWEST = 8; // of each kind
/** Standard errors that a difference must reach, and the least that anybody would hear or mend. */
const SURE = 5;
const LEAST_SHARE = 0.008;

/**
 * Looks whether every second stroke comes early, as in a gallop: intervals are compared by turns within each run.
 * @param period s, an even turn
 */
export function hardAndSoft(strokes: readonly Stroke[], period: number): HardAndSoft | undefined {
  const intervals: [number[], number[]] = [[], []];
  const levels: [number[], number[]] = [[], []];
  let place = 0;
  for (const stroke of strokes) {
    if (stroke.runningDown) continue;
    const turns = stroke.sinceLast === undefined ? 1 : Math.max(1, Math.round(stroke.sinceLast / period));
    place += turns;
    const side = (place % 2) as 0 | 1;
    if (stroke.sinceLast !== undefined && turns === 1) intervals[side].push(stroke.sinceLast);
    levels[side].push(stroke.levelDecibels);
  }
  if (intervals.some((row) => row.length < FEWEST)) return undefined;
  const difference = mean(intervals[0]) - mean(intervals[1]);
  const error = Math.hypot(...intervals.map(standardError));
  const unevenness = Math.abs(difference) / (2 * period);
  if (unevenness < LEAST_SHARE || Math.abs(difference) < SURE * error) return undefined;
  return { unevenness, levelDecibels: Math.abs(mean(levels[0]) - mean(levels[1])) };
}

function standardError(row: readonly number[]): number {
  const middle = mean(row);
  return Math.sqrt(row.reduce((sum, x) => sum + (x - middle) ** 2, 0) / (row.length - 1) / row.length);
}
