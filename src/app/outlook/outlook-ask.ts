import type { Picture } from '../../derived/index.ts';
import type { Block } from '../../views/index.ts';
import type { MovingAsked, NumberedPoint, OutlookId } from '../../views/outlook/index.ts';

/** A hammer to look ahead for. The outlook runs a population of likenesses, so it is worked out beside the page. */
export interface OutlookAsk {
  readonly id: number;
  readonly picture: Picture;
  readonly width: 'sheet' | 'phone';
  /** The sheet that is wanted first. */
  readonly first: OutlookId;
  /** Door and floor on the way, where somebody said them. */
  readonly moving?: MovingAsked;
}

/** One sheet after the other, the one asked for first. */
export type OutlookAnswer =
  | { readonly id: number; readonly sheet: OutlookId; readonly blocks: readonly Block[]; readonly points: readonly NumberedPoint[] }
  | { readonly id: number; readonly failure: string };
