export { reportPdf, type ReportPdfOptions } from './report-pdf.ts';
export { type Photograph, type Photographs } from './gather-photographs.ts';
export { PAPER_SIZES, type Paper } from './paper-size.ts';
