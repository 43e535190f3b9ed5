/**
 * Sine and cosine together, from additions and multiplications only.
 *
 * The language leaves the last digits of `Math.sin` and `Math.cos` to each engine. A trajectory with impacts
 * enlarges such differences until two browsers disagree about a blow, so the simulators use this instead: it is
 * the same to the last bit wherever IEEE double arithmetic is.
 *
 * The angle is brought to within an eighth of a turn by whole quarter turns (a two-part value of pi/2, the first
 * part with its low 28 bits clear so that its products with small whole numbers are exact), and the two Taylor series are
 * summed to the fifteenth and sixteenth power, whose remainder there is below 5e-17.
 *
 * @param angle rad, |angle| < 1e4 (the reduction loses digits beyond that); not a number gives not a number
 * @param into receives the sine at 0 and the cosine at 1
 */
export function sineCosine(angle: number, into: Float64Array): void {
  const quarters = Math.floor(angle * 0.6366197723675814 + 0.5);
  const x = angle - quarters * 1.5707963109016418 - quarters * 1.5893254773528197e-8;
  const z = x * x;
  // Terms in pairs rather than one after another: the processor can then work on several at once.
  const z2 = z * z;
  const z4 = z2 * z2;
  const s =
    x +
    x *
      z *
      (-1 / 6 + z * (1 / 120) + z2 * (-1 / 5040 + z * (1 / 362880)) +
        z4 * (-1 / 39916800 + z * (1 / 6227020800) - z2 * (1 / 1307674368000)));
  const c =
    1 - 0.5 * z +
    z2 *
      (1 / 24 - z * (1 / 720) + z2 * (1 / 40320 - z * (1 / 3628800)) +
        z4 * (1 / 479001600 - z * (1 / 87178291200) + z2 * (1 / 20922789888000)));
  // Which quarter of the circle: odd ones exchange the two, the signs follow.
  const quarter = quarters & 3;
  const sign = quarter & 2 ? -1 : 1;
  if (quarter & 1) {
    into[0] = sign * c;
    into[1] = -sign * s;
  } else {
    into[0] = sign * s;
    into[1] = sign * c;
  }
}
