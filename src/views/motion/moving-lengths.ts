import type { Picture } from '../../derived/index.ts';
import { lengthsOf } from '../elevation/lengths.ts';
import { stackHeights } from '../elevation/stack-heights.ts';

/** What the moving drawing needs beside the simulator's own lengths, m. */
export interface MovingLengths {
  readonly dieWidth: number;
  readonly lowerDie: number;
  readonly upperDie: number;
  readonly seatWidth: number;
  readonly ramWidth: number;
  readonly ramHeight: number;
  readonly shaftDiameter: number;
  readonly crankPlate: number;
  readonly bowHalfSpan: number;
  readonly bowRise: number;
  readonly leaf: number;
  readonly leaves: number;
  readonly coils: number;
  readonly wire: number;
  readonly springRadius: number;
  readonly springLength: number;
  readonly beamDepth: number;
}

/** Readings where there are any, else the proportions of the class. */
export function movingLengths(picture: Picture): MovingLengths {
  const lengths = lengthsOf(picture);
  const stack = stackHeights(picture, lengths);
  const helve = picture.known.identity.family === 'helve';
  const bow = picture.known.identity.family === 'bow-spring';
  const coil = picture.known.identity.family === 'coil-and-toggle';
  const dieWidth = helve ? lengths.of('die-length') : lengths.of('die-width');
  return {
    dieWidth, lowerDie: Math.max(0.01, stack.lowerFace - stack.seatFloor), upperDie: Math.max(0.01, stack.ramBottom - stack.upperFace),
    seatWidth: Math.max(helve ? lengths.of('seat-length') : lengths.of('seat-width'), dieWidth * 1.05),
    ramWidth: lengths.of('ram-width'), ramHeight: lengths.of('ram-height'), shaftDiameter: lengths.of('shaft-diameter'), crankPlate: lengths.of('crank-plate-diameter'),
    bowHalfSpan: bow ? lengths.of('bow-span') / 2 : 0, bowRise: bow ? lengths.of('bow-height') : 0,
    leaf: lengths.place('bow-spring.leaf-thickness', 0.007), leaves: Math.min(12, Math.max(2, Math.round(lengths.place('bow-spring.leaves', 6)))),
    coils: Math.min(14, Math.max(3, Math.round(lengths.place('coil-spring.coils', 8)))), wire: lengths.place('coil-spring.wire', 0.012),
    springRadius: coil ? lengths.of('spring-diameter') / 2 : 0, springLength: lengths.place('coil-spring.installed-length', coil ? lengths.of('spring-length') : 0.15),
    beamDepth: helve ? lengths.of('helve-depth') : 0,
  };
}
