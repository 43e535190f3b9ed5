import { interpolate } from '../../methods/numerics/index.ts';
import { readQuantity } from '../../methods/quantity/index.ts';
import { GRADES, HOUR_WORTH, PRICE_CHANGES, PRICE_DOUBT, SALE_CLASSES, type PriceChange, type Span } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import type { Known } from '../survey/index.ts';
import { findingKey } from './cure-needs.ts';
import { costsToCure, drawValues, linesAtTheMiddle, scaled } from './sale-draws.ts';
import type { CostToCure, NothingOff } from './cost-to-cure.ts';
import type { PriceBook } from './price-book.ts';
import { rangeOf, type Range } from './spread.ts';
import type { WorksheetJob } from './worksheet.ts';

/** One thing that a buyer takes off, or adds. */
export interface NamedChange {
  readonly id: string;
  readonly words: string;
  readonly adds: boolean;
  readonly share: Span;
  /** Money taken off or added in this place of the list where the value comes to its middle. */
  readonly amount: number;
  /** Findings behind it; none for what the seller says himself. */
  readonly because: readonly string[];
  readonly source: string;
}

/** One line of the sum, money added or, below nought, taken off. */
export interface SumLine {
  readonly kind: 'base' | 'share' | 'cure' | 'not-checked' | 'iron';
  readonly words: string;
  readonly amount: number;
}

/** What the hammer would fetch as it stands. An opinion with its doubt, not an offer. */
export interface SaleValue {
  readonly currency: string;
  readonly base: { readonly value: Span; readonly words: string; readonly estimate: boolean };
  /** The greatest first; each is taken from what the ones before it left. */
  readonly changes: readonly NamedChange[];
  /** Taken off after the shares, for every fault that no share covers. */
  readonly toCure: readonly CostToCure[];
  /** How the middle of the value comes about: base, each share, each cure and what nobody checked, each at what it comes to there; adds up to `value.p50`. */
  readonly sum: readonly SumLine[];
  /** Every other open finding. */
  readonly nothingOff: readonly NothingOff[];
  /** With the doubt of what nobody checked. */
  readonly value: Range;
  /** The same if nothing of what nobody checked were there. */
  readonly ifNoneThere: Range;
  /** Keys of everything else that nobody checked: nothing is taken off for it. */
  readonly unpriced: readonly string[];
  /** What nobody checked, and what it takes off where it is there: a buyer who cannot check takes off something between nothing and its likely share, mostly little. */
  readonly notChecked: readonly { readonly words: string; readonly share: Span; readonly criteria: readonly string[] }[];
  readonly paidForIt?: number;
  readonly notes: readonly string[];
}

export interface SaleOptions {
  readonly farOrHeavy?: boolean;
  /** Shown on hot steel with film and sheet; taken from the log where left out: a measured hot test bar, or a recording at work. */
  readonly shownOnHotSteel?: boolean;
  readonly draws?: number;
}

/**
 * Sale value by deductions, as buyers make them: from the price of such a hammer in good order each fault that the trade
 * has a share for takes its share of what is left; then every other takes off what it costs to cure. For the value after
 * some work, give the findings and the worksheet as they would stand after it.
 * @param worksheet with its prices; one of the hammer itself is the base, unless it is what was paid for this very one
 * @param seed 0 to 2^53 - 1
 */
export function saleValue(known: Known, findings: readonly Finding[], worksheet: SoldAs, seed: number, options: SaleOptions = {}): SaleValue {
  const { prices: book } = worksheet;
  const base = baseOf(known, book);
  const shown = options.shownOnHotSteel ?? wasShown(known);
  const lapsed = shown && (worksheet.overdue ?? []).length > 0;
  const own = [...(options.farOrHeavy === true ? ['far-or-heavy'] : []), ...(shown && !lapsed ? ['shown-on-hot-steel'] : [])];
  const found = PRICE_CHANGES.flatMap((change) => {
    const because = findings.filter((finding) => brings(known, change, finding)).map(findingKey);
    return because.length > 0 || own.includes(change.id) ? [{ change, because }] : [];
  }).filter((one, _, all) => one.change.id !== 'crack-suspected' || !all.some((other) => other.change.id === 'crack-in-load-path'));
  found.sort((a, b) => Number(a.change.adds ?? false) - Number(b.change.adds ?? false) || b.change.share.likely - a.change.share.likely);
  const { toCure, nothingOff } = costsToCure(findings, worksheet, new Map(found.flatMap((one) => one.because.map((key) => [key, one.change.words] as const))), book.unitWorth);
  const open = PRICE_CHANGES.flatMap((change) => {
    const criteria = findings.filter((finding) => finding.grade === 'not-known' && change.id !== 'crack-suspected' && change.when.some((one) => one.criterion === finding.criterion));
    return criteria.length === 0 || found.some((one) => one.change === change) ? [] : [{ words: change.words, share: change.share, criteria: [...new Set(criteria.map(findingKey))] }];
  });
  const priced = new Set(open.flatMap((one) => one.criteria));
  const unpriced = findings.filter((finding) => finding.grade === 'not-known' && !priced.has(findingKey(finding))).map(findingKey);
  const draws = Math.max(100, Math.round(options.draws ?? 10_000));
  const drawn = drawValues({ base: base.value, shares: found.map(({ change }) => ({ share: change.share, adds: change.adds === true })), toCure, open: open.map((one) => one.share.likely), hourWorth: scaled(HOUR_WORTH, book.unitWorth) }, seed, draws);
  const value = rangeOf([drawn.value], draws);
  const lines = linesAtTheMiddle(drawn, value.p50);
  const changes = found.map(({ change, because }, index): NamedChange => (
    { id: change.id, words: change.words, adds: change.adds ?? false, share: change.share, amount: Math.abs(lines.shares[index] ?? 0), because, source: change.source }));
  const cures = toCure.map((line, index): CostToCure => ({ ...line, amount: -(lines.cures[index] ?? 0) })).sort((a, b) => b.amount - a.amount);
  const paid = paidFor(known, book);
  const sum: readonly SumLine[] = [
    { kind: 'base', words: base.words, amount: lines.base },
    ...changes.map((change): SumLine => ({ kind: 'share', words: change.words, amount: change.adds ? change.amount : -change.amount })),
    ...cures.map((line): SumLine => ({ kind: 'cure', words: line.title, amount: -line.amount })),
    ...(open.length === 0 ? [] : [{ kind: 'not-checked', words: 'what nobody checked', amount: lines.open } as const]),
    ...(lines.iron > 0 ? [{ kind: 'iron', words: 'it is worth its iron at least', amount: lines.iron } as const] : []),
  ];
  return {
    currency: book.currency, base, changes, toCure: cures, nothingOff, sum, value, ifNoneThere: rangeOf([drawn.ifNoneThere], draws), ...(paid === undefined ? {} : { paidForIt: paid }), notChecked: open, unpriced,
    notes: [
      ...book.notes, base.estimate ? 'The base is a range of the class, not a price that was heard: an estimate.' : 'The base is a price that was heard for such a hammer.',
      ...(toCure.length === 0 ? [] : [`Hours to cure are reckoned at ${whole(HOUR_WORTH.least, book)} to ${whole(HOUR_WORTH.most, book)} an hour, likely ${whole(HOUR_WORTH.likely, book)}: what they are worth to a buyer who does the work himself; from memory.`]),
      ...(lapsed ? [`Shown on hot steel, which adds ${Math.round(SHOWN.likely * 100)} % where the papers are up to date, adds nothing here: ${worksheet.overdue?.length === 1 ? 'one dated check is overdue' : `${worksheet.overdue?.length} dated checks are overdue`}.`] : []),
      'Fresh paint adds nothing here: it hides what a buyer pays for.',
    ],
  };
}

/** Jobs and prices of the hammer as it is sold. */
export interface SoldAs {
  readonly jobs: readonly WorksheetJob[];
  /** What only may be needed: each takes off by its chance. */
  readonly mayBe?: readonly WorksheetJob[];
  readonly prices: PriceBook;
  /** Dated checks that are overdue: papers that are out of date document nothing. */
  readonly overdue?: readonly string[];
}

const SHOWN: Span = PRICE_CHANGES.find((change) => change.id === 'shown-on-hot-steel')?.share ?? { least: 0, likely: 0, most: 0 };

const whole = (units: number, book: PriceBook): string => `${Math.round(units * book.unitWorth)} ${book.currency === 'unit' ? 'units' : book.currency}`;

function brings(known: Known, change: PriceChange, finding: Finding): boolean {
  return change.when.some((one) => {
    if (one.criterion !== finding.criterion || finding.grade === 'not-known' || finding.grade === 'does-not-apply') return false;
    const answer = finding.from.map((key) => known.looks[key]?.answer).find((one) => one !== undefined) ?? '';
    return GRADES.indexOf(finding.grade) >= GRADES.indexOf(one.grade) && (one.answers === undefined || one.answers.includes(answer));
  });
}

const wasShown = (known: Known): boolean =>
  Object.keys(known.history).some((key) => key.startsWith('running.test-bar-thickness')) || known.recordings.some((recording) => recording.run === 'work');

const PAID = 'paid';

function baseOf(known: Known, book: PriceBook): SaleValue['base'] {
  const line = book.lines.find((one) => one.kind === 'machine');
  const heard = line === undefined ? undefined : [line.latest, ...line.earlier].find((one) => one.sourceKind !== PAID);
  const each = heard === undefined ? undefined : heard === line?.latest ? line.each : heard.price.currency === book.currency ? heard.price.amount / heard.quantity : undefined;
  if (heard !== undefined && each !== undefined) {
    const doubt = PRICE_DOUBT[heard.sourceKind];
    return { value: { least: each * (1 - doubt), likely: each, most: each * (1 + doubt) }, words: `${heard.sourceKind} on ${heard.when.slice(0, 10)} for such a hammer in good order`, estimate: false };
  }
  const mass = known.identity.ramClass.quantity.value;
  const masses = SALE_CLASSES.map((row) => kilograms(row.ramPounds));
  const at = (end: keyof Span): number => interpolate(masses, SALE_CLASSES.map((row) => row.inGoodOrder[end]), mass) * book.unitWorth;
  return { value: { least: at('least'), likely: at('likely'), most: at('most') }, words: `such a hammer in good order, ${known.identity.ramClass.asWritten} class`, estimate: true };
}

function paidFor(known: Known, book: PriceBook): number | undefined {
  const line = book.lines.find((one) => one.kind === 'machine' && one.latest.sourceKind === PAID);
  return line?.each ?? known.prices.find((price) => price.of === 'whole-machine' && price.sourceKind === PAID && price.price.currency === book.currency)?.price.amount;
}

function kilograms(pounds: number): number {
  const reading = readQuantity(`${pounds} lb`, { dimension: 'mass', field: 'sale classes' });
  if (!reading.ok) throw new Error(`knowledge: a class of the sale table cannot be read: ${reading.problem.message}: ${pounds}`);
  return reading.quantity.value;
}
