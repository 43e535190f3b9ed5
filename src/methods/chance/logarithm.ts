const VIEW = new DataView(new ArrayBuffer(8));
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;

/**
 * Natural logarithm from additions, multiplications and divisions only.
 *
 * The language leaves the last digits of `Math.log` and `Math.exp` to each engine. Draws feed simulators with
 * impacts, which enlarge such differences, so that a population drawn on two devices would not be the same one.
 * `log m = 2 artanh((m - 1)/(m + 1))` with m within a half octave of 1, summed to the 23rd power.
 *
 * @param x positive and normal (2e-308 and above); 0 gives -Infinity, a negative number gives not a number as `Math.log` does
 */
export function logarithm(x: number): number {
  if (x === 0) return Number.NEGATIVE_INFINITY;
  if (!(x > 0) || x === Number.POSITIVE_INFINITY) return x > 0 ? x : Number.NaN;
  VIEW.setFloat64(0, x);
  const high = VIEW.getUint32(0);
  let power = (high >>> 20) - 1023;
  VIEW.setUint32(0, (high & 0xfffff) | 0x3ff00000);
  let m = VIEW.getFloat64(0);
  if (m > Math.SQRT2) {
    m *= 0.5;
    power += 1;
  }
  const s = (m - 1) / (m + 1);
  const z = s * s;
  let sum = 0;
  for (let odd = 23; odd >= 3; odd -= 2) sum = z * (sum + 1 / odd);
  return power * LN2_HIGH + (2 * s + (2 * s * sum + power * LN2_LOW));
}

/**
 * Exponential from additions and multiplications only, for the same reason as `logarithm`.
 * @param x any number; 0 below -708 (where the result would lose its digits), Infinity above 709.78
 */
export function exponential(x: number): number {
  if (x > 709.78) return Number.POSITIVE_INFINITY;
  if (x < -708) return 0;
  const power = Math.floor(x / Math.LN2 + 0.5);
  const r = x - power * LN2_HIGH - power * LN2_LOW;
  let sum = 1;
  for (let n = 14; n >= 1; n--) sum = 1 + (sum * r) / n;
  // Two factors, because 2^1024 is not a number that a double holds.
  const half = Math.floor(power / 2);
  return sum * powerOfTwo(half) * powerOfTwo(power - half);
}

function powerOfTwo(power: number): number {
  VIEW.setUint32(0, (power + 1023) << 20);
  VIEW.setUint32(4, 0);
  return VIEW.getFloat64(0);
}
