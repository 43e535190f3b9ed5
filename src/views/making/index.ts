export { makingPanels, makingSheets, type SheetOptions } from './making-sheets.ts';
export { notMadeWords } from './not-made-words.ts';
export { layViews, type LaidOut, type LayOptions, type ViewAngle } from './lay-views.ts';
export { arrowCorners, type Extent, type Ink, type Layer } from './ink.ts';
export { sizeWords } from './size-words.ts';
export type { PaperName } from './sheet-paper.ts';
export { finishWords, massWords } from './symbol-words.ts';
