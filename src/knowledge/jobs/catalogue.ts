import type { Job } from '../job.ts';
import { CASTINGS_JOBS } from './castings.ts';
import { DIES_AND_SEAT_JOBS } from './dies-and-seat.ts';
import { DRIVE_JOBS } from './drive.ts';
import { GROUND_AND_GUARDS_JOBS } from './ground-and-guards.ts';
import { RAM_AND_LINKAGE_JOBS } from './ram-and-linkage.ts';
import { SHAFT_AND_CLUTCH_JOBS } from './shaft-and-clutch.ts';

/** All jobs, part group by part group. */
export const JOBS: readonly Job[] = [
  ...CASTINGS_JOBS, ...DIES_AND_SEAT_JOBS, ...RAM_AND_LINKAGE_JOBS, ...SHAFT_AND_CLUTCH_JOBS, ...DRIVE_JOBS, ...GROUND_AND_GUARDS_JOBS,
];
