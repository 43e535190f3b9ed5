import { instantMs, type Money, type PriceBody, type PriceUnit } from '../../entries/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Known, Stamp } from '../survey/index.ts';
import { unitsIn } from './bought-in.ts';
import { exchangeOf, type MoneyOptions, type RateHeard } from './currency.ts';

/** A price as it was heard; `when` is the day of the price. */
export interface PriceHeard extends Stamp {
  readonly price: Money;
  readonly quantity: number;
  readonly unit?: PriceUnit;
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
  /** What it is counted in. A job is counted whole, or by the hour of it where its price is. */
  readonly unit: PriceUnit;
  /** Latest price of one, in the book's currency, brought up where that was asked for; absent where its currency has no rate. */
  readonly each?: number;
  readonly latest: PriceHeard;
  readonly earlier: readonly PriceHeard[];
  /** By how much the price was brought up for its age. */
  readonly broughtUp?: number;
}

export interface PriceBook {
  readonly currency: string;
  /** Worth of one generic unit of the estimates in the currency. */
  readonly unitWorth: number;
  readonly lines: readonly PriceLine[];
  /** Rates of exchange of the log, oldest first. */
  readonly rates: readonly RateHeard[];
  readonly notes: readonly string[];
  readonly problems: readonly string[];
}

const MACHINE = 'whole-machine';
const RATE = /^money\.([a-z]{3}|unit)$/;
const YEAR_MS = 365.25 * 86_400_000;
/** Years from which a price counts as old and is said to be. */
const OLD = 2;

interface Named {
  readonly kind: PriceLine['kind'];
  readonly words: string;
  readonly unit: PriceUnit;
}

/**
 * All prices that were paid, quoted, listed or heard, by what they are for. The latest of the same thing counts; the
 * earlier ones are kept. A price that cannot be one, or is for something unknown, is said and passed over. An old price
 * stays as it was heard, and is said to be old; it is brought up only by a rise that somebody asked for.
 */
export function priceBook(known: Known, knowledge: Knowledge, options: MoneyOptions = {}): PriceBook {
  const names = new Map<string, Named>([[MACHINE, { kind: 'machine', words: 'the hammer itself', unit: 'each' }]]);
  for (const job of knowledge.jobs) {
    names.set(job.id, { kind: 'job', words: job.title, unit: 'each' });
    for (const part of job.parts) names.set(part.id, { kind: 'part', words: part.words, unit: part.unit ?? 'each' });
  }
  const problems: string[] = [];
  const byName = new Map<string, PriceHeard[]>();
  const rates: RateHeard[] = [];
  for (const { of, on, ...rest } of known.prices) {
    const heard: PriceHeard = { ...rest, when: on ?? rest.when };
    const wrong = wrongWith(of, heard, names.get(of));
    const rated = RATE.exec(of)?.[1];
    if (wrong !== undefined) problems.push(wrong);
    else if (rated !== undefined) rates.push({ of: rated === 'unit' ? rated : rated.toUpperCase(), price: { amount: heard.price.amount / heard.quantity, currency: heard.price.currency }, when: heard.when, sourceKind: heard.sourceKind });
    else byName.set(of, [heard, ...(byName.get(of) ?? [])]);
  }
  for (const list of byName.values()) list.sort((a, b) => (a.when < b.when ? 1 : a.when > b.when ? -1 : 0));
  rates.sort((a, b) => (a.when < b.when ? -1 : a.when > b.when ? 1 : 0));
  const used = known.prices.filter((price) => byName.get(price.of)?.some((heard) => heard.entry === price.entry));
  const exchange = exchangeOf(used.map((price) => price.price), options, rates);
  const rise = riseOf(options);
  const lines = [...byName].map(([of, [latest, ...earlier]]): PriceLine => {
    if (latest === undefined) throw new Error(`a line of the price book holds no price: ${of}`);
    const named = names.get(of) ?? { kind: 'part', words: of, unit: 'each' };
    const worth = exchange.worth(latest.price.currency);
    const factor = rise.factor(latest.when);
    const counted = unitsIn(latest.unit ?? named.unit, named.unit);
    return {
      of, ...named, ...(counted === undefined && latest.unit !== undefined ? { unit: latest.unit } : {}), latest, earlier, ...(factor === 1 ? {} : { broughtUp: factor }),
      ...(worth === undefined ? {} : { each: (latest.price.amount * worth * factor) / (latest.quantity * (counted ?? 1)) }),
    };
  });
  return {
    currency: exchange.currency, unitWorth: exchange.worth('unit') ?? 1, lines, rates,
    notes: [...exchange.notes, ...oldNotes(lines, options)], problems: [...problems, ...exchange.problems, ...leftOut(lines, exchange.currency), ...rise.problems],
  };
}

/** Prices whose money has no rate, by name, and how they would come in. */
function leftOut(lines: readonly PriceLine[], currency: string): readonly string[] {
  const out = lines.filter((line) => line.each === undefined);
  return [...new Set(out.map((line) => line.latest.price.currency))].map((name) => {
    const named = out.filter((line) => line.latest.price.currency === name).map((line) => `${line.words.toLowerCase()} at ${line.latest.price.amount} ${name}`).join('; ');
    return `Left out of the sums, which are in ${currency === 'unit' ? 'generic units of about one US dollar' : currency}: ${named}. No rate joins the two; enter one as a price of money.${name.toLowerCase()}, or ask for the sums in ${name}. Until then the range stands instead`;
  });
}

function wrongWith(of: string, heard: PriceHeard, named: Named | undefined): string | undefined {
  const when = heard.when.slice(0, 10);
  const { amount, currency } = heard.price;
  const rate = RATE.test(of);
  if (!Number.isFinite(amount) || amount < 0) return `The price of ${when} for ${of} is passed over; a price is a number not below zero: ${amount} ${currency}`;
  if (rate && amount === 0) return `The rate of ${when} for ${of} is passed over; a rate is above zero: ${amount} ${currency}`;
  if (!Number.isFinite(heard.quantity) || heard.quantity <= 0) return `The price of ${when} for ${of} is passed over; what it is for must count more than zero: ${heard.quantity}`;
  if (rate) return undefined;
  if (named === undefined) return `The price of ${when} is for a job or part that this version does not know: ${of}`;
  if (heard.unit === undefined || unitsIn(heard.unit, named.unit) !== undefined || (named.kind === 'job' && heard.unit === 'hour')) return undefined;
  return `The price of ${when} for ${of} is passed over; it is counted ${named.unit === 'each' ? 'by the piece' : `by the ${named.unit}`}${named.kind === 'job' ? ' or the hour' : ''}: ${heard.unit}`;
}

/** How far a price of a day is brought up to the day of asking. */
function riseOf({ risePerYear, asOf }: MoneyOptions): { readonly factor: (when: string) => number; readonly problems: readonly string[] } {
  const none = { factor: () => 1, problems: [] };
  if (risePerYear === undefined || risePerYear === 0) return none;
  if (!(risePerYear > -0.5 && risePerYear < 1)) return { ...none, problems: [`Prices are not brought up; a rise in a year lies between -50 and 100 %: ${Math.round(risePerYear * 1000) / 10} %`] };
  return { factor: (when) => (1 + risePerYear) ** (yearsOld(when, asOf) ?? 0), problems: [] };
}

function yearsOld(when: string, asOf: string | undefined): number | undefined {
  const [then, now] = [instantMs(`${when.slice(0, 10)}T00:00:00Z`), asOf === undefined ? undefined : instantMs(asOf)];
  return then === undefined || now === undefined ? undefined : Math.max(0, (now - then) / YEAR_MS);
}

function oldNotes(lines: readonly PriceLine[], options: MoneyOptions): readonly string[] {
  const raised = lines.filter((line) => line.broughtUp !== undefined);
  if (raised.length > 0 && options.risePerYear !== undefined) return [`Prices heard are brought up by ${Math.round(options.risePerYear * 1000) / 10} % for each year of their age: an assumption of whoever asked, not a price that was heard.`];
  const old = lines.filter((line) => (yearsOld(line.latest.when, options.asOf) ?? 0) >= OLD);
  return old.length === 0 ? [] : [`Old, and reckoned as they were heard: ${old.map((line) => `${line.words.toLowerCase()} (${line.latest.when.slice(0, 4)})`).join('; ')}.`];
}
