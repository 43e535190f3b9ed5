import type { Span } from '../../knowledge/index.ts';
import type { Money } from '../../entries/index.ts';

export interface WorksheetJob {
  readonly job: string;
  readonly number: number;
  readonly title: string;
  readonly words: string;
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
  readonly parts: readonly { readonly id: string; readonly words: string; readonly quantity: number; readonly cost: Span; readonly heard: boolean; readonly source: string }[];
  /** Generic units of about one US dollar where nothing was heard; an estimate looks like one. */
  readonly cost: Span;
  readonly heard: readonly { readonly price: Money; readonly entry: string; readonly sourceKind: string }[];
  readonly cautions: readonly string[];
  readonly state: 'open' | 'planned' | 'started' | 'done' | 'dropped';
  readonly cheaper?: string;
}

export interface Worksheet {
  readonly jobs: readonly WorksheetJob[];
  readonly hours: Span;
  readonly cost: Span;
  /** What could not be put in order or added up, said plainly. */
  readonly problems: readonly string[];
}
