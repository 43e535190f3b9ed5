import type { Money } from '../../entries/index.ts';

/** In what money to reckon, and what other money is worth in it. */
export interface MoneyOptions {
  /** ISO 4217 letters or `unit`; chosen from the prices where left out. */
  readonly currency?: string;
  /** How much of `currency` one of each other currency buys, above zero; `unit` is the generic unit of the estimates. */
  readonly rates?: Readonly<Record<string, number>>;
}

export interface Exchange {
  readonly currency: string;
  /** Worth of one of that currency, or undefined where nobody gave a rate. */
  readonly worth: (currency: string) => number | undefined;
  readonly notes: readonly string[];
  readonly problems: readonly string[];
}

const usable = (rate: number | undefined): rate is number => rate !== undefined && Number.isFinite(rate) && rate > 0;

/**
 * Chooses the money of the sums: as asked, else the currency that most prices are in, the latest where they tie.
 * The generic unit of the estimates is about one US dollar; it is added one for one where no rate says better.
 * @param prices oldest first
 */
export function exchangeOf(prices: readonly Money[], options: MoneyOptions = {}): Exchange {
  const rates = options.rates ?? {};
  const problems = Object.entries(rates).flatMap(([name, rate]) => (usable(rate) ? [] : [`A rate must be above zero: ${name} has ${rate}`]));
  const real = prices.map((price) => price.currency).filter((name) => name !== 'unit');
  const currency = options.currency ?? commonest(real) ?? 'unit';
  const worth = (name: string): number | undefined => {
    if (name === currency) return 1;
    if (usable(rates[name])) return rates[name];
    return name === 'unit' || (currency === 'unit' && name === 'USD') ? 1 : undefined;
  };
  const without = [...new Set(real)].filter((name) => worth(name) === undefined);
  for (const name of without) problems.push(`Prices are in ${name} and the sums in ${currency}, and no rate is given: the prices in ${name} are kept and not added, and the range stands instead`);
  const plain = currency === 'unit' || currency === 'USD' || usable(rates.unit);
  const notes = plain ? [] : [`Estimates are in generic units of about one US dollar and are added to ${currency} one for one, since no rate is given`];
  return { currency, worth, notes, problems };
}

function commonest(names: readonly string[]): string | undefined {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  return [...names].reverse().find((name) => counts.get(name) === most);
}
