import type { PrintSystem } from '../../derived/index.ts';
import { shownPlain } from './shown.ts';

/** A power as a plate says it: halves of a horsepower as they are, kilowatts to the hundredth. */
export const platePower = (power: number, system: PrintSystem): string => shownPlain(power, 'power', system, { resolution: system === 'inch' ? 7.4569987 : 10 }).replace(/\.?0+(?= hp$)/u, '');
