export * from './block.ts';
export { reportTree, sheetTree, titleBlock, worksheetTree, type ReportOptions } from './report-tree.ts';
export { photographsOf, type NumberedPhotograph } from './photograph-blocks.ts';
export { FAMILY_WORDS, reasonWords } from './first-page.ts';
