import type { SpecWithDoubt } from './class-priors.ts';
import { movingMass } from './hammer-numbers.ts';
import type { MotionSpec } from './motion-spec.ts';
import type { Helve } from './suspension/suspension.ts';

/** Natural speed of the ram on its suspension over the speed of the crank, as hammers are usually sprung; common practice, no source. */
const TUNED = { 'coil-toggle': 1.03, 'bow-strap': 1.03, helve: 1.7 } as const;

/**
 * Fits what was assumed to what was read, where the class figure beside the reading would make a hammer that nobody builds: stops in proportion
 * to the throw, a preload that goes with the rate and the speed, a helve's cushions in proportion to its beam. Nothing that was read is touched.
 * @param base the usual hammer of the class, before anything was read
 * @param read names of the values that were read
 */
export function fittedToHammer(made: SpecWithDoubt, base: MotionSpec, read: ReadonlySet<string>): SpecWithDoubt {
  const { spec } = made;
  const size = (spec.throw * leverOf(spec)) / (base.throw * leverOf(base));
  const stops: Partial<MotionSpec> = read.has('throw') ? { jointStop: base.jointStop * size, upperStop: base.upperStop * size } : {};
  return { ...made, spec: tuned({ ...spec, ...stops }, base, read, size) };
}

const leverOf = (spec: MotionSpec): number => (spec.suspension.kind === 'helve' ? spec.suspension.headRadius / spec.suspension.rodRadius : 1);

function tuned(spec: MotionSpec, base: MotionSpec, read: ReadonlySet<string>, size: number): MotionSpec {
  const s = spec.suspension;
  const stiffness = movingMass(spec) * (TUNED[s.kind] * spec.driveSpeed) ** 2;
  if (s.kind === 'helve') return read.has('suspension.headRadius') ? { ...spec, suspension: cushioned(s, base.suspension as Helve, stiffness, size, read.has('suspension.cushionRadius')) } : spec;
  if (s.kind === 'bow-strap') {
    if (!read.has('suspension.tipRate')) return spec;
    // A small sag q stretches the straps by q^2/2l at each tip: 2 k draw / (l cos path) is the stiffness about rest.
    return { ...spec, suspension: { ...s, tipDraw: (stiffness * s.strap * cosine(s.pathAngle)) / (2 * s.tipRate) } };
  }
  if (!read.has('suspension.rate') || read.has('suspension.preCompression')) return spec;
  const draw = (stiffness * s.link * cosine(s.armAngle) * s.lowerLimb) / (2 * s.rate * s.upperLimb * cosine(s.armAngle + s.crankOffset));
  return { ...spec, suspension: { ...s, preCompression: draw + s.sag } };
}

/**
 * Cushions sized as in the class, for a beam of this length, and placed so where nobody measured their place.
 * @param read whether their place was measured
 */
function cushioned(s: Helve, usual: Helve, stiffness: number, size: number, read: boolean): Helve {
  const lever = read ? s.cushionRadius / s.headRadius : usual.cushionRadius / usual.headRadius;
  const beam = s.headRadius / usual.headRadius;
  const squeeze = usual.squeeze * size;
  return {
    ...s, cushionRadius: lever * s.headRadius, beamInertia: usual.beamInertia * beam ** 2, beamMoment: usual.beamMoment * beam,
    hardening: usual.hardening / size ** 2, squeeze, solidSqueeze: usual.solidSqueeze * size,
    cushionRate: stiffness / (2 * lever ** 2 * (1 + (3 * usual.hardening * squeeze ** 2) / size ** 2)),
  };
}

/** Cosine of an angle that stays below 0.8 rad, by its series to the sixth power: within 1e-6. */
const cosine = (angle: number): number => 1 - angle ** 2 / 2 + angle ** 4 / 24 - angle ** 6 / 720;
