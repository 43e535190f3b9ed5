import { formatQuantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../print-system.ts';

/** A figure, a range of figures or a fraction. */
const FIGURE = String.raw`\d[\d./]*(?: \d+\/\d+)?`;
/** What is written for both shops: inches first, millimetres in brackets; the same with degrees and pressure. */
const PAIR = new RegExp(String.raw`(${FIGURE}(?: (?:to|or|by) ${FIGURE})*) (in|lb|F|thou|ft\/min|ft|psi|ksi) \(([^()]*?(?:mm|kg|°C|m/s|m|MPa))\)`, 'g');

/**
 * Sentences that the parts bring with them are written as `1/16 in (1.6 mm)`; of each pair the shop's own is kept.
 * @returns the same words with the units of one system
 */
export const inShopUnits = (words: string, system: PrintSystem): string =>
  words.replace('one foot (300 mm)', system === 'inch' ? 'one foot' : '300 mm').replace(PAIR, (_, inches: string, unit: string, metric: string) => (system === 'inch' ? `${inches} ${unit === 'F' ? '°F' : unit}` : metric));

/** A length to grind or file to: in thousandths of an inch or hundredths of a millimetre, never in a fraction. @param length m */
export const fineLength = (length: number, system: PrintSystem): string =>
  formatQuantity({ dimension: 'length', value: length, uncertainty: 0 }, system === 'inch' ? { unit: 'in', resolution: 0.0254e-3, doubt: false } : { unit: 'mm', resolution: 1e-5, doubt: false });
