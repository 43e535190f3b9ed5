export { outlookBlocks } from './outlook-blocks.ts';
export { outlookSheet, outlookSheetBlocks } from './outlook-sheets.ts';
export { partsOfSheet } from './sheet-by-id.ts';
export { OUTLOOK_IDS, OUTLOOK_TITLES, type OutlookId } from './titles.ts';
export { numberedRound, type NumberedPoint } from './oiling-sheet.ts';
export type { MovingAsked, OutlookGround, SheetParts } from './sheet-parts.ts';
