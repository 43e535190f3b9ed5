import type { Span } from '../../knowledge/index.ts';
import type { Money, PriceUnit } from '../../entries/index.ts';
import type { CheckFirst, Draw } from './cause.ts';
import type { PriceBook } from './price-book.ts';

export interface WorksheetJob {
  readonly job: string;
  readonly number: number;
  readonly title: string;
  /** Said of this hammer alone, in place of the usual words of the job; what is done is asked of `jobWords`. */
  readonly ownWords?: string;
  readonly part: string;
  /** Finding keys (`criterion` or `criterion@place`) that it cures. */
  readonly cures: readonly string[];
  /** The worst grade among them. */
  readonly urgency: 'watch' | 'limited' | 'stand-down';
  /** Why it stands where it stands in the order. */
  readonly whyHere: string;
  readonly after: readonly string[];
  readonly stage: number;
  readonly hours: Span;
  readonly skill: 1 | 2 | 3 | 4;
  readonly helpers: number;
  readonly parts: readonly WorksheetPart[];
  /** Generic units of about one US dollar where nothing was heard; an estimate looks like one. */
  readonly cost: Span;
  readonly heard: readonly HeardPrice[];
  readonly cautions: readonly string[];
  readonly state: 'open' | 'planned' | 'started' | 'done' | 'dropped';
  /** Work paid for outside; absent where there is none or one price covers the whole job. */
  readonly outside?: { readonly words: string; readonly cost: Span; readonly source: string };
  /** Kind of the price that covers the whole job, parts and outside work together, where one was heard. */
  readonly wholePrice?: string;
  /** Days until the last of its parts is there. */
  readonly leadDays?: Span;
  /** Hours already put into it. */
  readonly hoursSpent?: number;
  /** Said where it was done before and has to be done again. */
  readonly again?: string;
  /** Absent where it is certain that it is needed. */
  readonly need?: Need;
}

/** A price as it was heard for a job or one of its parts, the latest of its kind. */
export interface HeardPrice {
  /** Job or part. */
  readonly of: string;
  readonly price: Money;
  /** How many of it the price is for. */
  readonly quantity: number;
  readonly when: string;
  readonly entry: string;
  readonly sourceKind: string;
  readonly saidBy?: string;
  /** What was said with it: what the price holds, and what it leaves out. */
  readonly words?: string;
  readonly leadDays?: number;
  /** False where its money has no rate to that of the sums, so that the range stands instead. */
  readonly counted: boolean;
}

/** How likely it is that a job is needed at all, and what would settle it. */
export interface Need {
  /** Above 0, below 1. */
  readonly chance: number;
  /** For whoever draws whether it is needed. */
  readonly draws: readonly Draw[];
  /** What makes it so likely, each with its check where a diagnosis gave one. */
  readonly causes: readonly { readonly id: string; readonly because: string; readonly check?: CheckFirst }[];
}

/** A job that is not on the worksheet and would do in the place of some that are. */
export interface InsteadJob extends WorksheetJob {
  /** Jobs of the worksheet whose place it takes, on some part at least. */
  readonly takesPlaceOf: readonly string[];
}

/** A job that nothing asks for yet and that may be needed. */
export interface MayBeJob extends WorksheetJob {
  readonly need: Need;
  /** Jobs of the worksheet that it would make pointless. */
  readonly takesPlaceOf: readonly string[];
}

/** A part that a job uses up, with what it costs. */
export interface WorksheetPart {
  readonly id: string;
  readonly words: string;
  readonly quantity: number;
  /** What it is counted in; each where left out. */
  readonly unit?: PriceUnit;
  readonly cost: Span;
  readonly heard: boolean;
  /** Source id of the range, or the kind of the price heard. */
  readonly source: string;
  readonly leadDays?: Span;
}

export interface Worksheet {
  readonly jobs: readonly WorksheetJob[];
  /** What may be needed and is not asked for yet; in the order in which it would come, its number that of the job before which it would be done. */
  readonly mayBe?: readonly MayBeJob[];
  /** What follows where a look among the open jobs finds the fault: priced, and in no sum before that. */
  readonly ifFound?: readonly WorksheetJob[];
  readonly hours: Span;
  readonly cost: Span;
  /** Hours and money on average, with what may be needed by its chance. */
  readonly expected?: { readonly hours: number; readonly cost: number };
  /** What could not be put in order or added up, said plainly. */
  readonly problems: readonly string[];
  /** What every sum of money is in: ISO 4217 letters, or `unit` for generic units of about one US dollar. */
  readonly currency?: string;
  readonly prices?: PriceBook;
}
