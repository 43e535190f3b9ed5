/** What to do at the cap of a split bearing. */
export interface CapShims {
  /** To take out at each side of the cap, m; below 0: to put in. */
  readonly removeEachSide: number;
  /** Of both sides together, m. */
  readonly removeInAll: number;
  /** Left at each side afterwards, m; below 0 where there is not enough. */
  readonly leftEachSide: number;
  readonly state: 'enough' | 'not-enough-left' | 'tighter-than-wanted';
}

/**
 * Shims to take out from under a cap so that the clearance across the split becomes what is wanted. Both sides go together: a
 * shim out at each side lets the cap down by its own thickness, one out at a single side only by half of it at the middle, and
 * cocks the cap. The bore is left out of round by as much, so the clearance along the split does not change.
 * @param clearance now, across the split, on the diameter, m, 0 or above
 * @param wanted on the diameter, m, 0 or above
 * @param shimsEachSide thickness of the pack at each side, the thinner one if they differ, m, 0 or above
 */
export const capShims = (clearance: number, wanted: number, shimsEachSide: number): CapShims => {
  for (const value of [clearance, wanted, shimsEachSide]) {
    if (!(value >= 0 && Number.isFinite(value))) throw new RangeError(`Clearances and shims are outside their range; 0 m and above is allowed: ${clearance}, ${wanted}, ${shimsEachSide}`);
  }
  const removeEachSide = clearance - wanted;
  const leftEachSide = shimsEachSide - removeEachSide;
  const state = removeEachSide < 0 ? 'tighter-than-wanted' : leftEachSide < 0 ? 'not-enough-left' : 'enough';
  return { removeEachSide, removeInAll: 2 * removeEachSide, leftEachSide, state };
};
