/** Index of the greatest value within reach of a place. */
export function highest(row: Float64Array, place: number, reach: number): number {
  let top = Math.max(0, Math.min(row.length - 1, Math.round(place)));
  for (let i = Math.max(0, top - reach), end = Math.min(row.length - 1, Math.round(place) + reach); i <= end; i++) if (row[i]! > row[top]!) top = i;
  return top;
}
