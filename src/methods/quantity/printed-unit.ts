import type { Dimension } from './dimension.ts';
import type { Quantity } from './quantity.ts';
import type { UnitName } from './units.ts';

/** Which units a person reads. */
export type System = 'inch' | 'metric';

/** A unit and the least SI size from which it is used. */
type Step = readonly [from: number, unit: UnitName];

const same = (...steps: readonly Step[]): Readonly<Record<System, readonly Step[]>> => ({ inch: steps, metric: steps });
const TENTH_INCH = 0.00254;

/** The usual unit of each dimension by size, smallest first. */
const USUAL: Readonly<Record<Dimension, Readonly<Record<System, readonly Step[]>>>> = {
  length: { inch: [[0, 'thou'], [TENTH_INCH, 'in']], metric: [[0, 'mm'], [10, 'm']] },
  area: { inch: [[0, 'in2'], [1, 'ft2']], metric: [[0, 'mm2'], [0.01, 'cm2'], [1, 'm2']] },
  volume: { inch: [[0, 'in3'], [0.1, 'ft3']], metric: [[0, 'cm3'], [0.1, 'm3']] },
  mass: { inch: [[0, 'oz'], [0.45359237, 'lb']], metric: [[0, 'g'], [1, 'kg']] },
  force: { inch: [[0, 'lbf']], metric: [[0, 'N'], [10_000, 'kN']] },
  pressure: { inch: [[0, 'psi'], [70e6, 'ksi']], metric: [[0, 'kPa'], [1e6, 'MPa'], [1e10, 'GPa']] },
  stiffness: { inch: [[0, 'lbf/in']], metric: [[0, 'N/mm']] },
  angle: same([0, 'deg']),
  rotation: same([0, 'rpm']),
  velocity: { inch: [[0, 'ft/s']], metric: [[0, 'm/s']] },
  time: same([0, 'ms'], [0.1, 's'], [120, 'min'], [7200, 'h']),
  power: { inch: [[0, 'hp']], metric: [[0, 'W'], [100, 'kW']] },
  energy: { inch: [[0, 'ft-lbf']], metric: [[0, 'J'], [10_000, 'kJ']] },
  torque: { inch: [[0, 'lbf-ft']], metric: [[0, 'N-m']] },
  temperature: { inch: [[0, 'degF']], metric: [[0, 'degC']] },
  voltage: same([0, 'V']),
  current: same([0, 'A']),
  frequency: same([0, 'Hz']),
  // A share is a share however small it is; what rises or stands off by length is a taper.
  ratio: same([0, 'percent'], [2, 'one']),
  count: same([0, 'one']),
  hardness: same([0, 'HRC']),
  level: same([0, 'dB']),
  taper: { inch: [[0, 'thou/in']], metric: [[0, 'mm/m']] },
  viscosity: same([0, 'mPa-s']),
  density: { inch: [[0, 'lb/in3']], metric: [[0, 'kg/m3']] },
  inertia: { inch: [[0, 'lb-ft2']], metric: [[0, 'kg-m2']] },
};

/** The one of several units that a plain nought is printed in. */
const ZERO_UNIT: Readonly<Partial<Record<Dimension, Readonly<Record<System, UnitName>>>>> = {
  length: { inch: 'in', metric: 'mm' }, mass: { inch: 'lb', metric: 'kg' }, ratio: { inch: 'percent', metric: 'percent' }, time: { inch: 's', metric: 's' },
};

/**
 * Returns the unit that the system prints a quantity in.
 * Below a tenth of an inch that is the thou, but not for a reading in fractions: 1/16 stays 1/16, and a taper of 1/8 in a foot stays so.
 */
export function printedUnit(q: Quantity, system: System, resolution?: number): UnitName {
  const size = Math.abs(q.value) * (1 + 1e-12);
  if (size === 0) return ZERO_UNIT[q.dimension]?.[system] ?? USUAL[q.dimension][system][0]![1];
  const unit = USUAL[q.dimension][system].findLast(([from]) => size >= from)![1];
  if (unit === 'thou' && madeInFractions(q, resolution)) return 'in';
  return unit === 'thou/in' && resolution !== undefined && halvings(1 / (12 * resolution)) ? 'in/ft' : unit;
}

function madeInFractions(q: Quantity, resolution: number | undefined): boolean {
  if (resolution !== undefined) return halvings(0.0254 / resolution);
  const doubt = 2 * q.uncertainty;
  if (doubt > 0) return doubt >= 0.0254 / 64;
  const parts = (q.value / 0.0254) * 64;
  return Math.abs(parts - Math.round(parts)) < 1e-9;
}

/** Whether so many parts are a whole, halves, quarters ... 128ths. */
function halvings(parts: number): boolean {
  const power = Math.round(Math.log2(parts));
  return power >= 0 && power <= 7 && Math.abs(parts / 2 ** power - 1) < 1e-6;
}
