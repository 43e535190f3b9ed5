import { pieceOf, type PcmFormat } from './pcm-format.ts';

/** Whole frames of any sample-by-sample coding as one channel, the mean of all; a broken last one is left out. */
export function pcmToMono(data: Uint8Array, format: PcmFormat): Float32Array {
  if (format.coding === 'ima4') return imaToMono(data, format.channels);
  const { channels, bits } = format;
  const view = new DataView(data.buffer, data.byteOffset, data.byteLength);
  const frames = Math.floor(data.byteLength / pieceOf(format).bytes);
  const out = new Float32Array(frames);
  const bytes = bits / 8;
  const read = reader(view, format);
  for (let frame = 0, at = 0; frame < frames; frame++) {
    let sum = 0;
    for (let c = 0; c < channels; c++, at += bytes) sum += read(at);
    out[frame] = sum / channels;
  }
  return out;
}

function reader(view: DataView, { coding, bits, littleEndian }: PcmFormat): (at: number) => number {
  if (coding === 'float') return bits === 32 ? (at) => finite(view.getFloat32(at, littleEndian)) : (at) => finite(view.getFloat64(at, littleEndian));
  if (coding === 'mu-law') return (at) => MU_LAW[view.getUint8(at)]!;
  if (coding === 'a-law') return (at) => A_LAW[view.getUint8(at)]!;
  if (bits === 8) return coding === 'unsigned' ? (at) => (view.getUint8(at) - 128) / 128 : (at) => view.getInt8(at) / 128;
  if (bits === 16) return (at) => view.getInt16(at, littleEndian) / 32768;
  if (bits === 24) return littleEndian ? (at) => ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8388608 : (at) => ((view.getInt8(at) << 16) | view.getUint16(at + 1)) / 8388608;
  return (at) => view.getInt32(at, littleEndian) / 2147483648;
}

const finite = (value: number): number => (Number.isFinite(value) ? value : 0);

/** ITU-T G.711, table 2a: mu-law, full scale 1. */
const MU_LAW = Float32Array.from({ length: 256 }, (_, code) => {
  const bits = ~code & 0xff;
  const size = ((((bits & 0x0f) << 3) + 0x84) << ((bits & 0x70) >> 4)) - 0x84;
  return (bits & 0x80 ? -size : size) / 32768;
});

/** ITU-T G.711, table 1a: A-law, full scale 1. */
const A_LAW = Float32Array.from({ length: 256 }, (_, code) => {
  const bits = code ^ 0x55;
  const segment = (bits & 0x70) >> 4;
  const part = (bits & 0x0f) << 4;
  const size = segment === 0 ? part + 8 : (part + 0x108) << (segment - 1);
  return (bits & 0x80 ? size : -size) / 32768;
});

/** IMA Digital Audio Focus and Technical Working Groups, Recommended Practices 3.00, 1992: step sizes and index changes. */
const STEPS = [
  7, 8, 9, 10, 11, 12, 13, 14, 16, 17, 19, 21, 23, 25, 28, 31, 34, 37, 41, 45, 50, 55, 60, 66, 73, 80, 88, 97, 107, 118, 130, 143, 157, 173, 190, 209, 230, 253, 279, 307, 337, 371, 408, 449, 494,
  544, 598, 658, 724, 796, 876, 963, 1060, 1166, 1282, 1411, 1552, 1707, 1878, 2066, 2272, 2499, 2749, 3024, 3327, 3660, 4026, 4428, 4871, 5358, 5894, 6484, 7132, 7845, 8630, 9493, 10442, 11487, 12635,
  13899, 15289, 16818, 18500, 20350, 22385, 24623, 27086, 29794, 32767,
];
const CHANGES = [-1, -1, -1, -1, 2, 4, 6, 8];

/** Packets of 34 bytes, one channel after the other: nine bits of where it stands, seven of the step, then 64 nibbles, the low one first. */
function imaToMono(data: Uint8Array, channels: number): Float32Array {
  const packets = Math.floor(data.byteLength / (34 * channels));
  const out = new Float32Array(packets * 64);
  for (let packet = 0; packet < packets; packet++)
    for (let c = 0; c < channels; c++) {
      const start = (packet * channels + c) * 34;
      const head = (data[start]! << 8) | data[start + 1]!;
      let value = (head & 0xff80) >= 0x8000 ? (head & 0xff80) - 0x10000 : head & 0xff80;
      let index = Math.min(88, head & 0x7f);
      for (let i = 0; i < 64; i++) {
        const nibble = (data[start + 2 + (i >> 1)]! >> ((i & 1) * 4)) & 0x0f;
        const step = STEPS[index]!;
        const change = (step >> 3) + (nibble & 1 ? step >> 2 : 0) + (nibble & 2 ? step >> 1 : 0) + (nibble & 4 ? step : 0);
        value = Math.max(-32768, Math.min(32767, nibble & 8 ? value - change : value + change));
        index = Math.max(0, Math.min(88, index + CHANGES[nibble & 7]!));
        out[packet * 64 + i] = out[packet * 64 + i]! + value / 32768 / channels;
      }
    }
  return out;
}
