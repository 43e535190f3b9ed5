export * from './block.ts';
export { reportTree, titleBlock, type ReportOptions } from './report-tree.ts';
export { FAMILY_WORDS } from './first-page.ts';
