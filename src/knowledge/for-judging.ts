import { CRITERIA } from './criteria/catalogue.ts';
import { JOBS } from './jobs/catalogue.ts';
import type { Knowledge } from './job.ts';
import { PRACTICE } from './practice.ts';
import { STAGES } from './stages.ts';

/**
 * What a picture is worked out from, without what is only read beside it: the texts of sources and cautions, both sides of a dispute, how a job is done, and cheaper ways to do it. The first page
 * of a hammer is sent with this and no more.
 */
export const forJudging: Knowledge = { version: '1', sources: [], practice: PRACTICE, criteria: CRITERIA, jobs: JOBS, stages: STAGES, cautions: [] };
