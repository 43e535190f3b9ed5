import { fixed } from './plain-number.ts';
import { rational, stepsIn, times, type Rational } from './rational.ts';

/** A printed number in pieces: either a fraction or decimals may follow the whole. */
export interface NumberParts {
  readonly negative: boolean;
  /** Digits before the fraction or point; empty for a bare fraction. */
  readonly whole: string;
  readonly numerator?: number;
  readonly denominator?: number;
  /** Digits after the point. */
  readonly decimal?: string;
}

/** How a number is printed: in steps of a fraction, or to so many decimals. */
export type Layout =
  | { readonly style: 'fraction'; readonly step: Rational; readonly rounding: 'nearest' | 'up' }
  | { readonly style: 'decimal'; readonly places: number; readonly step: Rational; readonly rounding: 'nearest' | 'up'; readonly trim: boolean };

/** Returns the pieces of an exact value under a layout; zero has no sign. */
export function numberParts(value: Rational, layout: Layout): NumberParts {
  const rounded = times(rational(stepsIn(value, layout.step, layout.rounding)), layout.step);
  const negative = rounded.numerator < 0n;
  const { numerator, denominator } = negative ? times(rounded, rational(-1)) : rounded;
  if (layout.style === 'fraction') {
    const whole = numerator / denominator;
    const top = numerator % denominator;
    if (top === 0n) return { negative, whole: whole.toString() };
    return { negative, whole: whole === 0n ? '' : whole.toString(), numerator: Number(top), denominator: Number(denominator) };
  }
  const [whole, digits] = fixed(rational(numerator, denominator), Math.max(0, layout.places)).split('.');
  const kept = layout.trim ? digits?.replace(/0+$/, '') : digits;
  return { negative, whole: whole!, ...(kept === undefined || kept === '' ? {} : { decimal: kept }) };
}

/** Returns the pieces as one text: `-1 3/8`, `34.93`. */
export function numberText({ negative, whole, numerator, denominator, decimal }: NumberParts): string {
  const fraction = numerator === undefined ? '' : `${whole === '' ? '' : ' '}${numerator}/${denominator}`;
  return `${negative ? '-' : ''}${whole}${fraction}${decimal === undefined ? '' : `.${decimal}`}`;
}
