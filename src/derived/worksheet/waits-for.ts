import type { Job } from '../../knowledge/index.ts';

/** A job with the findings that ask for it, by key. */
interface Asked {
  readonly job: Job;
  readonly cures: readonly string[];
}

const BOTH: readonly string[] = ['upper', 'lower'];

/**
 * Ids of the jobs that a job must wait for. A wait that holds at one end of the machine only is left out where the two are
 * asked for at different ends: a key stuck in the ram does not hold up the seat in the anvil. Where nobody said which end,
 * both are meant.
 * @param all chosen jobs by id, for what asks for the others
 */
export function waitsFor(one: Asked, all: ReadonlyMap<string, Asked>): readonly string[] {
  return one.job.after.flatMap(({ job, atSameEnd }) => {
    const before = all.get(job);
    const apart = atSameEnd === true && before !== undefined && !endsOf(before).some((end) => endsOf(one).includes(end));
    return apart ? [] : [job];
  });
}

function endsOf({ job, cures }: Asked): readonly string[] {
  if (job.end !== undefined) return [job.end];
  const places = cures.map((key) => key.split('@')[1] ?? '');
  return places.length > 0 && places.every((place) => BOTH.includes(place)) ? places : BOTH;
}
