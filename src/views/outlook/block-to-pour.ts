import { groundInputOf, sizeOfBolt } from '../../derived/ground/index.ts';
import type { Outlook, Picture } from '../../derived/index.ts';
import { movingInputOf } from '../../derived/moving/index.ts';

/** A block sized by rules alone, to talk about. m, m³, kg. */
export interface BlockToPour {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly volume: number;
  readonly mass: number;
  readonly foot: { readonly length: number; readonly width: number };
  readonly bolt: number;
  readonly boltWords: string;
  readonly because: string;
}

/** m on each side of the foot (common practice, no source) */
const MARGIN = 0.15;
/** m: 12 in, the thinner end of what is laid for small hammers (read on public pages) */
const LEAST = 0.3048;
/** kg/m³ */
const CONCRETE = 2350;
/** Block over anvil by a handbook, from memory. */
const RATIO = 3;
const STEP = 0.05;

/** The block that the plain rules give: a margin round the foot, and three times the anvil, never thinner than owners lay it. */
export function blockToPour(picture: Picture, outlook: Outlook): BlockToPour {
  const { baseLength, baseWidth, anvilMass, ramMass } = movingInputOf(outlook.values, picture.known);
  const input = groundInputOf({ family: picture.known.identity.family, values: new Map(Object.entries(outlook.values)) }, picture.known);
  const anvil = 'kind' in input ? input.anvilMass.value : anvilMass.value;
  const length = baseLength + 2 * MARGIN;
  const width = baseWidth + 2 * MARGIN;
  const byMass = (RATIO * anvil) / (CONCRETE * length * width);
  const thickness = Math.ceil(Math.max(LEAST, byMass) / STEP) * STEP;
  const volume = length * width * thickness;
  return {
    length, width, thickness, volume, mass: volume * CONCRETE, foot: { length: baseLength, width: baseWidth }, bolt: sizeOfBolt(ramMass.value), boltWords: 'usual for the class; through bolts or bonded anchors',
    because: byMass > LEAST ? 'three times the anvil by weight, which handbooks ask for (from memory), with a hand’s breadth round the foot' : 'as thick as owners lay it under small hammers (read on public pages); by weight less would do',
  };
}
