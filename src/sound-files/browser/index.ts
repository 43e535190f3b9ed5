export * from '../decoded-sound.ts';
export { encodeWav } from '../encode-wav.ts';
export { decodeInBrowser } from './decode-in-browser.ts';
