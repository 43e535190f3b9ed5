/**
 * The middle value, or the mean of the two middle ones.
 * @param values at least one, none of them NaN; left as they are
 */
export const median = (values: readonly number[]): number => {
  if (values.length === 0 || values.some((value) => Number.isNaN(value))) throw new RangeError(`A median needs one number at least, and numbers only: ${values.length} values`);
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half]! : 0.5 * (sorted[half - 1]! + sorted[half]!);
};
