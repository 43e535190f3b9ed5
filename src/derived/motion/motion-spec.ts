import type { Suspension } from './suspension/suspension.ts';

/** What the upper die meets, and how it springs back. */
export type Contact =
  /** a fixed share of the speed is given back; e from 0 to 1 */
  | { readonly kind: 'fixed'; readonly restitution: number }
  /**
   * The work yields at a force: the speed given back is that of the elastic frame loaded to that force, and never more than the cap's share.
   * Flow stress in Pa, area in m2, structure stiffness in N/m, cap from 0 to 1.
   */
  | { readonly kind: 'yielding'; readonly flowStress: number; readonly area: number; readonly structureStiffness: number; readonly cap: number };

/** The anvil as a second mass on its foundation. */
export interface Anvil {
  /** kg, anvil and what is fast to it */
  readonly mass: number;
  /** N/m, of what it stands on */
  readonly stiffness: number;
  /** N s/m */
  readonly damping: number;
}

/** One hammer as the simulator sees it, SI throughout. */
export interface MotionSpec {
  readonly suspension: Suspension;
  /** kg, ram, upper die, keys and links (head and die for a helve) */
  readonly ramMass: number;
  /** m, crank throw: half the stroke of the carrier */
  readonly throw: number;
  /** m, rod between pin centres */
  readonly rodLength: number;
  /**
   * m, how high the frame holds the crank above the dies, reckoned so that
   * q = frameHeight - (reach of crank and rod) - (die gap). `frameHeightFor` makes it from the gap measured at rest.
   */
  readonly frameHeight: number;
  /** m, die height lost since `frameHeight` was fixed; opens the gap */
  readonly stackLoss: number;
  /** m, work between the dies; 0 for bare dies */
  readonly workThickness: number;
  readonly contact: Contact;
  /** m, clearance of the ram above the fixed ledge with the dies closed as set */
  readonly ledgeClearance: number;
  /** m below link level at which the linkage meets the guide */
  readonly jointStop: number;
  /** m above link level at which the ram meets the upper stop, positive */
  readonly upperStop: number;
  /** N/m of those two contacts */
  readonly stopStiffness: number;
  /** s/m, damping of those two contacts by speed */
  readonly stopDamping: number;
  /** dimensionless, friction of the linkage pins as a share of the force they carry */
  readonly pinFriction: number;
  /** m, whole lost motion in the pins that change sides, taken at the suspension */
  readonly lostMotion: number;
  /** N, guide friction that is always there */
  readonly guideFriction: number;
  /** dimensionless, friction of the guide under the rod's side thrust; 0 for a helve */
  readonly sideFriction: number;
  /** N s/m, oil and air */
  readonly viscous: number;
  /** kg m2, crank, flywheel on its shaft and driven clutch */
  readonly crankInertia: number;
  /** kg, carrier, arms and spring (driving frame of a helve, at the rod pin) */
  readonly carrierMass: number;
  /** kg m2, motor and belts, referred to the crank */
  readonly motorInertia: number;
  /** N m, pull-out torque referred to the crank */
  readonly pullOutTorque: number;
  /** dimensionless, slip at pull-out */
  readonly pullOutSlip: number;
  /** rad/s, crank speed without any slip */
  readonly driveSpeed: number;
  /** N m, the clutch slips above this with the treadle fully down */
  readonly clutchTorque: number;
  /** 0 to 1, how much of the clutch the treadle lets in */
  readonly treadle: number;
  /** N m, friction of the crank bearings */
  readonly bearingFriction: number;
  /** dimensionless, anvil mass over ram mass, for the efficiency of the blow where the anvil is not modelled */
  readonly anvilRatio: number;
  readonly anvil?: Anvil;
}

/** Speeds over which the frictions change sign, fixed by the method: m/s guide, m/s pins, rad/s clutch. */
export const SMOOTHING = { guide: 0.02, pins: 0.02, clutch: 0.3 } as const;

/** m/s below which a ram that the suspension does not lift stays on the work. */
export const STICKING_SPEED = 0.004;

/** m/s2; the standard value. */
export const GRAVITY = 9.80665;
