/** One box of an ISO base media file: its four letters, and where its body lies. */
export interface Box {
  readonly type: string;
  readonly body: number;
  readonly end: number;
}

/** Reads part of a file; fewer bytes where it ends. */
export type ReadPart = (from: number, length: number) => Promise<Uint8Array>;

const letters = (bytes: Uint8Array, at: number): string => String.fromCharCode(...bytes.subarray(at, at + 4));

/** Boxes one after the other between two places of what lies in the memory; what does not fit in ends the list. */
export function boxesIn(bytes: Uint8Array, from: number, to: number): readonly Box[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const boxes: Box[] = [];
  for (let at = from; at + 8 <= to; ) {
    const short = view.getUint32(at);
    if (short === 1 && at + 16 > to) break;
    const length = short === 1 ? view.getUint32(at + 8) * 2 ** 32 + view.getUint32(at + 12) : short === 0 ? to - at : short;
    const head = short === 1 ? 16 : 8;
    if (length < head || at + length > to) break;
    boxes.push({ type: letters(bytes, at + 4), body: at + head, end: at + length });
    at += length;
  }
  return boxes;
}

const MOST_BOXES = 10_000;

/** The body of a box at the top of a file, without reading what stands before it; undefined where there is none, or none of a sensible size. */
export async function topBox(read: ReadPart, size: number, wanted: string, most: number): Promise<Uint8Array | undefined> {
  for (let at = 0, count = 0; at + 8 <= size && count < MOST_BOXES; count++) {
    const head = await read(at, 16);
    if (head.length < 8) return undefined;
    const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
    const short = view.getUint32(0);
    if (short === 1 && head.length < 16) return undefined;
    const length = short === 1 ? view.getUint32(8) * 2 ** 32 + view.getUint32(12) : short === 0 ? size - at : short;
    const start = short === 1 ? 16 : 8;
    if (length < start) return undefined;
    if (letters(head, 4) === wanted) return length - start > most ? undefined : read(at + start, length - start);
    at += length;
  }
  return undefined;
}
