import type { BeatOptions, BeatResult } from '../../derived/sound/index.ts';

/** What the page asks the worker: the beat in these samples, or what follows from blows that a person marked in them. */
export interface SoundAsk {
  readonly id: number;
  readonly samples: Float32Array;
  readonly rate: number;
  readonly options: BeatOptions;
  /** s, blows as marked */
  readonly times?: readonly number[];
}

export type SoundAnswer =
  | { readonly kind: 'under way'; readonly id: number; readonly share: number }
  | { readonly kind: 'heard'; readonly id: number; readonly result: BeatResult; readonly seconds: number }
  | { readonly kind: 'failed'; readonly id: number; readonly words: string };
