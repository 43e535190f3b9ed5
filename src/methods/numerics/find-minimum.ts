/** How a search for a minimum ended. */
export type MinimumOutcome =
  | { readonly code: 'converged' | 'iteration-limit'; readonly x: number; readonly value: number; readonly iterations: number }
  | { readonly code: 'not-finite'; readonly at: number; readonly value: number };

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The place of least `f` between `low` and `high`, by golden section (J. Kiefer, Proc. Amer. Math. Soc. 4, 1953, 502).
 * Finds the least value where `f` falls and then rises; with several valleys it finds one of them. Near the bottom
 * `f` is flat, so x is good to about the square root of the last bit.
 * @param width width of the last bracket that is close enough, in the unit of x, > 0
 * @param mostIterations at most so many narrowings; 200 unless said
 */
export const findMinimum = (f: (x: number) => number, low: number, high: number, width: number, mostIterations = 200): MinimumOutcome => {
  if (!(width > 0 && low < high)) throw new RangeError(`A search needs low < high and a width above 0: ${low}, ${high}, ${width}`);
  let a = low;
  let b = high;
  let left = b - GOLDEN * (b - a);
  let right = a + GOLDEN * (b - a);
  let atLeft = f(left);
  let atRight = f(right);
  let iterations = 0;
  while (b - a > width && iterations < mostIterations) {
    if (!Number.isFinite(atLeft)) return { code: 'not-finite', at: left, value: atLeft };
    if (!Number.isFinite(atRight)) return { code: 'not-finite', at: right, value: atRight };
    if (atLeft <= atRight) {
      b = right;
      right = left;
      atRight = atLeft;
      left = b - GOLDEN * (b - a);
      atLeft = f(left);
    } else {
      a = left;
      left = right;
      atLeft = atRight;
      right = a + GOLDEN * (b - a);
      atRight = f(right);
    }
    iterations += 1;
  }
  const x = 0.5 * (a + b);
  const value = f(x);
  if (!Number.isFinite(value)) return { code: 'not-finite', at: x, value };
  return { code: b - a <= width ? 'converged' : 'iteration-limit', x, value, iterations };
};
