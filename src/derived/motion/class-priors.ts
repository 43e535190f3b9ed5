import type { MotionSpec } from './motion-spec.ts';
import { hammerNumbers } from './hammer-numbers.ts';
import { hangingDepth } from './start-state.ts';
import type { BowStrap, CoilToggle, Helve, Suspension } from './suspension/suspension.ts';

/** The usual values of three sizes, in SI; common practice and proportion, no source. */
const SIZES = {
  ramMass: [12, 25, 50],
  throw: [0.04, 0.05, 0.062],
  rodLength: [0.36, 0.42, 0.48],
  restGap: [0.03, 0.036, 0.044],
  workThickness: [0.012, 0.016, 0.02],
  lowerLimb: [0.12, 0.15, 0.185],
  upperLimb: [0.1, 0.125, 0.155],
  link: [0.08, 0.1, 0.125],
  rate: [26e3, 36e3, 52e3],
  preCompression: [0.04, 0.048, 0.056],
  travel: [0.095, 0.115, 0.14],
  jointStop: [0.04, 0.05, 0.062],
  upperStop: [0.062, 0.08, 0.1],
  guideFriction: [8, 15, 28],
  viscous: [8, 12, 20],
  crankInertia: [0.9, 2.6, 8.5],
  carrierMass: [9, 18, 34],
  motorInertia: [0.5, 1.2, 3],
  pullOutTorque: [75, 160, 370],
  speedRpm: [390, 320, 265],
  clutchTorque: [60, 130, 300],
  bearingFriction: [1, 2, 4],
} as const;

/**
 * Linear between the sizes; beyond them by the power of the mass that joins the two nearest, as alike castings grow,
 * rounded to six figures so that every engine gives the same.
 */
function between(row: readonly [number, number, number], mass: number): number {
  const x = SIZES.ramMass;
  const i = mass < x[1] ? 0 : 1;
  const near = row[i]!;
  const far = row[(i + 1) as 1 | 2]!;
  if (mass >= x[0] && mass <= x[2]) return near + ((far - near) * (mass - x[i]!)) / (x[(i + 1) as 1 | 2]! - x[i]!);
  const power = Math.log(far / near) / Math.log(x[(i + 1) as 1 | 2]! / x[i]!);
  const end = mass < x[0] ? 0 : 2;
  return Number((row[end] * Math.pow(mass / x[end], power)).toPrecision(6));
}

/** A specification and which of its values nobody has measured. */
export interface SpecWithDoubt {
  readonly spec: MotionSpec;
  /** dotted names of the values that come from the class */
  readonly assumed: readonly string[];
}

/**
 * The height of the frame from the gap now between the dies, the ram hanging at bottom dead centre.
 * @param restGap m, with the dies as they are, lost height included
 */
export function frameHeightFor(spec: MotionSpec, restGap: number): number {
  const numbers = hammerNumbers(spec);
  const lever = numbers[37]!;
  const hang = hangingDepth(numbers) ?? 0;
  return restGap - spec.stackLoss + (spec.rodLength + spec.throw) * lever + hang;
}

/** The coil-and-toggle suspension usual for a ram mass, kg. */
export function usualCoilToggle(ramMass: number): CoilToggle {
  const v = (name: keyof typeof SIZES): number => between(SIZES[name], ramMass);
  return {
    kind: 'coil-toggle',
    lowerLimb: v('lowerLimb'), upperLimb: v('upperLimb'), link: v('link'),
    armAngle: -0.06, crankOffset: 0,
    rate: v('rate'), preCompression: v('preCompression'), sag: 0, travel: v('travel'), solidRate: 2e6,
  };
}

/** A bow spring of the same stiffness about rest as the coil and toggle of that ram mass: proportion, no source. */
export function usualBowStrap(ramMass: number): BowStrap {
  const t = usualCoilToggle(ramMass);
  return {
    kind: 'bow-strap',
    tipRate: (1.3 * t.rate * t.upperLimb) / t.lowerLimb, tipDraw: t.preCompression,
    strap: 1.3 * t.link, pathAngle: 0.1, tipTravel: 0.8 * t.link, solidRate: 2e6,
  };
}

/** A helve of about the same stiffness about rest: proportion, no source. */
export function usualHelve(ramMass: number): Helve {
  const t = usualCoilToggle(ramMass);
  const size = t.link / 0.1;
  const lever = 0.42;
  const stiffness = (2 * t.rate * t.preCompression * t.upperLimb) / (t.lowerLimb * t.link);
  return {
    kind: 'helve',
    headRadius: 1.2 * size, cushionRadius: 1.2 * size * lever, rodRadius: 0.6 * size,
    beamInertia: 0.3 * ramMass * size * size, beamMoment: 1.5 * ramMass * size,
    cushionRate: (0.62 * stiffness) / (lever * lever), hardening: 150, squeeze: 0.024 * size, solidSqueeze: 0.06 * size, solidRate: 5e6,
  };
}

/**
 * The usual hammer of a ram mass: every value assumed.
 * @param ramMass kg, 10 to 60 is what the table spans; 1 to 500 by proportion beyond it
 * @param family coil and toggle unless said
 */
export function usualHammer(ramMass: number, family: Suspension['kind'] = 'coil-toggle'): SpecWithDoubt {
  const v = (name: keyof typeof SIZES): number => between(SIZES[name], ramMass);
  const suspension = family === 'coil-toggle' ? usualCoilToggle(ramMass) : family === 'bow-strap' ? usualBowStrap(ramMass) : usualHelve(ramMass);
  const lever = suspension.kind === 'helve' ? suspension.headRadius / suspension.rodRadius : 1;
  const rough: MotionSpec = {
    suspension,
    ramMass,
    throw: v('throw') / lever, rodLength: v('rodLength'), frameHeight: 1, stackLoss: 0, workThickness: v('workThickness'),
    contact: { kind: 'fixed', restitution: 0.25 },
    ledgeClearance: 0.03, jointStop: v('jointStop'), upperStop: v('upperStop'), stopStiffness: 2e7, stopDamping: 0.25,
    pinFriction: 0.04, lostMotion: 0, guideFriction: v('guideFriction'), sideFriction: 0.12, viscous: v('viscous'),
    crankInertia: v('crankInertia'), carrierMass: v('carrierMass') * lever, motorInertia: v('motorInertia'),
    pullOutTorque: v('pullOutTorque'), pullOutSlip: 0.12, driveSpeed: (v('speedRpm') * Math.PI) / 30,
    clutchTorque: v('clutchTorque'), treadle: 1, bearingFriction: v('bearingFriction'), anvilRatio: 10,
  };
  const spec = { ...rough, frameHeight: frameHeightFor(rough, v('restGap')) };
  return { spec, assumed: namesOf(spec) };
}

/** Dotted names of all values of a specification. */
export function namesOf(spec: MotionSpec): string[] {
  const names: string[] = [];
  for (const [key, value] of Object.entries(spec)) {
    if (typeof value === 'number') names.push(key);
    else if (typeof value === 'object' && value !== null)
      for (const inner of Object.keys(value as object)) if (inner !== 'kind') names.push(`${key}.${inner}`);
  }
  return names;
}
