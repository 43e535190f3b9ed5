export * from './recipe.ts';
export * from './recipes.ts';
export * from './synthesise.ts';
