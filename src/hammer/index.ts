export * from './vocabulary.ts';
export { CORNERS } from './parts/families.ts';
export * from './parts/catalogue.ts';
export * from './geometry.ts';
