import { TRIAL_JOB, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import { dutyOf, type Duty } from '../duty/index.ts';
import type { Known } from '../survey/index.ts';
import { closersOf } from './comes-along.ts';
import { findingsAfter, settledGood } from './duty-after.ts';
import { isOpen } from './job-entry.ts';
import type { Worksheet } from './worksheet.ts';

/** One step of the work: the job, and what the hammer may do between it and the next. */
export interface LadderStep {
  readonly job: string;
  readonly title: string;
  /** What may be run meanwhile, once this job and all before it are done; a promise, to be proven by measuring. */
  readonly duty: Duty;
  /** True where the verdict or a limit is another than before the job. */
  readonly changes: boolean;
  /** Matters of safety that nobody has checked yet and that this job, or one before it, answers; the duty holds if it finds them good. */
  readonly ifGood: readonly string[];
}

/** Steps at which linkage or dies are changed, by number: seat, crank and rod, what springs, dies and keys, settings. */
const LINKAGE_AND_DIES: readonly number[] = [2, 9, 10, 12, 13];

/**
 * What can be run meanwhile: the duty after each open job in the order of the worksheet, so that waiting for a part is
 * done on the right side of the right job. From the first change to linkage or dies on it may run for the trial and nothing
 * else, and not at all before what was opened is closed; what more work allows is never taken back by still more work.
 */
export function dutyLadder(known: Known, findings: readonly Finding[], worksheet: Worksheet, knowledge: Knowledge): readonly LadderStep[] {
  const done = new Set<string>();
  const today = dutyOf(findings);
  const open = worksheet.jobs.filter(isOpen);
  const trial = open.findIndex((one) => one.job === TRIAL_JOB);
  const plain = open.map(({ job, title }) => {
    done.add(job);
    const later = findingsAfter(known, findings, done, knowledge);
    const settled = settledGood(later, [...done], knowledge);
    const gapes = [...done].some((one) => closersOf(one, open, knowledge).some((closer) => !done.has(closer)));
    return { job, title, promised: dutyOf(settled), gapes, ifGood: later.filter((finding, index) => settled[index] !== finding).map((finding) => finding.title) };
  });
  // A repair counts when the machine has shown it: until the trial is run nothing is promised beyond the trial.
  const changed = open.findIndex((one, index) => LINKAGE_AND_DIES.includes(one.stage) || (today.verdict !== 'fit' && plain[index]?.promised.verdict === 'fit'));
  const duties = plain.map(({ promised, gapes }, index): Duty => {
    if (changed < 0 || index < changed || index >= trial || !runs(promised)) return promised;
    // What gapes later would take back what is allowed now.
    const shut = gapes || plain.slice(index, trial).some((one) => one.gapes || one.promised.verdict === 'stand-down');
    return shut ? { ...promised, verdict: 'stand-down', sentence: NOT_BEFORE_IT_IS_CLOSED } : { ...promised, verdict: 'fit-within-limits', sentence: ONLY_FOR_THE_TRIAL };
  });
  let last = wordsOf(today);
  return plain.map(({ job, title, ifGood }, index) => {
    const duty = duties[index]!;
    const words = wordsOf(duty);
    const changes = words !== last;
    last = words;
    return { job, title, duty, changes, ifGood };
  });
}

const runs = (duty: Duty): boolean => duty.verdict === 'fit' || duty.verdict === 'fit-within-limits';

/** What is said while something stands open. */
export const NOT_BEFORE_IT_IS_CLOSED = 'Not to be run before what is open is closed and set.';

/** What a hammer may do whose repairs are done and not yet tried. */
export const ONLY_FOR_THE_TRIAL = 'For the trial and nothing else, until the trial is run.';

/** True where a hammer may run for its trial and for nothing else. */
export const isOnlyForTheTrial = (duty: Duty): boolean => duty.sentence === ONLY_FOR_THE_TRIAL;

const wordsOf = (duty: Duty): string => isOnlyForTheTrial(duty) ? ONLY_FOR_THE_TRIAL : [duty.verdict, ...duty.limits.map((limit) => limit.sentence).sort()].join('\n');
