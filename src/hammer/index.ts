export * from './vocabulary.ts';
export { CORNERS } from './parts/families.ts';
export * from './parts/catalogue.ts';
export { answerWords } from './parts/answer-words.ts';
export * from './geometry.ts';
