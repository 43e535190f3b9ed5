export * from './decoded-sound.ts';
export * from './recognise-sound.ts';
export { decodeWav } from './decode-wav.ts';
export { decodePcm } from './decode-pcm.ts';
export { encodeWav } from './encode-wav.ts';
export { readWavHead, type WavFormat, type WavHead } from './wav-header.ts';
// What needs Node has an entrance of its own, node/index.ts; what needs a browser, browser/index.ts: so neither pulls the other in.
