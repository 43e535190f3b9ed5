/** A WAV file of 16 bits and one channel. @param samples full scale 1; what lies beyond is held at the rail @param rate samples a second */
export function encodeWav(samples: Float32Array, rate: number): Uint8Array {
  const bytes = new Uint8Array(44 + 2 * samples.length);
  const view = new DataView(bytes.buffer);
  const letters = (at: number, word: string): void => [...word].forEach((letter, i) => view.setUint8(at + i, letter.charCodeAt(0)));
  letters(0, 'RIFF');
  view.setUint32(4, 36 + 2 * samples.length, true);
  letters(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, Math.round(rate), true);
  view.setUint32(28, 2 * Math.round(rate), true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  letters(36, 'data');
  view.setUint32(40, 2 * samples.length, true);
  for (let i = 0; i < samples.length; i++) view.setInt16(44 + 2 * i, Math.max(-32768, Math.min(32767, Math.round(samples[i]! * 32768))), true);
  return bytes;
}
