import { bothOilWays, placeWords, type Finding, type Limit } from '../condition/index.ts';
import type { LimitKind } from '../../knowledge/index.ts';
import { lookOf, needsRun, placeOf } from '../../hammer/index.ts';
import { valueKey } from '../value.ts';
import type { Duty, Settling, Verdict } from './duty.ts';

/**
 * The verdict and the limits that the findings put together.
 * A finding that stands the hammer down outweighs all else. A gate that is not known makes the verdict not known yet,
 * unless the hammer stands down anyway. What nobody checked is never taken as good.
 */
export function dutyOf(findings: readonly Finding[]): Duty {
  const down = findings.filter((finding) => finding.grade === 'stand-down');
  const openGates = findings.filter((finding) => finding.gate && finding.grade === 'not-known');
  const limited = findings.filter((finding) => finding.grade === 'limited' || (finding.grade === 'watch' && finding.limits.length > 0));
  const limits = mergeLimits(findings);
  const verdict: Verdict = down.length > 0 ? 'stand-down' : openGates.length > 0 ? 'not-known-yet' : limited.length > 0 || limits.length > 0 ? 'fit-within-limits' : 'fit';
  const missing = openGates.map(settlingOf);
  const sure = surenessOf(verdict, findings);
  return { verdict, sentence: sentenceOf(verdict, down, missing, limits, findings.filter((finding) => finding.grade === 'not-known').length), reasons: reasonsOf(verdict, down, openGates, limited, findings), limits, sure, sureWords: sureWordsOf(verdict, sure), missing };
}

const keyOf = (finding: Finding): string => valueKey(finding.criterion, finding.at);

const SMALLEST_COUNTS: readonly LimitKind[] = ['greatest-work-thickness', 'greatest-speed', 'greatest-bar', 'greatest-tread', 'longest-run', 'oil-every', 'check-keys-every'];

/** One limit of each kind: the strictest figure, with every finding that asks for it, the strictest first. */
export function mergeLimits(findings: readonly Finding[]): readonly Limit[] {
  const byKind = new Map<LimitKind, Limit>();
  for (const finding of findings) {
    for (const limit of finding.limits) {
      const held = byKind.get(limit.kind);
      byKind.set(limit.kind, held === undefined ? limit : stricter(held, limit));
    }
  }
  // What must be done before the first turn is read first.
  return tightestOfWork([...byKind.values()].sort((a, b) => Number(isBeforeRunning(b)) - Number(isBeforeRunning(a))));
}

/** True where a limit asks for something before the hammer turns at all. */
const isBeforeRunning = ({ kind }: Limit): boolean => kind === 'oil-way-first';

/** Kinds that bound one and the same thing: how thick the work may be. */
const BOUNDS_OF_WORK: readonly LimitKind[] = ['greatest-work-thickness', 'greatest-bar'];

/** Two bounds of the thickness of the work are one too many: the tighter stands, with the findings behind both. Light work without a figure bounds no thickness. */
function tightestOfWork(limits: readonly Limit[]): readonly Limit[] {
  const bounds = limits.filter((limit) => limit.quantity !== undefined && (BOUNDS_OF_WORK.includes(limit.kind) || limit.kind === 'light-work-only'));
  const [tightest] = [...bounds].sort((a, b) => a.quantity!.value - b.quantity!.value);
  // Light work says more than its bar, so it is never dropped.
  const dropped = bounds.filter((limit) => limit !== tightest && limit.kind !== 'light-work-only');
  const because = [...new Set([...(tightest?.because ?? []), ...dropped.flatMap((limit) => limit.because)])];
  return limits.filter((limit) => !dropped.includes(limit)).map((limit) => (limit === tightest && dropped.length > 0 ? { ...limit, because } : limit));
}

/** s between two oilings that the limits allow at the most; undefined where no limit speaks of it. */
export const oilingLimit = ({ limits }: Pick<Duty, 'limits'>): number | undefined => limits.find((limit) => limit.kind === 'oil-every')?.quantity?.value;

function stricter(held: Limit, other: Limit): Limit {
  if (held.kind === 'oil-way-first') return bothOilWays(held, other);
  const because = [...new Set([...held.because, ...other.because])];
  const a = held.quantity?.value;
  const b = other.quantity?.value;
  if (b === undefined) return { ...held, because };
  const swap = a === undefined || (SMALLEST_COUNTS.includes(held.kind) ? b < a : b > a);
  return swap ? { ...other, because: [...new Set([...other.because, ...held.because])] } : { ...held, because };
}

function settlingOf(finding: Finding): Settling {
  const how = finding.missing.map(howOf).filter((one, index, all) => all.indexOf(one) === index).join(' ');
  return { criterion: keyOf(finding), title: finding.title, how: how === '' ? finding.question : how, missing: finding.missing, minutes: finding.minutes };
}

/** True where only a running hammer answers everything that is missing: it is run for that check, and for nothing else. */
export const shownByRunning = (missing: Duty['missing']): boolean => missing.length > 0 && missing.every((one) => one.missing.length > 0 && one.missing.every((key) => needsRun(key.split(/[@#]/)[0] ?? key)));

function howOf(key: string): string {
  const id = key.split(/[@#]/)[0] ?? key;
  return lookOf(id)?.look.how ?? placeOf(id)?.place.how ?? key;
}

/** Chance that the verdict holds, findings taken as independent; a coarse figure, and only of the readings' doubt. */
function surenessOf(verdict: Verdict, findings: readonly Finding[]): number {
  const noneDown = findings.reduce((chance, finding) => chance * (1 - finding.chances.standDown), 1);
  const noneLimited = findings.reduce((chance, finding) => chance * (1 - finding.chances.limited), 1);
  switch (verdict) {
    case 'stand-down':
      return 1 - noneDown;
    case 'fit':
      return noneLimited;
    case 'fit-within-limits':
      return noneDown;
    case 'not-known-yet':
      return 1;
  }
}

function sureWordsOf(verdict: Verdict, sure: number): string {
  if (verdict === 'not-known-yet') return 'nothing is claimed';
  if (sure >= 0.975) return 'sure, as far as the readings go';
  return `probably, ${Math.round(sure * 100)} %: a reading lies near a limit`;
}

function sentenceOf(verdict: Verdict, down: readonly Finding[], missing: readonly Settling[], limits: readonly Limit[], open: number): string {
  const unchecked = open === 0 ? '' : ` ${open === 1 ? 'One matter is' : `${open} matters are`} not checked and not taken as good.`;
  switch (verdict) {
    case 'stand-down':
      return `Stand down: do not run it. ${down.length === 1 ? 'One finding stops it' : `${down.length} findings stop it`}: ${down.map((finding) => finding.title.toLowerCase()).slice(0, 3).join('; ')}.`;
    case 'not-known-yet': {
      const minutes = missing.reduce((sum, one) => sum + one.minutes, 0);
      return `Not known yet: ${missing.length === 1 ? 'one matter of safety is' : `${missing.length} matters of safety are`} not checked. About ${minutes} min would settle ${missing.length === 1 ? 'it' : 'them'}. Until then it ${shownByRunning(missing) ? 'runs for that check only' : 'stands'}.`;
    }
    case 'fit-within-limits':
      return `Fit within limits: ${onlyAs(limits)}${unchecked}`;
    case 'fit':
      return `Fit: it may run as it is, with oiling and the usual check of keys and bolts.${unchecked}`;
  }
}

/** How a limited hammer may run, with what must come before the first turn said first. */
function onlyAs(limits: readonly Limit[]): string {
  const first = limits.find(isBeforeRunning);
  const rest = limits.length - (first === undefined ? 0 : 1);
  const says = rest === 1 ? 'the limit says' : `the ${rest} limits say`;
  if (first === undefined) return `it may run, and only as ${says}.`;
  const sentence = `${first.sentence.charAt(0).toLowerCase()}${first.sentence.slice(1)}`;
  return rest === 0 ? sentence : `${sentence.slice(0, -1)}; from then on it may run, and only as ${rest === 1 ? 'the other limit says' : `the ${rest} other limits say`}.`;
}

const GRADE_WEIGHT: Readonly<Record<string, number>> = { 'stand-down': 3, limited: 2, watch: 1 };

function reasonsOf(verdict: Verdict, down: readonly Finding[], gates: readonly Finding[], limited: readonly Finding[], findings: readonly Finding[]): Duty['reasons'] {
  const pick = verdict === 'stand-down' ? down : verdict === 'not-known-yet' ? gates : verdict === 'fit-within-limits' ? limited : findings.filter((finding) => finding.gate && finding.grade === 'sound');
  const order = [...pick].sort((a, b) => (GRADE_WEIGHT[b.grade] ?? 0) - (GRADE_WEIGHT[a.grade] ?? 0) || Number(b.gate) - Number(a.gate) || b.limits.length - a.limits.length);
  // One matter at two places is one reason as long as there are others.
  const first = order.filter((finding, index) => order.findIndex((one) => one.criterion === finding.criterion) === index);
  return [...first, ...order.filter((finding) => !first.includes(finding))].slice(0, 3).map((finding) => ({ finding: keyOf(finding), sentence: reasonSentence(finding) }));
}

/** A finding as a reason: what, where, what was found, what it means. What was seen to be sound says so by itself. */
export function reasonSentence(finding: Finding): string {
  const what = `${finding.title}${placeWords(finding)}`;
  if (finding.shown === '') return `${what}: ${finding.reason}`;
  return `${what}: ${finding.shown}.${finding.grade === 'sound' && finding.sureWords === 'seen' ? '' : ` ${finding.reason}`}`;
}
