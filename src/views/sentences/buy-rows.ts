import { isOpen, type BuyLine, type HeardPrice, type PrintSystem, type Worksheet } from '../../derived/index.ts';
import { formatQuantity, quantity } from '../../methods/quantity/index.ts';
import { inSystem } from './in-system.ts';
import { exactMoney, moneySpan } from './money-words.ts';
import { addedHours, quantityWords } from './words.ts';

/** How many of a line, in the reader's own units where it is bought by the length. */
export function countWords({ quantity: counted }: BuyLine, system: PrintSystem): string {
  const words = quantityWords(counted);
  return system === 'metric' ? inSystem(words, system) : words.replace(/^(\d+(?:\.\d+)?) m$/u, (_, metres: string) => formatQuantity(quantity(Number(metres), 'length'), { unit: 'ft', resolution: 0.3048, doubt: false }));
}

/** `quoted on 2025-06-14 by a machine shop`: what kind of price it is, its day, and who said it. */
export const heardWords = ({ sourceKind, when, saidBy, words }: HeardPrice): string => `${sourceKind} on ${when.slice(0, 10)}${saidBy === undefined ? '' : ` by ${saidBy}`}${words === undefined ? '' : `: "${words}"`}`;

/** The cost of a line and what is behind it: a price with its day and kind, or the range with the word that nothing was heard. */
export function lineCostWords({ cost, heard }: BuyLine, currency: string): string {
  const span = moneySpan(cost, currency);
  if (heard === undefined) return `${span} (estimate, nothing heard)`;
  if (heard.counted) return `${span} (${heardWords(heard)})`;
  return `${span} (estimate; ${exactMoney(heard.price.amount, heard.price.currency)} ${heardWords(heard)} is not in the sums, no rate)`;
}

/** How long it takes to come: as it was said, else as it usually does. */
export function waitWords({ kind, wait, waitHeard }: BuyLine): string {
  if (wait === undefined) return kind === 'part' ? 'off the shelf as a rule' : 'to be asked';
  const days = (count: number): string => `${Math.round(count)} ${Math.round(count) === 1 ? 'day' : 'days'}`;
  return waitHeard ? `${days(wait.likely)}, as said` : `${days(wait.likely)}, up to ${Math.round(wait.most)}, as a rule`;
}

/** The sums of the open jobs, least, likely and most each added up, hours as each job prints them: the same sentence on every paper. */
export const sumsSentence = ({ jobs, cost, currency = 'unit' }: Worksheet): string =>
  `The open jobs added up: ${addedHours(jobs.filter(isOpen).map((job) => job.hours))} of work; parts and outside work ${moneySpan(cost, currency)}. Least and most are sums; everything rarely goes wrong at once.`;
