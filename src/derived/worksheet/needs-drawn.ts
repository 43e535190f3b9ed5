import { nextUniform, seeded } from '../../methods/chance/index.ts';
import type { MayBeJob, WorksheetJob } from './worksheet.ts';

/**
 * Draws which jobs are needed: one number for each name, however many causes share it. A job that is certain is always
 * needed, unless one that may be needed turns out to be, and makes it pointless.
 * @returns for each call, true for each needed job, those asked for first and then those that may be needed
 */
export function needsDrawn(asked: readonly WorksheetJob[], mayBe: readonly MayBeJob[], seed: number): () => readonly boolean[] {
  const jobs: readonly WorksheetJob[] = [...asked, ...mayBe];
  const names = [...new Set(jobs.flatMap((job) => (job.need?.draws ?? []).map((draw) => draw.by)))].sort();
  const always = jobs.map(() => true);
  if (names.length === 0) return () => always;
  const place = new Map(asked.map((job, index) => [job.job, index]));
  const generator = seeded(seed, 'needs');
  return () => {
    const drawn = new Map(names.map((name) => [name, nextUniform(generator)]));
    const needed = jobs.map((job) => job.need === undefined || job.need.draws.some(({ by, from, to }) => { const at = drawn.get(by) ?? 1; return at >= from && at < to; }));
    for (const [index, job] of mayBe.entries()) if (needed[asked.length + index]) for (const other of job.takesPlaceOf.flatMap((id) => place.get(id) ?? [])) needed[other] = false;
    return needed;
  };
}
