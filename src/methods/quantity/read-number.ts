import { decimal, negated, ONE, plus, powerOfTen, rational, type Rational } from './rational.ts';

/** A number as written: its exact value, the size of its last place, and how it was written. */
export interface WrittenNumber {
  readonly value: Rational;
  /** 1/16 for a fraction in sixteenths, 0.01 for two decimals, 1 for a whole number. */
  readonly place: Rational;
  readonly style: 'whole' | 'decimal' | 'fraction';
  /** Text left after the number. */
  readonly rest: string;
}

export type NumberOutcome = { readonly ok: true; readonly number: WrittenNumber } | { readonly ok: false; readonly message: string; readonly expected: string };

const refused = (message: string, expected: string): NumberOutcome => ({ ok: false, message, expected });

/**
 * Reads one number at the start of plain text: `4 5/8`, `4-5/8`, `5/8`, `.015`, `47,5`, `320`, `1.6e-3`, each with a minus before it.
 * A comma is a decimal comma unless three digits follow one to three others, which could be thousands: that is refused.
 */
export function readNumber(text: string): NumberOutcome {
  const sign = /^([+-]?) ?/.exec(text)!;
  const minus = sign[1] === '-';
  const body = text.slice(sign[0].length);
  const give = (value: Rational, place: Rational, style: WrittenNumber['style'], taken: number): NumberOutcome =>
    ({ ok: true, number: { value: minus ? negated(value) : value, place, style, rest: body.slice(taken) } });

  if (/^(inf|infinity|nan|∞)/i.test(body)) return refused('that is not a number that can be measured', 'a plain number, such as 4 5/8 or 4.625');
  if (/^\d{1,3}(,\d{3})+(?![\d,])/.test(body) && !body.startsWith('0,')) {
    const run = /^[\d,.]+/.exec(body)![0];
    const decimals = /^\d+,\d+$/.test(run) ? `, or ${run.replace(',', '.')} for decimals` : '';
    return refused(`"${run}" may be thousands or a decimal comma`, `no comma: ${run.replaceAll(',', '')} for thousands${decimals}`);
  }
  const mixed = /^(\d+)(?: ?- ?| )(\d+) ?\/ ?(\d+)(?![\d.,]*\d)/.exec(body);
  if (mixed) {
    const [top, bottom] = [BigInt(mixed[2]!), BigInt(mixed[3]!)];
    if (bottom === 0n) return refused('a fraction cannot have zero below the line', 'a fraction such as 5/8');
    if (top >= bottom) return refused(`${mixed[2]}/${mixed[3]} is one or more, so it cannot stand after a whole number`, 'a proper fraction after the whole number, such as 2 5/8');
    return give(plus(rational(BigInt(mixed[1]!)), rational(top, bottom)), rational(1n, bottom), 'fraction', mixed[0].length);
  }
  const fraction = /^(\d+) ?\/ ?(\d+)(?![\d.,]*\d)/.exec(body);
  if (fraction) {
    const bottom = BigInt(fraction[2]!);
    if (bottom === 0n) return refused('a fraction cannot have zero below the line', 'a fraction such as 5/8');
    return give(rational(BigInt(fraction[1]!), bottom), rational(1n, bottom), 'fraction', fraction[0].length);
  }
  if (/^\d+(?:(?: ?- ?| )\d+)? ?\/(?! ?(?:min|s|[a-z]+)\b)/i.test(body) || /^\d+(?: ?- ?| )\d+ ?\//.test(body)) return refused('the fraction is not finished', 'a whole fraction, such as 4 5/8');
  const plain = /^(\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE]([+-]?\d{1,2})(?![A-Za-z\d]))?/.exec(body);
  if (!plain) return refused(body === '' ? 'there is no number' : 'it does not begin with a number', 'a number and a unit, such as 4 5/8 in or 47.5 mm');
  const after = body.slice(plain[0].length);
  if (/^[.,]\d/.test(after) || (/[.,]/.test(plain[1]!) && /^[.,]/.test(after))) return refused('there are two decimal points', 'one decimal point, such as 4.625');
  const figure = plain[1]!.replace(',', '.');
  const decimals = /\.(\d*)$/.exec(figure)?.[1]?.length ?? 0;
  const exponent = Number(plain[2] ?? 0);
  const place = exponent === 0 && decimals === 0 ? ONE : powerOfTen(exponent - decimals);
  return give(decimal(`${figure}e${exponent}`), place, decimals > 0 || exponent !== 0 ? 'decimal' : 'whole', plain[0].length);
}
