export * from './duty.ts';
export { shownByRunning, dutyOf, mergeLimits, oilingLimit, reasonSentence } from './duty-of.ts';
