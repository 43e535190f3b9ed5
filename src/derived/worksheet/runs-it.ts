import { partOf } from '../../hammer/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';

/** True for a job that is done by running the hammer: the trial, or looking for a second sound. */
export const runsIt = (job: string, knowledge: Knowledge): boolean => partOf(knowledge.jobs.find((one) => one.id === job)?.part ?? '')?.group === 'running';
