import { GROUND_AND_POWER_RECKONINGS } from './ground-and-power.ts';
import { HOT_WORK_RECKONINGS } from './hot-work.ts';
import type { Reckoning } from './reckoning.ts';
import { SHAFT_RECKONINGS } from './shafts-and-belts.ts';
import { SPRING_RECKONINGS } from './springs.ts';

/** Every handbook calculation that can be asked for by itself. */
export const RECKONINGS: readonly Reckoning[] = [...SPRING_RECKONINGS, ...SHAFT_RECKONINGS, ...HOT_WORK_RECKONINGS, ...GROUND_AND_POWER_RECKONINGS];
