export * from './beat-result.ts';
export * from './advice.ts';
export { analyseBeat, FASTEST, SLOWEST } from './analyse-beat.ts';
export { LONGEST_READ } from './prepared-sound.ts';
export * from './noise-at-ear.ts';
