import { instantMs, type Entry, type JobProgressBody } from '../entries/index.ts';
import type { Knowledge } from '../knowledge/index.ts';
import type { Finding } from './condition/index.ts';
import { foldOrdered, type Known } from './survey/index.ts';
import { runsIt } from './worksheet/index.ts';

/**
 * Why a job cannot be started or done today: it is done by running the hammer, and something stops the hammer.
 * @param findings as they stand
 * @returns one sentence, or undefined where nothing speaks against it
 */
export function progressRefused(findings: readonly Finding[], job: string, state: JobProgressBody['state'], knowledge: Knowledge): string | undefined {
  if ((state !== 'started' && state !== 'done') || !runsIt(job, knowledge)) return undefined;
  const stops = findings.find((finding) => finding.grade === 'stand-down');
  if (stops === undefined) return undefined;
  return `"${titleOf(job, knowledge)}" cannot be ${state} while something stops this hammer: ${stops.title}. ${stops.reason} Cure that first; then it is run, and entered.`;
}

const titleOf = (job: string, knowledge: Knowledge): string => knowledge.jobs.find((one) => one.id === job)?.title ?? job;

/**
 * Folds a log without the progress of jobs that were entered as started or done by running a hammer that stood down at that
 * instant. Such an entry stays in the log; it is said, and counts for nothing.
 * @param ordered entries up to the instant of the picture, in their order
 * @param judged findings of a folded log
 */
export function foldWithoutVainRuns(ordered: readonly Entry[], knowledge: Knowledge, judged: (known: Known) => readonly Finding[]): Known | undefined {
  let counted = ordered;
  const said: string[] = [];
  for (;;) {
    const known = foldOrdered(counted);
    const vain = known === undefined ? undefined : vainRun(known, counted, knowledge, judged);
    if (known === undefined || vain === undefined) return known === undefined || said.length === 0 ? known : { ...known, notCounted: said };
    said.push(vain.sentence);
    counted = counted.filter((entry) => entry.id !== vain.entry);
  }
}

function vainRun(known: Known, entries: readonly Entry[], knowledge: Knowledge, judged: (known: Known) => readonly Finding[]): { readonly entry: string; readonly sentence: string } | undefined {
  for (const progress of Object.values(known.progress)) {
    const { job, state, when, by, entry } = progress;
    if ((state !== 'started' && state !== 'done') || !runsIt(job, knowledge)) continue;
    // Whatever was entered for the same instant was seen on the same visit.
    const until = instantMs(when) ?? Number.POSITIVE_INFINITY;
    const then = foldOrdered(entries.filter((one) => (instantMs(one.at) ?? Number.POSITIVE_INFINITY) <= until));
    const stops = then === undefined ? undefined : judged(then).find((finding) => finding.grade === 'stand-down');
    if (stops !== undefined) return { entry, sentence: `"${titleOf(job, knowledge)}" was entered as ${state} on ${when.slice(0, 10)} by ${by}, and the hammer stood down: ${stops.title.toLowerCase()}. It stays in the log and is not counted; cure that first, then run it and enter it again.` };
  }
  return undefined;
}
