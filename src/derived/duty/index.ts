export * from './duty.ts';
export { dutyOf, mergeLimits, oilingLimit, reasonSentence } from './duty-of.ts';
