/** What plus-and-minus tolerances in a row come to. */
export interface ToleranceStack {
  /** All at their worst together: the sum. */
  readonly worst: number;
  /** Square root of the sum of squares: where they are independent and centred. */
  readonly likely: number;
}

/** Adds half-widths of tolerances, all in one unit, 0 or above. None at all add to nothing. */
export const toleranceStack = (halfWidths: readonly number[]): ToleranceStack => {
  if (halfWidths.some((width) => !(width >= 0 && Number.isFinite(width)))) throw new RangeError(`Tolerances are outside their range; 0 and above is allowed: ${halfWidths.join(', ')}`);
  return { worst: halfWidths.reduce((sum, width) => sum + width, 0), likely: Math.hypot(...halfWidths) };
};
