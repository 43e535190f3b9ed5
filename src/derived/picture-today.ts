import type { Entry } from '../entries/index.ts';
import type { Knowledge } from '../knowledge/index.ts';
import { picture, type Picture } from './picture.ts';
import type { PrintSystem } from './print-system.ts';
import { dutyWithOverdue } from './upkeep/index.ts';

/**
 * The picture with what is overdue on its day said in the verdict: what papers and the command line print. The page asks for
 * the picture first, which is quick, and adds the same when it has come.
 */
export function pictureToday(entries: readonly Entry[], knowledge: Knowledge, asOf: string, seed: number, system: PrintSystem = 'inch'): Picture | undefined {
  const found = picture(entries, knowledge, asOf, seed, system);
  return found === undefined ? undefined : { ...found, duty: dutyWithOverdue(found.duty, found.known, entries, asOf) };
}
