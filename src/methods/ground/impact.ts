/**
 * Share of a blow's energy that the work and the dies take, the rest going into moving the anvil and into rebound:
 * (1 - e²) R/(R + 1), two free rigid bodies.
 * @param ratio anvil mass over ram mass, positive @param restitution 0 (dead) to 1 (all rebound)
 */
export const blowEfficiency = (ratio: number, restitution: number): number => ((1 - restitution * restitution) * ratio) / (ratio + 1);

/** Speed of the anvil just after the blow, m/s: (1 + e) m v/(m + M). @param ram kg @param anvil kg, free @param speed of the ram, m/s */
export const anvilSpeed = (ram: number, anvil: number, speed: number, restitution: number): number => ((1 + restitution) * ram * speed) / (ram + anvil);

/** Two bodies that stay together after the blow. SI. */
export interface PlasticImpact {
  /** common speed after it, m/s */
  readonly speed: number;
  /** energy lost in it, J */
  readonly lost: number;
  /** energy left in both, J */
  readonly left: number;
}

/** Dead blow of a falling mass on one at rest. @param falling kg @param struck kg @param speed of the falling one, m/s */
export function plasticImpact(falling: number, struck: number, speed: number): PlasticImpact {
  const common = (falling * speed) / (falling + struck);
  return { speed: common, lost: 0.5 * ((falling * struck) / (falling + struck)) * speed * speed, left: 0.5 * (falling + struck) * common * common };
}

/** Standard acceleration of fall, m/s². */
export const STANDARD_GRAVITY = 9.80665;

/**
 * Mean force that stops two bodies falling together within a distance, N: their weight and their energy over the distance.
 * @param impact from `plasticImpact` @param mass of both, kg @param distance m, positive @param gravity m/s²
 */
export const stoppingForce = (impact: PlasticImpact, mass: number, distance: number, gravity = STANDARD_GRAVITY): number => mass * gravity + impact.left / distance;

/** A pile and the ram that drives it, in any one unit of force and one of length. */
export interface Driving {
  readonly ramWeight: number;
  readonly pileWeight: number;
  /** weight of the ram times its fall */
  readonly ramEnergy: number;
  /** share of the ram's energy delivered, 0 to 1 */
  readonly efficiency: number;
  /** sinking for one blow */
  readonly set: number;
  /** what is lost in cap and pile for one blow */
  readonly give: number;
  readonly restitution: number;
}

/** Resistance that the ground offers to a driven pile or post, by the modified Engineering News formula; in the unit of force given. Divide by 4 to 6 for what may be put on it. */
export const drivenResistance = (one: Driving): number =>
  ((one.efficiency * one.ramEnergy) / (one.set + one.give)) * ((one.ramWeight + one.restitution ** 2 * one.pileWeight) / (one.ramWeight + one.pileWeight));
