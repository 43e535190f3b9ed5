/**
 * The factor by which the next step may differ from this one.
 *
 * Proportional-integral control (K. Gustafsson, ACM Transactions on Mathematical Software 17 (1991) 533-554): the error to the power -3/16, damped
 * by the error before to the power 1/32. The exponents are sums of halvings, so that square roots alone make them:
 * a general power is not the same to the last bit in every engine, a square root is.
 *
 * @param error norm of this step, 1 at the tolerance, finite and not negative
 * @param before norm of the step accepted before
 * @returns between 0.2 and 6
 */
export function stepFactor(error: number, before: number): number {
  const sixteenth = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(error + 1e-30))));
  const eighth = sixteenth * sixteenth;
  const earlier = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(before + 1e-30)))));
  const factor = (0.85 * earlier) / (eighth * sixteenth);
  return factor < 0.2 ? 0.2 : factor > 6 ? 6 : factor;
}

/** The factor after a refused step: never longer, and a quarter where the error is not a number. */
export function refusedFactor(error: number): number {
  if (!(error < Infinity)) return 0.25;
  const sixteenth = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(error))));
  const factor = 0.75 / (sixteenth * sixteenth * sixteenth);
  return factor < 0.1 ? 0.1 : factor > 0.9 ? 0.9 : factor;
}
