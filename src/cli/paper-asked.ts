import type { Paper } from '../print/index.ts';
import { BadInput } from './door.ts';


export const PAPER_OPTION = ['--paper <paper>', 'letter or A4; letter for inches and A4 for millimetres where it is left out'] as const;

/** Paper that somebody asked for, or the usual one of the units. @throws BadInput for any other paper */
export function paperOf(text: string | undefined, metric: boolean): Paper {
  const paper = (text ?? (metric ? 'a4' : 'letter')).toLowerCase();
  if (paper === 'letter' || paper === 'a4') return paper;
  throw new BadInput(`no such paper is printed; letter or A4: ${text ?? ''}`);
}
