import { TRIAL_JOB, type Knowledge } from '../../knowledge/index.ts';
import type { Finding } from '../condition/index.ts';
import { dutyOf, type Duty } from '../duty/index.ts';
import type { Known } from '../survey/index.ts';
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

/**
 * What can be run meanwhile: the duty after each open job in the order of the worksheet, so that waiting for a part is
 * done on the right side of the right job.
 */
export function dutyLadder(known: Known, findings: readonly Finding[], worksheet: Worksheet, knowledge: Knowledge): readonly LadderStep[] {
  const done = new Set<string>();
  const today = dutyOf(findings);
  let last = wordsOf(today);
  return worksheet.jobs.filter(isOpen).map(({ job, title }) => {
    done.add(job);
    const later = findingsAfter(known, findings, done, knowledge);
    const settled = settledGood(later, [...done], knowledge);
    const promised = dutyOf(settled);
    // A repair counts when the machine has shown it: until the trial is run nothing is promised beyond the trial.
    const untried = today.verdict !== 'fit' && promised.verdict === 'fit' && worksheet.jobs.some((one) => one.job === TRIAL_JOB && isOpen(one)) && !done.has(TRIAL_JOB);
    const duty: Duty = untried ? { ...promised, verdict: 'fit-within-limits', sentence: ONLY_FOR_THE_TRIAL } : promised;
    const ifGood = later.filter((finding, index) => settled[index] !== finding).map((finding) => finding.title);
    const words = wordsOf(duty);
    const changes = words !== last;
    last = words;
    return { job, title, duty, changes, ifGood };
  });
}

/** What a hammer may do whose repairs are done and not yet tried. */
export const ONLY_FOR_THE_TRIAL = 'For the trial and nothing else, until the trial is run.';

const wordsOf = (duty: Duty): string => [duty.verdict, ...duty.limits.map((limit) => limit.sentence).sort()].join('\n');
