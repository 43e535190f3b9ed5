import type { EntryOf, KnownEntry } from '../../entries/index.ts';
import { answerWords, atName, lookOf, placeOf } from '../../hammer/index.ts';
import { LOOKING_JOBS, TRIAL_JOB } from '../../knowledge/index.ts';
import type { Quantity } from '../../methods/quantity/index.ts';
import { writtenIn, type PrintSystem } from '../print-system.ts';
import { valueKey } from '../value.ts';

/** One side of a contradiction, as it was entered. */
export interface Saying {
  readonly standing: 'told' | 'seen' | 'measured';
  /** As written, or the answer in its words. */
  readonly words: string;
  /** Where it is a reading. */
  readonly quantity?: Quantity;
  readonly when: string;
  /** Who said it where it was told, who entered it else. */
  readonly by: string;
  readonly entry: string;
}

/** Two answers to one question about one place, of which one cannot be right; the one that is used, and the other. */
export interface Contradiction {
  /** Key of the reading or the look. */
  readonly key: string;
  readonly used: Saying;
  readonly other: Saying;
}

type Sayings = EntryOf<'reading'> | EntryOf<'sighting'>;

/** Readings lie apart beyond their doubt where more than this many standard uncertainties of their difference part them (JCGM 100, 6.2: about 95 %). */
const COVERAGE = 2;
/** A look that settled nothing contradicts nothing. */
export const OPEN_ANSWER = 'not-known';

/** Whether an entry is a job that changed the machine: what was found before it may rightly differ from what is found after it. */
export const isWorkDone = (entry: KnownEntry): boolean => entry.kind === 'job-progress' && entry.body.state === 'done' && entry.body.job !== TRIAL_JOB && !LOOKING_JOBS.includes(entry.body.job);

/**
 * Where telling and seeing part, and where one place was measured twice in a day with two answers. What was seen or measured
 * is used before what was told, whichever came first, unless work was done between them.
 * @param entries in order, those struck out left away
 * @returns one for each place or look, in the order of their first entries
 */
export function contradictionsOf(entries: readonly KnownEntry[]): readonly Contradiction[] {
  const byKey = new Map<string, readonly Sayings[]>();
  const closed = new Set<string>();
  for (const entry of entries) {
    if (isWorkDone(entry)) [...byKey.keys()].forEach((key) => closed.add(key));
    else if (entry.kind === 'setting') byKey.delete(valueKey(entry.body.place, entry.body.at));
    else if (entry.kind === 'reading' || entry.kind === 'sighting') {
      const key = keyOf(entry);
      byKey.set(key, [...(closed.delete(key) ? [] : (byKey.get(key) ?? [])), entry]);
    }
  }
  return [...byKey].flatMap(([key, sayings]) => {
    const used = sayings.findLast((one) => one.body.standing !== 'told' && !isOpen(one)) ?? sayings.at(-1);
    if (used === undefined) return [];
    const other = sayings.findLast((one) => one !== used && !isOpen(one) && (one.body.standing === 'told') !== (used.body.standing === 'told') && differ(one, used))
      ?? sayings.findLast((one) => one !== used && one.kind === 'reading' && used.kind === 'reading' && one.body.standing === used.body.standing && one.at.slice(0, 10) === used.at.slice(0, 10) && differ(one, used));
    return other === undefined ? [] : [{ key, used: sayingOf(used), other: sayingOf(other) }];
  });
}

const keyOf = (entry: Sayings): string => (entry.kind === 'reading' ? valueKey(entry.body.place, entry.body.at) : valueKey(entry.body.look, entry.body.at));

const isOpen = (entry: Sayings): boolean => entry.kind === 'sighting' && entry.body.answer === OPEN_ANSWER;

/** Readings taken another way may rightly differ. */
function differ(one: Sayings, other: Sayings): boolean {
  if (one.kind === 'sighting' && other.kind === 'sighting') return one.body.answer !== other.body.answer;
  if (one.kind !== 'reading' || other.kind !== 'reading' || one.body.way !== other.body.way) return false;
  const { quantity: a } = one.body;
  const { quantity: b } = other.body;
  return Math.abs(a.value - b.value) > COVERAGE * Math.hypot(a.uncertainty, b.uncertainty) * (1 + 1e-9);
}

function sayingOf(entry: Sayings): Saying {
  const { body } = entry;
  const by = 'saidBy' in body && body.saidBy !== undefined ? body.saidBy : entry.by;
  return { standing: body.standing, words: entry.kind === 'reading' ? entry.body.asWritten : `“${answerWords(entry.body.look, entry.body.answer)}”`, when: entry.at, by, entry: entry.id, ...(entry.kind === 'reading' ? { quantity: entry.body.quantity } : {}) };
}

/** What the two sides say, in one sentence: `told 330 blows/min by the last owner on 2025-06-21, measured 290 blows/min on 2025-08-02: the measured one is used`. */
export const contradictionWords = ({ used, other }: Contradiction, system: PrintSystem): string =>
  used.standing === other.standing
    ? `${used.standing} twice on ${used.when.slice(0, 10)}, ${wordsIn(other, system)} and ${wordsIn(used, system)}: the later one is used, measure again`
    : `${sideWords(other, system)}, ${sideWords(used, system)}: the ${used.standing} one is used${used.standing === 'seen' && other.when > used.when ? ', unless what was told is worse' : ''}`;

/** The same where what was told later is worse than what was seen, and counts. */
export const toldCountsWords = ({ used, other }: Contradiction, system: PrintSystem): string => `${sideWords(used, system)}, ${sideWords(other, system)}: what was told is worse and counts until somebody looks again`;

const sideWords = (side: Saying, system: PrintSystem): string => `${side.standing} ${wordsIn(side, system)}${side.standing === 'told' ? ` by ${side.by}` : ''} on ${side.when.slice(0, 10)}`;

const wordsIn = ({ words, quantity }: Saying, system: PrintSystem): string => (quantity === undefined ? words : writtenIn(quantity, words, system));

/** What a contradiction is about, by its trade words. */
export const contradictedName = (key: string): string => {
  const [id = key, at] = key.split('@');
  return `${placeOf(id)?.place.name ?? lookOf(id)?.look.question ?? id}${at === undefined ? '' : `, ${atName(at)}`}`;
};
