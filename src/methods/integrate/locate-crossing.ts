/**
 * Where a function changes sign between two places, by the Illinois variant of false position with bisection in reserve.
 *
 * G. Dahlquist and A. Bjorck, Numerical Methods (1974), section 6.4 (from memory). Never more than 80 evaluations;
 * the bracket is kept throughout, so whatever happens the answer lies inside it.
 *
 * @param value the function; its signs at `low` and `high` must differ (zero counts as either)
 * @param low one end
 * @param high the other end, where the crossing has happened
 * @param width stop when the bracket is narrower than this
 * @returns a place at which the crossing has just happened: the value there has the sign it has at `high`, or is zero
 */
export function locateCrossing(value: (at: number) => number, low: number, high: number, width = 1e-15): number {
  let a = low;
  let b = high;
  let fa = value(a);
  let fb = value(b);
  const after = fb < 0 ? -1 : 1;
  let side = 0;
  for (let n = 0; n < 80 && Math.abs(b - a) > width && fb !== 0; n++) {
    let c = fa === fb ? 0.5 * (a + b) : b - (fb * (b - a)) / (fb - fa);
    if (n > 40 || !((c > a && c < b) || (c < a && c > b))) c = 0.5 * (a + b);
    if (c === a || c === b) break;
    const fc = value(c);
    if (fc * after >= 0) {
      // On the far side: this becomes the new far end.
      b = c;
      fb = fc;
      if (side === 1) fa *= 0.5;
      side = 1;
    } else {
      a = c;
      fa = fc;
      if (side === -1) fb *= 0.5;
      side = -1;
    }
  }
  return b;
}
