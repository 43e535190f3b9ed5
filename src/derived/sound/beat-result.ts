import type { Advice } from './advice.ts';

/** A value with the ends of the interval that holds the truth in 95 of 100 recordings. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What the recording itself is like, whatever strikes in it. */
export interface RecordingFacts {
  /** s, whole length and the part that was read */
  readonly seconds: number;
  readonly secondsRead: number;
  /** samples a second as given */
  readonly rate: number;
  /** samples that were not numbers and were read as silence */
  readonly notNumbers: number;
  /** bursts of samples that stand at the rail */
  readonly clippedBursts: number;
  /** the background swells between blows: the recorder turns its gain up and down */
  readonly gainControl: boolean;
}

/** One stroke of the hammer. */
export interface StrokeHeard {
  /** s from the start of the recording */
  readonly time: number;
  /** s since the stroke before it in the same run */
  readonly sinceLast?: number;
  readonly levelDecibels: number;
  /** height of the onset in robust spreads of what lies between the blows */
  readonly salience: number;
  /** index into `runs` */
  readonly run: number;
  /** after the release, while the hammer slows down */
  readonly runningDown: boolean;
  /** a second sound was heard at its usual place with this stroke; absent when there is none to look for */
  readonly second?: boolean;
}

/** A stretch of running between two pauses. */
export interface Run {
  /** s, first and last stroke */
  readonly first: number;
  readonly last: number;
  readonly strokes: number;
  /** strokes that should have fallen and were not heard */
  readonly missed: number;
  /** s, where they should have fallen */
  readonly missedAt: readonly number[];
  /** strokes a second of the steady part */
  readonly rate: Estimate;
  /** the slowing down at its end, if there is one */
  readonly runDown?: { readonly strokes: number; readonly seconds: number };
}

/** A period that would also explain the blows. */
export interface OtherReading {
  /** strokes a second */
  readonly rate: number;
  readonly kind: 'half the rate' | 'double the rate' | 'another rate';
  /** how well it explains the recording against the one chosen, 0 to 1 */
  readonly against: number;
}

/** Another chain of regular impacts: another machine, a belt joint, a clock. It is not named here. */
export interface OtherChain {
  /** impacts a second */
  readonly rate: Estimate;
  readonly impacts: number;
  /** dB against the main chain's onsets */
  readonly levelDecibels: number;
  readonly times: readonly number[];
}

export type SecondVerdict = 'double' | 'possible' | 'none seen' | 'cannot tell';

/** The second sound of a turn. */
export interface SecondSound {
  readonly verdict: SecondVerdict;
  /** chance that there is one at this place, 0 to 1, from made-up recordings with known truth */
  readonly sure: number;
  /** where it falls in the turn; `either` near half a turn, where both readings are given */
  readonly place?: 'after' | 'before' | 'either';
  /** s from the blow; negative before it */
  readonly delay?: Estimate;
  /** s, the same sound counted from the other neighbour blow */
  readonly otherDelay?: number;
  /** dB of source energy against the blow */
  readonly levelDecibels?: Estimate;
  /** share of strokes with it, 0 to 1 */
  readonly share?: number;
  /** the same at every stroke to within what an echo would be: a wall would sound like this too */
  readonly likeEcho: boolean;
  /** what follows every blow alike at one delay, where no second sound is called double: an echo, or a beat that repeats perfectly */
  readonly echo?: { readonly delay: number; readonly levelDecibels: number };
  /** what would have been noticed: dB against the blow, by delay in s */
  readonly limit: readonly { readonly delay: number; readonly levelDecibels: number }[];
}

/** The folded turn, for drawing: what is left after the blow's own ringing is taken out. */
export interface FoldedTurn {
  /** s from the blow of each value */
  readonly delays: readonly number[];
  /** dB against the blow, everything that was recorded */
  readonly heard: readonly number[];
  /** combined rise, in robust spreads, after the tail is taken out */
  readonly rise: readonly number[];
}

export type Trust = 'good' | 'doubtful';

export interface BeatHeard {
  readonly state: 'heard';
  /** read from blows that a person marked, not from those that the program finds */
  readonly byHand: boolean;
  readonly recording: RecordingFacts;
  readonly trust: Trust;
  /** strokes a second over the longest run */
  readonly rate: Estimate;
  /** s, scatter of each blow about an even beat (standard deviation) */
  readonly jitter: number;
  /** change of the rate, share a second; absent when the run is too short */
  readonly drift?: Estimate;
  readonly strokes: readonly StrokeHeard[];
  readonly runs: readonly Run[];
  readonly missed: number;
  readonly second: SecondSound;
  readonly folded: FoldedTurn;
  readonly otherReadings: readonly OtherReading[];
  readonly otherChains: readonly OtherChain[];
  /** numbers behind the trust */
  readonly selfCheck: { readonly fill: number; readonly contrast: number; readonly jitterShare: number; readonly strokes: number };
  readonly advice: readonly Advice[];
}

export interface BeatNotHeard {
  readonly state: 'cannot tell';
  readonly recording: RecordingFacts;
  readonly advice: readonly Advice[];
}

export type BeatResult = BeatHeard | BeatNotHeard;

export interface BeatOptions {
  /** strokes a second, the range to look in; default 70 to 520 a minute */
  readonly slowest?: number;
  readonly fastest?: number;
  /** s of recording to read from its start; default 600 */
  readonly longest?: number;
  /** seed of the bootstrap; default 1 */
  readonly seed?: number;
}
