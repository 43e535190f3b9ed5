import { outlook, type Outlook, type Picture } from '../derived/index.ts';
import type { Knowledge } from '../knowledge/index.ts';
import { elevation, reportTree, type ReportTree } from '../views/index.ts';
import { PROGRAM } from './program-version.ts';

/**
 * The report as every door gives it: with the elevation, and with what lies further off than the verdict.
 * @param worked the outlook where it was worked out already; it takes some tenths of a second
 */
export const wholeReport = (picture: Picture, knowledge: Knowledge, worked: Outlook = outlook(picture, picture.provenance.seed)): ReportTree =>
  reportTree(picture, knowledge, { elevation: elevation(picture), outlook: worked, program: PROGRAM });
