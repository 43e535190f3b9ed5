export * from '../decoded-sound.ts';
export { decodeFile, type DecodeFileOptions } from '../decode-file.ts';
