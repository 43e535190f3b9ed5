export { outlookBlocks } from './outlook-blocks.ts';
export { OUTLOOK_IDS, OUTLOOK_TITLES, outlookSheet, outlookSheetBlocks, type OutlookId } from './outlook-sheets.ts';
export { numberedRound, type NumberedPoint } from './oiling-sheet.ts';
export type { MovingAsked } from './moving-sheet.ts';
export type { OutlookGround } from './sheet-parts.ts';
