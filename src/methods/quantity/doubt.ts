/** What is known of the doubt of one reading; all in one unit. */
export interface DoubtSources {
  /** The ± written: half-width of a 95 % interval. */
  readonly stated?: number;
  /** Size of the last place written. */
  readonly place: number;
  /** Half-width of the 95 % interval of the tool; 0 where none is named. */
  readonly ofTool: number;
  /** Called about, or marked ~ or ?. */
  readonly approximate: boolean;
}

/** How many times wider the doubt is where a person says about: the last place may be out by a whole one instead of a half. */
export const ABOUT = 2;

/**
 * Returns the standard uncertainty of a reading, in the unit of its sources.
 * A stated ± is divided by the coverage factor 2 (JCGM 100:2008, 6.3.3). Otherwise the greater of the tool's and of what the last place
 * allows: half of it, as the limit of a rectangular distribution, divided by the square root of 3 (JCGM 100:2008, 4.3.7).
 */
export function doubtOf({ stated, place, ofTool, approximate }: DoubtSources): number {
  const certain = stated === undefined ? Math.max(ofTool / 2, place / 2 / Math.sqrt(3)) : stated / 2;
  return approximate ? ABOUT * certain : certain;
}
