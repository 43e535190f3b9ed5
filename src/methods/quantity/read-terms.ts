import type { Dimension } from './dimension.ts';
import { absolute, compare, decimal, ONE, over, plus, rational, times, ZERO, type Rational } from './rational.ts';
import { readNumber, type WrittenNumber } from './read-number.ts';
import { unitAdvice, unitSpelled, unitsThatDo } from './unit-spelling.ts';
import { UNITS, type UnitName } from './units.ts';

/** One quantity as written, all figures in its unit. */
export interface Terms {
  readonly value: Rational;
  readonly unit: UnitName;
  readonly place: Rational;
  readonly style: WrittenNumber['style'];
  /** The ± written, not negative. */
  readonly plusMinus?: Rational;
  /** Bounds written behind it: `(1.30 to 1.52)`. */
  readonly interval?: readonly [Rational, Rational];
  readonly approximate: boolean;
}

type Refusal = { readonly ok: false; readonly message: string; readonly expected: string };
export type TermsOutcome = { readonly ok: true; readonly terms: Terms } | Refusal;

const refused = (message: string, expected: string): Refusal => ({ ok: false, message, expected });

const EXAMPLES: Readonly<Partial<Record<Dimension, string>>> = {
  length: '4 5/8 in or 47.5 mm', mass: '65 lb or 30 kg', rotation: '320 rpm or 320 blows/min', taper: '1/8 in/ft or 1:96', time: '90 s or 1 h 20 min',
  ratio: '85 % or 0.85', count: '8', angle: '15 °', temperature: '60 °C or 140 °F',
};

const RANGE = 'the middle of it with ± half of its width, such as 3.5 ± 0.5 in';

/** Units that may follow each other in one quantity, greater first. */
const COMPOUNDS: readonly (readonly UnitName[])[] = [['yd', 'ft', 'in'], ['cwt', 'lb', 'oz'], ['day', 'h', 'min', 's'], ['deg', 'arcmin', 'arcsec'], ['m', 'cm', 'mm']];

/** Reads plain text (see `plainText`) as one quantity of the dimension. */
export function readTerms(text: string, dimension: Dimension, defaultUnit: UnitName | undefined): TermsOutcome {
  const example = EXAMPLES[dimension] ?? `a number and a unit: ${unitsThatDo(dimension)}`;
  const bounds = / ?\(([^()]+?) to ([^()]+?)\)$/.exec(text);
  if (bounds !== null) return readBounded(text.slice(0, bounds.index), bounds[1]!, bounds[2]!, dimension, defaultUnit);
  const { body, approximate } = withoutAbout(text);
  if (body === '') return refused('nothing is written', example);
  if (/\+ ?[\d.,/ ]+(?:[^\d±]*)?\/? ?- ?[\d.]/.test(body)) return refused('the limits are not even', 'the middle of them with one ±, such as 47.55 mm ± 0.15');
  const pieces = body.split('±');
  if (pieces.length > 2) return refused('there is more than one ±', 'one ±, such as 47.5 mm ± 0.2');
  const [main, doubt] = [pieces[0]!.trim(), pieces[1]?.trim()];
  if (doubt === '') return refused('there is no number after the ±', 'a doubt after it, such as 47.5 mm ± 0.2');
  const last = doubt === undefined ? undefined : readDoubt(doubt, dimension);
  if (last !== undefined && 'ok' in last) return last;
  const sum = readSum(main, dimension, defaultUnit, last?.unit, example);
  if (!sum.ok || last === undefined) return sum.ok ? { ok: true, terms: { ...sum.terms, approximate } } : sum;
  return { ok: true, terms: { ...sum.terms, approximate, plusMinus: doubtIn(sum.terms, last) } };
}

/** Takes off `about`, `~` and the like before, and `?` behind. */
function withoutAbout(text: string): { readonly body: string; readonly approximate: boolean } {
  const before = /^(?:about|around|roughly|approximately|approx\.?|circa|ca\.?|say|~|≈)\s*/i.exec(text)?.[0] ?? '';
  const cut = text.slice(before.length);
  const body = cut.replace(/\s*\?+$/, '');
  return { body, approximate: before !== '' || body !== cut };
}

/** Reads a quantity with its 95 % bounds in brackets behind it, in its own unit. */
function readBounded(main: string, lower: string, upper: string, dimension: Dimension, defaultUnit: UnitName | undefined): TermsOutcome {
  const outcome = readTerms(main, dimension, defaultUnit);
  if (!outcome.ok) return outcome;
  const [least, most] = [readNumber(lower), readNumber(upper)];
  const example = 'two bounds in the unit of the value, the lower first, such as 1.38 in (1.30 to 1.52)';
  if (!least.ok || !most.ok || least.number.rest.trim() !== '' || most.number.rest.trim() !== '') return refused('the bounds in brackets are not two plain numbers', example);
  const { value, plusMinus } = outcome.terms;
  if (plusMinus !== undefined) return refused('there are a ± and bounds in brackets', 'one of them, such as 1.38 ± 0.05 in');
  if (compare(least.number.value, value) > 0 || compare(value, most.number.value) > 0) return refused('the value does not lie between its bounds', example);
  return { ok: true, terms: { ...outcome.terms, interval: [least.number.value, most.number.value] } };
}

interface WrittenDoubt { readonly size: Rational; readonly unit?: UnitName; readonly share: boolean }

function readDoubt(text: string, dimension: Dimension): WrittenDoubt | Refusal {
  const outcome = readNumber(text);
  if (!outcome.ok) return refused(`after the ±, ${outcome.message}`, outcome.expected);
  const { value, rest } = outcome.number;
  if (value.numerator < 0n) return refused('the doubt after the ± is less than zero', 'a doubt of zero or more, such as ± 1/32 in');
  const spelling = rest.trim();
  if (spelling === '') return { size: value, share: false };
  const unit = unitSpelled(spelling, dimension);
  if (unit !== undefined) return { size: value, unit, share: false };
  if (spelling === '%') return { size: times(value, rational(1, 100)), share: true };
  return refused(`after the ±, ${unitAdvice(spelling, dimension)}`, `a unit of the value: ${unitsThatDo(dimension)}`);
}

const doubtIn = (terms: Terms, doubt: WrittenDoubt): Rational => {
  if (doubt.share) return absolute(times(terms.value, doubt.size));
  return doubt.unit === undefined ? doubt.size : over(times(doubt.size, UNITS[doubt.unit].factor), UNITS[terms.unit].factor);
};

/** Reads one term, or several of falling size: `5 ft 3 1/2 in`. */
function readSum(text: string, dimension: Dimension, defaultUnit: UnitName | undefined, unitOfDoubt: UnitName | undefined, example: string): TermsOutcome {
  const slope = dimension === 'taper' || dimension === 'ratio' ? readSlope(text) : undefined;
  if (slope !== undefined) return slope;
  let left = text;
  let sum: Terms | undefined;
  while (left !== '') {
    const outcome = readNumber(left);
    if (!outcome.ok) return refused(outcome.message, outcome.expected.includes('unit') ? example : outcome.expected);
    const { number } = outcome;
    if (/^ ?(?:- ?|to |[^\d]* to )[\d.]/i.test(number.rest)) return refused('a range is not one reading', RANGE);
    const [spelling, rest] = splitUnit(number.rest);
    if (sum !== undefined && spelling === '') return refused('there are two numbers with no unit between them', `a number and a unit: ${example}`);
    const unit = spelling === '' ? bareUnit(number, dimension, defaultUnit, unitOfDoubt) : unitSpelled(spelling, dimension);
    if (unit === undefined) {
      if (spelling === '' && /^ ?[\d.]/.test(rest)) return refused('there are two numbers with no unit between them', `a number and a unit: ${example}`);
      return spelling === ''
        ? refused('there is no unit', `a unit after the number: ${unitsThatDo(dimension)}`)
        : refused(unitAdvice(spelling, dimension), `a unit that fits: ${unitsThatDo(dimension)}`);
    }
    if (sum === undefined) sum = { value: number.value, unit, place: number.place, style: number.style, approximate: false };
    else {
      const joined = join(sum, number, unit);
      if (!joined.ok) return joined;
      sum = joined.terms;
    }
    left = rest.replace(/^ ?-? ?(?=[\d.])/, '').trim();
  }
  return sum === undefined ? refused('nothing is written', example) : { ok: true, terms: sum };
}

/** A taper as one in so many: `1:96`, `1 in 96`. A small step in the second number changes it by its square. */
function readSlope(text: string): TermsOutcome | undefined {
  const match = /^(\d{1,9}(?:\.\d{1,9})?) ?(?::| in ) ?(\d{1,9}(?:\.\d{1,9})?)$/.exec(text);
  if (!match) return undefined;
  const [rise, run] = [decimal(match[1]!), decimal(match[2]!)];
  if (run.numerator === 0n) return refused('a taper cannot run over a length of zero', 'a taper such as 1:96');
  const value = over(rise, run);
  const runPlace = rational(1n, 10n ** BigInt((/\.(\d+)/.exec(match[2]!)?.[1] ?? '').length));
  return { ok: true, terms: { value, unit: 'one', place: rise.numerator === 0n ? ONE : over(times(value, runPlace), run), style: 'fraction', approximate: false } };
}

/** Unit of a number that has none of its own: that of its ±, the default, or none for a ratio and a count. */
function bareUnit(number: WrittenNumber, dimension: Dimension, defaultUnit: UnitName | undefined, unitOfDoubt: UnitName | undefined): UnitName | undefined {
  // Nobody writes .015 and means fifteen millionths: in a survey kept in thou a small decimal is still in inches.
  if (defaultUnit === 'thou' && unitOfDoubt === undefined && number.style === 'decimal' && compare(absolute(number.value), rational(1, 10)) < 0) return 'in';
  return unitOfDoubt ?? defaultUnit ?? (dimension === 'ratio' || dimension === 'count' || dimension === 'taper' ? 'one' : undefined);
}

/** Splits what follows a number into the unit text and the next term. A 2 or 3 right behind a letter is a power. */
function splitUnit(text: string): readonly [unit: string, rest: string] {
  let end = 0;
  while (end < text.length) {
    const sign = text[end]!;
    if (/\d/.test(sign)) {
      const power = /[A-Za-z^µ]/.test(text[end - 1] ?? '') && /[123]/.test(sign) && /^.($|[ /·)-])/.test(text.slice(end));
      const inverse = /(min|s)-$/.test(text.slice(0, end)) && sign === '1';
      const perOne = text.slice(0, end).trim() === '' && text.startsWith('1/s', end) && text.startsWith(' ');
      if (!power && !inverse && !perOne) break;
    } else if (sign === '.' && /\d/.test(text[end + 1] ?? '')) break;
    end += 1;
  }
  const unit = text.slice(0, end).trim();
  return [end < text.length ? unit.replace(/ ?-$/, '').trim() : unit, text.slice(end).trim()];
}

function join(sum: Terms, number: WrittenNumber, unit: UnitName): TermsOutcome {
  const family = COMPOUNDS.find((one) => one.includes(sum.unit));
  const [first, second] = [family?.indexOf(sum.unit) ?? -1, family?.indexOf(unit) ?? -1];
  if (family === undefined || second < 0) return refused(`${UNITS[sum.unit].symbol} and ${UNITS[unit].symbol} do not make one quantity`, 'one number and one unit, or units that belong together, such as 5 ft 3 in');
  if (second <= first) return refused(`${UNITS[unit].symbol} cannot follow ${UNITS[sum.unit].symbol}`, 'the greater unit first, such as 5 ft 3 in');
  if (number.value.numerator < 0n) return refused('a minus stands inside the quantity', 'a minus before the whole of it, such as -5 ft 3 in');
  if (sum.style !== 'whole') return refused(`a part of a ${UNITS[sum.unit].symbol} is followed by ${UNITS[unit].symbol}`, 'a whole number before the smaller unit, such as 5 ft 3 in');
  const inUnit = over(UNITS[sum.unit].factor, UNITS[unit].factor);
  if (compare(number.value, inUnit) >= 0) return refused(`there are as many ${UNITS[unit].symbol} as make a whole ${UNITS[sum.unit].symbol}`, 'less than one of the greater unit after it, such as 5 ft 3 in');
  const whole = times(sum.value, inUnit);
  const value = compare(whole, ZERO) < 0 ? plus(whole, times(rational(-1), number.value)) : plus(whole, number.value);
  return { ok: true, terms: { value, unit, place: number.place, style: number.style === 'decimal' ? 'decimal' : number.style, approximate: false } };
}
