import type { Condition } from '../drawing/hatch.ts';

/** A report as meaning, not as layout: print rooms turn it into HTML or PDF. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string; readonly tone?: 'plain' | 'small' | 'next' }
  | { readonly kind: 'verdict'; readonly words: string; readonly sentence: string; readonly condition: Condition; readonly sureWords: string }
  /** What a sheet is asked, answered before anything else; an estimate is framed and named as one. */
  | { readonly kind: 'answer'; readonly words: string; readonly sentence: string; readonly estimate: boolean; readonly rests: string }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly string[] }
  | { readonly kind: 'facts'; readonly rows: readonly (readonly [label: string, text: string])[] }
  | { readonly kind: 'table'; readonly caption: string; readonly columns: readonly string[]; readonly rows: readonly TableRow[]; /** Many short rows to look things up in: set small and close. */ readonly dense?: boolean }
  | { readonly kind: 'figure'; readonly svg: string; readonly words: string; readonly caption: string; /** Greatest height on paper, mm; the sheet decides where it is left out. */ readonly tallest?: number }
  | { readonly kind: 'photograph'; readonly sha256: string; readonly mediaType: string; readonly words: string; readonly caption: string }
  | { readonly kind: 'caution'; readonly text: string; readonly source: string }
  | { readonly kind: 'new-page' };

export interface TableRow {
  readonly cells: readonly string[];
  /** Drawn as a mark beside the first cell, with its word. */
  readonly condition?: Condition;
}

/** What stands in the title block at the foot of every sheet (habit of ISO 7200). */
export interface TitleBlock {
  readonly tag: string;
  readonly hammerClass: string;
  readonly sheet: string;
  /** Day of the last look, year, month, day. */
  readonly date: string;
  /** Day for which the paper was made. */
  readonly made: string;
  /** Who looked last. */
  readonly by: string;
  readonly verdict: string;
  readonly log: string;
  readonly invented: boolean;
}

export interface ReportTree {
  readonly title: string;
  readonly titleBlock: TitleBlock;
  readonly blocks: readonly Block[];
}
