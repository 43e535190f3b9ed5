/** Voltage unbalance of three phases: greatest departure from their mean over the mean, as a share (NEMA MG 1, 14.36, from memory). @param voltages positive, V */
export function voltageUnbalance(voltages: readonly [number, number, number]): number {
  const mean = (voltages[0] + voltages[1] + voltages[2]) / 3;
  if (!(Math.min(...voltages) >= 0 && mean > 0)) throw new Error(`Voltages must not be negative nor all zero: ${voltages.join(', ')}`);
  return Math.max(...voltages.map((voltage) => Math.abs(voltage - mean))) / mean;
}

/** Above 1 % a motor is to be derated, above 5 % it is not to be run (NEMA MG 1, 14.36, from memory). */
export const UNBALANCE_LIMITS = { derate: 0.01, doNotRun: 0.05 } as const;

/** How hard the machine is to bring up to speed. */
export type Starting = 'easy' | 'flywheel' | 'hard';

/** A range on which the rules found do not agree, with each rule. */
export interface DisputedRange {
  readonly least: number;
  readonly most: number;
  readonly rules: readonly { readonly says: string; readonly least: number; readonly most: number; readonly source: string }[];
}

const spanning = (rules: DisputedRange['rules']): DisputedRange => ({
  least: Math.min(...rules.map((rule) => rule.least)), most: Math.max(...rules.map((rule) => rule.most)), rules,
});

/**
 * Idler power of a rotary phase converter, W: the rules of practice conflict, so a range with each of them.
 * @param largestMotor power of the largest motor that it must start, W, positive
 */
export function converterIdlerPower(largestMotor: number, starting: Starting): DisputedRange {
  const times = (least: number, most: number): { least: number; most: number } => ({ least: least * largestMotor, most: most * largestMotor });
  const rule = { says: 'idler at least as large as the largest motor', ...times(1, 1), source: 'common practice, no source' };
  if (starting === 'easy') return spanning([rule, { says: 'half as large again for a margin', ...times(1.5, 1.5), source: 'from memory' }]);
  if (starting === 'flywheel') return spanning([
    { says: 'half as large again where a flywheel is started', ...times(1.5, 1.5), source: 'common practice, no source' },
    { says: '1.5 to 2 times for hard starts', ...times(1.5, 2), source: 'from memory' },
  ]);
  return spanning([{ says: 'twice as large for a hard start', ...times(2, 2), source: 'common practice, no source' }, { says: '1.5 to 2 times for hard starts', ...times(1.5, 2), source: 'from memory' }]);
}

const FARAD_PER_WATT = 1e-6 / 745.6998715822702;

/**
 * Capacitance of a rotary converter, F, for an idler at 230 V and 60 Hz: a range with each rule; which one fits is settled by reading the voltages.
 * @param idler power of the idler, W, positive @param use what the capacitors are for
 */
export function converterCapacitance(idler: number, use: 'self-start' | 'start' | 'balance'): DisputedRange {
  const rule = (says: string, least: number, most: number): DisputedRange['rules'][number] => ({
    says, least: least * FARAD_PER_WATT * idler, most: most * FARAD_PER_WATT * idler, source: 'common practice, no source',
  });
  switch (use) {
    case 'self-start':
      return spanning([rule('25 to 30 µF for each horsepower from line to the made leg, no start circuit', 25, 30)]);
    case 'start':
      return spanning([rule('50 to 100 µF for each horsepower, switched out after the start', 50, 100)]);
    case 'balance':
      return spanning([rule('10 µF for each horsepower and bank, trimmed by the voltages', 10, 10), rule('25 to 30 µF for each horsepower from line to the made leg', 25, 30)]);
  }
}

/** Capacitance that takes a reactive power at a voltage, F: Q/(2 pi f V²). @param reactive var @param frequency Hz @param voltage V, across the capacitor */
export const capacitanceFor = (reactive: number, frequency: number, voltage: number): number => reactive / (2 * Math.PI * frequency * voltage * voltage);

/** Current of a capacitor, A: 2 pi f V C. @param capacitance F */
export const capacitorCurrent = (capacitance: number, frequency: number, voltage: number): number => 2 * Math.PI * frequency * voltage * capacitance;
