import { runningMedian } from '../../methods/signal/index.ts';

/**
 * Period by time, from the blows of a chain: a running median over eleven intervals, each interval divided by the
 * strokes that it spans.
 * @param period s, the usual one, which the result stays within 30 % of
 */
export function localPeriod(times: readonly number[], period: number): (time: number) => number {
  const middles: number[] = [];
  const spans: number[] = [];
  for (let i = 1; i < times.length; i++) {
    const gap = times[i]! - times[i - 1]!;
    const turns = Math.round(gap / period);
    if (turns < 1 || turns > 4) continue;
    middles.push((times[i]! + times[i - 1]!) / 2);
    spans.push(gap / turns);
  }
  if (spans.length < 5) return () => period;
  const smooth = runningMedian(spans, 5).map((p) => Math.min(1.3 * period, Math.max(0.7 * period, p)));
  const places = Float64Array.from(middles);
  return (time) => smooth[placeOf(places, time)]!;
}

/** First place that is not before a time, or the last. */
function placeOf(places: Float64Array, time: number): number {
  let low = 0;
  let high = places.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (places[middle]! < time) low = middle + 1;
    else high = middle;
  }
  return low;
}
