/** What a blow leaves behind. */
export interface BlowOutcome {
  /** m/s of the ram after, up positive */
  ram: number;
  /** m/s of the anvil after, up positive; 0 where it is not modelled */
  anvil: number;
  /** J lost in the work and the frame */
  lost: number;
}

/**
 * The share of the closing speed that is given back.
 * @param cap the largest share, 0 to 1
 * @param yieldSpeed m/s given back by work that yields; `Infinity` where the share is fixed
 * @param closing m/s, positive
 */
export function restitutionAt(cap: number, yieldSpeed: number, closing: number): number {
  if (closing <= 0) return cap;
  const e = yieldSpeed / closing;
  return e < cap ? e : cap;
}

/**
 * One blow of ram on anvil along the line of both.
 *
 * Momentum is kept and the relative speed turned round by the restitution; an anvil mass of 0 means one that does not move.
 * @param mass kg of the ram
 * @param anvilMass kg, 0 where fixed
 * @param ram m/s before, up positive
 * @param anvil m/s before, up positive
 * @param restitution 0 to 1
 * @param into receives the outcome
 */
export function strike(mass: number, anvilMass: number, ram: number, anvil: number, restitution: number, into: BlowOutcome): void {
  const closing = anvil - ram;
  if (anvilMass === 0) {
    into.ram = anvil + restitution * closing;
    into.anvil = 0;
    into.lost = 0.5 * mass * (ram * ram - into.ram * into.ram);
    return;
  }
  const impulse = ((1 + restitution) * closing * mass * anvilMass) / (mass + anvilMass);
  into.ram = ram + impulse / mass;
  into.anvil = anvil - impulse / anvilMass;
  into.lost = (0.5 * (1 - restitution * restitution) * closing * closing * mass * anvilMass) / (mass + anvilMass);
}
