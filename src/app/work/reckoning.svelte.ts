import type { Crew, MoneyOptions } from '../../derived/index.ts';

/** A figure as somebody types it on a small keyboard: `800`, `1 200`, `12,5`. */
export const typedFigure = (text: string): number | undefined => {
  const plain = text.replaceAll(/\s/g, '').replace(',', '.');
  return /^\d{1,9}(\.\d*)?$/.test(plain) ? Number(plain) : undefined;
};

/** With whom and in what money a worksheet is reckoned: what somebody typed, and what of it can be used. */
export class Reckoning {
  hands = $state('');
  skill = $state<'' | '1' | '2' | '3' | '4'>('');
  hoursADay = $state('');
  currency = $state('');
  rise = $state('');

  /** What is wrong with what was typed, one sentence; empty where nothing is. */
  readonly wrong = $derived.by((): string => {
    const hands = typedFigure(this.hands);
    const day = typedFigure(this.hoursADay);
    if (this.hands.trim() !== '' && (hands === undefined || !Number.isInteger(hands) || hands < 1)) return `the hands cannot be used; a whole number from 1: ${this.hands}`;
    if (this.hoursADay.trim() !== '' && (day === undefined || day <= 0 || day > 24)) return `the hours in a day cannot be used; more than 0 and at most 24: ${this.hoursADay}`;
    if (this.currency.trim() !== '' && !/^([A-Za-z]{3}|units?)$/.test(this.currency.trim())) return `the money cannot be used; three letters such as EUR, or unit: ${this.currency}`;
    if (this.rise.trim() !== '' && typedFigure(this.rise) === undefined) return `the rise of prices cannot be used; per cent a year, such as 3: ${this.rise}`;
    return '';
  });

  readonly crew = $derived.by((): Partial<Crew> => {
    const hands = typedFigure(this.hands);
    const day = typedFigure(this.hoursADay);
    return this.wrong !== '' ? {} : {
      ...(hands === undefined ? {} : { hands }), ...(day === undefined ? {} : { hoursPerDay: day }), ...(this.skill === '' ? {} : { skill: Number(this.skill) as Crew['skill'] }),
    };
  });

  readonly money = $derived.by((): MoneyOptions => {
    const name = this.currency.trim();
    const rise = typedFigure(this.rise);
    return this.wrong !== '' ? {} : { ...(name === '' ? {} : { currency: /^units?$/i.test(name) ? 'unit' : name.toUpperCase() }), ...(rise === undefined ? {} : { risePerYear: rise / 100 }) };
  });
}
