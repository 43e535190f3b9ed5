export { reportPdf, reportPdfParts, type ReportPdfOptions } from './report-pdf.ts';
export { cardPdf, LEAST_LIMIT_SIZE, type CardPdfOptions } from './card-pdf.ts';
export { drawingPdf, type DrawingPdfOptions } from './drawing-pdf.ts';
export { type Photograph, type Photographs } from './gather-photographs.ts';
export { PAPER_SIZES, type Paper } from './paper-size.ts';
