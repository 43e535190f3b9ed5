export * from './beat-result.ts';
export * from './advice.ts';
export { analyseBeat, analyseFrom, FASTEST, SLOWEST } from './analyse-beat.ts';
export type { ShareDone } from './read-blows.ts';
export { LONGEST_READ } from './prepared-sound.ts';
export * from './noise-at-ear.ts';
