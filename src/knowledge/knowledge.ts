import { CAUTIONS } from './cautions.ts';
import { forJudging } from './for-judging.ts';
import type { Knowledge } from './job.ts';
import { SOURCES } from './sources.ts';

/** Everything that the program knows beforehand. */
export const knowledge: Knowledge = { ...forJudging, sources: SOURCES, cautions: CAUTIONS };
