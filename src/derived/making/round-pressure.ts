import type { Quantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';

const KSI = 6.894757e6;
const MEGAPASCAL = 1e6;

/** A stress for a sentence: whole thousands of pounds to the square inch, or whole megapascals; it is never known finer. */
export function roundPressure(value: number, system: PrintSystem): Quantity {
  const step = system === 'inch' ? KSI : MEGAPASCAL;
  return { dimension: 'pressure', value: Math.round(value / step) * step, uncertainty: 0 };
}
