import { outlook, type Outlook, type Picture } from '../derived/index.ts';
import type { Knowledge } from '../knowledge/index.ts';
import { elevation, reportTree, type ReportTree } from '../views/index.ts';

export interface WholeReportOptions {
  /** Version of the program, for whoever computes the report again. */
  readonly program?: string;
  /** The outlook where it was worked out already; it takes some tenths of a second. */
  readonly outlook?: Outlook;
}

/** The report as every door gives it: with the elevation, and with what lies further off than the verdict. */
export const wholeReport = (picture: Picture, knowledge: Knowledge, options: WholeReportOptions = {}): ReportTree =>
  reportTree(picture, knowledge, { elevation: elevation(picture, { lettering: 'paper' }), outlook: options.outlook ?? outlook(picture, picture.provenance.seed), ...(options.program === undefined ? {} : { program: options.program }) });
