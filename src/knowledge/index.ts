export * from './criterion.ts';
export * from './job.ts';
