import type { Picture } from '../../derived/index.ts';
import type { Lengths } from './lengths.ts';

/** Heights above the floor of everything between the seat and the top of the ram, m, at bottom dead centre. */
export interface StackHeights {
  readonly seatFloor: number;
  /** Floor as the die has beaten it down. */
  readonly seatNow: number;
  readonly fillerTop: number;
  readonly lowerFace: number;
  readonly upperFace: number;
  readonly ramBottom: number;
  readonly ramTop: number;
  /** Faces as made, with the same rest gap between them, where the as-made heights are known. */
  readonly lowerFaceMade: number | undefined;
  readonly upperHeightMade: number | undefined;
  readonly leastWork: number;
}

/** Stacks the dies up from the seat's true floor, from readings where there are any. */
export function stackHeights(picture: Picture, lengths: Lengths): StackHeights {
  const seatFloor = lengths.of('seat-height');
  const sunk = lengths.place('seat.sunk', 0);
  const filler = lengths.place('filler-plate.thickness', 0);
  const lower = lengths.place('stack.lower-net', lengths.place('lower-die.height', lengths.of('die-height')));
  const upper = lengths.place('upper-die.height', lengths.of('die-height'));
  const gap = lengths.of('rest-gap');
  const lowerFace = seatFloor + lower;
  const upperFace = lowerFace + gap;
  const made = (key: string): number | undefined => {
    const outcome = picture.values[`${key}#as-made`]?.outcome;
    return outcome?.state === 'known' ? outcome.quantity.value : undefined;
  };
  const lowerMade = made('lower-die.height');
  const ramBottom = upperFace + upper;
  return {
    seatFloor, seatNow: seatFloor - sunk, fillerTop: seatFloor - sunk + filler, lowerFace, upperFace, ramBottom, ramTop: ramBottom + lengths.of('ram-height'),
    lowerFaceMade: lowerMade === undefined ? undefined : seatFloor + lowerMade, upperHeightMade: made('upper-die.height'),
    leastWork: lengths.place('stack.least-work-thickness', 0),
  };
}
