/** Phases of the supply, and the rated voltage of the motor as its plate has it. */
export interface MotorPlate {
  readonly phases: 1 | 3;
  readonly voltage: number;
  /** rated power, W; must be one of the table's horsepower steps within 2 % */
  readonly power: number;
}

export type FullLoadCurrent =
  | { readonly state: 'known'; readonly current: number; readonly source: string; readonly note: string }
  | { readonly state: 'outside-validity'; readonly because: string };

const WATT_PER_HORSEPOWER = 745.6998715822702;

const STEPS_OF_THREE_PHASE = [200, 208, 230, 460, 575] as const;

/** Full-load current in ampere by horsepower, three-phase induction motors of ordinary speed, at the voltages of `STEPS_OF_THREE_PHASE`: NEC table 430.250. */
export const THREE_PHASE_CURRENTS: ReadonlyMap<number, readonly number[]> = new Map([
  [1, [4.8, 4.6, 4.2, 2.1, 1.7]],
  [1.5, [6.9, 6.6, 6.0, 3.0, 2.4]],
  [2, [7.8, 7.5, 6.8, 3.4, 2.7]],
  [3, [11, 10.6, 9.6, 4.8, 3.9]],
  [5, [17.5, 16.7, 15.2, 7.6, 6.1]],
  [7.5, [25.3, 24.2, 22, 11, 9]],
  [10, [32.2, 30.8, 28, 14, 11]],
]);

/** Full-load current in ampere by horsepower, single-phase motors at 230 V: NEC table 430.248. */
export const SINGLE_PHASE_CURRENTS: ReadonlyMap<number, number> = new Map([
  [0.5, 4.9], [1, 8], [1.5, 10], [2, 12], [3, 17], [5, 28], [7.5, 40], [10, 50],
]);

const LOCAL = 'The figure is for choosing wire and breaker; the local code governs and a licensed person does the work.';

/**
 * Full-load current of an induction motor as the US code tabulates it, in ampere. A table, not a formula: between its
 * steps and voltages there is no answer. `voltage` is the rated one (230 on a 240 V supply).
 */
export function fullLoadCurrent(plate: MotorPlate): FullLoadCurrent {
  const outside = (because: string): FullLoadCurrent => ({ state: 'outside-validity', because });
  const steps = plate.phases === 1 ? SINGLE_PHASE_CURRENTS : THREE_PHASE_CURRENTS;
  const horsepower = [...steps.keys()].find((step) => Math.abs(plate.power / (step * WATT_PER_HORSEPOWER) - 1) <= 0.02);
  if (horsepower === undefined) return outside(`the table has ${[...steps.keys()].join(', ')} hp: ${(plate.power / WATT_PER_HORSEPOWER).toPrecision(3)} hp`);
  if (plate.phases === 1) {
    if (plate.voltage !== 230) return outside(`the single-phase table is for motors rated 230 V: ${plate.voltage} V`);
    return { state: 'known', current: SINGLE_PHASE_CURRENTS.get(horsepower)!, source: 'NEC table 430.248', note: LOCAL };
  }
  const column = STEPS_OF_THREE_PHASE.findIndex((voltage) => voltage === plate.voltage);
  if (column < 0) return outside(`the three-phase table is for motors rated ${STEPS_OF_THREE_PHASE.join(', ')} V: ${plate.voltage} V`);
  return { state: 'known', current: THREE_PHASE_CURRENTS.get(horsepower)![column]!, source: 'NEC table 430.250', note: LOCAL };
}

/** Least current that the conductors of one motor must carry, in ampere: 125 % of the tabulated full-load current (NEC 430.22). */
export const leastConductorCurrent = (fullLoad: number): number => 1.25 * fullLoad;

/** Greatest rating of an inverse-time breaker for one motor, in ampere: 250 % of the tabulated full-load current (NEC 430.52); the code lets one take the next standard size up. */
export const greatestBreakerRating = (fullLoad: number): number => 2.5 * fullLoad;
