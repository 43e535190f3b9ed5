export * from './criterion.ts';
export * from './job.ts';
export * from './practice.ts';
export * from './classes.ts';
export { knowledge } from './knowledge.ts';
export * from './money.ts';
export * from './limit-weights.ts';
export * from './looking-jobs.ts';
export * from './sale.ts';
