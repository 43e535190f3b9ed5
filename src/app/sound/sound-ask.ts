import type { BeatOptions, BeatResult } from '../../derived/sound/index.ts';

/** What the page asks the worker: the beat in these samples. */
export interface SoundAsk {
  readonly id: number;
  readonly samples: Float32Array;
  readonly rate: number;
  readonly options: BeatOptions;
}

export type SoundAnswer =
  | { readonly kind: 'heard'; readonly id: number; readonly result: BeatResult; readonly seconds: number }
  | { readonly kind: 'failed'; readonly id: number; readonly words: string };
