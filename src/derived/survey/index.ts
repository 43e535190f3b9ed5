export * from './known.ts';
export { foldEntries } from './fold.ts';
