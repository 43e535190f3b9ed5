export * from './decoded-sound.ts';
export * from './recognise-sound.ts';
export { decodeWav } from './decode-wav.ts';
export { encodeWav } from './encode-wav.ts';
export { readWavHead, type WavFormat, type WavHead } from './wav-header.ts';
// Node only and browser only, so that neither pulls the other in: decode-file.ts, decode-in-browser.ts.
