export * from './report/index.ts';
export * from './card/index.ts';
export * from './elevation/index.ts';
export { CONDITION_WORDS, type Condition } from './drawing/hatch.ts';
export { atWords, byWeight, costWords, hoursWords, partName, quantityWords, shownValue, timeWords, VERDICT_WORDS } from './sentences/words.ts';
export { inOtherUnits, inSystem, ownUnitsFirst } from './sentences/in-system.ts';
export { onceItMayRun, waitsForRun } from './sentences/when-it-may-run.ts';
export { difference, type Change } from './difference/difference.ts';
export * from './outlook/index.ts';
