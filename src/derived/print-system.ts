import { formatQuantity, type Quantity } from '../methods/quantity/index.ts';

/** Units that sentences are written in. */
export type PrintSystem = 'inch' | 'metric';

const SIXTEENTH = 0.0254 / 16;
const HALF_MILLIMETRE = 0.0005;

/**
 * Prints a figure for a sentence that somebody must obey: no doubt behind it, and rounded to the safe side.
 * @param rounding `up` for a least value, `down` for a greatest one
 */
export function printQuantity(quantity: Quantity, system: PrintSystem, rounding: 'up' | 'down' | 'nearest' = 'nearest'): string {
  if (quantity.dimension !== 'length' || rounding === 'nearest') return formatQuantity({ ...quantity, uncertainty: 0 }, { system, doubt: false });
  const step = system === 'inch' ? SIXTEENTH : HALF_MILLIMETRE;
  const hair = 1e-6;
  const steps = rounding === 'up' ? Math.ceil(quantity.value / step - hair) : Math.floor(quantity.value / step + hair);
  return formatQuantity({ dimension: 'length', value: steps * step, uncertainty: 0 }, { system, doubt: false, resolution: step });
}

/** Share of the largest bar for steady work up to which a bar is called small: common practice, no source. */
export const SMALL_BAR = 0.5;

/** The side of a bar as stock is sold that is not above a size, m: eighths, and quarters from two inches; whole millimetres, fives from 20, tens from 50. */
export function shopBar(size: number, system: PrintSystem): number {
  const step = system === 'inch' ? (size >= 2 * 0.0254 ? 0.0254 / 4 : 0.0254 / 8) : size >= 0.05 ? 0.01 : size >= 0.02 ? 0.005 : 0.001;
  return Math.floor(size / step + 1e-6) * step;
}

const INCH_UNITS = /(?:^|[\d\s])(?:in|inch|inches|thou|mil|ft|lb|lbf|hp|psi|ksi|oz)\b|°F|["”]|\d\/\d/;
const METRIC_UNITS = /(?:^|[\d\s])(?:mm|cm|m|kg|g|N|kN|kW|W|MPa|bar)\b|°C/;

/** Whether what somebody wrote stands in units of the other system than the reader's. */
export const inOtherUnits = (written: string, system: PrintSystem): boolean => (system === 'metric' ? INCH_UNITS.test(written) : METRIC_UNITS.test(written) && !INCH_UNITS.test(written));

/** A reading as somebody wrote it; where he wrote it in the other system, in the reader's units with his own words behind. */
export const writtenIn = (quantity: Quantity, asWritten: string, system: PrintSystem): string =>
  inOtherUnits(asWritten, system) ? `${formatQuantity(quantity, { system, doubt: false })} (written ${asWritten})` : asWritten;
