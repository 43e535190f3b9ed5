import { NOT_BEFORE_IT_IS_CLOSED, isOnlyForTheTrial, shownByRunning, type Duty, type LadderStep, type Limit, type Picture } from '../../derived/index.ts';
import type { Block, TableRow } from '../report/block.ts';
import { VERDICT_WORDS } from '../sentences/words.ts';
import type { Condition } from '../drawing/hatch.ts';

export const DUTY_CONDITION: Readonly<Record<Duty['verdict'], Condition>> = { fit: 'sound', 'fit-within-limits': 'limited', 'stand-down': 'stand-down', 'not-known-yet': 'not-known' };

/** What may be run meanwhile: the jobs after which verdict or limits become others, the first row being today. */
export function ladderBlocks(picture: Picture, ladder: readonly LadderStep[]): readonly Block[] {
  if (ladder.length === 0) return [];
  const numbers = new Map(picture.worksheet.jobs.map((job) => [job.job, job.number]));
  let before = picture.duty;
  const rows: TableRow[] = [{ condition: DUTY_CONDITION[picture.duty.verdict], cells: ['Today', VERDICT_WORDS[picture.duty.verdict], mayRun(picture.duty)] }];
  for (const step of ladder) {
    if (!step.changes) continue;
    rows.push({ condition: DUTY_CONDITION[step.duty.verdict], cells: [`${numbers.get(step.job) ?? ''}. ${step.title}`, VERDICT_WORDS[step.duty.verdict], [changeWords(before, step.duty), step.ifGood.length === 0 ? '' : `If it finds good what nobody has checked yet: ${step.ifGood.map((title) => title.toLowerCase()).join('; ')}.`].filter((words) => words !== '').join(' ')] });
    before = step.duty;
  }
  const last = ladder.at(-1)?.duty.verdict;
  return [
    { kind: 'heading', level: 2, text: 'What may be run meanwhile' },
    { kind: 'table', caption: 'The jobs in their order, and what the verdict becomes once each and all before it are done', columns: ['Done up to', 'Verdict', 'What changes'], rows },
    ...(rows.length === 1 ? [{ kind: 'paragraph', text: 'No job of this worksheet changes the verdict or a limit by itself.' } as const] : []),
    { kind: 'paragraph', tone: 'small', text: `A promise, not a finding: each job is taken as well done, and only measuring or looking again proves it.${last === 'not-known-yet' ? ' What nobody checked stays open whatever is done: no job makes up for a look.' : ''}` },
  ];
}

function mayRun(duty: Duty): string {
  if (duty.verdict === 'stand-down') return duty.sentence === NOT_BEFORE_IT_IS_CLOSED ? duty.sentence : 'Not to be run.';
  if (isOnlyForTheTrial(duty)) return duty.sentence;
  if (duty.verdict === 'not-known-yet') return shownByRunning(duty.missing) ? forThatCheck(duty) : 'Not to be run until what is missing is checked.';
  if (duty.limits.length > 0) return limitList(duty.limits);
  return duty.verdict === 'fit' ? 'May run as it is.' : duty.sentence;
}

/** What only running shows is looked at by running it: for that and for nothing else, and not before it is guarded. */
const forThatCheck = ({ missing, limits }: Duty): string =>
  `${limits.some(({ kind }) => kind === 'guard-first') ? 'Not to be run before the guard is on; then' : 'To be run'} for that check only, and for nothing else before it: ${missing.map((one) => one.title.toLowerCase()).join('; ')}.`;

/** What a step does to the limits, in words; while it may not run, they only wait. */
export function changeWords(before: Duty, after: Duty): string {
  // Limits wait for the trial: what they become is said behind it.
  if (isOnlyForTheTrial(after)) return mayRun(after);
  // That nobody stands before the guard is never lifted in words: a guard stays on.
  const gone = before.limits.filter((limit) => limit.kind !== 'guard-kept' && !after.limits.some((other) => other.kind === limit.kind));
  const other = after.limits.filter((limit) => { const held = before.limits.find((one) => one.kind === limit.kind); return held === undefined || held.sentence !== limit.sentence; });
  const runs = after.verdict === 'fit' || after.verdict === 'fit-within-limits';
  const another = after.verdict !== before.verdict || isOnlyForTheTrial(before);
  const words = [
    ...(another ? [mayRun(after)] : []),
    ...(gone.length === 0 || isOnlyForTheTrial(before) ? [] : [`No longer: ${limitList(gone)}`]),
    ...(after.verdict === before.verdict && after.limits.length === 0 && after.verdict === 'fit-within-limits' && before.limits.length > 0 ? [after.sentence] : []),
    ...(other.length === 0 || (runs && another) ? [] : [`Now: ${limitList(other)}`]),
  ];
  return words.join(' ');
}

const limitList = (limits: readonly Limit[]): string => limits.map((limit) => limit.sentence).join(' ');
