export * from './finding.ts';
export * from './limit.ts';
export { bothOilWays } from './oil-way-first.ts';
export { judge } from './judge.ts';
export { neverBelow, takenAs } from './shown.ts';
export { sayWhere } from './say-where.ts';
export { idleOverrides } from './overrides.ts';
export { curesHere } from './cures-here.ts';
