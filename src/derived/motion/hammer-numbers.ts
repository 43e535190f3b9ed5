import type { MotionSpec } from './motion-spec.ts';
import { GRAVITY, SMOOTHING } from './motion-spec.ts';
import { FAMILY_CODE, suspensionNumbers } from './suspension/law.ts';
import { SUSPENSION_AT } from './suspension/suspension.ts';

/** How far beyond the stops the suspension's law is followed before its force is held constant, m. */
export const BEYOND_STOPS = 0.008;

/** Head motion over rod-pin motion: 1 but for a helve. */
export function leverOf(spec: MotionSpec): number {
  return spec.suspension.kind === 'helve' ? spec.suspension.headRadius / spec.suspension.rodRadius : 1;
}

/** kg that move with the die. */
export function movingMass(spec: MotionSpec): number {
  const s = spec.suspension;
  return s.kind === 'helve' ? spec.ramMass + s.beamInertia / (s.headRadius * s.headRadius) : spec.ramMass;
}

/** N that pull the die down. */
export function movingWeight(spec: MotionSpec): number {
  const s = spec.suspension;
  return spec.ramMass * GRAVITY + (s.kind === 'helve' ? s.beamMoment / s.headRadius : 0);
}

/** The height at which the upper die is stopped: the work, or the ledge where that comes first. */
export function struckHeight(spec: MotionSpec): number {
  return Math.max(spec.workThickness, spec.stackLoss - spec.ledgeClearance);
}

/**
 * The numbers the equations of motion read, in one typed array, in this order:
 *
 *      0 mass            1 weight           2 throw            3 rod squared      4 frame height (with stack loss)
 *      5 crank inertia   6 carrier mass     7 carrier weight   8 1/motor inertia  9 2 x pull-out torque x slip
 *     10 slip squared   11 1/drive speed   12 clutch torque   13 1/clutch width  14 bearing friction
 *     15 guide friction 16 side friction   17 1/guide width   18 viscous         19 pin friction
 *     20 1/pin width    21 stop stiffness  22 stop damping    23 joint stop      24 upper stop (negative)
 *     25 lowest q       26 highest q       27 half the lost motion                28 struck height
 *     29 restitution cap 30 yield speed (infinite where fixed)                    31 anvil mass (0: none)
 *     32 anvil stiffness 33 anvil damping  34 family code     35 1/mass          36 drive speed
 *     37 lever          40 and on: the suspension's own
 *
 * Lengths, masses and forces of a helve are carried to its head.
 */
export function hammerNumbers(spec: MotionSpec): Float64Array {
  const n = new Float64Array(64);
  const lever = leverOf(spec);
  const mass = movingMass(spec);
  const helve = spec.suspension.kind === 'helve';
  const { contact } = spec;
  n[0] = mass;
  n[1] = movingWeight(spec);
  n[2] = spec.throw * lever;
  n[3] = spec.rodLength * lever * spec.rodLength * lever;
  n[4] = spec.frameHeight + spec.stackLoss;
  n[5] = spec.crankInertia;
  n[6] = spec.carrierMass / (lever * lever);
  n[7] = (spec.carrierMass * GRAVITY) / lever;
  n[8] = 1 / spec.motorInertia;
  n[9] = 2 * spec.pullOutTorque * spec.pullOutSlip;
  n[10] = spec.pullOutSlip * spec.pullOutSlip;
  n[11] = 1 / spec.driveSpeed;
  n[12] = spec.clutchTorque * spec.treadle;
  n[13] = 1 / SMOOTHING.clutch;
  n[14] = spec.bearingFriction;
  n[15] = spec.guideFriction;
  n[16] = helve ? 0 : spec.sideFriction;
  n[17] = 1 / SMOOTHING.guide;
  n[18] = spec.viscous;
  n[19] = spec.pinFriction;
  n[20] = 1 / SMOOTHING.pins;
  n[21] = spec.stopStiffness;
  n[22] = spec.stopDamping;
  n[23] = spec.jointStop;
  n[24] = -spec.upperStop;
  n[25] = -(spec.upperStop + BEYOND_STOPS);
  n[26] = spec.jointStop + BEYOND_STOPS;
  n[27] = 0.5 * spec.lostMotion;
  n[28] = struckHeight(spec);
  n[29] = contact.kind === 'fixed' ? contact.restitution : contact.cap;
  n[30] =
    contact.kind === 'fixed' ? Infinity : (contact.flowStress * contact.area) / Math.sqrt(contact.structureStiffness * mass);
  n[31] = spec.anvil?.mass ?? 0;
  n[32] = spec.anvil?.stiffness ?? 0;
  n[33] = spec.anvil?.damping ?? 0;
  n[34] = FAMILY_CODE[spec.suspension.kind];
  n[35] = 1 / mass;
  n[36] = spec.driveSpeed;
  n[37] = lever;
  suspensionNumbers(spec.suspension).forEach((v, i) => (n[SUSPENSION_AT + i] = v));
  return n;
}
