export * from './vocabulary.ts';
export { CORNERS } from './parts/families.ts';
export * from './parts/catalogue.ts';
export { saysLeftOut, type AnswersOf } from './parts/parts-left-out.ts';
export { aboutPart, type AboutPart } from './parts/about-parts.ts';
export { atName } from './parts/at-name.ts';
export { answerWords } from './parts/answer-words.ts';
export * from './geometry.ts';
