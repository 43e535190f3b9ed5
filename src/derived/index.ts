export * from './value.ts';
export * from './survey/index.ts';
export * from './condition/index.ts';
export * from './duty/index.ts';
export * from './worksheet/index.ts';
export * from './not-checked.ts';
export { type PrintSystem, printQuantity } from './print-system.ts';
export { picture, type Picture, type Provenance } from './picture.ts';
export { explain, type Explanation } from './explain.ts';
