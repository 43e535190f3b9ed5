/** What strikes what; decides the partial tones and how long they ring. */
export type Material = 'steel' | 'ringing' | 'hot' | 'wood';

/** Where an impact comes from. */
export type Role = 'blow' | 'second' | 'belt' | 'clank' | 'other';

/** One impact of a recording that is to be made. */
export interface Impact {
  /** s from the start of the recording */
  readonly time: number;
  /** dB of source energy against the main voice at its usual strength */
  readonly level: number;
  readonly role: Role;
}

export interface SecondRecipe {
  /** s after the blow; negative before it */
  readonly delay: number;
  /** dB of source energy against the blow, below 0 */
  readonly level: number;
  /** s, standard deviation of its own delay from stroke to stroke */
  readonly jitter: number;
  /** share of the strokes that have it, 0 to 1 */
  readonly share: number;
}

/** A stretch of running, from the first stroke to the release. */
export interface RunRecipe {
  readonly start: number;
  readonly stop: number;
  /** strokes after the release while the hammer slows down */
  readonly runDownStrokes: number;
  /** each of them takes this much longer than the last, 1 or more */
  readonly runDownGrowth: number;
}

export interface Recipe {
  readonly name: string;
  readonly group: string;
  readonly seed: number;
  /** s */
  readonly seconds: number;
  /** samples a second */
  readonly rate: number;
  /** strokes a minute */
  readonly strokes: number;
  /** s, standard deviation of each blow about its place */
  readonly jitter: number;
  /** change of the stroke rate, share a minute */
  readonly drift: number;
  /** slow wander of the period, share (standard deviation) */
  readonly wander: number;
  /** share of strokes missed */
  readonly misses: number;
  readonly material: Material;
  readonly runs: readonly RunRecipe[];
  readonly second?: SecondRecipe;
  /** s, dB of direct over diffuse sound, and a discrete echo of a wall if any */
  readonly room: { readonly decay: number; readonly direct: number; readonly echo?: { readonly delay: number; readonly level: number } };
  /** dB: mean square of the blow over 50 ms against the background */
  readonly signalToNoise: number;
  /** share of hum and motor tones in the background's power, 0 to 1 */
  readonly hum: number;
  readonly belt?: { readonly perMinute: number; readonly level: number };
  readonly clanks?: { readonly perMinute: number; readonly level: number };
  readonly other?: { readonly perMinute: number; readonly level: number; readonly material: Material };
  /** no hammer at all: only what else is in the recipe */
  readonly silentHammer?: boolean;
  readonly clip?: number;
  readonly automaticGain?: boolean;
  readonly lowCut?: number;
  /** what the bench passes the recording through before it is read */
  readonly codec?: 'aac-32k' | 'aac-64k' | 'opus-16k' | 'mp3-48k' | 'gsm';
}

/** What is really in a recording. */
export interface Truth {
  /** every impact in time order, with what it really was */
  readonly impacts: readonly Impact[];
  /** s, times of the blows */
  readonly blows: Float64Array;
  /** s, places of strokes that were missed */
  readonly missed: Float64Array;
  /** s, times of the second sounds, each with its blow's index */
  readonly seconds: readonly { readonly blow: number; readonly time: number }[];
  /** s, mean delay of the second sound where there is one */
  readonly delay?: number;
  /** dB, ratio of the mean energies as rendered */
  readonly level?: number;
  /** s, undisturbed times of all steady strokes, missed ones too, by run; rate and drift over any span follow from them */
  readonly planned: readonly (readonly number[])[];
  /** s, the running stretches: first and last blow, strokes of the run-down */
  readonly runs: readonly { readonly first: number; readonly last: number; readonly steadyLast: number; readonly runDownStrokes: number }[];
}

export interface Recording {
  readonly samples: Float32Array;
  readonly rate: number;
  readonly truth: Truth;
}
