import type { LinkageFamily } from '../hammer/index.ts';
import type { Criterion, Source } from './criterion.ts';
import type { Practice } from './practice.ts';

/** Least, most likely, greatest. */
export interface Span {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
}

/** A part or material that a job uses up. */
export interface JobPart {
  readonly id: string;
  readonly words: string;
  /** Where its size goes by the ram class: it is said behind the words. */
  readonly sized?: 'motor';
  readonly quantity: number;
  /** What it is counted in; each where left out. */
  readonly unit?: 'each' | 'set' | 'kg' | 'lb' | 'm' | 'ft' | 'hour';
  /** Price of one of that unit where nothing was heard, in generic units of about one US dollar; an estimate. */
  readonly priceEach: Span;
  readonly source: string;
  readonly leadDays?: Span;
}

/** A job that must be finished before another, with the reason. */
export interface JobBefore {
  readonly job: string;
  readonly because: string;
  /** True where it only holds at one end: what is stuck in the ram does not hold up the work on the seat below. */
  readonly atSameEnd?: true;
  /** True where it only comes first if both are done: a die is ground before it is keyed, and may be keyed without being ground. */
  readonly onlyInOrder?: true;
}

/** One repair or adjustment. */
export interface Job {
  readonly id: string;
  readonly title: string;
  /** What is done, in two or three sentences; left out where only judgements are made. */
  readonly words?: string;
  /** Said instead on hammers of these families. */
  readonly wordsFor?: Readonly<Partial<Record<LinkageFamily, string>>>;
  /** Said instead where another job is open too and changes what is left to do: the first of them that is. */
  readonly wordsWith?: readonly { readonly job: string; readonly words: string }[];
  readonly part: string;
  readonly families: readonly LinkageFamily[];
  /** Place in the datum chain: 0 make it safe to work on, 1 level the machine ... 16 trial. Lower comes first. */
  readonly stage: number;
  /** Jobs that must be finished before this one where both are on the worksheet, each with its reason. */
  readonly after: readonly JobBefore[];
  /** The end of the machine that it works on, for a part that stands at one only; told by the findings where left out. */
  readonly end?: 'upper' | 'lower';
  /** True where its words mean just what the findings name, so that the paper names them: paint is scraped where it hides something. */
  readonly namesWhatFor?: true;
  /** Jobs that this one makes pointless on these parts, wherever both are asked for: a bearing poured anew needs no shims taken out. */
  readonly replaces?: readonly { readonly job: string; readonly on: readonly string[] }[];
  /** Jobs that a finding which is only watched asks for as soon as this one is asked for: this one is made to their part. */
  readonly mendsFirst?: readonly string[];
  /** Jobs that close up what this one has opened, or set what it has moved: where they are asked for too, nothing runs between. */
  readonly closedBy?: readonly string[];
  /**
   * Given for a job that is nothing without its part: on a hammer that has not got the part, these do the same, those of them on
   * parts that it has. A belt under an idler is adjusted at the idler. Left out for a job that fits the part itself.
   */
  readonly otherwise?: readonly string[];
  /** Hours for a 50 lb class hammer; greater classes scale. */
  readonly hours: Span;
  /** 1 owner, 2 careful amateur, 3 machinist or rebuilder, 4 specialist. */
  readonly skill: 1 | 2 | 3 | 4;
  readonly helpers: number;
  readonly parts: readonly JobPart[];
  /** Outside work paid for (machine shop, electrician), generic units. */
  readonly outside?: { readonly words: string; readonly price: Span; readonly source: string };
  readonly cautions: readonly string[];
  readonly source: string;
  /** Of a job that only looks: what follows where it finds the fault, a job that nothing asks for before. */
  readonly mayLeadTo?: string;
  /** A cheaper way, with what it costs in the long run. */
  readonly cheaper?: string;
  /** Where that way is no way: another job is open that it would spoil, a finding is as bad as this or worse, or a look has one of these answers. */
  readonly cheaperNot?: CheaperBar;
}

/** What forbids a cheaper way; any of it does. */
export interface CheaperBar {
  readonly jobs?: readonly string[];
  readonly findings?: readonly { readonly criterion: string; readonly from: 'watch' | 'limited' | 'stand-down' }[];
  readonly looks?: readonly { readonly look: string; readonly answers: readonly string[] }[];
}

/** One step of the datum chain with its reason. */
export interface Stage {
  readonly number: number;
  readonly title: string;
  readonly because: string;
  readonly source: string;
}

/** A caution that appears where the work is. */
export interface Caution {
  readonly id: string;
  readonly words: string;
  readonly source: string;
}

/** Everything the program knows beforehand: data, no functions. */
export interface Knowledge {
  readonly version: string;
  readonly sources: readonly Source[];
  readonly practice: readonly Practice[];
  readonly criteria: readonly Criterion[];
  readonly jobs: readonly Job[];
  readonly stages: readonly Stage[];
  readonly cautions: readonly Caution[];
}
