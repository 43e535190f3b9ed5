import type { Money, PriceBody } from '../../entries/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Known, Stamp } from '../survey/index.ts';
import { exchangeOf, type MoneyOptions } from './currency.ts';

/** A price as it was heard. */
export interface PriceHeard extends Stamp {
  readonly price: Money;
  readonly quantity: number;
  readonly sourceKind: PriceBody['sourceKind'];
  readonly saidBy?: string;
  readonly leadDays?: number;
  readonly words?: string;
}

/** What one job, part or the machine itself costs, the latest price first. */
export interface PriceLine {
  readonly of: string;
  readonly kind: 'job' | 'part' | 'machine';
  readonly words: string;
  /** Latest price of one, in the book's currency; absent where its currency has no rate. */
  readonly each?: number;
  readonly latest: PriceHeard;
  readonly earlier: readonly PriceHeard[];
}

export interface PriceBook {
  readonly currency: string;
  /** Worth of one generic unit of the estimates in the currency. */
  readonly unitWorth: number;
  readonly lines: readonly PriceLine[];
  readonly notes: readonly string[];
  readonly problems: readonly string[];
}

const MACHINE = 'whole-machine';

/**
 * All prices that were paid, quoted, listed or heard, by what they are for. The latest of the same thing counts; the
 * earlier ones are kept. A price that cannot be one, or is for something unknown, is said and passed over.
 */
export function priceBook(known: Known, knowledge: Knowledge, options: MoneyOptions = {}): PriceBook {
  const names = new Map<string, { readonly kind: PriceLine['kind']; readonly words: string }>([[MACHINE, { kind: 'machine', words: 'the hammer itself' }]]);
  for (const job of knowledge.jobs) {
    names.set(job.id, { kind: 'job', words: job.title });
    for (const part of job.parts) names.set(part.id, { kind: 'part', words: part.words });
  }
  const problems: string[] = [];
  const byName = new Map<string, PriceHeard[]>();
  for (const { of, ...heard } of known.prices) {
    const wrong = wrongWith(of, heard, names.has(of));
    if (wrong === undefined) byName.set(of, [heard, ...(byName.get(of) ?? [])]);
    else problems.push(wrong);
  }
  const used = known.prices.filter((price) => byName.get(price.of)?.some((heard) => heard.entry === price.entry));
  const exchange = exchangeOf(used.map((price) => price.price), options);
  const lines = [...byName].map(([of, [latest, ...earlier]]): PriceLine => {
    if (latest === undefined) throw new Error(`a line of the price book holds no price: ${of}`);
    const worth = exchange.worth(latest.price.currency);
    return { of, ...(names.get(of) ?? { kind: 'part', words: of }), latest, earlier, ...(worth === undefined ? {} : { each: (latest.price.amount * worth) / latest.quantity }) };
  });
  return { currency: exchange.currency, unitWorth: exchange.worth('unit') ?? 1, lines, notes: exchange.notes, problems: [...problems, ...exchange.problems] };
}

function wrongWith(of: string, heard: PriceHeard, named: boolean): string | undefined {
  const when = heard.when.slice(0, 10);
  const { amount, currency } = heard.price;
  if (!Number.isFinite(amount) || amount < 0) return `The price of ${when} for ${of} is passed over; a price is a number not below zero: ${amount} ${currency}`;
  if (!Number.isFinite(heard.quantity) || heard.quantity <= 0) return `The price of ${when} for ${of} is passed over; what it is for must count more than zero: ${heard.quantity}`;
  return named ? undefined : `The price of ${when} is for a job or part that this version does not know: ${of}`;
}
