/** Throws unless the places rise strictly and each has its value. */
export const demandTable = (xs: readonly number[], ys: readonly number[]): void => {
  if (xs.length !== ys.length || xs.length === 0) throw new RangeError(`A table needs as many values as places, and one at least: ${ys.length} values, ${xs.length} places`);
  for (let i = 1; i < xs.length; i += 1) {
    if (!(xs[i]! > xs[i - 1]!)) throw new RangeError(`The places of a table must rise: ${xs[i - 1]!} is followed by ${xs[i]!}`);
  }
};

/** Index of the interval that holds `x`: 0 below the second place, at most length - 2. */
export const intervalOf = (xs: readonly number[], x: number): number => {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle]! <= x) low = middle;
    else high = middle;
  }
  return low;
};

/**
 * Value of a table at `x`, by straight lines between its rows. Outside the table the end value holds: where that
 * would be a lie, ask `withinTable` first.
 * @param xs places, rising strictly, at least one
 * @param ys values, as many
 * @param x any number; not a number is refused
 */
export const interpolate = (xs: readonly number[], ys: readonly number[], x: number): number => {
  demandTable(xs, ys);
  if (Number.isNaN(x)) throw new RangeError('A table is asked at a number; any number is allowed: NaN');
  const last = xs.length - 1;
  if (x <= xs[0]!) return ys[0]!;
  if (x >= xs[last]!) return ys[last]!;
  const i = intervalOf(xs, x);
  const share = (x - xs[i]!) / (xs[i + 1]! - xs[i]!);
  return ys[i]! * (1 - share) + ys[i + 1]! * share;
};

/** True where `x` lies inside the table, ends included. */
export const withinTable = (xs: readonly number[], x: number): boolean => x >= xs[0]! && x <= xs[xs.length - 1]!;
