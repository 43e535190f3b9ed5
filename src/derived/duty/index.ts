export * from './duty.ts';
export { dutyOf, mergeLimits } from './duty-of.ts';
