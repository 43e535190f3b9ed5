import { saysLeftOut, type AnswersOf } from '../../hammer/index.ts';
import { cautionsFor, type Job } from '../../knowledge/index.ts';
import type { Known } from '../survey/index.ts';
import type { Finding } from './finding.ts';

/**
 * The jobs that do on this hammer what a rule asks for: one on a part that the hammer has not got falls away, and what does
 * the same on a part that it has takes its place.
 * @param looks answers by look, which say what is not there; @param jobs every job that is known
 */
export function curesHere(looks: AnswersOf, jobs: readonly Job[]): (asked: readonly string[]) => readonly string[] {
  const byId = new Map(jobs.map((job) => [job.id, job]));
  const isHere = (id: string): boolean => { const job = byId.get(id); return job?.otherwise === undefined || saysLeftOut(job.part, looks) === undefined; };
  return (asked) => [...new Set(asked.flatMap((id) => (isHere(id) ? [id] : (byId.get(id)?.otherwise ?? []).filter(isHere))))];
}

/** Findings that ask only for jobs on parts that this hammer has, with the cautions of its family. */
export function askOnlyHere(findings: readonly Finding[], { looks, identity }: Pick<Known, 'looks' | 'identity'>, jobs: readonly Job[]): readonly Finding[] {
  const here = curesHere(looks, jobs);
  return findings.map((finding) => ({ ...finding, cures: here(finding.cures), cautions: cautionsFor(finding.cautions, identity.family) }));
}
