export * from './known.ts';
export { foldEntries } from './fold.ts';
export { readingsAtOdds } from './at-odds.ts';
