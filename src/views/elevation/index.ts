export { elevation, type ElevationOptions, type ElevationView } from './elevation.ts';
export { partConditions, type PartCondition } from './part-condition.ts';
