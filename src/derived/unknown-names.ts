import { nearestName } from '../entries/index.ts';
import type { Knowledge } from '../knowledge/index.ts';
import type { Known } from './survey/index.ts';

/** Names that somebody wrote and that this version does not know, each with the nearest that it does: nothing vanishes in silence. */
export function unknownNames(known: Known, knowledge: Knowledge): readonly string[] {
  const jobs = knowledge.jobs.map((job) => job.id);
  const priced = [...new Set([...jobs, ...knowledge.jobs.flatMap((job) => job.parts.map((part) => part.id)), ...PRICED])];
  const near = (name: string, names: readonly string[]): string => {
    const nearest = nearestName(name, [...names]);
    return nearest === undefined ? '' : `; did you mean ${nearest}`;
  };
  return [
    ...known.prices.filter((price) => !priced.includes(price.of) && !price.of.startsWith('money.')).map((price) => `A price of ${price.when.slice(0, 10)} is for a job or part that is not known, and counts nowhere${near(price.of, priced)}: ${price.of}`),
    ...Object.keys(known.progress).filter((job) => !jobs.includes(job)).map((job) => `Progress was entered for a job that is not known${near(job, jobs)}: ${job}`),
  ];
}

/** Prices of the hammer itself. */
const PRICED: readonly string[] = ['hammer', 'whole-machine'];
