import { sineCosine } from '../../../methods/numerics/index.ts';
import type { CoilToggle, SuspensionDetail } from './suspension.ts';

/**
 * The numbers of the coil-and-toggle law, to stand from place 40 on.
 * [40 d, 41 D0, 42 1/p, 43 1/link, 44 p^2 - link^2, 45 p^2, 46 2u, 47 cos eps, 48 sin eps, 49 sin(th0 + eps), 50 k, 51 x0, 52 solid rate, 53 travel left]
 */
export function coilToggleNumbers(s: CoilToggle): number[] {
  const p = s.lowerLimb;
  const x0 = s.preCompression - s.sag;
  const arm = new Float64Array(2);
  const bend = new Float64Array(2);
  const both = new Float64Array(2);
  sineCosine(s.armAngle, arm);
  sineCosine(s.crankOffset, bend);
  sineCosine(s.armAngle + s.crankOffset, both);
  return [
    s.link + p * arm[0]!,
    p * arm[1]!,
    1 / p,
    1 / s.link,
    p * p - s.link * s.link,
    p * p,
    2 * s.upperLimb,
    bend[1]!,
    bend[0]!,
    both[0]!,
    s.rate,
    x0,
    s.solidRate,
    s.travel - s.sag - x0,
  ];
}

/**
 * Force on the ram by virtual work: the spring's force times how fast it shortens as the ram moves.
 *
 * The link pin is found where the arm's circle meets the link's, which needs no angle. The geometry is singular where
 * arm and link stand in one line; the caller keeps q away from there.
 * @param n the hammer's numbers
 * @param q m below the place where the links are level
 * @returns N, up positive
 */
export function coilToggleForce(n: Float64Array, q: number): number {
  const d = n[40]!;
  const down = n[41]! + q;
  // The root is taken before the division by the square of the distance, so that neither waits for the other.
  const square = d * d + down * down;
  const sum = square + n[44]!;
  const half = 0.5 / square;
  const root = Math.sqrt(4 * n[45]! * square - sum * sum);
  const bx = (sum * d - root * down) * half;
  const by = (sum * down + root * d) * half;
  const perLimb = n[42]!;
  const perLink = n[43]!;
  const sinArm = bx * perLimb;
  const cosArm = by * perLimb;
  const sinLink = (down - by) * perLink;
  const cosLink = (d - bx) * perLink;
  const cosOffset = n[47]!;
  const sinOffset = n[48]!;
  const limbs = n[46]!;
  const delta = limbs * (sinArm * cosOffset + cosArm * sinOffset - n[49]!);
  let spring = n[50]! * (n[51]! + delta);
  const beyond = delta - n[53]!;
  if (beyond > 0) spring += n[52]! * beyond;
  return (spring * limbs * (cosArm * cosOffset - sinArm * sinOffset) * sinLink * perLimb) / (cosLink * cosArm - sinLink * sinArm);
}

/** The same with everything worth showing. */
export function coilToggleDetail(n: Float64Array, q: number): SuspensionDetail {
  const d = n[40]!;
  const down = n[41]! + q;
  const square = d * d + down * down;
  const h = 0.5 + (0.5 * n[44]!) / square;
  const k = Math.sqrt(n[45]! / square - h * h);
  const sinArm = (h * d - k * down) * n[42]!;
  const cosArm = (h * down + k * d) * n[42]!;
  const sinLink = (down - cosArm / n[42]!) * n[43]!;
  const cosLink = (d - sinArm / n[42]!) * n[43]!;
  const delta = n[46]! * (sinArm * n[47]! + cosArm * n[48]! - n[49]!);
  const beyond = Math.max(0, delta - n[53]!);
  const springForce = n[50]! * (n[51]! + delta) + n[52]! * beyond;
  const upper = cosArm * n[47]! - sinArm * n[48]!;
  return {
    force: coilToggleForce(n, q),
    energy: 0.5 * n[50]! * ((n[51]! + delta) ** 2 - n[51]! ** 2) + 0.5 * n[52]! * beyond * beyond,
    springForce,
    travelLeft: n[53]! - delta,
    // Moments about the arm's pivot: spring on the upper limb against the link on the lower.
    linkForce: (springForce * 0.5 * n[46]! * upper * n[42]!) / (cosLink * cosArm - sinLink * sinArm),
  };
}
