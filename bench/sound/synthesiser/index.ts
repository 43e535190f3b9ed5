export * from './recipe.ts';
export * from './recipes.ts';
export * from './synthesise.ts';
export { schedule, steadyRate } from './schedule.ts';
export * from './not-a-hammer.ts';
export * from './noise-source.ts';
