import { formatProblem, type PcmFormat, type PcmHead } from './pcm-format.ts';

const KIND = 'a CAF recording';
const FLOAT = 1;
const LITTLE_ENDIAN = 2;

/**
 * Reads the chunks of a CAF file up to its samples (Apple, Core Audio Format Specification 1.0).
 * @param bytes the beginning of the file, at least up to the data chunk
 */
export function readCafHead(bytes: Uint8Array): PcmHead {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const name = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (bytes.length < 8 || name(0) !== 'caff') return { state: 'broken', words: 'This is no CAF recording: it does not begin like one.' };
  let about: Omit<PcmFormat, 'dataStart' | 'dataBytes'> | undefined;
  let other: string | undefined;
  for (let at = 8; at + 12 <= bytes.length; ) {
    const chunk = name(at);
    const length = view.getInt32(at + 4) * 2 ** 32 + view.getUint32(at + 8);
    const body = at + 12;
    if (chunk === 'desc') {
      if (length < 32 || body + 32 > bytes.length) return { state: 'broken', words: 'The description of the sound in this CAF recording is cut short.' };
      const coding = name(body + 8);
      const flags = view.getUint32(body + 12);
      const bits = view.getUint32(body + 28);
      const codings: Readonly<Record<string, Pick<PcmFormat, 'coding' | 'bits'>>> = { lpcm: { coding: flags & FLOAT ? 'float' : 'integer', bits }, ulaw: { coding: 'mu-law', bits: 8 }, alaw: { coding: 'a-law', bits: 8 }, ima4: { coding: 'ima4', bits: 4 } };
      const known = codings[coding];
      if (known === undefined) other = coding.trim();
      else {
        const made = { ...known, littleEndian: (flags & LITTLE_ENDIAN) !== 0, channels: view.getUint32(body + 24), rate: view.getFloat64(body) };
        const problem = formatProblem(KIND, made);
        if (problem !== undefined) return { state: 'broken', words: problem };
        about = made;
      }
    } else if (chunk === 'data') {
      if (other !== undefined) return { state: 'other coding', name: other };
      if (about === undefined) return { state: 'broken', words: 'This CAF recording does not say how its sound is written.' };
      // The number of edits stands before the samples; a recorder that was switched off leaves the length at -1.
      return { state: 'read', format: { ...about, dataStart: body + 4, dataBytes: length < 0 ? Infinity : Math.max(0, length - 4) } };
    }
    if (length < 0) break;
    at = body + length;
  }
  return { state: 'broken', words: about === undefined ? 'This CAF recording is cut short or damaged.' : 'This CAF recording holds no sound: it ends before its samples.' };
}
