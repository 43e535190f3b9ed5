/** How a search for a root ended. Only `converged` carries a root. */
export type RootOutcome =
  | { readonly code: 'converged'; readonly x: number; readonly residual: number; readonly iterations: number }
  | { readonly code: 'no-bracket'; readonly atLow: number; readonly atHigh: number }
  | { readonly code: 'not-finite'; readonly at: number; readonly value: number }
  | { readonly code: 'iteration-limit'; readonly x: number; readonly residual: number; readonly iterations: number };

/** How close, and how long at most. */
export interface RootSettings {
  /** Width of the last bracket that is close enough, in the unit of x, >= 0; 0 unless said (the last bits of the number). */
  readonly width?: number;
  /** Evaluations after the two ends, >= 1; 200 unless said: most roots take about ten, a flat one of the ninth order 148. */
  readonly mostIterations?: number;
}

/**
 * A root of `f` between `low` and `high`, where `f` must have opposite signs (or be nought at one of them).
 *
 * Brent's method: inverse quadratic or secant steps while they shrink the bracket fast enough, halving otherwise,
 * so that it is never slower than halving by more than a constant. R. P. Brent, Algorithms for Minimization without
 * Derivatives, 1973, chapter 4.
 *
 * @param f the function; a value that is not finite ends the search with its place
 * @param low one end of the bracket, finite
 * @param high the other end, finite
 */
export const findRoot = (f: (x: number) => number, low: number, high: number, settings: RootSettings = {}): RootOutcome => {
  const width = settings.width ?? 0;
  const most = settings.mostIterations ?? 200;
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (!Number.isFinite(fa)) return { code: 'not-finite', at: a, value: fa };
  if (!Number.isFinite(fb)) return { code: 'not-finite', at: b, value: fb };
  if (fa === 0) return { code: 'converged', x: a, residual: 0, iterations: 0 };
  if (fb === 0) return { code: 'converged', x: b, residual: 0, iterations: 0 };
  if (fa > 0 === fb > 0) return { code: 'no-bracket', atLow: fa, atHigh: fb };
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let iterations = 1; iterations <= most; iterations += 1) {
    if (Math.abs(fc) < Math.abs(fb)) {
      // b is always the best end, c the one across the root.
      a = b; b = c; c = a;
      fa = fb; fb = fc; fc = fa;
    }
    const close = 2 * Number.EPSILON * Math.abs(b) + 0.5 * width;
    const half = 0.5 * (c - b);
    if (Math.abs(half) <= close || fb === 0) return { code: 'converged', x: b, residual: fb, iterations };
    if (Math.abs(before) < close || Math.abs(fa) <= Math.abs(fb)) {
      step = half;
      before = half;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const t = fa / fc;
        const r = fb / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      const keep = 2 * p < Math.min(3 * half * q - Math.abs(close * q), Math.abs(before * q));
      before = keep ? step : half;
      step = keep ? p / q : half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > close ? step : half > 0 ? close : -close;
    fb = f(b);
    if (!Number.isFinite(fb)) return { code: 'not-finite', at: b, value: fb };
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      before = step;
    }
  }
  return { code: 'iteration-limit', x: b, residual: fb, iterations: most };
};
