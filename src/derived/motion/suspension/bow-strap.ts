import { sineCosine } from '../../../methods/numerics/index.ts';
import type { BowStrap, SuspensionDetail } from './suspension.ts';

/** [40 strap, 41 cos path, 42 sin path, 43 tip rate, 44 draw when level, 45 solid rate, 46 further draw to solid] */
export function bowStrapNumbers(s: BowStrap): number[] {
  const path = new Float64Array(2);
  sineCosine(s.pathAngle, path);
  return [s.strap, path[1]!, path[0]!, s.tipRate, s.tipDraw, s.solidRate, s.tipTravel];
}

/**
 * Force on the ram of a bow spring and two straps.
 *
 * Each tip moves along a straight path that leans downward by the path angle a; with the straps (length l) level it is
 * already drawn in by x0. Let x be the further draw when the ram hangs q lower. The strap keeps its length:
 *
 *     (l - x cos a)^2 + (q - x sin a)^2 = l^2    so that    x = b - sqrt(b^2 - q^2),    b = l cos a + q sin a
 *
 * and with U = 2 (k/2)((x0 + x)^2 - x0^2) for the two tips, F = dU/dq = 2 k (x0 + x)(q - x sin a)/(b - x).
 * For small q this is (2 k x0/(l cos a)) q: as in the toggle, it is the draw that carries the ram at rest, not the rate. With a = 0 and a
 * stiff draw it is the toggle joint, F = 2 P tan(strap). A strap only pulls; x is never negative, so while x0 is not
 * negative neither strap goes slack. The straight path stands for the arc of a leaf tip, whose rise is below a tenth of its run in the
 * draws that occur.
 */
export function bowStrapForce(n: Float64Array, q: number): number {
  const b = n[40]! * n[41]! + q * n[42]!;
  const rest = Math.sqrt(b * b - q * q);
  const x = b - rest;
  let pull = n[43]! * (n[44]! + x);
  const beyond = x - n[46]!;
  if (beyond > 0) pull += n[45]! * beyond;
  return (2 * pull * (q - x * n[42]!)) / rest;
}

/** The same with everything worth showing. */
export function bowStrapDetail(n: Float64Array, q: number): SuspensionDetail {
  const b = n[40]! * n[41]! + q * n[42]!;
  const rest = Math.sqrt(b * b - q * q);
  const x = b - rest;
  const beyond = Math.max(0, x - n[46]!);
  const springForce = n[43]! * (n[44]! + x) + n[45]! * beyond;
  // The tip is held along its path by the strap's pull along that path: cos of the angle between strap and path.
  const along = rest / n[40]!;
  return {
    force: bowStrapForce(n, q),
    energy: n[43]! * ((n[44]! + x) ** 2 - n[44]! ** 2) + n[45]! * beyond * beyond,
    springForce,
    travelLeft: n[46]! - x,
    linkForce: springForce / along,
  };
}
