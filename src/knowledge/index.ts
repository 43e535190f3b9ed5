export * from './criterion.ts';
export * from './job.ts';
export * from './practice.ts';
export * from './classes.ts';
export { knowledge } from './knowledge.ts';
