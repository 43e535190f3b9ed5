import type { PrintSystem, Value } from '../../derived/index.ts';
import type { Ranged } from '../../derived/capacity/index.ts';
import { formatQuantity, quantity, withPositiveInterval, type Dimension, type UnitName } from '../../methods/quantity/index.ts';

/** A figure with the interval that holds it in 95 of a hundred; or why there is none. */
export const shownRange = (ranged: Ranged, dimension: Dimension, system: PrintSystem, unit?: UnitName): string =>
  ranged.state === 'known'
    ? formatQuantity({ dimension, value: ranged.value, uncertainty: ranged.uncertainty, interval: [ranged.low, ranged.high] }, { system, ...(unit === undefined ? {} : { unit }) })
    : `no figure: ${ranged.because}`;

/** A best estimate with its doubt. */
export const shownDoubt = ({ value, uncertainty }: { readonly value: number; readonly uncertainty: number }, dimension: Dimension, system: PrintSystem): string =>
  formatQuantity(withPositiveInterval({ dimension, value, uncertainty }), { system });

/** A figure without its doubt, to about two digits of sense. @param resolution SI size of the last place */
export const shownPlain = (value: number, dimension: Dimension, system: PrintSystem, options: { readonly unit?: UnitName; readonly resolution?: number } = {}): string =>
  formatQuantity(quantity(value, dimension), { system, doubt: false, ...options });

/** Doubt that an estimate is rounded by where it has none of its own: it leaves two digits, three where the first is small. */
const ROUGH = 0.25;

/** An estimate rounded to the digits that mean something, without its doubt: `2840 lb`, `0.047 in/s`. */
export const shownRough = (value: number, dimension: Dimension, system: PrintSystem, unit?: UnitName): string =>
  formatQuantity({ dimension, value, uncertainty: Math.abs(value) * ROUGH }, { system, doubt: false, ...(unit === undefined ? {} : { unit }) });

/** A value of the outlook in words: with its doubt, or what is missing, or why there is no figure. */
export function shownOutcome(value: Value | undefined, system: PrintSystem): string {
  const outcome = value?.outcome;
  if (outcome === undefined) return 'not known';
  switch (outcome.state) {
    case 'known':
      return `${formatQuantity(outcome.quantity, { system })}${value?.rests === 'assumed' ? ', estimate' : ''}`;
    case 'not-known':
      return 'not known yet';
    case 'outside-validity':
    case 'does-not-apply':
      return `no figure: ${outcome.because}`;
  }
}

/** The number of a value, SI, where it is known. */
export const numberOf = (values: Readonly<Record<string, Value>>, key: string): number | undefined => {
  const outcome = values[key]?.outcome;
  return outcome?.state === 'known' ? outcome.quantity.value : undefined;
};
