import type { Distribution } from '../../methods/chance/index.ts';
import type { GroundInput } from './ground-input.ts';

/** What counts as block and as pad, with what was taken and not read. */
export interface Underneath {
  readonly state: 'known';
  /** m; absent on bare soil */
  readonly block?: { readonly length: number; readonly width: number; readonly thickness: number; readonly density: Distribution; readonly words: string };
  /** Pa over m: stiffness of the pad for each square metre of foot */
  readonly pad: { readonly perArea: Distribution; readonly words: string; readonly allowed?: { readonly pressure: number; readonly words: string } };
  readonly taken: readonly string[];
}

export type UnderneathAnswer =
  | Underneath
  | { readonly state: 'not-known'; readonly missing: readonly string[] }
  | { readonly state: 'does-not-apply'; readonly because: string };

const triangle = (least: number, likely: number, most: number): Distribution => ({ kind: 'triangular', least, likely, most });
const CONCRETE = triangle(2200, 2350, 2500);
const OAK = triangle(650, 750, 900);

/** Machine bedded on concrete in grout or on a thin packing: nobody sees what; between one hard layer and a soft inch of wood. From memory. */
const BEDDED: Underneath['pad'] = { perArea: { kind: 'lognormal', median: 4e10, factor: 3 }, words: 'bedded on the concrete; grout or packing not seen, taken between hard and an inch of wood' };

/** Rubber belting of half an inch, bonded under the whole foot: 15 to 60 MPa (from memory). */
const BELTING_THICKNESS = 0.0127;
const BELTING: Underneath['pad'] = { perArea: triangle(15e6 / BELTING_THICKNESS, 30e6 / BELTING_THICKNESS, 60e6 / BELTING_THICKNESS), words: 'rubber belting, taken as half an inch thick', allowed: { pressure: 2e6, words: 'rubber belting about 2 MPa, from memory' } };

/** Oak across the grain: 0.5 to 1.2 GPa; carries about 5.5 MPa across the grain (both from memory). */
const oakPad = (thickness: number): Underneath['pad'] => ({ perArea: triangle(0.5e9 / thickness, 0.8e9 / thickness, 1.2e9 / thickness), words: 'oak timbers across the grain', allowed: { pressure: 5.5e6, words: 'white oak across the grain about 5.5 MPa, from memory' } });

/**
 * Block and pad by what was found under the hammer. A slab counts as far as the load spreads in it: 45° down from the foot (common practice).
 */
export function underneathOf(input: GroundInput): UnderneathAnswer {
  const { kind, length, width, thickness, baseLength, baseWidth } = input;
  if (kind === 'not-known') return { state: 'not-known', missing: ['foundation.kind'] };
  if (kind === 'trailer') return { state: 'does-not-apply', because: 'on a trailer or skid it has no foundation: it is not run there' };
  if (kind === 'soil') return { state: 'known', pad: { ...BEDDED, words: 'foot straight on the soil' }, taken: [] };
  const missing = [...(thickness === undefined ? ['foundation.thickness'] : []), ...(kind === 'own-block' || kind === 'timber' ? [...(length === undefined ? ['foundation.length'] : []), ...(width === undefined ? ['foundation.width'] : [])] : [])];
  if (missing.length > 0 || thickness === undefined) return { state: 'not-known', missing };
  if (kind === 'slab' || kind === 'belting') {
    const spread = { length: Math.min(length ?? Number.POSITIVE_INFINITY, baseLength + 2 * thickness), width: Math.min(width ?? Number.POSITIVE_INFINITY, baseWidth + 2 * thickness) };
    return { state: 'known', block: { ...spread, thickness, density: CONCRETE, words: 'the part of the slab over which the load spreads, 45° down from the foot' }, pad: kind === 'belting' ? BELTING : BEDDED, taken: kind === 'belting' ? ['thickness of the belting'] : [] };
  }
  const block = { length: length ?? baseLength, width: width ?? baseWidth, thickness };
  return kind === 'timber'
    ? { state: 'known', block: { ...block, density: OAK, words: 'the timbers' }, pad: oakPad(thickness), taken: ['kind of wood: taken as oak'] }
    : { state: 'known', block: { ...block, density: CONCRETE, words: 'a block of its own' }, pad: BEDDED, taken: ['concrete without looking inside it: no reinforcement, no voids known'] };
}
