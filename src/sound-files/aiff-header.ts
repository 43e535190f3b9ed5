import { formatProblem, type PcmFormat, type PcmHead } from './pcm-format.ts';

const KIND = 'an AIFF recording';
const CODINGS: Readonly<Record<string, Pick<PcmFormat, 'coding' | 'littleEndian'> & { readonly bits?: number }>> = {
  NONE: { coding: 'integer', littleEndian: false }, twos: { coding: 'integer', littleEndian: false }, in24: { coding: 'integer', littleEndian: false, bits: 24 }, in32: { coding: 'integer', littleEndian: false, bits: 32 },
  sowt: { coding: 'integer', littleEndian: true }, 'raw ': { coding: 'unsigned', littleEndian: false, bits: 8 },
  fl32: { coding: 'float', littleEndian: false, bits: 32 }, FL32: { coding: 'float', littleEndian: false, bits: 32 }, fl64: { coding: 'float', littleEndian: false, bits: 64 }, FL64: { coding: 'float', littleEndian: false, bits: 64 },
  ulaw: { coding: 'mu-law', littleEndian: false, bits: 8 }, ULAW: { coding: 'mu-law', littleEndian: false, bits: 8 }, alaw: { coding: 'a-law', littleEndian: false, bits: 8 }, ALAW: { coding: 'a-law', littleEndian: false, bits: 8 },
  ima4: { coding: 'ima4', littleEndian: false, bits: 4 },
};

/**
 * Reads the chunks of an AIFF or AIFF-C file up to its samples (Apple Computer, Audio Interchange File Format, 1.3, 1989;
 * its compressed form, draft of 26 August 1991).
 * @param bytes the beginning of the file, at least up to the sound data chunk
 */
export function readAiffHead(bytes: Uint8Array): PcmHead {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const name = (at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));
  if (bytes.length < 12 || name(0) !== 'FORM' || !['AIFF', 'AIFC'].includes(name(8))) return { state: 'broken', words: 'This is no AIFF recording: it does not begin like one.' };
  let about: Omit<PcmFormat, 'dataStart' | 'dataBytes'> | undefined;
  let other: string | undefined;
  for (let at = 12; at + 8 <= bytes.length; ) {
    const chunk = name(at);
    const length = view.getUint32(at + 4);
    const body = at + 8;
    if (chunk === 'COMM') {
      if (length < 18 || body + 18 > bytes.length) return { state: 'broken', words: 'The description of the sound in this AIFF recording is cut short.' };
      const coding = name(8) === 'AIFC' && length >= 22 ? name(body + 18) : 'NONE';
      const known = CODINGS[coding];
      // Sizes between whole bytes are stored in the next larger number of them.
      const bits = known?.bits ?? Math.ceil(view.getInt16(body + 6) / 8) * 8;
      const made = { coding: known?.coding ?? ('integer' as const), littleEndian: known?.littleEndian ?? false, channels: view.getInt16(body), rate: extended(view, body + 8), bits };
      if (known === undefined) other = coding;
      else {
        const problem = formatProblem(KIND, made);
        if (problem !== undefined) return { state: 'broken', words: problem };
        about = made;
      }
    } else if (chunk === 'SSND') {
      if (other !== undefined) return { state: 'other coding', name: other };
      if (about === undefined) return { state: 'broken', words: 'This AIFF recording does not say how its sound is written.' };
      if (body + 8 > bytes.length) break;
      const offset = view.getUint32(body);
      const open = length === 0 || length >= 0xffffff00;
      return { state: 'read', format: { ...about, dataStart: body + 8 + offset, dataBytes: open ? Infinity : Math.max(0, length - 8 - offset) } };
    }
    at = body + length + (length % 2);
  }
  return { state: 'broken', words: about === undefined ? 'This AIFF recording is cut short or damaged.' : 'This AIFF recording holds no sound: it ends before its samples.' };
}

/** The 80 bit number of IEEE 754 extended precision that the rate is written in. */
function extended(view: DataView, at: number): number {
  const exponent = view.getUint16(at) & 0x7fff;
  const high = view.getUint32(at + 2);
  const low = view.getUint32(at + 6);
  return (high * 2 ** -31 + low * 2 ** -63) * 2 ** (exponent - 16383);
}
