/** Stands with what was entered of a running hammer while something stopped it. */
export const EARLIER_RUN = 'of an earlier run';
