import type { Outlook, Picture } from '../../derived/index.ts';
import type { Knowledge } from '../../knowledge/index.ts';
import type { Block } from '../report/block.ts';

/** What a sheet of the outlook is made from. */
export interface OutlookGround {
  readonly picture: Picture;
  readonly outlook: Outlook;
  readonly knowledge: Knowledge;
  /** Version of the program, for whoever computes the sheet again. */
  readonly program?: string;
  /** Door and floor on the way, for the sheet on moving. */
  readonly moving?: MovingAsked;
  /** `phone` sets drawings for a narrow page, with larger letters. */
  readonly width?: 'sheet' | 'phone';
}

/** Door and floor on the way, which belong to places and not to the hammer. SI. */
export interface MovingAsked {
  readonly door?: { readonly width: number; readonly height: number };
  /** Pa, as somebody who knows the floor says it */
  readonly floor?: { readonly rating: number };
}

/** What one sheet says, before it is put in the order that all of them have. */
export interface SheetParts {
  readonly answer: Extract<Block, { kind: 'answer' }>;
  /** Readings and looks that would make the answer better, the most telling first, in words. */
  readonly measureFirst: readonly string[];
  /** Drawing and figures. */
  readonly body: () => readonly Block[];
  /** What was taken and not read, and figures of the trade with their ranges. */
  readonly assumed: readonly string[];
  readonly assumedTable?: Block;
  /** Where the doubt comes from and what was left out. */
  readonly doubt: readonly string[];
  /** Ids of cautions. */
  readonly cautions: readonly string[];
  /** Who decides in the end: codes, licensed trades. */
  readonly defers: string;
  /** Ids of sources, and sources in full where they have none. */
  readonly sources: readonly string[];
}

/** Which readings and looks nobody took on this hammer. @param keys `a|b` where either of them will do; named by the first */
export const missingOf = (picture: Picture, keys: readonly string[]): readonly string[] => keys.filter((one) => !one.split('|').some((key) => isRead(picture, key))).map((one) => one.split('|')[0] ?? one);

/** Whether somebody read a place or looked at it, on this hammer. */
export function isRead({ values, known }: Picture, key: string): boolean {
  const value = values[key];
  if (value !== undefined) return value.outcome.state === 'known' && value.rests !== 'assumed';
  const answer = known.looks[key]?.answer;
  return answer !== undefined && answer !== 'not-known';
}
