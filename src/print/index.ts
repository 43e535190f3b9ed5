export { reportHtml, markHtml } from './html/report-html.ts';
export { cardHtml } from './html/card-html.ts';
export { folderHtml, type FolderPage, type FolderPaper } from './html/folder-html.ts';
export { wholeReport, type WholeReportOptions } from './whole-report.ts';
export { fontFace, withFont } from './font-face.ts';
export * from './pdf/index.ts';
export { qrSvg, LONGEST_ADDRESS } from './qr/qr-svg.ts';
