export * from './vocabulary.ts';
export * from './parts/catalogue.ts';
