/** What became of a sound file: one channel of samples, or a sentence that says what it is and what to do. */
export type DecodeOutcome = DecodedSound | NotDecoded;

export interface DecodedSound {
  readonly state: 'decoded';
  /** one channel, full scale 1 */
  readonly samples: Float32Array;
  /** samples a second */
  readonly rate: number;
  readonly channels: number;
  /** s, length of the whole recording where it is known, and of what was decoded */
  readonly seconds: number;
  readonly secondsDecoded: number;
  /** what the file is, in words */
  readonly kind: string;
  /** sentences about what was left out or is odd */
  readonly notes: readonly string[];
}

export interface NotDecoded {
  readonly state: 'not decoded';
  readonly kind: string;
  readonly words: string;
}

/** s of recording that are decoded at most, so that a file of hours does not fill the memory. */
export const LONGEST_DECODED = 600;

export const notDecoded = (kind: string, words: string): NotDecoded => ({ state: 'not decoded', kind, words });

export const partNote = (seconds: number, decoded: number): string =>
  `The recording lasts ${Math.round(seconds / 60)} minutes; only its first ${Math.round(decoded / 60)} were read.`;
