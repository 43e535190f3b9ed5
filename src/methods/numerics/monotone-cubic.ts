import { demandTable, intervalOf } from './interpolate.ts';

/**
 * A smooth curve through a table that rises and falls only where the table does: cubic pieces with slopes limited after
 * SIAM J. Numer. Anal. 17, 1980, 238, the slopes at the rows by Brodlie's weighted harmonic mean
 * (Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5, 1984, 300). Outside the table the end value holds.
 * @param xs places, rising strictly, at least two
 * @param ys values, as many
 */
export const monotoneCubic = (xs: readonly number[], ys: readonly number[]): ((x: number) => number) => {
  demandTable(xs, ys);
  const last = xs.length - 1;
  if (last < 1) throw new RangeError(`A curve needs two rows at least: ${xs.length}`);
  const widths = xs.slice(1).map((x, i) => x - xs[i]!);
  const rises = widths.map((width, i) => (ys[i + 1]! - ys[i]!) / width);
  const slopes = xs.map((_, i) => {
    if (i === 0) return endSlope(widths[0]!, widths[1], rises[0]!, rises[1]);
    if (i === last) return endSlope(widths[last - 1]!, widths[last - 2], rises[last - 1]!, rises[last - 2]);
    const before = rises[i - 1]!;
    const after = rises[i]!;
    if (before * after <= 0) return 0;
    const weightBefore = 2 * widths[i]! + widths[i - 1]!;
    const weightAfter = widths[i]! + 2 * widths[i - 1]!;
    return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
  });
  return (x) => {
    if (Number.isNaN(x)) throw new RangeError('A curve is asked at a number; any number is allowed: NaN');
    if (x <= xs[0]!) return ys[0]!;
    if (x >= xs[last]!) return ys[last]!;
    const i = intervalOf(xs, x);
    const h = widths[i]!;
    const t = (x - xs[i]!) / h;
    const back = 1 - t;
    return (
      ys[i]! * (1 + 2 * t) * back * back + h * slopes[i]! * t * back * back + ys[i + 1]! * t * t * (3 - 2 * t) - h * slopes[i + 1]! * t * t * back
    );
  };
};

/** Three-point slope at an end, held to the sign of the first rise and to three times it. */
const endSlope = (near: number, far: number | undefined, rise: number, next: number | undefined): number => {
  if (far === undefined || next === undefined) return rise;
  const slope = ((2 * near + far) * rise - near * next) / (near + far);
  if (slope * rise <= 0) return 0;
  if (rise * next <= 0 && Math.abs(slope) > 3 * Math.abs(rise)) return 3 * rise;
  return slope;
};
