import { answerWords, saysLeftOut, type LinkageFamily } from '../../hammer/index.ts';
import { GRADES, oilWayName, TURNED_LIMITS, type Criterion, type Grade, type Knowledge, type LimitRule, type MeasuredRule, type SeenGrade, type SeenRule } from '../../knowledge/index.ts';
import { formatQuantity, readQuantity, type Quantity } from '../../methods/quantity/index.ts';
import type { Known, KnownLook } from '../survey/index.ts';
import { valueKey, type Value } from '../value.ts';
import type { Finding, FindingGrade } from './finding.ts';
import type { Limit } from './limit.ts';
import { limitOf } from './limit-of.ts';
import { gradeMeasured, readSteps, type ReadStep } from './grade-measured.ts';
import { overrideFor } from './overrides.ts';
import { expectedPlaces } from './expected-places.ts';
import { mendedFirst } from './mended-first.ts';
import { pourWhereTooFew, shimsTooFew } from './shims-too-few.ts';
import { settleCures } from './settle-cures.ts';
import { lookedCloser, staleSince } from './stale.ts';
import { bothSides } from './other-rule.ts';
import { sayAtOdds } from './at-odds.ts';
import { askOnlyHere } from './cures-here.ts';
import { leaveOutPouring } from './nobody-pours.ts';
import { shownReading, sureWordsFor } from './shown.ts';
import type { PrintSystem } from '../print-system.ts';

/** Everything that judging needs; nothing here is written. */
export interface Bench {
  readonly known: Known;
  readonly values: ReadonlyMap<string, Value>;
  readonly knowledge: Knowledge;
  readonly system: PrintSystem;
}

/** Applies every criterion that this hammer's linkage family has, at every place that it judges. */
export function judge(bench: Bench): readonly Finding[] {
  const { family } = bench.known.identity;
  const findings = bench.knowledge.criteria
    .filter((criterion) => criterion.families.includes(family))
    .flatMap((criterion) => judgeCriterion(bench, criterion));
  const here = leaveOutPouring(askOnlyHere(findings, bench.known, bench.knowledge.jobs), bench.known);
  return sayAtOdds(settleCures(mendedFirst(pourWhereTooFew(here), bench.knowledge.criteria, bench.knowledge.jobs), bench.knowledge.jobs), bench);
}

function judgeCriterion(bench: Bench, criterion: Criterion): readonly Finding[] {
  const { rule, onlyWhere: where } = criterion;
  const leftOut = saysLeftOut(criterion.part, bench.known.looks);
  // The look that says so is judged all the same: it may be wrong that the part is not there.
  if (leftOut !== undefined && !(rule.kind === 'seen' && rule.look === leftOut)) return [doesNotApply(criterion, `not on this hammer: ${answerWords(leftOut, bench.known.looks[leftOut]?.answer ?? '')}`)];
  if (where !== undefined) {
    const look = bench.known.looks[where.look];
    if (look === undefined) return [unknown(criterion, undefined, [where.look], 'Whether it applies is not known yet.')];
    if (!where.answers.includes(look.answer)) return [doesNotApply(criterion, `not on this hammer: ${answerWords(look.key, look.answer)}`)];
  }
  return rule.kind === 'measured' ? judgeMeasured(bench, criterion, rule) : judgeSeen(bench, criterion, rule);
}

function judgeMeasured(bench: Bench, criterion: Criterion, rule: MeasuredRule): readonly Finding[] {
  // A place that is itself a part, such as a bearing at the clutch pulley, is there only where the part is.
  return expectedPlaces(bench.values, rule.value).filter((at) => at === undefined || saysLeftOut(at, bench.known.looks) === undefined).map((at) => {
    const key = valueKey(rule.value, at);
    const value = bench.values.get(key);
    if (value === undefined) return unknown(criterion, at, [key], 'Not measured.');
    if (value.outcome.state === 'does-not-apply') return doesNotApply(criterion, value.outcome.because, at);
    if (value.outcome.state === 'outside-validity') return unknown(criterion, at, value.from, `Cannot be judged: ${value.outcome.because}.`);
    if (value.outcome.state === 'not-known') return unknown(criterion, at, value.outcome.missing, 'Not measured.');
    const stale = staleSince(bench.known, criterion, value.when);
    if (stale !== undefined) return { ...unknown(criterion, at, [key], stale), from: [key], evidence: value.evidence };
    const override = overrideFor(bench.known, criterion, at);
    const { quantity } = value.outcome;
    const defaults = readSteps(rule, quantity.dimension);
    const steps = override === undefined ? defaults : defaults.map((step) => (step.grade === override.step.grade ? { ...step, from: override.step.quantity.value, text: override.step.asWritten, because: `${step.because} The owner's own limit: ${override.reason}` } : step));
    const graded = gradeMeasured(quantity, steps, rule.worse);
    const step = steps.find((one) => one.grade === graded.grade);
    if (criterion.gate && graded.grade === 'sound' && value.standing === 'told') return { ...unknown(criterion, at, value.from.length === 0 ? [key] : value.from, `Told, not measured: ${shownReading(value, bench.system)}. ${HEARSAY}`), evidence: evidenceOf(bench.values, value) };
    const sides = rule.otherwise === undefined ? undefined : bothSides(rule.otherwise, value, quantity, graded.grade, bench.values.get(valueKey(rule.otherwise.value, at)), defaults, rule.worse, bench.system);
    return {
      ...common(criterion, at), ...(sides === undefined ? {} : { dispute: sides.dispute }), grade: graded.grade, chances: graded.chances, sure: graded.sure, sureWords: sureWordsFor(graded, value.rests),
      reason: [reasonFor(step, graded), sides?.parting].filter((words) => words !== undefined).join(' '), shown: sides?.shown ?? shimsTooFew(value, bench.values, bench.system) ?? shownReading(value, bench.system), rule: ruleWords(steps, rule.worse, quantity, bench.system),
      from: [key, ...(sides?.from ?? [])], evidence: evidenceOf(bench.values, value), sources: [...new Set([...(step === undefined ? steps.map((one) => one.source) : [step.source]), ...value.sources])],
      limits: limitsOf(bench, step?.limits, valueKey(criterion.id, at)), missing: [], cures: graded.grade === 'sound' ? [] : (step?.cures ?? criterion.cures),
      ...(override === undefined ? {} : { override: { author: override.author, reason: override.reason, entry: override.entry, defaultRule: ruleWords(defaults, rule.worse, quantity, bench.system) } }),
    };
  });
}

function judgeSeen(bench: Bench, criterion: Criterion, rule: SeenRule): readonly Finding[] {
  const keys = Object.keys(bench.known.looks).filter((key) => key === rule.look || key.startsWith(`${rule.look}@`)).sort();
  if (keys.length === 0) return [unknown(criterion, undefined, [rule.look], 'Nobody has looked yet.')];
  return keys.map((key): Finding => {
    const look = heededLook(bench.known, key, rule);
    if (look === undefined) throw new Error(`look ${key} vanished while it was judged`);
    const at = look.at;
    const answered = rule.answers[look.answer];
    const against = answered?.gainsaid === undefined ? undefined : gainsaying(bench, answered.gainsaid);
    const graded = against === undefined ? answered : answered?.gainsaid?.as;
    if (graded === undefined) return { ...unknown(criterion, at, [key], `Looked at, and not settled: ${answerWords(key, look.answer)}.`), evidence: [look.entry] };
    const stale = staleSince(bench.known, criterion, look.when);
    if (stale !== undefined) return { ...unknown(criterion, at, [key], stale), evidence: [look.entry] };
    const told = look.standing === 'told';
    const answer = answerWords(key, look.answer);
    if (told && criterion.gate && graded.grade === 'sound') return { ...unknown(criterion, at, [key], `Told, not seen: ${answer}. ${HEARSAY}`), evidence: [look.entry] };
    return {
      ...common(criterion, at), grade: graded.grade, chances: { watch: atLeast(graded.grade, 1), limited: atLeast(graded.grade, 2), standDown: atLeast(graded.grade, 3) },
      sure: 1, sureWords: told ? 'told, not seen' : 'seen', reason: [told ? `Told, not seen; if it is so: ${graded.because}` : graded.because, graded.grade === 'sound' ? undefined : lookedCloser(bench.known, criterion, look.when)].filter((words) => words !== undefined).join(' '), shown: `${answer}${look.words === undefined ? '' : ` (${look.words})`}${against === undefined ? '' : `; ${against.title}: ${shownReading(against, bench.system)}`}`,
      rule: `${graded.grade.replace('-', ' ')} where the answer is: ${answer}${against === undefined ? '' : `, and ${against.title} is ${answered?.gainsaid?.from ?? ''} or more`}`, from: [key, ...(against === undefined ? [] : [against.key])], evidence: [look.entry, ...(against === undefined ? [] : evidenceOf(bench.values, against))], sources: [graded.source],
      limits: limitsOf(bench, graded.limits, valueKey(criterion.id, at)), missing: [], cures: graded.grade === 'sound' ? [] : (graded.cures ?? criterion.cures),
    };
  }).map((finding) => called(finding, bench.known.identity.family));
}

/** A finding with its place as a hammer of this family calls it. */
function called(finding: Finding, family: LinkageFamily): Finding {
  const place = oilWayName(valueKey(finding.criterion, finding.at), family);
  return place === undefined ? finding : { ...finding, place };
}

/** The value that gainsays an answer, where it is known and reaches so far. */
function gainsaying({ values }: Bench, { by, from }: NonNullable<SeenGrade['gainsaid']>): Value | undefined {
  const value = values.get(by);
  if (value?.outcome.state !== 'known') return undefined;
  const limit = readQuantity(from, { dimension: value.outcome.quantity.dimension, field: by });
  if (!limit.ok) throw new Error(`knowledge: the figure that gainsays an answer cannot be read: ${limit.problem.message}: ${from}`);
  return value.outcome.quantity.value >= limit.quantity.value ? value : undefined;
}

/** What was seen goes before what was told later, unless what was told is worse: it may stop a hammer, and never clears one. */
function heededLook({ looks, toldAgainst }: Bench['known'], key: string, rule: SeenRule): KnownLook | undefined {
  const [seen, told] = [looks[key], toldAgainst[key]];
  const weight = (look: KnownLook): number => GRADES.indexOf(rule.answers[look.answer]?.grade ?? 'sound');
  return seen !== undefined && told !== undefined && weight(told) > weight(seen) ? told : seen;
}

/** What was told may stop a hammer; it never clears one. */
const HEARSAY = 'What was told does not clear a matter of safety: look yourself.';

const atLeast = (grade: Grade, level: number): number => (GRADES.indexOf(grade) >= level ? 1 : 0);

const common = (criterion: Criterion, at: string | undefined) => ({
  criterion: criterion.id, part: criterion.part, title: criterion.title, question: criterion.question, gate: criterion.gate,
  cures: criterion.cures, cautions: criterion.cautions, minutes: criterion.minutes,
  ...(at === undefined ? {} : { at }), ...(criterion.dispute === undefined ? {} : { dispute: criterion.dispute }),
});

const NO_CHANCE = { watch: 0, limited: 0, standDown: 0 };

function blank(criterion: Criterion, at: string | undefined, grade: FindingGrade, reason: string, missing: readonly string[]): Finding {
  return { ...common(criterion, at), grade, reason, chances: NO_CHANCE, sure: 1, sureWords: '', shown: '', rule: '', from: [], evidence: [], sources: [], limits: [], missing };
}

const unknown = (criterion: Criterion, at: string | undefined, missing: readonly string[], reason: string): Finding => blank(criterion, at, 'not-known', reason, missing);
const doesNotApply = (criterion: Criterion, because: string, at?: string): Finding => blank(criterion, at, 'does-not-apply', because, []);

const limitsOf = (bench: Bench, rules: readonly LimitRule[] | undefined, finding: string): readonly Limit[] => (rules ?? []).flatMap((rule) => limitOf(bench.values, turned(bench, rule), finding, bench.system, oilWayName(finding, bench.known.identity.family)) ?? []);

const turned = ({ known }: Bench, rule: LimitRule): LimitRule => TURNED_LIMITS.find(({ from, where }) => from === rule.kind && where.answers.includes(known.looks[where.look]?.answer ?? ''))?.to ?? rule;

function reasonFor(step: ReadStep | undefined, graded: ReturnType<typeof gradeMeasured>): string {
  const first = step?.because ?? 'Within what good practice asks.';
  const next = graded.nextWorse;
  return next === undefined || next.chance < 0.05 ? first : `${first} With the doubt of the reading there is a chance of ${Math.round(next.chance * 100)} % that it is already ${next.grade.replace('-', ' ')}.`;
}

/** The steps in words: as the source prints them for a reader in inches, else in the reader's units. */
function ruleWords(steps: readonly ReadStep[], worse: 'more' | 'less', of: Quantity, system: PrintSystem): string {
  const figure = (step: ReadStep): string => (system === 'inch' ? step.text : formatQuantity({ dimension: of.dimension, value: step.from, uncertainty: 0 }, { system, ...(of.dimension === 'length' ? { resolution: finerThan(step.from) } : {}) }));
  return steps.map((step) => `${step.grade.replace('-', ' ')} ${worse === 'more' ? 'from' : 'at'} ${figure(step)} ${worse === 'more' ? 'up' : 'and below'}`).join('; ');
}

/** Millimetres to two figures or more, and never finer than anybody can measure. */
const finerThan = (length: number): number => Math.max(1e-6, 10 ** Math.floor(Math.log10(Math.max(Math.abs(length), 1e-6) * 0.05)));

/** Entries behind a value, down through everything that it was worked out from. */
function evidenceOf(values: ReadonlyMap<string, Value>, value: Value): readonly string[] {
  const found = new Set<string>();
  const visit = (one: Value, depth: number): void => {
    one.evidence.forEach((entry) => found.add(entry));
    if (depth > 12) return;
    one.from.forEach((key) => { const deeper = values.get(key); if (deeper !== undefined && deeper !== one) visit(deeper, depth + 1); });
  };
  visit(value, 0);
  return [...found];
}
