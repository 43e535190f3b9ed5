export * from './duty.ts';
export { dutyOf, mergeLimits, reasonSentence } from './duty-of.ts';
