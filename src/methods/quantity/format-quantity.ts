import { fromSi, sizeFromSi, sizeToSi } from './convert.ts';
import { halfWidth, type Quantity } from './quantity.ts';
import { numberParts, numberText, type NumberParts } from './number-parts.ts';
import { counts, layoutFor } from './print-layout.ts';
import { printedUnit, type System } from './printed-unit.ts';
import { absolute } from './rational.ts';
import { UNITS, type UnitName } from './units.ts';

export type { NumberParts, System };

export interface FormatOptions {
  /** `inch` where not given. */
  readonly system?: System;
  /** Unit to print in; else the usual one of the system for the size. @throws where it does not measure the quantity */
  readonly unit?: UnitName;
  /** SI size of the last place of the reading or tool, above zero; else the doubt decides. */
  readonly resolution?: number;
  /** It cannot lie below nothing: where the doubt would reach there, the bounds stand in place of the ±, from nothing up. */
  readonly neverBelow?: boolean;
  /** Print the ± (95 %) where there is any doubt; true where not given. */
  readonly doubt?: boolean;
}

/** A printed quantity in pieces, so that a page can set a true fraction. */
export interface QuantityParts extends NumberParts {
  /** Symbol; empty for a bare number. */
  readonly unit: string;
  readonly unitName: UnitName;
  /** No space between number and symbol. */
  readonly tight: boolean;
  /** Half-width of the 95 % interval, in the same unit. */
  readonly doubt?: NumberParts;
  /** The 95 % bounds, where they do not lie evenly. */
  readonly interval?: readonly [NumberParts, NumberParts];
  /** SI size of the last place printed. */
  readonly resolution: number;
}

/** Returns the pieces of the printed quantity; see `formatQuantity`. */
export function formatParts(given: Quantity, options: FormatOptions = {}): QuantityParts {
  const q = options.neverBelow === true ? fromNothing(given) : given;
  const system = options.system ?? 'inch';
  const unitName = options.unit ?? printedUnit(q, system, options.resolution);
  const unit = UNITS[unitName];
  if (!unit.dimensions.includes(q.dimension)) throw new Error(`The unit must measure ${q.dimension}: ${unitName}`);
  if (options.resolution !== undefined && !(options.resolution > 0)) throw new Error(`The resolution must be above zero: ${options.resolution}`);
  const value = fromSi(q.value, unit);
  const half = sizeFromSi(Math.max(halfWidth(q.uncertainty), q.interval === undefined ? 0 : (q.interval[1] - q.interval[0]) / 2), unit);
  const layout = layoutFor({ value, half, unit: unitName, ...(options.resolution === undefined ? {} : { resolution: absolute(sizeFromSi(options.resolution, unit)) }) });
  const doubt = options.doubt ?? true;
  return {
    ...numberParts(value, layout.value), unit: unit.symbol, unitName, tight: unit.tight, resolution: sizeToSi(layout.value.step, unit),
    ...(doubt && q.interval !== undefined ? { interval: [numberParts(fromSi(q.interval[0], unit), layout.value), numberParts(fromSi(q.interval[1], unit), layout.value)] as const } : {}),
    ...(doubt && q.interval === undefined && counts({ value, half }) ? { doubt: numberParts(half, layout.doubt) } : {}),
  };
}

/** A quantity whose doubt reaches below nothing, with what is left of its interval. */
function fromNothing(q: Quantity): Quantity {
  const half = halfWidth(q.uncertainty);
  return q.interval !== undefined || q.value < 0 || q.value >= half ? q : { ...q, interval: [0, q.value + half] };
}

/**
 * Returns a quantity as the shop writes it: `1 3/8 in`, `12 thou`, `34.93 mm`, `1 3/8 ± 1/32 in`; what `readQuantity` reads again.
 * With a resolution the value is printed to that place. Without one the doubt decides: fractions of an inch down to a doubt of 1/64,
 * and otherwise at most two significant digits of the ±, which is rounded up, with the value to the same place (JCGM 100:2008, 7.2.6).
 * A doubt below a millionth of the value is taken as none. Halves are rounded away from zero, from the exact decimal.
 */
export function formatQuantity(q: Quantity, options: FormatOptions = {}): string {
  const parts = formatParts(q, options);
  const tail = parts.unit === '' ? '' : `${parts.tight ? '' : ' '}${parts.unit}`;
  if (parts.interval !== undefined) return `${numberText(parts)}${tail} (${numberText(parts.interval[0])} to ${numberText(parts.interval[1])})`;
  return `${numberText(parts)}${parts.doubt === undefined ? '' : ` ± ${numberText(parts.doubt)}`}${tail}`;
}
