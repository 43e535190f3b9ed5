export * from './finding.ts';
export * from './limit.ts';
export { judge } from './judge.ts';
export { idleOverrides } from './overrides.ts';
