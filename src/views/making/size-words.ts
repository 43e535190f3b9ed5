import { formatParts, formatQuantity, readQuantity, type Quantity } from '../../methods/quantity/index.ts';
import type { PrintSystem } from '../../derived/index.ts';
import type { MakingDimension, Tolerance } from '../../derived/making/index.ts';

const INCH = 0.0254;
const SIXTY_FOURTH = INCH / 64;
const HAIR = 1e-7;
const SMALL = 10e-3;

/** A size for following, not for cutting: its tolerance is nothing to either side. It stands in brackets (ISO 129). */
export const isReference = ({ tolerance }: MakingDimension): boolean => tolerance.plus === 0 && tolerance.minus === 0;

/** A size as it stands on the drawing: unit left out for lengths, tolerance behind, `est.` where it is an estimate. */
export function sizeWords(dimension: MakingDimension, system: PrintSystem, sign = ''): string {
  const { quantity, tolerance, estimate } = dimension;
  const guess = estimate ? ' est.' : '';
  if (quantity.dimension === 'taper') return `taper 1 : ${Math.round(1 / quantity.value)}${guess}`;
  if (quantity.dimension !== 'length') {
    const words = plainWords(quantity, system);
    return isReference(dimension) ? `(${words})${guess}` : `${words} ${halfWords(quantity, tolerance, system)}${guess}`;
  }
  const size = `${sign === 'R' ? 'R ' : sign === 'C' ? '' : sign}${lengthWords(quantity.value, dimension, system)}${sign === 'C' ? ' × 45°' : ''}`;
  if (isReference(dimension)) return `(${size})${guess}`;
  return `${size}${dimension.fit === undefined ? '' : ` ${dimension.fit}`} ${toleranceWords(dimension, system)}${guess}`;
}

/** Size in words for the table, with its unit where it is no length. */
export const tableSize = (dimension: MakingDimension, system: PrintSystem): string => sizeWords({ ...dimension, estimate: false }, system);

/** The doubt that the readings leave, 95 %; said to be chosen where a size is, and not known where it is an estimate without any. */
export function doubtWords({ quantity, estimate }: MakingDimension, system: PrintSystem): string {
  const half = 2 * quantity.uncertainty;
  if (half === 0) return estimate ? 'not known' : 'chosen';
  if (quantity.dimension === 'length') return `± ${decimals(half, system === 'inch' ? 3 : 2, system, 'up')}`;
  if (quantity.dimension === 'taper') return `± ${Math.ceil((100 * half) / quantity.value)} %`;
  return `± ${plainWords({ ...quantity, value: half }, system, 2)}`;
}

/** A length without its unit: a fraction where it is one and the tolerance is coarse, else decimals to suit the tolerance. */
function lengthWords(value: number, dimension: MakingDimension, system: PrintSystem): string {
  return asFraction(dimension, system) ? fraction(value) : decimals(value, placesFor(dimension, system), system);
}

/** Size and tolerance are both fractions or both decimals: an inch size on a 64th whose tolerance is even and on one too. */
function asFraction({ quantity, tolerance, fit }: MakingDimension, system: PrintSystem): boolean {
  return system === 'inch' && fit === undefined && tolerance.plus === tolerance.minus && onFraction(tolerance.plus) && onFraction(quantity.value);
}

function toleranceWords(dimension: MakingDimension, system: PrintSystem): string {
  const { plus, minus } = dimension.tolerance;
  const places = placesFor(dimension, system);
  const print = (value: number, sign: string): string => (Math.abs(value) < 1e-9 ? `${sign}0` : `${value > 0 ? '+' : '−'}${decimals(Math.abs(value), places, system)}`);
  if (plus !== minus) return `${print(plus, '+')}/${print(-minus, '−')}`;
  return `±${asFraction(dimension, system) ? fraction(plus) : decimals(plus, places, system)}`;
}

/** Places that show the tolerance: thousandths of an inch, ten thousandths for a fit; hundredths of a millimetre, thousandths for a fit. */
function placesFor({ quantity, tolerance, fit }: MakingDimension, system: PrintSystem): number {
  // A small size that only follows, as the pitch of a thread, is not shown coarser than it is followed.
  if (system === 'metric' && tolerance.plus === 0 && tolerance.minus === 0 && quantity.value < SMALL) return 2;
  const width = Math.max(Math.abs(tolerance.plus), Math.abs(tolerance.minus));
  if (fit !== undefined) return system === 'inch' ? 4 : 3;
  return system === 'inch' ? (width >= 0.1 * INCH ? 2 : 3) : width >= 0.35e-3 || width === 0 ? 1 : 2;
}

const onFraction = (value: number): boolean => Math.abs(value / SIXTY_FOURTH - Math.round(value / SIXTY_FOURTH)) * SIXTY_FOURTH < HAIR;

const fraction = (value: number): string => bare(formatQuantity({ dimension: 'length', value: Math.round(value / SIXTY_FOURTH) * SIXTY_FOURTH, uncertainty: 0 }, { unit: 'in', resolution: SIXTY_FOURTH, doubt: false }));

function decimals(value: number, places: number, system: PrintSystem, rounding: 'nearest' | 'up' = 'nearest'): string {
  const step = (system === 'inch' ? INCH : 1e-3) * 10 ** -places;
  const kept = rounding === 'up' ? Math.ceil(value / step - 1e-6) * step : value;
  return bare(formatQuantity({ dimension: 'length', value: kept, uncertainty: 0 }, { unit: system === 'inch' ? 'in' : 'mm', resolution: step, doubt: false }));
}

const bare = (text: string): string => text.replace(/ (in|mm)$/, '');

/** Other quantities with their unit, to three digits or as many as are asked for. */
function plainWords(quantity: Quantity, system: PrintSystem, keep = 3): string {
  const { value, dimension } = quantity;
  if (dimension === 'angle') return formatQuantity({ dimension, value, uncertainty: 0 }, { unit: 'deg', resolution: Math.PI / 1800, doubt: false });
  if (dimension === 'count') return String(Math.round(value * 1000) / 1000);
  const { unitName } = formatParts({ dimension, value, uncertainty: 0 }, { system });
  const one = readQuantity(`1 ${unitName}`, { dimension });
  if (!one.ok) throw new Error(`the unit cannot be read again: ${unitName}`);
  const unit = one.quantity.value;
  const digits = Number((value / unit).toPrecision(keep));
  const power = digits === 0 ? 0 : Math.floor(Math.log10(Math.abs(digits)) + 1e-9);
  return formatQuantity({ dimension, value: digits * unit, uncertainty: 0 }, { unit: unitName, doubt: false, resolution: unit * 10 ** Math.min(0, power - keep + 1) });
}

function halfWords(quantity: Quantity, tolerance: Tolerance, system: PrintSystem): string {
  const print = (value: number): string => plainWords({ ...quantity, value }, system, 2);
  return tolerance.plus === tolerance.minus ? `±${print(tolerance.plus)}` : `+${print(tolerance.plus)}/−${print(tolerance.minus)}`;
}
