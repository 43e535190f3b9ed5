import { demandPositive } from '../../numerics/index.ts';

/** A full plain bearing under steady load. */
export interface Journal {
  /** Shaft radius r, m, > 0. */
  readonly radius: number;
  /** Radial clearance c: half of what a feeler or the subtraction of diameters gives, m, > 0. */
  readonly radialClearance: number;
  /** Length l of the bearing along the shaft, m, > 0. */
  readonly length: number;
  /** Viscosity of the oil as warm as it runs, Pa s, > 0. */
  readonly viscosity: number;
  /** Turns per second, > 0. */
  readonly turnsPerSecond: number;
  /** Load W, N, > 0. */
  readonly load: number;
}

/** Mean pressure on the projected area, Pa: W / (2 r l). */
export const meanPressure = (journal: Journal): number => demandPositive('load', journal.load) / (2 * demandPositive('shaft radius', journal.radius) * demandPositive('bearing length', journal.length));

/** Sommerfeld number, no unit: S = (r/c)² µ N / P, N in turns per second (Raimondi and Boyd 1958; Shigley ch. 12). */
export const sommerfeldNumber = (journal: Journal): number =>
  ((journal.radius / demandPositive('radial clearance', journal.radialClearance)) ** 2 * demandPositive('viscosity', journal.viscosity) * demandPositive('turns per second', journal.turnsPerSecond)) /
  meanPressure(journal);

/** Petroff's friction variable (r/c) f = 2 π² S of a shaft that runs in the middle: what every bearing tends to at light load. */
export const petroffFriction = (sommerfeld: number): number => 2 * Math.PI ** 2 * demandPositive('Sommerfeld number', sommerfeld);

/** Friction torque, N m: f W r, from the friction variable (r/c) f. */
export const frictionTorque = (journal: Journal, frictionVariable: number): number => frictionVariable * journal.radialClearance * journal.load;

/** Friction power, W: torque times angular speed. */
export const frictionPower = (journal: Journal, frictionVariable: number): number => 2 * Math.PI * journal.turnsPerSecond * frictionTorque(journal, frictionVariable);
