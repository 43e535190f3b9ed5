export * from './worksheet.ts';
export { worksheetOf } from './worksheet-of.ts';
