import type { EnrolBody, JobProgressBody, OverrideBody, PriceBody, RecordingBody, Standing } from '../../entries/index.ts';
import type { Contradiction } from './contradictions.ts';
import type { Value } from '../value.ts';

/** When, by whom and in which entry something was recorded. */
export interface Stamp {
  readonly when: string;
  readonly by: string;
  readonly entry: string;
}

/** A look as answered last. */
export interface KnownLook {
  readonly key: string;
  readonly look: string;
  readonly at?: string;
  readonly answer: string;
  readonly standing: Standing;
  readonly words?: string;
  readonly photographs: readonly string[];
  readonly when: string;
  readonly by: string;
  readonly entry: string;
}

/** One earlier reading of the same place. */
export interface PastReading {
  readonly when: string;
  readonly by: string;
  readonly value: number;
  readonly uncertainty: number;
  readonly asWritten: string;
  readonly entry: string;
}

/** The hammer as known today: entries folded, corrections obeyed, latest reading first. */
export interface Known {
  readonly hammer: string;
  readonly identity: EnrolBody;
  /** Readings (`part.place`, `part.place@at`) and as-made values (`...#as-made`). */
  readonly values: Readonly<Record<string, Value>>;
  readonly looks: Readonly<Record<string, KnownLook>>;
  /** All readings of a key, oldest first. */
  readonly history: Readonly<Record<string, readonly PastReading[]>>;
  readonly statements: readonly { readonly words: string; readonly saidBy?: string; readonly part?: string; readonly when: string; readonly by: string; readonly entry: string }[];
  readonly photographs: readonly { readonly sha256: string; readonly mediaType: string; readonly words: string; readonly part?: string; readonly when: string; readonly entry: string }[];
  readonly settings: readonly { readonly place: string; readonly at?: string; readonly asWritten: string; readonly before?: string; readonly when: string; readonly by: string; readonly entry: string; readonly words?: string }[];
  readonly recordings: readonly (RecordingBody & Stamp)[];
  readonly prices: readonly (PriceBody & Stamp)[];
  /** Latest state of each job that somebody entered progress for. */
  readonly progress: Readonly<Record<string, JobProgressBody & Stamp>>;
  /** Progress that was entered and cannot be, each with a sentence: the entry is kept and not counted. Absent where there is none. */
  readonly notCounted?: readonly string[];
  readonly overrides: readonly (OverrideBody & Stamp)[];
  /** Running time entered since enrolment, s. */
  readonly hoursRun: number;
  readonly visits: readonly { readonly date: string; readonly by: readonly string[]; readonly entries: number }[];
  /** Where telling and seeing part, or two readings of one day. */
  readonly contradictions: readonly Contradiction[];
  /** What was told of a look after it was seen, where that is another answer; what was seen stays in `looks`. */
  readonly toldAgainst: Readonly<Record<string, KnownLook>>;
  /** Entries that could not be used, each with a sentence. */
  readonly problems: readonly string[];
}
