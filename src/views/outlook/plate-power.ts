import type { PrintSystem } from '../../derived/index.ts';
import { formatQuantity } from '../../methods/quantity/index.ts';

/** A plate gives three digits at most. */
export const platePower = (power: number, system: PrintSystem): string => formatQuantity({ dimension: 'power', value: power, uncertainty: power / 400 }, { system, doubt: false });
