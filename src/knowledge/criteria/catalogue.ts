import type { Criterion } from '../criterion.ts';
import { CASTINGS_CRITERIA } from './castings.ts';
import { DIES_AND_SEAT_CRITERIA } from './dies-and-seat.ts';
import { DRIVE_CRITERIA } from './drive.ts';
import { GROUND_AND_GUARDS_CRITERIA } from './ground-and-guards.ts';
import { RAM_AND_LINKAGE_CRITERIA } from './ram-and-linkage.ts';
import { RUNNING_CRITERIA } from './running.ts';
import { SHAFT_AND_CLUTCH_CRITERIA } from './shaft-and-clutch.ts';

/** All criteria, part group by part group. */
export const CRITERIA: readonly Criterion[] = [
  ...CASTINGS_CRITERIA, ...DIES_AND_SEAT_CRITERIA, ...RAM_AND_LINKAGE_CRITERIA, ...SHAFT_AND_CLUTCH_CRITERIA, ...DRIVE_CRITERIA, ...GROUND_AND_GUARDS_CRITERIA, ...RUNNING_CRITERIA,
];
