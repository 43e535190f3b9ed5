import type { Dimension, ToolName } from '../methods/quantity/index.ts';

/** The three linkage families that the program knows. */
export type LinkageFamily = 'coil-and-toggle' | 'bow-spring' | 'helve';

export const LINKAGE_FAMILIES: readonly LinkageFamily[] = ['coil-and-toggle', 'bow-spring', 'helve'];

/** Where a part belongs on the machine; also the order in which a careful survey visits the groups. */
export type PartGroup = 'castings' | 'dies-and-seat' | 'ram-and-linkage' | 'shaft-and-clutch' | 'drive' | 'ground-and-guards' | 'running';

/** A trade name on both sides of the ocean; `uk` equals `us` where both say the same. */
export interface TradeName {
  readonly us: string;
  readonly uk: string;
}

/** One way of taking a reading that changes what the number means. */
export interface MeasuringWay {
  readonly id: string;
  readonly words: string;
}

/** A measuring place: one quantity that is read on a part. */
export interface MeasuringPlace {
  /** `part.place`, for example `upper-die.height`. */
  readonly id: string;
  readonly name: string;
  readonly dimension: Dimension;
  /** Where on the part it is read (`front`, `rear`, `front-left`, ...). Empty: one reading for the part. */
  readonly at: readonly string[];
  /** Tools fit for it, best first. */
  readonly tools: readonly ToolName[];
  /** How to take it, in one or two sentences for cold hands. */
  readonly how: string;
  /** What accuracy is worth having, as the trade says it. */
  readonly accuracy: string;
  /** What is physically possible, SI; outside it a reading is refused with the bound. */
  readonly plausible: readonly [least: number, most: number];
  /** True where an as-made value of the same place is worth recording. */
  readonly asMade?: boolean;
  /** Ways of measuring that give different numbers; the first is the preferred one. */
  readonly ways?: readonly MeasuringWay[];
  readonly families?: readonly LinkageFamily[];
  /** True where it is read only when the part, or what it carries, is made new: no judgement waits for it. */
  readonly forMaking?: true;
  /** True where only a running hammer gives it, though the part is looked at cold. */
  readonly whileRunning?: true;
}

/** One answer to a look. What it means is not said here: knowledge grades it. */
export interface LookAnswer {
  readonly id: string;
  readonly words: string;
  /** True of a crack and its like, which are at one spot: where it is and a photograph are asked for there and then. */
  readonly spot?: true;
}

/** Something looked at, felt or heard rather than measured. */
export interface Look {
  /** `part.look`, for example `frame.crack`. */
  readonly id: string;
  readonly question: string;
  /** How to look, in one or two sentences. */
  readonly how: string;
  readonly at: readonly string[];
  readonly answers: readonly LookAnswer[];
  readonly families?: readonly LinkageFamily[];
  /** As of a measuring place. */
  readonly forMaking?: true;
  /** As of a measuring place. */
  readonly whileRunning?: true;
}

/** One part of a hammer, as the trade names it. */
export interface Part {
  readonly id: string;
  /** Numbers of the component list that this part covers; 6.5 stands for key removal and 24.5 for the pouring recipe. */
  readonly rows: readonly number[];
  readonly name: TradeName;
  readonly group: PartGroup;
  readonly families: readonly LinkageFamily[];
  readonly places: readonly MeasuringPlace[];
  readonly looks: readonly Look[];
}
