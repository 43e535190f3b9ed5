import type { PriceUnit } from '../../entries/index.ts';

/** Units in which a thing that is counted in one of them may be priced, its own first, with the words of a form. */
export function priceUnits(own: PriceUnit, isJob: boolean): readonly (readonly [unit: PriceUnit, words: string])[] {
  if (isJob) return [['each', 'for the whole of it'], ['hour', 'for each hour']];
  if (own === 'kg' || own === 'lb') return [[own, `by the ${own}`], own === 'lb' ? ['kg', 'by the kg'] : ['lb', 'by the lb']];
  if (own === 'm' || own === 'ft') return [[own, `by the ${own === 'm' ? 'metre' : 'foot'}`], own === 'm' ? ['ft', 'by the foot'] : ['m', 'by the metre']];
  return own === 'set' ? [['set', 'a set'], ['each', 'each']] : [['each', 'each'], ['set', 'a set']];
}

const CURRENCY = 'tupwise.currency';

/** The money that somebody last entered a price in on this device. */
export const lastCurrency = (usual: string): string => localStorage.getItem(CURRENCY) ?? usual;
export const keepCurrency = (currency: string): void => localStorage.setItem(CURRENCY, currency);

/** A currency as it is kept: three letters, or `unit`. Undefined where it is neither. */
export function currencyTyped(text: string): string | undefined {
  const name = text.trim();
  if (name === '' || /^units?$/i.test(name)) return 'unit';
  return /^[A-Za-z]{3}$/.test(name) ? name.toUpperCase() : undefined;
}
