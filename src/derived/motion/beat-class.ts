/** What a hammer does, turn after turn. The place in the list is its code in a map. */
export const BEAT_CLASSES = [
  'clean',
  'die-re-strike',
  'joint-knock',
  'upper-stop-knock',
  'gallop',
  'irregular',
  'misses',
  'no-blow',
  'linkage-takes-the-blow',
  'stalled',
  'refused',
  'not-computed',
] as const;
export type BeatClass = (typeof BEAT_CLASSES)[number];

/** A sound besides the main blow. */
export interface SecondSound {
  readonly kind: 'die-re-strike' | 'joint-knock' | 'upper-stop-knock';
  /** s after the blow, negative before it */
  readonly delay: number;
  /** dB against the blow, by the speed with which the two came together; negative */
  readonly level: number;
  /** 0 to 1, how many of the blows it goes with */
  readonly share: number;
}
