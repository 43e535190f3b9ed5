import type { Block } from '../../views/index.ts';
import { standIn, type Carried } from './carry-photographs.ts';
import { jpegHeader, withoutNotes } from './jpeg-header.ts';
import { canSet } from './typeset.ts';

export interface Photograph {
  readonly bytes: Uint8Array;
  readonly mediaType: string;
}

/** Finds the bytes of a photograph by its SHA-256; undefined where they are not at hand. */
export type Photographs = (sha256: string) => Promise<Photograph | undefined>;

/** A photograph as the layout places it; without a file only its caption is printed. */
export type Placed = { readonly file: string; readonly aspect: number; readonly orientation: number } | { readonly missing: string };

export interface Gathered {
  readonly placed: ReadonlyMap<string, Placed>;
  readonly carried: readonly Carried[];
  readonly files: ReadonlyMap<string, Buffer>;
}

/** Signatures of the formats that the typesetter unpacks itself. */
const UNPACKED: readonly (readonly [extension: string, signature: RegExp])[] = [['png', /^\x89PNG\r\n/u], ['gif', /^GIF8[79]a/u], ['webp', /^RIFF[^]{4}WEBP/u]];

/** Reads the header of every photograph once; the bytes themselves are fetched again when the paper is closed, so that they never all lie in memory. */
export async function gatherPhotographs(blocks: readonly Block[], photographs: Photographs | undefined): Promise<Gathered> {
  const placed = new Map<string, Placed>();
  const carried: Carried[] = [];
  const files = new Map<string, Buffer>();
  for (const block of blocks) {
    if (block.kind !== 'photograph' || placed.has(block.sha256)) continue;
    const { sha256 } = block;
    const found = await photographs?.(sha256);
    if (found === undefined) {
      placed.set(sha256, { missing: 'the photograph is not at hand' });
      continue;
    }
    const header = jpegHeader(found.bytes);
    if (header !== undefined) {
      const file = `photograph-${placed.size}.jpg`;
      const again = async (): Promise<Uint8Array> => (await photographs?.(sha256))?.bytes ?? new Uint8Array();
      carried.push({ name: file, header, length: withoutNotes(found.bytes).reduce((sum, part) => sum + part.length, 0), fetch: again });
      files.set(file, standIn(file));
      placed.set(sha256, { file, aspect: header.width / header.height, orientation: header.orientation });
      continue;
    }
    placed.set(sha256, await unpacked(found.bytes, placed.size, files));
  }
  return { placed, carried, files };
}

async function unpacked(bytes: Uint8Array, index: number, files: Map<string, Buffer>): Promise<Placed> {
  const start = Buffer.from(bytes.subarray(0, 16)).toString('latin1');
  const extension = UNPACKED.find(([, signature]) => signature.test(start))?.[0];
  if (extension === undefined) return { missing: 'the photograph is of a kind that a PDF cannot hold; JPEG, PNG, GIF and WebP can be printed' };
  const file = `photograph-${index}.${extension}`;
  const aspect = await canSet(file, Buffer.from(bytes));
  if (aspect === undefined) return { missing: 'the photograph is damaged and cannot be read' };
  files.set(file, Buffer.from(bytes));
  return { file, aspect, orientation: 1 };
}
