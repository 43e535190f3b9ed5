import { sineCosine } from '../../methods/numerics/index.ts';
import { AUDIT } from './hammer-rates.ts';
import { suspensionDetail } from './suspension/law.ts';

/** Where the work went, J. It closes when `residual` is nothing. */
export interface EnergyAudit {
  /** given by the motor */
  readonly input: number;
  /** turned to heat in clutch, bearing, guide, oil, pins, stops and ground */
  readonly clutch: number;
  readonly bearing: number;
  readonly guide: number;
  readonly viscous: number;
  readonly pins: number;
  readonly stops: number;
  readonly ground: number;
  /** lost in blows */
  readonly blows: number;
  /** more in the machine at the end than at the start */
  readonly stored: number;
  /** input less everything else */
  readonly residual: number;
  /** |residual| over the input */
  readonly share: number;
}

/** All that is stored in motion, height and springs, J, from an arbitrary zero. */
export function storedEnergy(n: Float64Array, y: Float64Array): number {
  const circle = new Float64Array(2);
  sineCosine(y[2]!, circle);
  const rs = n[2]! * circle[0]!;
  const rc = n[2]! * circle[1]!;
  const reach = Math.sqrt(n[3]! - rs * rs);
  const s1 = rs - (rs * rc) / reach;
  const carrier = rc - reach;
  const q = n[4]! + carrier - y[0]!;
  const band = n[27]!;
  const slack = q > band ? q - band : q < -band ? q + band : 0;
  const held = Math.min(Math.max(slack, n[25]!), n[26]!);
  const law = suspensionDetail(n[34]!, n, held);
  const into = q > n[23]! ? q - n[23]! : q < n[24]! ? n[24]! - q : 0;
  let energy =
    0.5 * n[0]! * y[1]! * y[1]! + n[1]! * y[0]! +
    0.5 * (n[5]! + n[6]! * s1 * s1) * y[3]! * y[3]! + n[7]! * carrier +
    (0.5 * y[4]! * y[4]!) / n[8]! +
    law.energy + law.force * (slack - held) + 0.5 * n[21]! * into * into;
  if (n[31]! > 0) energy += 0.5 * n[31]! * y[6]! * y[6]! + 0.5 * n[32]! * y[5]! * y[5]!;
  return energy;
}

/**
 * Draws up the account of an audited run.
 * @param n the hammer's numbers
 * @param start state at the start
 * @param end state at the end, with the audit's sums behind it
 * @param blows J lost in blows
 */
export function energyAudit(n: Float64Array, start: Float64Array, end: Float64Array, blows: number): EnergyAudit {
  const base = n[31]! > 0 ? 7 : 5;
  const sums = Object.fromEntries(AUDIT.map((name, i) => [name, end[base + i]!])) as Record<(typeof AUDIT)[number], number>;
  const stored = storedEnergy(n, end) - storedEnergy(n, start);
  const spent = sums.clutch + sums.bearing + sums.guide + sums.viscous + sums.pins + sums.stops + sums.ground + blows;
  const residual = sums.input - spent - stored;
  return { ...sums, blows, stored, residual, share: Math.abs(residual) / Math.max(Math.abs(sums.input), 1e-9) };
}
