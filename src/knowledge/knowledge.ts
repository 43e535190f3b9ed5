import { CRITERIA } from './criteria/catalogue.ts';
import { CAUTIONS } from './cautions.ts';
import { JOBS } from './jobs/catalogue.ts';
import type { Knowledge } from './job.ts';
import { PRACTICE } from './practice.ts';
import { SOURCES } from './sources.ts';
import { STAGES } from './stages.ts';

/** Everything that the program knows beforehand. */
export const knowledge: Knowledge = {
  version: '1',
  sources: SOURCES,
  practice: PRACTICE,
  criteria: CRITERIA,
  jobs: JOBS,
  stages: STAGES,
  cautions: CAUTIONS,
};
