/**
 * Synchronous speed of an induction motor, rad/s: 4 pi f / poles.
 * @param frequency of the supply, Hz, positive @param poles a positive even whole number
 */
export function synchronousSpeed(frequency: number, poles: number): number {
  if (!Number.isInteger(poles) || poles < 2 || poles % 2 !== 0) throw new Error(`Poles come in pairs, 2 and up: ${poles}`);
  return (4 * Math.PI * frequency) / poles;
}

/**
 * Slip: how far the rotor lags the field, as a share of the synchronous speed. 0 at synchronous speed, 1 at a standstill, negative when driven.
 * @param speed of the rotor, rad/s @param synchronous rad/s, positive
 */
export const slipOf = (speed: number, synchronous: number): number => (synchronous - speed) / synchronous;

/** Frequency in the rotor, Hz: slip x supply frequency. */
export const rotorFrequency = (slip: number, frequency: number): number => slip * frequency;

/** Voltage induced in the rotor at a slip, V, from that with the rotor blocked: proportional to slip. */
export const rotorVoltage = (slip: number, blocked: number): number => slip * blocked;

/**
 * Poles that a plate speed belongs to: the even number whose synchronous speed lies next above it.
 * @param plateSpeed full-load speed, rad/s @param frequency Hz
 * @returns undefined where no count from 2 to 24 gives a slip of 0 to 0.2
 */
export function polesOf(plateSpeed: number, frequency: number): number | undefined {
  for (let poles = 24; poles >= 2; poles -= 2) {
    const slip = slipOf(plateSpeed, synchronousSpeed(frequency, poles));
    if (slip >= 0 && slip <= 0.2) return poles;
  }
  return undefined;
}
