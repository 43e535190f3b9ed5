import { CAUTIONS } from './cautions.ts';
import { DISPUTES } from './criteria/disputes.ts';
import { forJudging } from './for-judging.ts';
import type { Knowledge } from './job.ts';
import { CHEAPER, CHEAPER_NOT } from './jobs/cheaper.ts';
import { JOB_WORDS } from './jobs/job-words.ts';
import { SOURCES } from './sources.ts';

/** Everything that the program knows beforehand. */
export const knowledge: Knowledge = {
  ...forJudging, sources: SOURCES, cautions: CAUTIONS,
  criteria: forJudging.criteria.map((criterion) => {
    const dispute = DISPUTES[criterion.id];
    return dispute === undefined ? criterion : { ...criterion, dispute };
  }),
  jobs: forJudging.jobs.map((job) => {
    const cheaper = CHEAPER[job.id];
    const cheaperNot = CHEAPER_NOT[job.id];
    return { ...job, ...JOB_WORDS[job.id], ...(cheaper === undefined ? {} : { cheaper }), ...(cheaper === undefined || cheaperNot === undefined ? {} : { cheaperNot }) };
  }),
};
