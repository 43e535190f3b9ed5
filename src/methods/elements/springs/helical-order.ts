import { demandPositive } from '../../numerics/index.ts';
import { activeCoils, deadCoils, solidLength, type CoilEnds } from './coil-ends.ts';
import { coilsForRate, helicalRate } from './helical-rate.ts';
import { wahlFactor, wireForLoad } from './helical-stress.ts';

/** What a new spring must do. */
export interface SpringWanted {
  /** Greatest load, N, > 0. */
  readonly load: number;
  /** Rate wanted, N/m, > 0; greatest load over its deflection where that is what is known. */
  readonly rate: number;
  /** Spring index to aim at, above 1, usually 5 to 9. */
  readonly index: number;
  /** Permissible shear stress, Pa, > 0. */
  readonly stress: number;
  /** Shear modulus, Pa, > 0. */
  readonly shearModulus: number;
  readonly ends: CoilEnds;
  /** Gap to keep between neighbouring coils at the greatest load, m, 0 or above. */
  readonly gap: number;
  /** Wire diameters that can be had, m, rising. */
  readonly wires: readonly number[];
}

/** A spring to order. */
export interface SpringOrder {
  /** Wire diameter that the stress alone asks for, m, before rounding up to a size that can be had. */
  readonly leastWire: number;
  readonly wire: number;
  readonly meanDiameter: number;
  /** Active coils that the rate asks for, before rounding. */
  readonly exactCoils: number;
  readonly activeCoils: number;
  readonly totalCoils: number;
  /** Rate and deflection of the spring as rounded, N/m and m. */
  readonly rate: number;
  readonly deflection: number;
  readonly solidLength: number;
  readonly freeLength: number;
  /** Free length over the gaps between all coils, m. */
  readonly pitch: number;
}

export type SpringOrderOutcome = ({ readonly state: 'known' } & SpringOrder) | { readonly state: 'does-not-apply'; readonly because: string };

/**
 * A helical spring for a load, a rate and an index: wire from the stress with Wahl's factor, rounded up to a size that can be had;
 * coil diameter from the index; coils from the rate, rounded to a whole one; lengths from both (Bhandari, Design of Machine
 * Elements, ex. 10.1 and others).
 */
export const orderHelicalSpring = (wanted: SpringWanted): SpringOrderOutcome => {
  demandPositive('spring rate', wanted.rate);
  if (!(wanted.gap >= 0)) throw new RangeError(`The gap between coils is outside its range; 0 m and above is allowed: ${wanted.gap}`);
  const leastWire = wireForLoad(wanted.load, wanted.index, wanted.stress, wahlFactor(wanted.index));
  const wire = wanted.wires.find((size) => size >= leastWire);
  if (wire === undefined) return { state: 'does-not-apply', because: `the load asks for wire of ${(leastWire * 1e3).toPrecision(3)} mm, above the thickest that can be had` };
  const meanDiameter = wanted.index * wire;
  const exactCoils = coilsForRate(wanted.shearModulus, wire, meanDiameter, wanted.rate);
  const coils = Math.max(1, Math.round(exactCoils));
  const totalCoils = coils + deadCoils(wanted.ends);
  const rate = helicalRate(wanted.shearModulus, wire, meanDiameter, activeCoils(totalCoils, wanted.ends));
  const deflection = wanted.load / rate;
  const solid = solidLength(wire, totalCoils, wanted.ends);
  const freeLength = solid + deflection + (totalCoils - 1) * wanted.gap;
  return {
    state: 'known', leastWire, wire, meanDiameter, exactCoils, activeCoils: coils, totalCoils, rate, deflection, solidLength: solid, freeLength,
    pitch: freeLength / (totalCoils - 1),
  };
};
