/** A place where a row stands highest. */
export interface Peak {
  /** Index with a fraction, from a parabola through the three highest values. */
  readonly at: number;
  readonly height: number;
}

/**
 * Highest places of a row: values above a floor that nothing within `reach` exceeds (the first of equals counts).
 * @param floor least height
 * @param reach places on each side, 1 or more
 */
export function peaks(row: ArrayLike<number>, floor: number, reach: number): Peak[] {
  const found: Peak[] = [];
  const length = row.length;
  for (let i = 0; i < length; i++) {
    const here = row[i]!;
    if (!(here >= floor)) continue;
    let highest = true;
    for (let j = Math.max(0, i - reach); j < i && highest; j++) if (row[j]! >= here) highest = false;
    for (let j = i + 1; j <= Math.min(length - 1, i + reach) && highest; j++) if (row[j]! > here) highest = false;
    if (highest) found.push({ at: i + vertex(row[i - 1] ?? here, here, row[i + 1] ?? here), height: here });
  }
  return found;
}

/** Where the parabola through three evenly spaced values stands highest, from the middle one: -0.5 to 0.5 places. */
export function vertex(before: number, here: number, after: number): number {
  const bend = before - 2 * here + after;
  if (!(bend < 0)) return 0;
  return Math.min(0.5, Math.max(-0.5, (0.5 * (before - after)) / bend));
}
