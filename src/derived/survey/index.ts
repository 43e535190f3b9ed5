export * from './known.ts';
export { foldEntries, foldOrdered } from './fold.ts';
export { contradictedName, contradictionWords, toldCountsWords, type Contradiction, type Saying } from './contradictions.ts';
export { readingsAtOdds } from './at-odds.ts';
export { struckOut } from './struck-out.ts';
