import type { Money } from '../../entries/index.ts';

/** In what money to reckon, what other money is worth in it, and how far old prices are brought up. */
export interface MoneyOptions {
  /** ISO 4217 letters or `unit`; chosen from the prices where left out. */
  readonly currency?: string;
  /** How much of `currency` one of each other currency buys, above zero; `unit` is the generic unit of the estimates. Goes before a rate of the log. */
  readonly rates?: Readonly<Record<string, number>>;
  /** Instant of the reckoning, from which the age of a price is counted; ISO 8601. */
  readonly asOf?: string;
  /** How far prices rise in a year, as a share: 0.03. Somebody's assumption, never ours: where left out, a price stays as it was heard. */
  readonly risePerYear?: number;
}

/** A rate of exchange as it was heard: what one of `of` cost in `price`, and when. */
export interface RateHeard {
  readonly of: string;
  readonly price: Money;
  readonly when: string;
  readonly sourceKind: string;
}

export interface Exchange {
  readonly currency: string;
  /** Worth of one of that currency, or undefined where nobody gave a rate. */
  readonly worth: (currency: string) => number | undefined;
  readonly notes: readonly string[];
  readonly problems: readonly string[];
}

interface Step {
  readonly to: string;
  readonly factor: number;
  /** Where the figure comes from, for a reader; empty for a rate that was asked for. */
  readonly words: string;
}

const usable = (rate: number | undefined): rate is number => rate !== undefined && Number.isFinite(rate) && rate > 0;

/**
 * Chooses the money of the sums: as asked, else the one that most prices are in, generic units included and first where they
 * tie, then the latest. A single price in a money that no rate joins to the units is a foreign price and never takes the sums
 * over. Rates are taken as asked, else from the log, the latest of each pair, either way round and over a third currency
 * where need be. The generic unit of the estimates is about one US dollar, and goes over the dollar's rates where no rate of
 * its own was given; it is added one for one where no rate says better.
 * @param prices oldest first @param heard rates of the log, oldest first
 */
export function exchangeOf(prices: readonly Money[], options: MoneyOptions = {}, heard: readonly RateHeard[] = []): Exchange {
  const rates = options.rates ?? {};
  const problems = Object.entries(rates).flatMap(([name, rate]) => (usable(rate) ? [] : [`A rate must be above zero: ${name} has ${rate}`]));
  const real = prices.map((price) => price.currency).filter((name) => name !== 'unit');
  const steps = stepsOf(heard);
  const currency = options.currency ?? homeOf(prices.map((price) => price.currency), (name) => wayTo('unit', name, rates, steps) !== undefined);
  const found = new Map<string, { readonly worth: number; readonly words: readonly string[] } | undefined>();
  const path = (name: string) => {
    if (!found.has(name)) found.set(name, wayTo(name, currency, rates, steps));
    return found.get(name);
  };
  const worth = (name: string): number | undefined => path(name)?.worth ?? (name === 'unit' ? 1 : undefined);
  const used = [...new Set(real)];
  const notes = [...new Set([...used, 'unit'].flatMap((name) => path(name)?.words ?? []))];
  if (currency !== 'unit' && currency !== 'USD' && heard.every((rate) => rate.of !== 'unit') && rates['unit'] === undefined && path('unit') !== undefined) notes.push(`Estimates are in generic units, reckoned as one US dollar each and turned into ${currency} at the dollar's rate.`);
  const plain = currency === 'unit' || currency === 'USD' || path('unit') !== undefined;
  if (!plain) notes.push(`Estimates are in generic units of about one US dollar and are added to ${currency} one for one, since no rate is given`);
  return { currency, worth, notes, problems };
}

function stepsOf(heard: readonly RateHeard[]): ReadonlyMap<string, readonly Step[]> {
  const latest = new Map<string, RateHeard>();
  for (const rate of heard) latest.set([rate.of, rate.price.currency].sort().join(), rate);
  const steps = new Map<string, Step[]>();
  const add = (from: string, step: Step): void => void steps.set(from, [...(steps.get(from) ?? []), step]);
  // About one US dollar, until somebody says what a unit is worth.
  if (![...latest.values()].some((rate) => rate.of === 'unit' || rate.price.currency === 'unit')) {
    add('unit', { to: 'USD', factor: 1, words: '' });
    add('USD', { to: 'unit', factor: 1, words: '' });
  }
  for (const { of, price, when, sourceKind } of latest.values()) {
    const words = `One ${of} is reckoned at ${price.amount} ${price.currency}, ${sourceKind} on ${when.slice(0, 10)}.`;
    add(of, { to: price.currency, factor: price.amount, words });
    add(price.currency, { to: of, factor: 1 / price.amount, words });
  }
  return steps;
}

/** The shortest way over the rates from one currency to another, breadth first. */
function wayTo(name: string, currency: string, rates: Readonly<Record<string, number>>, steps: ReadonlyMap<string, readonly Step[]>): { readonly worth: number; readonly words: readonly string[] } | undefined {
  if (name === currency) return { worth: 1, words: [] };
  const asked = rates[name];
  if (usable(asked)) return { worth: asked, words: [] };
  const seen = new Set([name]);
  let front = [{ at: name, worth: 1, words: [] as readonly string[] }];
  while (front.length > 0) {
    const next: typeof front = [];
    for (const place of front) {
      const askedThere = rates[place.at];
      if (usable(askedThere)) return { worth: place.worth * askedThere, words: place.words };
      for (const { to, factor, words } of steps.get(place.at) ?? []) {
        if (seen.has(to)) continue;
        seen.add(to);
        const there = { at: to, worth: place.worth * factor, words: words === '' ? place.words : [...place.words, words] };
        if (to === currency) return there;
        next.push(there);
      }
    }
    front = next;
  }
  return undefined;
}

/** The money of most prices. @param joined true where a rate joins a money to the generic units */
function homeOf(names: readonly string[], joined: (name: string) => boolean): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  const most = Math.max(0, ...counts.values());
  if ((counts.get('unit') ?? 0) === most) return 'unit';
  const home = [...names].reverse().find((name) => counts.get(name) === most) ?? 'unit';
  return most > 1 || joined(home) ? home : 'unit';
}
