export { partFiles, partPdf, type MadeFile } from './part-files.ts';
export { handOverFiles, type HandOverOptions, type HandOverGround } from './hand-over-files.ts';
export { logJson } from './log-json.ts';
